/** Open strings as they are played in a sound check: which string, how far off, and the pitch they agree on. */
import type { HeardNote } from '../core/take/note.ts';
import { estimateReference } from '../core/grade/assign/estimate-reference.ts';
import { nameNote } from '../core/music/name-note.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';

export interface StringTuning {
  /** "E2". */
  readonly name: string;
  /** Against the reference; null until it was played. */
  readonly cents: number | null;
}

export interface TuningReading {
  readonly strings: readonly StringTuning[];
  /** A4 that the strings agree on, Hz; null until there are enough notes to say. */
  readonly referenceHz: number | null;
}

/** A note further than this from every open string is a stopped one. */
const MOST_SEMITONES = 0.7;
/**
 * Shorter notes are slips of the finger. A note that still sounds is handed out 0.09 to 0.11 s after its beginning, and its
 * end is then the moment heard so far: a longer minimum would leave out every note.
 */
const LEAST_SECONDS = 0.06;
/** What such a note counts as: how long it will ring is not known yet. */
const RINGING_SECONDS = 0.2;

/** @param openStrings MIDI numbers, the lowest first @param notes heard so far, in any order; the last of a string counts */
export function readTuning(openStrings: readonly number[], notes: readonly HeardNote[]): TuningReading {
  const open = notes.filter(
    ({ onsetSeconds, offsetSeconds }) => offsetSeconds - onsetSeconds >= LEAST_SECONDS,
  );
  const estimate = estimateReference(
    open.map((note) => ({
      ...note,
      offsetSeconds: Math.max(note.offsetSeconds, note.onsetSeconds + RINGING_SECONDS),
    })),
  );
  const known = estimate.evidence === 'enough';
  const shift = 12 * Math.log2((known ? estimate.referenceHz : STANDARD_A4_HZ) / STANDARD_A4_HZ);
  const strings = openStrings.map((midi) => {
    const last = open.findLast((note) => {
      const off = note.midi - shift - midi;
      return Math.abs(off) <= MOST_SEMITONES;
    });
    const { name, octave } = nameNote(midi, STANDARD_A4_HZ);
    return { name: `${name}${octave}`, cents: last ? 100 * (last.midi - shift - midi) : null };
  });
  return { strings, referenceHz: known ? estimate.referenceHz : null };
}
