/** Samples → report: listen block by block, lay the notes on the chart, grade. */
import { fromPcm16 } from '../core/files/pcm16.ts';
import { grade } from '../core/grade.ts';
import type { BackingFacts } from '../core/grading/settings.ts';
import { Listener } from '../core/listen.ts';
import type { HeardNote } from '../core/notes/note.ts';
import { good, type Outcome } from '../core/outcome.ts';
import type { Report } from '../core/report/schema.ts';
import { choiceOf, timelineOf, type GradeOrder } from './order.ts';

/** So much is heard between two words of progress: 10 ms of work or less. */
const BLOCK_SECONDS = 1;

/** @param progress called after each block with the share done, 0 to 1 */
export function gradeSamples(
  samples: Int16Array | Float32Array,
  sampleRate: number,
  order: GradeOrder,
  progress: (share: number) => void,
): Outcome<Report> {
  // What can't be graded is said before anybody waits for the listening.
  const timeline = timelineOf(order);
  if (!timeline.ok) return timeline;
  const listener = new Listener({ sampleRate });
  const block = Math.round(BLOCK_SECONDS * sampleRate);
  for (let from = 0; from < samples.length; from += block) {
    const piece = samples.subarray(from, from + block);
    listener.push(piece instanceof Int16Array ? fromPcm16(piece) : piece);
    progress(Math.min(1, (from + block) / samples.length));
  }
  return gradeHeard(listener.finish(), samples.length, sampleRate, order);
}

/** Grades what a listener heard in so many samples. */
export function gradeHeard(
  notes: readonly HeardNote[],
  samples: number,
  sampleRate: number,
  order: GradeOrder,
  taken: { readonly backing?: BackingFacts } = {},
): Outcome<Report> {
  const timeline = timelineOf(order);
  if (!timeline.ok) return timeline;
  return good(
    grade(notes, timeline.value, {
      source: { kind: order.source, durationSeconds: samples / sampleRate, sampleRate, ...taken },
      referenceHz: order.reference,
      ...choiceOf(order),
    }),
  );
}
