/** A student's take as a review: its sound from the file, its notes graded by the sheet; nothing of it is kept here. */
import type { FileLine } from '../analysis/messages.ts';
import type { ReturnedFile } from '../analysis/returned-file.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import { writeChart } from '../core/chart/write-chart.ts';
import { gradeForSheet } from '../core/grade-for-sheet.ts';
import { readSheetFile, timelineOfSheet } from '../core/lesson/sheet.ts';
import { writeKey } from '../core/music/keys.ts';
import type { GradedReturn } from '../core/take-file/grade-returned.ts';
import { takesInLibrary } from '../core/take-file/library-file.ts';
import { readTakeFile } from '../core/take-file/read-take-file.ts';
import type { SoundPart, TakeFile } from '../core/take-file/take-file.ts';
import { blobBytes } from './blob-bytes.ts';
import { NOTES_RATE, type TakeContent } from './finished-take.ts';
import type { OpenedTake } from './open-take.ts';
import type { AnalysisPort } from './ports.ts';
import type { TakeDetails } from './take.ts';

/** Opens a graded take for the review. */
export async function openReturned(
  returned: ReturnedFile,
  graded: GradedReturn,
  analysis: AnalysisPort,
): Promise<Outcome<OpenedTake>> {
  const sheet = readSheetFile(graded.sheet, graded.row.title);
  if (!sheet.ok) return sheet;
  const played =
    graded.takeId === null ? await recordingOf(returned, graded, analysis) : await takeOf(returned, graded);
  if (!played.ok) return played;
  const { heard, source, firstBeatSeconds, referenceHz, row } = graded;
  const { chart, file } = sheet.value;
  const timeline = timelineOfSheet(sheet.value, firstBeatSeconds);
  const details: TakeDetails = {
    ...played.value.details,
    title: file.title,
    chartText: writeChart(chart),
    key: writeKey(timeline.key),
    bpm: file.tempo,
    feel: file.feel,
    swing: timeline.swing,
    reference: referenceHz,
    firstBeatSeconds,
    lesson: {
      mark: row.mark,
      title: row.title,
      student: row.student,
      tryNumber: row.tryNumber ?? 1,
      sheet: { ...file },
    },
    ...(file.instrument !== undefined && { instrument: file.instrument }),
  };
  const report = gradeForSheet(heard, sheet.value, { source, firstBeatSeconds, referenceHz });
  const take = { id: null, details, content: played.value.content };
  return good({ take, report, heard, warnings: graded.warnings });
}

interface Played {
  readonly details: Pick<TakeDetails, 'startedAt' | 'source' | 'sampleRate'> & Partial<TakeDetails>;
  readonly content: TakeContent;
}

async function recordingOf(
  { path, file }: ReturnedFile,
  { heard, source }: GradedReturn,
  analysis: AnalysisPort,
): Promise<Outcome<Played>> {
  const read = await analysis.read(file, path);
  if (!read.ok) return read;
  const line: FileLine = read.value;
  const startedAt = new Date(file instanceof File ? file.lastModified : 0).toISOString();
  const kind = { startedAt, source: 'recording' as const };
  return good(
    line.kind === 'sound'
      ? {
          details: { ...kind, sampleRate: line.sampleRate },
          content: { kind: 'sound', audio: line, backing: null },
        }
      : { details: { ...kind, sampleRate: NOTES_RATE }, content: notesOf(heard, source.durationSeconds) },
  );
}

const notesOf = (notes: GradedReturn['heard'], durationSeconds: number): TakeContent => ({
  kind: 'notes',
  notes,
  durationSeconds,
  messages: null,
});

/** What the sheet asks for takes the place of what the take was set up with. */
async function takeOf({ path, file, member }: ReturnedFile, graded: GradedReturn): Promise<Outcome<Played>> {
  const whole = blobBytes(file, path);
  const library = member === null ? null : await takesInLibrary(whole);
  if (library?.ok === false) return library;
  const source = member === null ? good(whole) : await library!.value[member]!.open();
  if (!source.ok) return source;
  const read = await readTakeFile(source.value);
  if (!read.ok) return read;
  const { details, line, band } = read.value;
  const { startedAt, sampleRate, instrument, capo, levels, path: room, lost } = details;
  const kept = {
    ...{ startedAt, sampleRate, source: details.source },
    ...(instrument !== undefined && { instrument }),
    ...(capo !== undefined && { capo }),
    ...(levels !== undefined && { levels }),
    ...(room !== undefined && { path: room }),
    ...(lost !== undefined && { lost }),
  };
  if (line === null) return good({ details: kept, content: notesOf(graded.heard, durationOf(read.value)) });
  const samples = await samplesOf(line, read.value.frames);
  const backing = band && {
    kind: 'band' as const,
    samples: await samplesOf(band, read.value.frames),
    path: room ?? null,
  };
  return good({ details: kept, content: { kind: 'sound', audio: { samples, sampleRate }, backing } });
}

const durationOf = ({ frames, details }: TakeFile) => frames / details.sampleRate;

async function samplesOf(part: SoundPart, frames: number): Promise<Int16Array> {
  const whole = new Int16Array(frames);
  let at = 0;
  for await (const piece of part.samples()) {
    const fitting = piece.subarray(0, Math.max(0, frames - at));
    whole.set(fitting, at);
    at += fitting.length;
  }
  return whole;
}
