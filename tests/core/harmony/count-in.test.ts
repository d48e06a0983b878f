/** Clicks are counted in before a band begins (common practice): they are no bar of its form. */
import { expect, test } from 'vitest';
import { chartOfRecording } from '../../../src/core/harmony/chart-of-recording.ts';
import { renderTrack } from '../beats/rendered-track.ts';
import { kitSynth } from '../sound/kit-file.ts';

const RATE = 24_000;
const BLUES = '| A7 | D7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | E7 |';
const synth = await kitSynth(RATE);

/** Clicks of 30 ms at a pitch of their own, one a beat, up to the band's first downbeat. */
function clicksInto(mono: Float32Array, beats: number, beatSeconds: number): void {
  for (let beat = 0; beat < beats; beat++)
    for (let i = 0; i < 0.03 * RATE; i++)
      mono[Math.round(beat * beatSeconds * RATE) + i]! +=
        0.2 * Math.sin((2 * Math.PI * 1760 * i) / RATE) * Math.exp(-i / (0.006 * RATE));
}

test.each([
  [4, 132, 3],
  [8, 104, 11],
])('%i beats are counted in at %i beats a minute', (counted, bpm, seed) => {
  const leadSeconds = (counted * 60) / bpm;
  const track = renderTrack(synth, { chart: BLUES, feel: 'shuffle', bpm, seed, choruses: 2, leadSeconds });
  clicksInto(track.mono, counted, 60 / bpm);
  const found = chartOfRecording(track.mono, RATE)!;
  if (!found.ok) throw new Error(found.problem.code);
  const { proposal, beats } = found.value;
  expect(Math.abs(beats[proposal.downbeat]! - leadSeconds)).toBeLessThan(0.03);
  expect(proposal.bars).toHaveLength(12);
  expect(proposal.bars.slice(0, 2).map(({ chords }) => chords[0]?.symbol)).toEqual(['A7', 'D7']);
});
