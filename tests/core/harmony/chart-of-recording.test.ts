/** A band that plays a chart that is known: the chart is found again from its sound alone. */
import { expect, test } from 'vitest';
import {
  chartOfRecording,
  chartOverBeats,
  firstBeatSeconds,
} from '../../../src/core/harmony/chart-of-recording.ts';
import { meanSureness } from '../../../src/core/harmony/has-band.ts';
import { random } from '../../../fixtures/lines/random.ts';
import { renderTrack } from '../beats/rendered-track.ts';
import { kitSynth } from '../sound/kit-file.ts';

const RATE = 24_000;
const track = renderTrack(await kitSynth(RATE), {
  chart: '| Bb7 | Eb7 | Bb7 | Bb7 | Eb7 | Eb7 | Bb7 | Bb7 | F7 | Eb7 | Bb7 | F7 |',
  feel: 'shuffle',
  bpm: 152,
  seed: 61,
  choruses: 2,
});

test('the chords of a blues are found, with its beat, its first bar, its length and its name', () => {
  const shares: number[] = [];
  const found = chartOfRecording(track.mono, RATE, (share) => shares.push(share) > 0)!;
  if (!found.ok) throw new Error(found.problem.code);
  const { proposal, bpm } = found.value;
  expect(proposal.chart).toBe(
    'key: Bb\n| Bb7 | Eb7 | Bb7 | Bb7 |\n| Eb7 | Eb7 | Bb7 | Bb7 |\n| F7 | Eb7 | Bb7 | F7 |',
  );
  expect(proposal.form?.name).toBe('quick-change blues');
  expect(proposal.choruses).toBe(2);
  expect(bpm).toBeCloseTo(152, 0);
  expect(Math.abs(firstBeatSeconds(found.value) - track.beats[0]!)).toBeLessThan(0.03);
  expect(meanSureness(proposal)).toBeGreaterThan(0.85);
  expect(shares[0]).toBe(0);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
});

test('beats that the player has set are taken as they are', () => {
  const beats = track.beats.slice(0, 48);
  const found = chartOverBeats(track.mono, RATE, beats)!;
  expect(found.ok && found.value.proposal.bars).toHaveLength(12);
  expect(found.ok && found.value.beats.slice(-48)).toEqual(beats);
});

test('is cancelled when asked, and says where there is nothing to find', () => {
  expect(chartOfRecording(track.mono, RATE, () => false)).toBeNull();
  const dice = random(3);
  const noise = Float32Array.from({ length: 12 * RATE }, () => 0.1 * dice.normal());
  expect(chartOfRecording(noise, RATE)).toMatchObject({ ok: false });
});
