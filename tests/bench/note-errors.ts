/** Where a listener errs, for whoever mends it: every miss and every invention gets one name. */
import { defaultTolerances, matchNotes, type Match, type MetricNote } from './note-metrics.ts';

/** What became of a reference note that was not heard, or of an estimate that is no note. */
export type ErrorKind =
  /** Reference: an estimate starts in time, octaves (or a twelfth) away. */
  | 'octave'
  /** Reference: an estimate starts in time at another pitch. */
  | 'pitch'
  /** Reference: the right pitch, but it starts more than the tolerance early or late (up to 150 ms). */
  | 'onset'
  /** Reference: nothing that could be it. */
  | 'missed'
  /** Estimate: the pitch of a note that sounds already: one note split in two. */
  | 'split'
  /** Estimate: octaves or a twelfth away from a note that sounds or has just ended. */
  | 'ghost'
  /** Estimate: another pitch while something sounds, or in silence. */
  | 'invented';

export interface NoteError {
  readonly kind: ErrorKind;
  readonly reference: number | null;
  readonly estimate: number | null;
}

export interface Breakdown {
  readonly matches: readonly Match[];
  readonly errors: readonly NoteError[];
  readonly counts: Readonly<Record<ErrorKind, number>>;
  /** Estimate minus reference, in ms, for every match. */
  readonly onsetErrorsMs: readonly number[];
}

const farOnsetSeconds = 0.15;
/** A decaying string is heard this long after its note is called over. */
const decaySeconds = 0.3;

const octaveApart = (a: number, b: number): boolean => {
  const apart = Math.abs(a - b);
  return [12, 19, 24, 31, 36].some((interval) => Math.abs(apart - interval) <= 0.5);
};

/** Names every error. Each wrong estimate is used up by at most one reference. */
export function breakDown(reference: readonly MetricNote[], estimate: readonly MetricNote[]): Breakdown {
  const matches = matchNotes(reference, estimate);
  const heard = new Set(matches.map(([r]) => r));
  const used = new Set(matches.map(([, e]) => e));
  const errors: NoteError[] = [];
  const open = new Set([...reference.keys()].filter((r) => !heard.has(r)));

  const claim = (kind: ErrorKind, fits: (r: MetricNote, e: MetricNote) => boolean): void => {
    for (const r of open) {
      const note = reference[r] as MetricNote;
      const found = estimate.findIndex((e, index) => !used.has(index) && fits(note, e));
      if (found === -1) continue;
      used.add(found);
      open.delete(r);
      errors.push({ kind, reference: r, estimate: found });
    }
  };
  const inTime = (r: MetricNote, e: MetricNote): boolean =>
    Math.abs(r.onsetSeconds - e.onsetSeconds) <= defaultTolerances.onsetToleranceSeconds;
  const inTune = (r: MetricNote, e: MetricNote): boolean => Math.abs(r.midi - e.midi) <= 0.5;
  claim('octave', (r, e) => inTime(r, e) && octaveApart(r.midi, e.midi));
  claim('onset', (r, e) => inTune(r, e) && Math.abs(r.onsetSeconds - e.onsetSeconds) <= farOnsetSeconds);
  claim('pitch', inTime);
  for (const r of open) errors.push({ kind: 'missed', reference: r, estimate: null });

  estimate.forEach((e, index) => {
    if (used.has(index)) return;
    const sounding = reference.filter(
      (r) =>
        e.onsetSeconds >= r.onsetSeconds - defaultTolerances.onsetToleranceSeconds &&
        e.onsetSeconds <= r.offsetSeconds + decaySeconds,
    );
    const kind = sounding.some((r) => inTune(r, e))
      ? 'split'
      : sounding.some((r) => octaveApart(r.midi, e.midi))
        ? 'ghost'
        : 'invented';
    errors.push({ kind, reference: null, estimate: index });
  });
  const counts = { octave: 0, pitch: 0, onset: 0, missed: 0, split: 0, ghost: 0, invented: 0 };
  for (const error of errors) counts[error.kind]++;
  const onsetErrorsMs = matches.map(
    ([r, e]) => 1000 * ((estimate[e] as MetricNote).onsetSeconds - (reference[r] as MetricNote).onsetSeconds),
  );
  return { matches, errors, counts, onsetErrorsMs };
}
