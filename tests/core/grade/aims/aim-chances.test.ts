/** Chances of what takes more than one note, counted by hand. */
import { describe, expect, it } from 'vitest';
import { allMetChance, guideStepChance } from '../../../../src/core/grade/aims/aim-chances.ts';
import { isOver } from '../../../../src/core/grade/aims/aim-chords.ts';
import { parseKey } from '../../../../src/core/music/keys.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';
import { gradedOver } from '../graded.ts';

const chord = (symbol: string) => parseChord(symbol)!;
const notes = (count: number) =>
  gradedOver(
    '| C7 |',
    Array.from({ length: count }, (_, beat) => [beat, 1, 60] as const),
  );
/** Every named tone makes a quarter of the player's notes. */
const quarterEach = (names: readonly string[]) => names.length / 4;

describe('the chance that every wanted tone is met', () => {
  it('is, of one set, that not all notes miss it', () => {
    expect(allMetChance([['3']], notes(1), quarterEach)).toBeCloseTo(0.25, 12);
    expect(allMetChance([['3']], notes(2), quarterEach)).toBeCloseTo(1 - 0.75 ** 2, 12);
  });

  it('is, of two sets, that both are met', () => {
    // Of one note: never. Of two: the one and the other, in either order.
    expect(allMetChance([['3'], ['6']], notes(1), quarterEach)).toBeCloseTo(0, 12);
    expect(allMetChance([['3'], ['6']], notes(2), quarterEach)).toBeCloseTo(2 / 16, 12);
    // Of three notes for three sets: 3! orders of (1/4)^3.
    expect(allMetChance([['3'], ['6'], ['9']], notes(3), quarterEach)).toBeCloseTo(6 / 64, 12);
  });

  it('is never less than nought, nor more than one', () => {
    expect(allMetChance([['3']], notes(3), () => 1.1)).toBeLessThanOrEqual(1);
    expect(allMetChance([['3']], notes(1), () => -0.1)).toBe(0);
  });
});

describe('the chance of a guide tone that steps on', () => {
  const own = (shares: Readonly<Record<number, number>>) =>
    Array.from({ length: 12 }, (_, pitchClass) => shares[pitchClass] ?? 0);

  it('is that of a guide tone of the old chord, and one of the new a step away', () => {
    // C7 has E and Bb, F7 has A and Eb: E to Eb and Bb to A are steps.
    expect(guideStepChance(own({ 4: 0.5, 3: 0.5 }), chord('C7'), chord('F7'))).toBeCloseTo(0.25, 12);
    expect(guideStepChance(own({ 10: 0.2, 9: 0.3, 0: 0.5 }), chord('C7'), chord('F7'))).toBeCloseTo(0.06, 12);
    expect(guideStepChance(own({ 4: 0.5, 9: 0.5 }), chord('C7'), chord('F7'))).toBe(0);
  });

  it('counts a whole step, over the octave too, but no tone that stays', () => {
    // From E (C7) to D (3 of Bbmaj7) is a whole step; A (7 of Bbmaj7) lies a half step under Bb (b7 of C7).
    expect(guideStepChance(own({ 4: 0.5, 2: 0.5 }), chord('C7'), chord('Bbmaj7'))).toBeCloseTo(0.25, 12);
    // From C (b7 of D7) down to B (3 of G7), over the octave.
    expect(guideStepChance(own({ 0: 0.5, 11: 0.5 }), chord('D7'), chord('G7'))).toBeCloseTo(0.25, 12);
    // From Bb (b7 of C7) to G (3 of Ebmaj7) is a minor third, and no step.
    expect(guideStepChance(own({ 10: 0.5, 7: 0.5 }), chord('C7'), chord('Ebmaj7'))).toBe(0);
    // F is the third of Dm7 and the seventh of G7.
    expect(guideStepChance(own({ 5: 1 }), chord('Dm7'), chord('G7'))).toBe(0);
  });
});

describe('the chords that an aim is about', () => {
  const over = (degree: string, symbol: string, key = 'C') =>
    isOver({ over: [degree] }, chord(symbol), parseKey(key)!);

  it('stand on a degree of the key', () => {
    const degrees = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII'];
    const roots = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];
    degrees.forEach((degree, i) => {
      roots.forEach((root, j) => expect(over(degree, `${root}7`), `${degree} ${root}`).toBe(i === j));
    });
    expect([over('bVII', 'Bb7'), over('#IV', 'F#dim7'), over('bVII', 'B7')]).toEqual([true, true, false]);
    expect(over('I', 'Bb7', 'Bb')).toBe(true);
    expect(over('bI', 'B7')).toBe(true);
  });

  it('may have to be dominant sevenths', () => {
    expect([over('IV7', 'F7'), over('IV7', 'Fmaj7'), over('IV7', 'G7')]).toEqual([true, false, false]);
  });

  it('are all where no degree is asked for, and any of several', () => {
    expect(isOver({}, chord('F#7'), parseKey('C')!)).toBe(true);
    expect(isOver({ over: ['I', 'V'] }, chord('G7'), parseKey('C')!)).toBe(true);
    expect(isOver({ over: ['I', 'V'] }, chord('F7'), parseKey('C')!)).toBe(false);
  });
});
