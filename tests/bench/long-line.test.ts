/** What the long takes measure, on notes that are late by known times. */
import { describe, expect, it } from 'vitest';
import { driftMs, gridOf, heardLate, LINE } from './long-line.ts';

/** The line from `beginSeconds` on, each onset late by what `lateMs` says of its second. */
const heard = (seconds: number, beginSeconds: number, lateMs: (second: number) => number) => ({
  notes: Array.from({ length: 2 * seconds }, (_, i) => ({
    onsetSeconds: beginSeconds + i / 2 + lateMs(i / 2) / 1000,
    midi: LINE[i % LINE.length]!,
  })),
});

const HOUR = 3600;
const measured = (report: ReturnType<typeof heard>) => {
  const begin = gridOf(report);
  const first = heardLate(report, 0, 120, begin);
  const last = heardLate(report, HOUR - 120, HOUR, begin);
  return { first, last, drift: driftMs(first, last) };
};

describe('the drift of a long line', () => {
  it.each([0.13, 0.497, 2.251, 5.9])(
    'is nothing where every onset is as late as the first (%s s)',
    (begin) => {
      const { first, last, drift } = measured(heard(HOUR + 10, begin, () => 4));
      expect(drift).toBeCloseTo(0, 6);
      expect([first.share, last.share]).toEqual([1, 1]);
    },
  );

  it.each([500, -500, 1500, 3, -7.5, 503, 250, -240, 110])('of %s ms is seen, a whole note too', (ms) => {
    const slipped = heard(HOUR + 10, 0.13, (second) => (second > 1800 ? ms : 0));
    expect(measured(slipped).drift).toBeCloseTo(ms, 6);
    expect(measured(heard(HOUR + 10, 0.13, (second) => (ms * second) / HOUR)).drift).toBeCloseTo(
      ms * (1 - 120 / HOUR),
      -1,
    );
  });

  it('is measured over notes of which some were missed and some are others', () => {
    const { notes } = heard(HOUR + 10, 0.13, (second) => (second > 1800 ? 500 : 0));
    const odd = notes.flatMap((note, i) =>
      i % 7 === 3 ? [] : [i % 5 === 2 ? { ...note, midi: note.midi + 12 } : note],
    );
    expect(measured({ notes: odd }).drift).toBeCloseTo(500, 6);
  });
});
