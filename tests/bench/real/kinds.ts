/** Names what went wrong: one name for each note that nobody played, one for each that was not heard. */
import type { MetricNote } from '../note-metrics.ts';

export const EXTRA_KINDS = [
  'double stroke',
  'swell',
  'click or fret',
  'octave',
  'noise alone',
  'damping',
  'glide',
  'ringing',
  'ornament',
  'other pitch',
] as const;
export type ExtraKind = (typeof EXTRA_KINDS)[number];

export const MISS_KINDS = [
  'late',
  'early',
  'octave',
  'wrong pitch',
  'second voice',
  'repeat',
  'legato',
  'nothing',
] as const;
export type MissKind = (typeof MISS_KINDS)[number];

/** Annotated ends are loose by about this. */
const EDGE_SECONDS = 0.05;
const DOUBLE_STROKE_SECONDS = 0.15;
/** A note still leaves something to hear this long after its end. */
const AFTER_SECONDS = 0.5;
const DAMPING_SECONDS = 0.08;
/** A note's own beginning is no damping of it. */
const BEGUN_SECONDS = 0.12;
const RING_SECONDS = 2;
const ORNAMENT_SECONDS = 0.08;
const GLIDE_SEMITONES = 2.2;
const SAME_SEMITONES = 0.6;
const OCTAVES_AND_TWELFTHS = [12, 19, 24, 28, 31, 36];
/** The right pitch this far from its onset is late or early, not missing. */
const FAR_ONSET_SECONDS = 0.15;

const apart = (a: MetricNote, b: MetricNote): number => Math.abs(a.midi - b.midi);
const isSame = (a: MetricNote, b: MetricNote): boolean => apart(a, b) <= SAME_SEMITONES;
const isOctave = (a: MetricNote, b: MetricNote): boolean =>
  OCTAVES_AND_TWELFTHS.some((interval) => Math.abs(apart(a, b) - interval) <= SAME_SEMITONES);

/**
 * Names a note that nobody played; the first rule that fits counts. `burst` tells whether a burst of noise lies at its
 * onset. The rules in words: README.md.
 */
export function kindOfExtra(
  heard: MetricNote,
  played: readonly MetricNote[],
  burst: (atSeconds: number) => boolean,
): ExtraKind {
  const at = heard.onsetSeconds;
  const sounding = played.filter(
    (note) => note.onsetSeconds - EDGE_SECONDS <= at && at <= note.offsetSeconds + EDGE_SECONDS,
  );
  const ended = played.filter(
    (note) => note.offsetSeconds + EDGE_SECONDS < at && at <= note.offsetSeconds + AFTER_SECONDS,
  );
  const same = sounding.find((note) => isSame(note, heard));
  if (same)
    return Math.abs(at - same.onsetSeconds) <= DOUBLE_STROKE_SECONDS
      ? 'double stroke'
      : burst(at)
        ? 'click or fret'
        : 'swell';
  if ([...sounding, ...ended].some((note) => isOctave(note, heard))) return 'octave';
  if (sounding.length === 0 && ended.length === 0) return 'noise alone';
  const stops = (note: MetricNote): boolean =>
    Math.abs(at - note.offsetSeconds) <= DAMPING_SECONDS && Math.abs(at - note.onsetSeconds) > BEGUN_SECONDS;
  if (sounding.some(stops)) return 'damping';
  if (sounding.some((note) => apart(note, heard) <= GLIDE_SEMITONES)) return 'glide';
  const since = (note: MetricNote): number => at - note.offsetSeconds;
  const ringsOn = played.some(
    (note) => since(note) > EDGE_SECONDS && since(note) <= RING_SECONDS && isSame(note, heard),
  );
  if (ringsOn) return 'ringing';
  if (sounding.length === 0) return 'damping';
  return heard.offsetSeconds - at < ORNAMENT_SECONDS ? 'ornament' : 'other pitch';
}

export interface Miss {
  readonly kind: MissKind;
  /** Index of the estimate that stands for it: late, early, an octave off or at another pitch. */
  readonly estimate: number | null;
}

/** Names a played note that was not heard. `free`: indices of estimates that nothing else explains. */
export function kindOfMiss(
  note: MetricNote,
  played: readonly MetricNote[],
  heard: readonly MetricNote[],
  free: readonly number[],
  onsetToleranceSeconds: number,
): Miss {
  const late = (index: number): number => (heard[index] as MetricNote).onsetSeconds - note.onsetSeconds;
  const farSeconds = Math.max(FAR_ONSET_SECONDS, 2 * onsetToleranceSeconds);
  const moved = free.find(
    (index) => apart(heard[index] as MetricNote, note) <= 0.5 && Math.abs(late(index)) <= farSeconds,
  );
  if (moved !== undefined) return { kind: late(moved) > 0 ? 'late' : 'early', estimate: moved };
  const inTime = free.find((index) => Math.abs(late(index)) <= onsetToleranceSeconds);
  if (inTime !== undefined)
    return { kind: isOctave(heard[inTime] as MetricNote, note) ? 'octave' : 'wrong pitch', estimate: inTime };
  const others = played.filter((other) => other !== note);
  const together = others.some(
    (other) =>
      other.onsetSeconds < note.offsetSeconds - 0.03 &&
      other.offsetSeconds > note.onsetSeconds + EDGE_SECONDS &&
      apart(other, note) > 1,
  );
  if (together) return { kind: 'second voice', estimate: null };
  const before = others.filter(
    (other) => other.onsetSeconds < note.onsetSeconds && other.offsetSeconds > note.onsetSeconds - 0.08,
  );
  if (before.some((other) => isSame(other, note))) return { kind: 'repeat', estimate: null };
  return { kind: before.length > 0 ? 'legato' : 'nothing', estimate: null };
}
