/** A take from a file graded anew, as the app grades it: its sound is listened to again, the band taken out first. */
import { bad, type Outcome } from '../base/outcome.ts';
import { fromPcm16 } from '../base/pcm16.ts';
import { gradeOrder, type GradeOrder } from '../grade-order.ts';
import {
  gradeHeard,
  gradeNotes,
  gradeSound,
  withHeard,
  type GradedSound,
  type GradingEvents,
} from '../grade-samples.ts';
import { Listener } from '../listen.ts';
import { readKeptNotes } from '../kept-notes.ts';
import { readReport } from '../take/schema.ts';
import { notesPlayed } from '../midi/played-notes.ts';
import type { SoundPart, TakeFile } from './take-file.ts';

/**
 * The take is graded from its sound. Only where the sound was never kept, or has been removed, the notes are taken from the
 * report that was kept with it.
 * @param name of the file, for the sentences
 */
export async function gradeTakeFile(
  file: TakeFile,
  name: string,
  events: GradingEvents,
): Promise<Outcome<GradedSound>> {
  const { details, messages, line, band, report } = file;
  const order = gradeOrder(details);
  const durationSeconds = file.frames / details.sampleRate;
  const source = { kind: 'notes', durationSeconds, sampleRate: null } as const;
  if (messages !== null) {
    const notes = notesPlayed(messages, durationSeconds);
    return withHeard(notes, gradeNotes(notes, source, order));
  }
  if (line === null) {
    const notes = readKeptNotes({ report });
    const kept = readReport(report);
    return notes === null
      ? bad('takeFile.noLine', { name })
      : withHeard(notes, gradeNotes(notes, kept.ok ? kept.value.source : source, order));
  }
  if (band === null) return gradeLine(line, file, order, events);
  const played = await wholeOf(band);
  const sound = {
    name,
    samples: await wholeOf(line),
    sampleRate: details.sampleRate,
    backing: { kind: 'band' as const, samples: played, path: details.path ?? null },
  };
  return gradeSound(sound, order, events);
}

/** A line by itself is listened to piece by piece: two hours of it never lie in memory. */
async function gradeLine(
  line: SoundPart,
  { details: { sampleRate }, frames }: TakeFile,
  order: GradeOrder,
  { progress }: GradingEvents,
): Promise<Outcome<GradedSound>> {
  const listener = new Listener({ sampleRate });
  let done = 0;
  for await (const piece of line.samples()) {
    listener.push(fromPcm16(piece));
    done += piece.length;
    progress(Math.min(1, done / Math.max(1, frames)));
  }
  const notes = listener.finish();
  return withHeard(notes, gradeHeard(notes, { samples: { length: done }, sampleRate }, order));
}

async function wholeOf(part: SoundPart): Promise<Int16Array> {
  const pieces: Int16Array[] = [];
  for await (const piece of part.samples()) pieces.push(piece);
  const whole = new Int16Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
