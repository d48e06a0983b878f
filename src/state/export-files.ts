/** Takes as files that leave the app: the sound, the report, and the words that grade the sound elsewhere. */
import { writeWav } from '../core/files/write-wav.ts';
import type { Report } from '../core/report/schema.ts';
import type { TakeAudio } from './ports.ts';
import type { TakeDetails } from './take.ts';

export interface ExportFile {
  readonly blob: Blob;
  readonly fileName: string;
}

/** A name that every system takes: "landfall 2026-03-01 10-15 Blues in A". */
export function fileStem(details: TakeDetails): string {
  const day = details.startedAt.slice(0, 16).replace('T', ' ').replaceAll(':', '-');
  const title = details.title
    .replace(/[^\p{L}\p{N} #-]+/gu, ' ')
    .replace(/ +/g, ' ')
    .trim()
    .slice(0, 60);
  return `landfall ${day} ${title}`.trim();
}

/** The sound as WAV; a cue point marks the first downbeat. */
export function soundFile(details: TakeDetails, audio: TakeAudio): ExportFile {
  const first = details.firstBeatSeconds;
  const cue = first === null || first < 0 ? null : Math.round(first * audio.sampleRate);
  const samples = audio.samples instanceof Int16Array ? audio.samples : null;
  if (samples === null)
    throw new TypeError('a take of our own is 16-bit; an opened recording is a file already');
  return {
    blob: new Blob([writeWav(samples, audio.sampleRate, cue)], { type: 'audio/wav' }),
    fileName: `${fileStem(details)}.wav`,
  };
}

/** The report as JSON, indented for readers. */
export function reportFile(details: TakeDetails, report: Report): ExportFile {
  return {
    blob: new Blob([JSON.stringify(report, null, 2)], { type: 'application/json' }),
    fileName: `${fileStem(details)}.json`,
  };
}

const quoted = (text: string) => `'${text.replaceAll("'", `'\\''`)}'`;

/** The words that grade the exported sound at the command line and give this very report. */
export function commandLine(details: TakeDetails, fileName = `${fileStem(details)}.wav`): string {
  return [
    `npx landfall grade ${quoted(fileName)}`,
    `--chart ${quoted(details.chartText)}`,
    `--tempo ${details.bpm}`,
    `--swing ${details.swing}`,
    `--first-beat ${details.firstBeatSeconds ?? 0}`,
    `--reference ${details.reference}`,
  ].join(' ');
}
