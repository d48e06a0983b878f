import type { HeardNote } from './note.ts';
import type { Track } from './track.ts';

/** The span of a note whose pitch is to be measured. */
export interface Span {
  readonly onsetSeconds: number;
  readonly attack: 'struck' | 'legato';
  readonly from: number;
  readonly last: number;
  readonly peakDb: number;
}

/** Frames between `from` and `last` → the note's pitch, bend and vibrato. */
export function measure(track: Track, span: Span, offsetSeconds: number): HeardNote {
  const values: number[] = [];
  let clarity = 0;
  for (let f = span.from; f <= span.last; f++) {
    const midi = track.midi(f);
    if (Number.isNaN(midi)) continue;
    values.push(midi);
    clarity += track.clarity(f);
  }
  values.sort((a, b) => a - b);
  const midi = values[values.length >> 1] ?? NaN;
  return {
    onsetSeconds: span.onsetSeconds,
    offsetSeconds,
    midi,
    confidence: Math.max(0, Math.min(1, clarity / Math.max(1, values.length))),
    levelDb: span.peakDb,
    attack: span.attack,
    bendSemitones: 0,
    vibrato: null,
    second: null,
  };
}
