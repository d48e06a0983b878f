import { expect, it } from 'vitest';
import { en } from '../../../src/core/words/en.ts';
import { usualPractice } from '../../../src/state/practice-settings.ts';
import { practiceWords, sameBarsEachTime } from '../../../src/ui/ready/practice-summary.ts';

const { practice } = usualPractice;

it('says what is practised, and nothing of the rest', () => {
  expect(practiceWords(practice, 12, en)).toEqual([]);
  expect(
    practiceWords(
      {
        ...practice,
        loop: { fromBar: 5, toBar: 99 },
        rise: { byBpm: 4, everyChoruses: 1 },
        tradeBars: 4,
        chordsRest: true,
      },
      12,
      en,
    ),
  ).toEqual(['bars 5 to 12', '4 bpm faster every chorus', 'turns of 4 bars', 'chords every second chorus']);
  // Over a drone there are no chords that could rest.
  expect(practiceWords({ ...practice, drone: 'root', chordsRest: true }, 12, en)).toEqual(['over a drone']);
});

it('knows when turns fall on the same bars: fours over eight, not over twelve', () => {
  expect(sameBarsEachTime(4, 8)).toBe(true);
  expect(sameBarsEachTime(4, 12)).toBe(false);
  expect(sameBarsEachTime(4, 32)).toBe(true);
  expect(sameBarsEachTime(null, 8)).toBe(false);
});
