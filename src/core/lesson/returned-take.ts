/** One graded take as a row of a teacher's table: small enough for hundreds, and made from the report alone. */
import { wilsonInterval } from '../base/statistics.ts';
import { countTake, type ChangeCount } from '../practice/take-counts.ts';
import type { AimResult, Report, Suspected } from '../take/schema.ts';

/** Who played it, for which sheet, which time. */
export interface TakeOrigin {
  /** The name that the student gave; of a recording, the name of its folder or file. */
  readonly student: string;
  /** Path or name of the file. */
  readonly file: string;
  /** Whether the take carries the mark of the sheet it is graded by, that of another one, or none (a plain recording). */
  readonly sheet: 'this one' | 'another' | 'none';
  /** Mark and title of the sheet that it is graded by. */
  readonly mark: string;
  readonly title: string;
  /** Counted by the student's own machine from 1; null where it is not known. */
  readonly tryNumber: number | null;
  /** ISO 8601; null where it is not known. */
  readonly startedAt: string | null;
  /** What the player has corrected by hand; a class is graded as it was heard. */
  readonly corrections: number;
}

/** What makes the figures of a take doubtful. */
export type TakeDoubt =
  'another sheet' | 'moved key' | 'moved time' | 'delay' | 'lost sound' | 'band' | 'few notes' | 'corrected';

export interface ReturnedTake extends TakeOrigin {
  readonly seconds: number;
  readonly notes: number;
  /** What was tried for, the leading aim first. */
  readonly aims: readonly AimResult[];
  /** Played landings on thirds, beside luck. */
  readonly thirds: Report['shares']['landings']['thirds'];
  readonly chordTones: Report['shares']['landings']['chordTones'];
  /** Changes of the form with landings on guide tones, in the order of their bars. */
  readonly changes: readonly ChangeCount[];
  readonly doubts: readonly TakeDoubt[];
  /** Where its notes fit the chart far better, for the doubt that it was moved; null where they don't. */
  readonly suspected: Suspected | null;
}

/** Fewer notes under chords than this are hardly an improvisation. Our own figure. */
const FEW_NOTES = 8;

/** The row of a take that was graded by a sheet's aims. */
export function returnedTake(report: Report, origin: TakeOrigin): ReturnedTake {
  const doubts: readonly (TakeDoubt | false)[] = [
    origin.sheet === 'another' && 'another sheet',
    report.suspected?.what === 'key' && 'moved key',
    report.suspected?.what === 'place' && 'moved time',
    report.suspectedDelay !== null && 'delay',
    (report.source.lost?.length ?? 0) > 0 && 'lost sound',
    Boolean(report.source.backing) && 'band',
    report.summary.notes < FEW_NOTES && 'few notes',
    origin.corrections > 0 && 'corrected',
  ];
  return {
    ...origin,
    seconds: report.source.durationSeconds,
    notes: report.summary.notes,
    aims: report.aims.filter(({ tried }) => tried),
    thirds: report.shares.landings.thirds,
    chordTones: report.shares.landings.chordTones,
    changes: [...countTake(report).changes].sort((a, b) => a.bar - b.bar),
    doubts: doubts.filter((doubt) => doubt !== false),
    suspected: report.suspected,
  };
}

/**
 * The change that most needs work: the one whose share of guide tones is surely lowest, by the upper end of its Wilson
 * interval, so that a single miss does not outweigh a habit. null where no change was played.
 */
export function weakestChange(changes: readonly ChangeCount[]): ChangeCount | null {
  const missed = changes.filter(({ hits, of }) => hits < of);
  const upperEnd = ({ hits, of }: ChangeCount) => wilsonInterval(hits, of)!.high;
  return missed.reduce<ChangeCount | null>(
    (weakest, change) => (weakest === null || upperEnd(change) < upperEnd(weakest) ? change : weakest),
    null,
  );
}
