/**
 * Equal temperament against published figures: ISO 16:1975 (A4 = 440 Hz), the key numbers of the MIDI 1.0
 * specification (middle C is 60, A4 is 69), and the table of note frequencies that acoustics handbooks print.
 */
import { describe, expect, it } from 'vitest';
import { nameNote } from '../../src/core/music/name-note.ts';
import { centsAboveStandard, hzToMidi, midiToHz } from '../../src/core/music/temperament.ts';

/**
 * Frequencies at A4 = 440 Hz, two decimals, as handbooks of acoustics and tuning tables print them
 * (from memory; the same in all of them).
 */
const HANDBOOK_HZ: readonly (readonly [name: string, midi: number, hz: number])[] = [
  ['A0', 21, 27.5],
  ['E1', 28, 41.2],
  ['A1', 33, 55.0],
  ['C2', 36, 65.41],
  ['E2', 40, 82.41],
  ['A2', 45, 110.0],
  ['C3', 48, 130.81],
  ['D3', 50, 146.83],
  ['G3', 55, 196.0],
  ['B3', 59, 246.94],
  ['C4', 60, 261.63],
  ['C#4', 61, 277.18],
  ['D4', 62, 293.66],
  ['D#4', 63, 311.13],
  ['E4', 64, 329.63],
  ['F4', 65, 349.23],
  ['F#4', 66, 369.99],
  ['G4', 67, 392.0],
  ['G#4', 68, 415.3],
  ['A4', 69, 440.0],
  ['A#4', 70, 466.16],
  ['B4', 71, 493.88],
  ['C5', 72, 523.25],
  ['E5', 76, 659.26],
  ['A5', 81, 880.0],
  ['E6', 88, 1318.51],
  ['C8', 108, 4186.01],
];

describe('the table of note frequencies', () => {
  it.each(HANDBOOK_HZ)('%s is MIDI key %i at %f Hz', (name, midi, hz) => {
    expect(midiToHz(midi)).toBeCloseTo(hz, 2);
    const named = nameNote(hzToMidi(hz), 440);
    expect(named.name + named.octave).toBe(name);
    expect(named.nearestMidi).toBe(midi);
    // Two printed decimals are worth up to 0.32 cents at 27.5 Hz.
    expect(Math.abs(named.cents)).toBeLessThan(0.33);
  });
});

describe('other references', () => {
  // Baroque pitch is a half step below the standard to within 1.3 cents; figures by hand from 1200 log2(f/440).
  it.each([
    [415, -101.27],
    [432, -31.77],
    [442, 7.85],
    [443, 11.76],
  ])('A4 = %i Hz stands %f cents from the standard', (referenceHz, cents) => {
    expect(centsAboveStandard(referenceHz)).toBeCloseTo(cents, 2);
  });

  it.each([415, 432, 440, 442])('names every key of the piano right at A4 = %i Hz', (referenceHz) => {
    for (let midi = 21; midi <= 108; midi++) {
      const hz = referenceHz * Math.pow(2, (midi - 69) / 12);
      const named = nameNote(hzToMidi(hz), referenceHz);
      expect(named.nearestMidi).toBe(midi);
      expect(named.cents).toBeCloseTo(0, 6);
    }
  });

  it('hears baroque A as G# at the standard', () => {
    expect(nameNote(hzToMidi(415), 440)).toMatchObject({ name: 'G#', octave: 4 });
  });
});
