import { describe, expect, it } from 'vitest';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { DIALS, dialPressOf, dialWords, turned, turnedSentence } from '../../../src/ui/playing/dials.ts';
import { pressOf } from '../../../src/ui/hands/footwork.ts';

const values = { band: -18, tempo: 96, swing: 0.67, 'count-in': 1 };
const dial = (id: string) => DIALS.find((one) => one.id === id)!;

describe('the dials', () => {
  it('take a letter each, and turn with plus and minus, shifted or not', () => {
    for (const { id, key } of DIALS) {
      expect(id.startsWith(key)).toBe(true);
      expect(dialPressOf(key)).toEqual({ kind: 'take', id });
      expect(dialPressOf(key.toUpperCase())).toEqual({ kind: 'take', id });
    }
    expect(dialPressOf('=')).toEqual({ kind: 'turn', way: 1 });
    expect(dialPressOf('-')).toEqual({ kind: 'turn', way: -1 });
    expect(dialPressOf('x')).toBeNull();
  });

  it('leave every key of a foot switch alone', () => {
    for (const key of ['b', 't', 's', 'c', '+', '-', '='])
      expect(pressOf(key, 'playing', 'space', null)).toBeNull();
    for (const key of [' ', 'Enter', 'PageDown', 'PageUp', 'ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'])
      expect(dialPressOf(key)).toBeNull();
  });

  it('turn by a step and stop at their ends', () => {
    expect(turned(dial('tempo'), 96, 1)).toBe(100);
    expect(turned(dial('swing'), 0.67, -1)).toBe(0.65);
    expect(turned(dial('swing'), 0.75, 1)).toBe(0.75);
    expect(turned(dial('count-in'), 1, -1)).toBe(1);
    // The band as a whole is never raised over its own balance.
    expect(turned(dial('band'), 0, 1)).toBe(0);
    expect(turned(dial('band'), -59, -1)).toBe(-60);
  });

  it('read as players say it', () => {
    expect(DIALS.map(({ id }) => dialWords(id, values[id], en))).toEqual(['−18 dB', '96', '67 %', '1 bar']);
    expect(dialWords('band', -60, en)).toBe('silent');
    expect(dialWords('swing', 0.5, en)).toBe('straight');
    expect(DIALS.map(({ id }) => dialWords(id, values[id], de))).toEqual(['−18 dB', '96', '67 %', '1 Takt']);
  });

  it('bring the care for the ears along with the level, and say from when the rest holds', () => {
    expect(turnedSentence('band', -12, false, en)).toMatch(/harms hearing/);
    expect(turnedSentence('tempo', 100, true, en)).toBe('Tempo 100: it counts in again.');
    expect(turnedSentence('swing', 0.6, false, en)).toBe('Swing 60 %: from the next take on.');
  });
});
