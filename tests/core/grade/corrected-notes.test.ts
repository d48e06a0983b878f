/** A report of notes that were corrected by hand. */
import { describe, expect, it } from 'vitest';
import type { Correction } from '../../../src/core/take/correction.ts';
import { grade } from '../../../src/core/grade.ts';
import { readReport } from '../../../src/core/take/schema.ts';
import { chart, line, SETTINGS } from './line.ts';

/** The root of C7 and the third of F7. */
const heard = line([
  [0, 1, 60],
  [4, 1, 57],
]);
const [c, a] = [heard[0]!, heard[1]!];
const over = chart('| C7 | F7 |');
const graded = (...corrections: readonly Correction[]) => grade(heard, over, { ...SETTINGS, corrections });

describe('a report of corrected notes', () => {
  it('is the one of the notes as they are now, and says what they were', () => {
    const report = graded({ kind: 'pitch', of: a, midi: 53 });
    const written = grade(
      line([
        [0, 1, 60],
        [4, 1, 53],
      ]),
      over,
      SETTINGS,
    );
    expect(report.landings).toEqual(written.landings);
    expect(report.shares).toEqual(written.shares);
    const { onsetSeconds, offsetSeconds, midi } = a;
    expect(report.notes[1]?.corrected).toEqual({
      changes: ['pitch'],
      was: [{ onsetSeconds, offsetSeconds, midi }],
    });
    expect(report.notes[0]).not.toHaveProperty('corrected');
    expect(report.corrections).toEqual({ notes: 1, added: 0, deleted: [], leftOut: [] });
    expect(readReport(JSON.parse(JSON.stringify(report)))).toEqual({ ok: true, value: report });
  });

  it('counts deleted and added notes, and names what no longer fits', () => {
    const report = graded(
      { kind: 'delete', of: c },
      { kind: 'add', onsetSeconds: c.onsetSeconds, offsetSeconds: c.offsetSeconds, midi: 64 },
      { kind: 'delete', of: c },
    );
    expect(report.corrections).toMatchObject({
      notes: 2,
      added: 1,
      deleted: [{ midi: 60 }],
      leftOut: [{ kind: 'delete', why: 'no note', midi: 60 }],
    });
    expect(report.notes.map(({ degree }) => degree)).toEqual(['3', '3']);
  });

  it('without corrections, or with those that take each other back, is as it was', () => {
    const plain = grade(heard, over, SETTINGS);
    expect(plain).not.toHaveProperty('corrections');
    expect(graded()).toEqual(plain);
    const back = graded(
      { kind: 'pitch', of: a, midi: 53 },
      { kind: 'pitch', of: { ...a, midi: 53 }, midi: a.midi },
    );
    expect(back).toEqual(plain);
  });

  it('counts a doubtful note that was corrected, and not one that was taken out', () => {
    const doubted = heard.map((note) => ({ ...note, confidence: 0.3 }));
    const corrections: readonly Correction[] = [
      { kind: 'pitch', of: c, midi: 64 },
      { kind: 'pitch', of: a, midi: 53 },
      { kind: 'count', of: { ...a, midi: 53 }, counts: false },
    ];
    const report = grade(doubted, over, { ...SETTINGS, corrections });
    expect(report.notes).toMatchObject([{ name: 'E4', corrected: { changes: ['pitch'] } }]);
    expect(report.doubtful).toMatchObject([
      { name: 'F3', takenOut: true, corrected: { changes: ['pitch'] } },
    ]);
  });
});
