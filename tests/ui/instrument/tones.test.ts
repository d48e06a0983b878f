import { describe, expect, it } from 'vitest';
import { aimChoiceOf } from '../../../src/core/grade/aims/aim-choices.ts';
import { targetsOf } from '../../../src/core/grade/aims/targets.ts';
import { parseKey } from '../../../src/core/music/keys.ts';
import { parseChord } from '../../../src/core/music/parse-chord.ts';
import { at, nearestTarget, twelveOf } from '../../../src/ui/instrument/tones.ts';

const A = parseKey('A')!;
const targets = (symbol: string, aim = 'guide-tones') => targetsOf(aimChoiceOf(aim), parseChord(symbol)!, A);

describe('what each pitch class is', () => {
  it('tells now from next; a tone that stays is both', () => {
    const twelve = twelveOf(parseChord('A7'), targets('D7', 'chord-tones'), new Set([9]));
    expect(at(twelve.now, 69)?.degree).toBe('1');
    expect(at(twelve.next, 69)?.degree).toBe('5');
    expect(at(twelve.now, 61)?.degree).toBe('3');
    expect(at(twelve.next, 61)).toBeNull();
    expect(at(twelve.next, 60)?.degree).toBe('b7');
  });

  it('over no chord there is nothing now', () => {
    expect(twelveOf(null, [], new Set()).now.every((tone) => tone === null)).toBe(true);
  });
});

describe('the way to the nearest target', () => {
  it('goes by step where it can: over A7 into D7, C# falls to C and G falls to F#', () => {
    expect(nearestTarget(61, targets('D7'))).toMatchObject({ midi: 60, tone: { degree: 'b7' } });
    expect(nearestTarget(67, targets('D7'))).toMatchObject({ midi: 66, tone: { degree: '3' } });
  });

  it('stays on a tone that is one already', () => {
    expect(nearestTarget(66.2, targets('D7'))).toMatchObject({ midi: 66 });
  });

  it('of two equally near it takes the third', () => {
    // A4 lies three semitones from F#4 and from C5.
    expect(nearestTarget(69, targets('D7'))).toMatchObject({ midi: 66, tone: { degree: '3' } });
  });

  it('is never more than a tritone long, and null where there are no targets', () => {
    for (let midi = 40; midi < 90; midi++)
      expect(Math.abs(nearestTarget(midi, targets('E7', 'thirds'))!.midi - midi)).toBeLessThanOrEqual(6);
    expect(nearestTarget(60, [])).toBeNull();
  });
});
