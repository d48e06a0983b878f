import type { HeardNote } from './note.ts';
import type { Track } from './track.ts';

/** The span of a note whose pitch is to be measured. */
export interface Span {
  readonly onsetSeconds: number;
  readonly attack: 'struck' | 'legato';
  readonly from: number;
  readonly last: number;
  readonly peakDb: number;
  /** First frame of the plateau where it came to rest. */
  readonly plateauFrom: number;
  readonly pitch: number;
  readonly bend: number;
}

/** Frames between `from` and `last` → the note's pitch, bend and vibrato. */
export function measure(track: Track, span: Span, offsetSeconds: number): HeardNote {
  const values: number[] = [];
  let clarity = 0;
  for (let f = span.plateauFrom; f <= span.last; f++) {
    const midi = track.midi(f);
    if (!(Math.abs(midi - span.pitch) < 1)) continue;
    values.push(midi);
    clarity += track.clarity(f);
  }
  values.sort((a, b) => a - b);
  const midi = values[values.length >> 1] ?? span.pitch;
  return {
    onsetSeconds: span.onsetSeconds,
    offsetSeconds,
    midi,
    confidence: Math.max(0, Math.min(1, clarity / Math.max(1, values.length))),
    levelDb: span.peakDb,
    attack: span.attack,
    bendSemitones: Math.abs(span.bend) < 0.2 ? 0 : span.bend,
    vibrato: null,
    second: null,
  };
}
