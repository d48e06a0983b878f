import { describe, expect, test } from 'vitest';
import { listen } from '../../../../src/core/listen.ts';
import { hzOf, plucked, seededNoise, sum } from '../sounds.ts';

const RATE = 48_000;
const room = seededNoise(3, RATE, 0.0005);

/** Notes struck 0.3 s apart, each ringing for `ring` seconds. */
function played(pitches: readonly number[], ring: number): Float32Array {
  const parts = pitches.map((midi, i) => ({ at: 0.4 + 0.3 * i, sound: plucked(hzOf(midi), ring, RATE) }));
  return sum(3, RATE, parts, room);
}
const rounded = (samples: Float32Array) => listen(samples, RATE).map((note) => Math.round(note.midi));

describe('strings that ring on under the next', () => {
  test.each([
    // Fourths and a third, as open strings lie.
    [[52, 57, 62, 64]],
    // Neighbours, which beat.
    [[64, 65, 67, 64]],
    [[57, 58, 60, 53]],
    // Ninth, eighth and sixth harmonic of one low fundamental.
    [[69, 62, 67, 60]],
  ])('each stroke has its own pitch: %j', (pitches) => {
    expect(rounded(played(pitches, 1.2))).toEqual(pitches);
  });

  test('and so it has where each is damped', () => {
    expect(rounded(played([64, 65, 67, 64], 0.3))).toEqual([64, 65, 67, 64]);
  });

  test('a string struck again while another rings is two notes', () => {
    expect(rounded(played([52, 59, 59], 1.2))).toEqual([52, 59, 59]);
  });
});
