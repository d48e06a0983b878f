import { describe, expect, it } from 'vitest';
import {
  centsAboveStandard,
  hzToMidi,
  midiToHz,
  referenceAtCents,
} from '../../../src/core/music/temperament.ts';

/** Frequencies of the equal-tempered keyboard at A4 = 440 Hz, as tables print them to a thousandth of a hertz. */
const TABLE: readonly (readonly [midi: number, hz: number])[] = [
  [21, 27.5],
  [40, 82.407],
  [60, 261.626],
  [64, 329.628],
  [69, 440],
  [81, 880],
  [108, 4186.009],
];

describe('equal temperament', () => {
  it.each(TABLE)('MIDI %i is %f Hz', (midi, hz) => {
    expect(midiToHz(midi)).toBeCloseTo(hz, 3);
    expect(hzToMidi(hz)).toBeCloseTo(midi, 3);
  });

  it('moves with the reference', () => {
    expect(midiToHz(69, 432)).toBe(432);
    expect(midiToHz(57, 442)).toBeCloseTo(221, 10);
    expect(hzToMidi(442, 442)).toBe(69);
    expect(hzToMidi(221, 442)).toBeCloseTo(57, 10);
  });

  it('measures a reference in cents above 440 Hz', () => {
    expect(centsAboveStandard(442)).toBeCloseTo(7.85, 2);
    expect(referenceAtCents(7.85)).toBeCloseTo(442, 2);
    expect(referenceAtCents(-1200)).toBeCloseTo(220, 10);
  });

  it.each([0, -1, Number.NaN, Infinity])('throws for a frequency of %f Hz', (hz) => {
    expect(() => hzToMidi(hz)).toThrow(`a frequency is above 0 Hz and finite, not ${hz}`);
    expect(() => midiToHz(69, hz)).toThrow(RangeError);
  });
});
