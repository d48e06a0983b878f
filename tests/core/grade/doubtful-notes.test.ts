import { describe, expect, it } from 'vitest';
import { countCorrections } from '../../../src/core/take/correction.ts';
import { grade } from '../../../src/core/grade.ts';
import { chart, line, SETTINGS } from './line.ts';

/** Thirds on both chords, and between them a note that the listener doubts, on the second downbeat's anticipation. */
const heard = line([
  [0, 1, 64],
  [4, 1, 57],
]);
const doubted = { ...line([[3.9, 0.5, 61]])[0]!, confidence: 0.3 };
const over = chart('| C7 | F7 |');

describe('a note that the listener doubts', () => {
  it('stays in the report and changes no share, landing or phrase', () => {
    const without = grade(heard, over, SETTINGS);
    const { doubtful, ...rest } = grade([...heard, doubted], over, SETTINGS);
    expect(doubtful).toHaveLength(1);
    expect(doubtful[0]).toMatchObject({ name: 'C#4', chord: 'F7', confidence: 0.3, takenOut: false });
    expect({ ...rest, doubtful: [] }).toEqual(without);
  });

  it('counts when the player says so, and is marked', () => {
    const { onsetSeconds, midi } = doubted;
    const corrections = countCorrections([{ onsetSeconds, midi, counts: true }]);
    const report = grade([...heard, doubted], over, { ...SETTINGS, corrections });
    expect(report.doubtful).toEqual([]);
    expect(report.notes.map(({ chosen }) => chosen)).toEqual([false, true, false]);
    expect(report.summary.notes).toBe(3);
  });

  it('may be a sure one that the player takes out', () => {
    const { onsetSeconds, midi } = heard[1]!;
    const corrections = countCorrections([{ onsetSeconds, midi, counts: false }]);
    const report = grade(heard, over, { ...SETTINGS, corrections });
    expect(report.doubtful).toMatchObject([{ name: 'A3', takenOut: true }]);
    // Changes are asked about until the last note that counts has ended.
    expect(report.landings).toHaveLength(1);
  });

  it("is not asked about in the band's turn", () => {
    const traded = { ...over, turnBars: 1 };
    const { doubtful } = grade(
      [...heard, { ...doubted, onsetSeconds: 2.5, offsetSeconds: 2.7 }],
      traded,
      SETTINGS,
    );
    expect(doubtful).toEqual([]);
  });
});
