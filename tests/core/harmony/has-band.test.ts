/** A band, a guitar that accompanies, and a line alone are told apart by their tones, their bass and their form. */
import { expect, test } from 'vitest';
import { hasBand } from '../../../src/core/harmony/has-band.ts';
import { FOLDED } from '../../../src/core/harmony/settings.ts';

const BEATS = 16;
/** So many tones of one strength above the bass register, and so much of the bass register. */
function tones(count: number, bass: number) {
  const folded = new Float32Array(BEATS * FOLDED);
  for (let b = 0; b < BEATS; b++) {
    folded[b * FOLDED] = bass;
    for (let t = 0; t < count; t++) folded[b * FOLDED + 12 + t] = 1;
  }
  return { folded, beats: BEATS, levelsDb: new Float32Array(BEATS) };
}
const found = (sure: number, choruses: number) => ({
  choruses,
  bars: Array.from({ length: 4 }, () => ({ chords: [], sure, others: [] })),
});

test.each([
  ['many tones over a bass are a band, however unsure its chords', tones(9, 2), found(0.5, 1), true],
  ['many tones without a bass are one where sure chords come round', tones(9, 0), found(0.95, 2), true],
  ['chords that are not sure are a guess', tones(9, 0), found(0.8, 2), false],
  ['what does not come round is a guess', tones(9, 0), found(0.95, 1), false],
  ['a tone with its partials is a line, in the bass too', tones(3, 2), found(0.99, 4), false],
  ['silence is nothing', tones(0, 0), found(0.99, 4), false],
])('%s', (_, sound, proposal, expected) => {
  expect(hasBand(sound, proposal)).toBe(expected);
});
