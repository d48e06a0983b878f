/** What the note maker does with frames made by hand: each limit of its own on both sides. */
import { describe, expect, test } from 'vitest';
import { NoteMaker } from '../../../../src/core/listen/decide/maker.ts';
import type { Attack } from '../../../../src/core/listen/attacks/attacks.ts';
import type { AttackSpectra } from '../../../../src/core/listen/frames/attack-spectra.ts';
import { pitches, times, trackOf, type MadeFrame } from './made-track.ts';

const quiet = times(30, { midi: NaN, levelDb: -60 });
const after = times(40, { midi: NaN, levelDb: -60 });

/** Rounded notes of these frames, after 0.24 s of a quiet room. */
function notesOf(
  frames: readonly MadeFrame[],
  attacks: readonly Attack[] = [],
  spectra: AttackSpectra | null = null,
) {
  const maker = new NoteMaker(trackOf([...quiet, ...frames, ...after]), {
    partialsAt: () => null,
    spectraAt: () => spectra,
  });
  for (const attack of attacks) maker.attack(attack);
  maker.advance(true);
  return maker.notes;
}
const midisOf = (...input: Parameters<typeof notesOf>) =>
  notesOf(...input).map((note) => Math.round(note.midi));

describe('the note maker', () => {
  test('decides with eight frames in sight', () => {
    const track = trackOf([...quiet, ...times(30, {}), ...times(7, { midi: NaN, levelDb: -60 })]);
    const maker = new NoteMaker(track, { partialsAt: () => null, spectraAt: () => null });
    maker.advance(false);
    expect(maker.notes).toHaveLength(0);
    for (let frame = 67; frame < 67 + 8 + 8; frame++)
      track.add({
        index: frame,
        seconds: frame * 0.008,
        midi: NaN,
        clarity: 0,
        above: 0,
        below: 0,
        levelDb: -60,
      });
    maker.advance(false);
    expect(maker.notes).toHaveLength(1);
  });

  test('a note is at least 40 ms long', () => {
    // From the first frame with pitch to the last one.
    expect(midisOf(times(6, {}))).toHaveLength(1);
    expect(midisOf(times(5, {}))).toHaveLength(0);
  });

  test('ends 36 dB under its peak, or after eight frames without pitch', () => {
    const faded = (levelDb: number) => midisOf([...times(20, { levelDb: -10 }), ...times(20, { levelDb })]);
    const lengthOf = (levelDb: number) => {
      const [note] = notesOf([...times(20, { levelDb: -10 }), ...times(20, { levelDb })]);
      return note!.offsetSeconds - note!.onsetSeconds;
    };
    expect(faded(-45)).toEqual([60]);
    expect(lengthOf(-45.5)).toBeGreaterThan(0.3);
    expect(lengthOf(-46.5)).toBeLessThan(0.2);
    const gap = (count: number) =>
      notesOf([...times(20, {}), ...times(count, { midi: NaN }), ...times(20, {})]);
    expect(gap(7)[0]!.offsetSeconds).toBeGreaterThan(0.5);
    expect(gap(8)[0]!.offsetSeconds).toBeLessThan(0.45);
  });

  test('frames within 0.45 semitones stand on the plateau', () => {
    // A lower frame and a higher one in turn are no plateau of their own.
    const shaken = (semitones: number) =>
      notesOf([
        ...times(20, {}),
        ...pitches(...Array.from({ length: 20 }, (_, i) => 60 + (i % 2 === 0 ? semitones : -semitones))),
      ])[0]!.offsetSeconds;
    expect(shaken(0.43)).toBeGreaterThan(0.54);
    expect(shaken(0.49)).toBeLessThan(0.45);
  });

  test('a new plateau is no wider than 0.3 semitones', () => {
    const arrived = (wide: number) =>
      midisOf([
        ...times(20, {}),
        ...pitches(...Array.from({ length: 20 }, (_, i) => 62 + (i % 2 === 0 ? wide : 0))),
      ]);
    expect(arrived(0.28)).toEqual([60, 62]);
    expect(arrived(0.32)).toEqual([60]);
  });

  test('for 120 ms the path may not overrule a pitch that comes from the attack', () => {
    const spectra = {
      share: 0.5,
      pitches: (each: (midi: number) => void) => {
        each(64);
      },
      evidence: (midi: number) => ({
        after: 0.9,
        added: 0.9,
        gained: Math.round(midi) === 64 ? 0.99 : 0,
        fundamental: Math.round(midi) === 64 ? 0 : -3,
      }),
      keeps: () => 0,
    } as unknown as AttackSpectra;
    const attack = { seconds: 0.24, flux: 1, ratio: 30, energyRatio: 3 };
    // The path hears MIDI 60, and then nothing, at full level.
    const [note] = notesOf([...times(6, {}), ...times(40, { midi: NaN })], [attack], spectra);
    expect(Math.round(note!.midi)).toBe(64);
    // The first frame that counts is frame 32 (256 ms); it and fourteen more belong to the note.
    expect(note!.offsetSeconds).toBeCloseTo(0.008 * (32 + 14), 9);
  });

  /** 40 frames of MIDI 60, clear, with two unclear ones in the middle, so far off. */
  const withTwoOff = (semitones: number): MadeFrame[] => [
    ...times(20, {}),
    ...times(2, { midi: 60 + semitones, clarity: 0.5 }),
    ...times(20, {}),
  ];

  test('is measured on frames within a semitone', () => {
    const clarityOf = (semitones: number) => notesOf(withTwoOff(semitones))[0]!.confidence;
    expect(clarityOf(0.95)).toBeLessThan(0.97);
    expect(clarityOf(1.05)).toBeCloseTo(0.98, 3);
  });

  test('is measured on frames within 0.35 semitones where a neighbour rings on', () => {
    const spectra = {
      share: 0.5,
      pitches: (each: (midi: number) => void) => {
        each(60);
      },
      evidence: (midi: number) => ({
        after: 0.9,
        added: 0.9,
        gained: Math.round(midi) === 60 ? 0.99 : 0,
        fundamental: Math.round(midi) === 60 ? 0 : -3,
      }),
      keeps: () => 1,
    } as unknown as AttackSpectra;
    const attack = { seconds: 0.4, flux: 1, ratio: 30, energyRatio: 3 };
    const clarityOf = (semitones: number) =>
      notesOf([...times(20, { midi: 62 }), ...withTwoOff(semitones)], [attack], spectra)[1]!.confidence;
    expect(clarityOf(0.34)).toBeLessThan(0.97);
    expect(clarityOf(0.38)).toBeCloseTo(0.98, 3);
  });
});
