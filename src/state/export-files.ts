/** Takes as files that leave the app: the line, the band that was in it, the beats it was played to, the report. */
import { toPcm16 } from '../core/base/pcm16.ts';
import { writeBeatsCsv } from '../core/files/charts/write-beats-csv.ts';
import { writeNotesCsv } from '../core/files/notes/write-notes-csv.ts';
import { writeTakeMidi } from '../core/files/notes/write-take-midi.ts';
import { TAKE_FILE_ENDING } from '../core/take-file/schema.ts';
import { writeTakeFile } from '../core/take-file/write-take-file.ts';
import { writeWav } from '../core/files/sound/write-wav.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { NoteToWrite } from '../core/files/notes/bend-events.ts';
import { timelineOf } from '../core/timeline-of-order.ts';
import { gradeOrder } from '../core/grade-order.ts';
import { formSvg } from '../core/report/form-svg.ts';
import type { Report } from '../core/take/schema.ts';
import type { Words } from '../core/words/words.ts';
import type { FinishedTake } from './finished-take.ts';
import type { Review } from './phase.ts';
import type { TakeAudio } from './ports.ts';
import type { TakeDetails } from './take.ts';
import { durationOf, takeToWrite, type Graded } from './take-to-write.ts';

export interface ExportFile {
  readonly blob: Blob;
  readonly fileName: string;
}

/**
 * The take is all of it in one file, which comes back by opening it. The line is its sound, or, played by MIDI, its notes;
 * midi and notes are the line for other programs; the band is what was taken out of the sound; the beats are those of a
 * recording that was played to, which has no single tempo.
 */
export type ExportPart = 'take' | 'line' | 'midi' | 'notes' | 'band' | 'beats' | 'report';

/** The image of the form has words on it, in the language of the page. */
export type SavedPart = ExportPart | 'form';

/** A name that every system takes: "landfall 2026-03-01 10-15 Blues in A". */
export function fileStem(details: TakeDetails): string {
  const day = details.startedAt.slice(0, 16).replace('T', ' ').replaceAll(':', '-');
  const title = (details.name || details.title)
    .replace(/[^\p{L}\p{N} #-]+/gu, ' ')
    .replace(/ +/g, ' ')
    .trim()
    .slice(0, 60);
  return `landfall ${day} ${title}`.trim();
}

/** What each part of a take is called when it leaves. */
export function fileNames(details: TakeDetails) {
  const stem = fileStem(details);
  return {
    take: `${stem}${TAKE_FILE_ENDING}`,
    sound: `${stem}.wav`,
    table: `${stem} notes.csv`,
    notes: `${stem}.mid`,
    band: `${stem} band.wav`,
    beats: `${stem} beats.csv`,
    report: `${stem}.json`,
    form: `${stem} form.svg`,
  };
}

/** null where the take has no such part, or where the player has the file already. */
export function exportFile(review: Review, part: ExportPart): ExportFile | null {
  switch (part) {
    case 'report':
      return reportFile(review.details, review.report);
    case 'take':
      return wholeTakeFile(review);
    case 'line':
      return lineFile(review);
    case 'midi':
      return midiFile(review);
    case 'notes':
      return notesFile(review);
    case 'band':
      return bandFile(review);
    case 'beats':
      return beatsFile(review);
  }
}

/** All of the take in one file. */
export function wholeTakeFile(take: FinishedTake & Graded): ExportFile {
  const parts = writeTakeFile(takeToWrite(take));
  return {
    blob: new Blob([...parts], { type: 'application/zip' }),
    fileName: fileNames(take.details).take,
  };
}

/** The sound as WAV, a cue point at the first downbeat; or what was played as a MIDI file. */
export function lineFile(take: FinishedTake): ExportFile | null {
  const { details, content } = take;
  if (details.source === 'recording') return null;
  if (content.kind === 'sound') return soundFile(details, content.audio, details.firstBeatSeconds);
  const timeline = content.messages === null ? null : timelineOf(gradeOrder(details));
  return timeline?.ok ? midiOf(take, timeline.value, []) : null;
}

/** The notes that count, with their bends, over the chords. */
const midiFile = (review: Review): ExportFile =>
  midiOf(
    review,
    review.timeline,
    review.report.notes.map((note) => ({
      ...note,
      levelDb: review.heard?.find(({ onsetSeconds }) => onsetSeconds === note.onsetSeconds)?.levelDb ?? null,
    })),
  );

function midiOf(
  { details, content }: FinishedTake,
  timeline: Timeline,
  notes: readonly NoteToWrite[],
): ExportFile {
  const messages = content.kind === 'notes' ? content.messages : null;
  const line = { messages, notes, durationSeconds: durationOf(details, content), title: details.title };
  return {
    blob: new Blob([writeTakeMidi(line, timeline)], { type: 'audio/midi' }),
    fileName: fileNames(details).notes,
  };
}

const notesFile = ({ details, report }: Review): ExportFile => ({
  blob: new Blob([writeNotesCsv(report)], { type: 'text/csv' }),
  fileName: fileNames(details).table,
});

/** The band as it played beside the sound, frame by frame: what the command line takes behind --backing. */
function bandFile({ details, content, report }: Review): ExportFile | null {
  // A band that was not heard in the sound need not be taken out of it again.
  if (content.kind !== 'sound' || content.backing?.kind !== 'band' || !report.source.backing) return null;
  const audio = { samples: content.backing.samples, sampleRate: details.sampleRate };
  return { ...soundFile(details, audio, null), fileName: fileNames(details).band };
}

/** Every beat under the take with the chord that starts there: what the command line takes behind --beats. */
function beatsFile({ details, timeline, report }: Review): ExportFile | null {
  if (details.backing === undefined) return null;
  const beats = Math.ceil(timeline.beatMap.beatAt(report.source.durationSeconds));
  const table = writeBeatsCsv(timeline, 0, Math.max(timeline.beatsPerBar, beats));
  return { blob: new Blob([table], { type: 'text/csv' }), fileName: fileNames(details).beats };
}

function soundFile(details: TakeDetails, audio: TakeAudio, firstBeatSeconds: number | null): ExportFile {
  const cue =
    firstBeatSeconds === null || firstBeatSeconds < 0
      ? null
      : Math.round(firstBeatSeconds * audio.sampleRate);
  const samples = audio.samples instanceof Int16Array ? audio.samples : toPcm16(audio.samples);
  return {
    blob: new Blob([writeWav(samples, audio.sampleRate, cue)], { type: 'audio/wav' }),
    fileName: fileNames(details).sound,
  };
}

/** The form with its landings as an image. */
export function formFile({ details, report }: Review, words: Words): ExportFile {
  const image = formSvg(report, details.name || details.title, words);
  return { blob: new Blob([image], { type: 'image/svg+xml' }), fileName: fileNames(details).form };
}

/** The report as JSON, indented for readers. */
export function reportFile(details: TakeDetails, report: Report): ExportFile {
  return {
    blob: new Blob([JSON.stringify(report, null, 2)], { type: 'application/json' }),
    fileName: fileNames(details).report,
  };
}
