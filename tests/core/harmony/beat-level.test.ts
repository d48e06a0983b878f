/** Bands that the beat finder hears at half or twice their tempo: their chords tell how fast they are. */
import { expect, test } from 'vitest';
import { detectBeats } from '../../../src/core/beats/detect-beats.ts';
import { chartOfRecording } from '../../../src/core/harmony/chart-of-recording.ts';
import type { FeelName } from '../../../src/core/chart/feel-names.ts';
import { renderTrack } from '../beats/rendered-track.ts';
import { kitSynth } from '../sound/kit-file.ts';

const RATE = 24_000;
const synth = await kitSynth(RATE);
const MINOR = '| Am7 | D7 | Am7 | E7 | Dm7 | G7 | Am7 | E7 |';
const BLUES = '| A7 | D7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | E7 |';

const cases: readonly [
  feel: FeelName,
  chart: string,
  bpm: number,
  seed: number,
  found: number,
  bars: number,
][] = [
  ['funk', MINOR, 176, 62, 88, 8],
  ['rock', BLUES, 77, 64, 154, 12],
  ['funk', MINOR, 91, 65, 91, 8],
];

test.each(cases)('%s %s at %i beats a minute', (feel, chart, bpm, seed, found, bars) => {
  const track = renderTrack(synth, { chart, feel, bpm, seed, choruses: 2 });
  const beats = detectBeats(track.mono, RATE);
  expect(beats.ok && Math.round(beats.value.bpm)).toBe(found);
  const chartFound = chartOfRecording(track.mono, RATE)!;
  if (!chartFound.ok) throw new Error(chartFound.problem.code);
  const { proposal, beats: counted } = chartFound.value;
  expect(Math.round(chartFound.value.bpm)).toBe(bpm);
  expect(proposal.bars).toHaveLength(bars);
  expect(Math.abs(counted[proposal.downbeat]! - track.beats[0]!)).toBeLessThan(0.03);
});
