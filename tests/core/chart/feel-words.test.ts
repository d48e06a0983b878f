import { describe, expect, it } from 'vitest';
import { feelOf } from '../../../src/core/chart/feel-words.ts';

describe('the feel that words of a chart mean (common practice)', () => {
  it.each([
    ['Slow Blues', 'slow-blues'],
    ['slow-blues', 'slow-blues'],
    ['in 12/8', 'slow-blues'],
    ['Texas Shuffle', 'shuffle'],
    ['Medium Bossa Nova', 'bossa'],
    ['samba', 'bossa'],
    ['Latin', 'bossa'],
    ['Funky', 'funk'],
    ['even 16ths', 'funk'],
    ['sixteenths', 'funk'],
    ['Ballad', 'ballad'],
    ['Rock', 'rock'],
    ['straight eighths', 'straight'],
    ['Even 8ths', 'straight'],
    ['pop', 'straight'],
    ['Medium Swing', 'swing'],
    ['swung', 'swing'],
    ['Up-tempo Jazz', 'swing'],
    ['walking bass', 'swing'],
    ['bebop', 'swing'],
  ])('"%s" is %s', (words, feel) => {
    expect(feelOf(words)).toBe(feel);
  });

  it.each(['', 'waltz', 'shuffled', 'balladesque', 'rocky', 'hip hop'])('"%s" names none', (words) => {
    expect(feelOf(words)).toBeNull();
  });
});
