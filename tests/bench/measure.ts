/** Runs a listener over recordings and adds up what it got right. */
import type { Rendered } from '../../fixtures/lines/render.ts';
import { breakDown, type Breakdown, type ErrorKind } from './note-errors.ts';
import { matchNotes, percentile, scoreOf, type MetricNote, type Score } from './note-metrics.ts';

/** Anything that hears notes in samples. */
export type Listen = (
  samples: Float32Array,
  sampleRate: number,
) => readonly MetricNote[] | Promise<readonly MetricNote[]>;

/** Sums over the recordings of one row of a table. */
export interface Tally {
  readonly recordings: number;
  readonly references: number;
  readonly estimates: number;
  readonly matched: number;
  readonly onsetsMatched: number;
  /** Matched onsets whose pitch is octaves off. */
  readonly octaveErrors: number;
  readonly counts: Readonly<Record<ErrorKind, number>>;
  readonly onsetErrorsMs: readonly number[];
  /** Cents off, of matched notes. */
  readonly centsErrors: readonly number[];
  readonly audioSeconds: number;
  readonly workSeconds: number;
}

export const emptyTally: Tally = {
  recordings: 0,
  references: 0,
  estimates: 0,
  matched: 0,
  onsetsMatched: 0,
  octaveErrors: 0,
  counts: { octave: 0, pitch: 0, onset: 0, missed: 0, split: 0, ghost: 0, invented: 0 },
  onsetErrorsMs: [],
  centsErrors: [],
  audioSeconds: 0,
  workSeconds: 0,
};

/** Adds two tallies. */
export function addTallies(a: Tally, b: Tally): Tally {
  const counts = { ...a.counts };
  for (const kind of Object.keys(counts) as ErrorKind[]) counts[kind] += b.counts[kind];
  return {
    recordings: a.recordings + b.recordings,
    references: a.references + b.references,
    estimates: a.estimates + b.estimates,
    matched: a.matched + b.matched,
    onsetsMatched: a.onsetsMatched + b.onsetsMatched,
    octaveErrors: a.octaveErrors + b.octaveErrors,
    counts,
    onsetErrorsMs: [...a.onsetErrorsMs, ...b.onsetErrorsMs],
    centsErrors: [...a.centsErrors, ...b.centsErrors],
    audioSeconds: a.audioSeconds + b.audioSeconds,
    workSeconds: a.workSeconds + b.workSeconds,
  };
}

/** F1 over all notes of a tally (micro average). */
export const scoreOfTally = (tally: Tally): Score =>
  scoreOf(tally.matched, tally.references, tally.estimates);

export const medianOf = (values: readonly number[]): number => percentile(values, 0.5);

/** One recording, one listener. */
export async function measure(
  recorded: Rendered,
  listen: Listen,
): Promise<{ tally: Tally; heard: readonly MetricNote[]; breakdown: Breakdown }> {
  const started = performance.now();
  const heard = await listen(recorded.samples, recorded.sampleRate);
  const workSeconds = (performance.now() - started) / 1000;
  const breakdown = breakDown(recorded.truth, heard);
  const { counts } = breakdown;
  const onsets = matchNotes(recorded.truth, heard, {
    onsetToleranceSeconds: 0.05,
    pitchToleranceCents: Infinity,
  });
  const tally: Tally = {
    recordings: 1,
    references: recorded.truth.length,
    estimates: heard.length,
    matched: breakdown.matches.length,
    onsetsMatched: onsets.length,
    octaveErrors: counts.octave,
    counts,
    onsetErrorsMs: breakdown.onsetErrorsMs,
    centsErrors: breakdown.matches.map(
      ([r, e]) => 100 * ((heard[e] as MetricNote).midi - (recorded.truth[r] as MetricNote).midi),
    ),
    audioSeconds: recorded.samples.length / recorded.sampleRate,
    workSeconds,
  };
  return { tally, heard, breakdown };
}
