/** Chord spellings: *common practice* (any table of chords; the third of D7 is F#, its seventh C). */
import { describe, expect, it } from 'vitest';
import { AIM_LADDER } from '../../../../src/core/grade/aims/aims.ts';
import { AIM_CHOICES, aimChoiceOf, aimOf } from '../../../../src/core/grade/aims/aim-choices.ts';
import {
  aimIsForArrival,
  aimTonesReader,
  targetReader,
  targetsOf,
} from '../../../../src/core/grade/aims/targets.ts';
import { parseKey } from '../../../../src/core/music/keys.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';

const A = parseKey('A')!;
const shown = (aim: string, symbol: string, key = A) =>
  targetsOf(aimChoiceOf(aim), parseChord(symbol)!, key).map(({ degree, name }) => `${degree} ${name}`);

describe('the tones to land on', () => {
  it('follow the aim', () => {
    expect(shown('guide-tones', 'D7')).toEqual(['3 F#', 'b7 C']);
    expect(shown('thirds', 'D7')).toEqual(['3 F#']);
    expect(shown('chord-tones', 'D7')).toEqual(['1 D', '3 F#', '5 A', 'b7 C']);
    expect(shown('third-on-arrival', 'Bm7')).toEqual(['b3 D']);
    expect(shown('phrases-end-on-chord-tones', 'E7')).toHaveLength(4);
  });

  it('name a sixth and a ninth that the symbol does not write, over the chord they are meant for', () => {
    expect(shown('add-the-sixth', 'A7')).toEqual(['13 F#']);
    expect(shown('add-the-ninth', 'A7')).toEqual(['9 B']);
    expect(shown('third-sixth-ninth', 'A7')).toEqual(['3 C#', '13 F#', '9 B']);
    // Over the other chords the aim says nothing: the guide tones stand.
    expect(shown('add-the-sixth', 'D7')).toEqual(['3 F#', 'b7 C']);
  });

  it('an aim to keep off a tone never shows that tone', () => {
    expect(shown('off-the-third-over-four', 'D7')).toEqual(['3 F#', 'b7 C']);
  });

  it('a chord without a third or a seventh still has somewhere to land', () => {
    expect(shown('thirds', 'E5')).toEqual(['1 E', '5 B']);
    expect(shown('guide-tones', 'Asus4')).not.toEqual([]);
  });

  it('every rung of the ladder can be chosen; an unknown id gives the usual aim', () => {
    for (const { id } of AIM_LADDER) expect(AIM_CHOICES.map((choice) => choice.id)).toContain(id);
    expect(new Set(AIM_CHOICES.map(({ id }) => id)).size).toBe(AIM_CHOICES.length);
    expect(aimChoiceOf('nobody knows').id).toBe('guide-tones');
  });

  it('are worked out once a chord', () => {
    const read = targetReader(aimChoiceOf('thirds'), A);
    const chord = parseChord('D7')!;
    expect(read(chord)).toBe(read(chord));
  });
});

describe('the tones that an aim itself asks for', () => {
  const over = (id: string, symbol: string) =>
    aimTonesReader(
      aimOf(id),
      () => A,
    )(parseChord(symbol)!)
      .map(({ degree, name }) => `${degree} ${name}`)
      .join(', ');

  // A7 and D7 are I and IV of A; the sixth of A is F#, its ninth B (any theory book).
  it('are those of the aim, called as it calls them, and none over a chord that it is not about', () => {
    expect(over('third-sixth-ninth', 'A7')).toBe('3 C#, 6 F#, 9 B');
    expect(over('third-sixth-ninth', 'D7')).toBe('');
    expect(over('thirds', 'D7')).toBe('3 F#');
  });

  it('are none where an aim keeps off its tones, or is not known', () => {
    expect(over('off-the-third-over-four', 'D7')).toBe('');
    expect(over('nobody knows', 'D7')).toBe('');
  });

  it('are wanted as a chord arrives, or while it lasts', () => {
    expect(aimIsForArrival(aimOf('thirds')!)).toBe(true);
    expect(aimIsForArrival(aimOf('third-over-one')!)).toBe(false);
  });
});
