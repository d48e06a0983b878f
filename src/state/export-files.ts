/** Takes as files that leave the app: the line, the band, the report, and the words that grade the line elsewhere. */
import { toPcm16 } from '../core/files/pcm16.ts';
import { writeLineMidi } from '../core/files/write-line-midi.ts';
import { writeWav } from '../core/files/write-wav.ts';
import { AIM_LADDER } from '../core/grading/aims.ts';
import { instrumentOf } from '../core/music/instruments.ts';
import type { Report } from '../core/report/schema.ts';
import type { FinishedTake } from './finished-take.ts';
import type { TakeAudio } from './ports.ts';
import type { TakeDetails } from './take.ts';

export interface ExportFile {
  readonly blob: Blob;
  readonly fileName: string;
}

/** The line is its sound, or, played by MIDI, its notes; the band is what was taken out of the sound. */
export type ExportPart = 'line' | 'band' | 'report';

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

/** null where the take has no such part, or where the player has the file already. */
export function exportFile(
  take: FinishedTake & { readonly report: Report },
  part: ExportPart,
): ExportFile | null {
  if (part === 'report') return reportFile(take.details, take.report);
  return part === 'line' ? lineFile(take) : bandFile(take);
}

/** The sound as WAV, a cue point at the first downbeat; or what was played as a MIDI file. */
export function lineFile({ details, content }: FinishedTake): ExportFile | null {
  if (details.source === 'recording') return null;
  if (content.kind === 'sound') return soundFile(details, content.audio, details.firstBeatSeconds);
  if (content.messages === null) return null;
  return {
    blob: new Blob([writeLineMidi(content.messages, details.bpm)], { type: 'audio/midi' }),
    fileName: `${fileStem(details)}.mid`,
  };
}

/** The band as it played beside the sound, frame by frame: what the command line takes behind --backing. */
function bandFile({ details, content }: FinishedTake): ExportFile | null {
  if (content.kind !== 'sound' || content.backing?.kind !== 'band') return null;
  const audio = { samples: content.backing.samples, sampleRate: details.sampleRate };
  return { ...soundFile(details, audio, null), fileName: bandName(details) };
}

const bandName = (details: TakeDetails) => `${fileStem(details)} band.wav`;

function soundFile(details: TakeDetails, audio: TakeAudio, firstBeatSeconds: number | null): ExportFile {
  const cue =
    firstBeatSeconds === null || firstBeatSeconds < 0
      ? null
      : Math.round(firstBeatSeconds * audio.sampleRate);
  const samples = audio.samples instanceof Int16Array ? audio.samples : toPcm16(audio.samples);
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

/** The name under which the line leaves, or the one that the player's file has. */
const lineName = ({ details, content }: FinishedTake): string => {
  if (details.source === 'recording') return details.title;
  return `${fileStem(details)}.${content.kind === 'sound' ? 'wav' : 'mid'}`;
};

/** The band's name as it leaves, or that of the file it was opened from; null where nothing was taken out. */
function backingName({ details, content }: FinishedTake): string | null {
  const backing = content.kind === 'sound' ? content.backing : null;
  if (backing === null) return null;
  return backing.kind === 'band' ? bandName(details) : backing.name;
}

/**
 * The words that grade the exported line at the command line. They give this very report, but for one case: where the
 * band was taken out by a path that a sound check had measured, the command line, which has no sound check, finds the
 * path in the take, and a note here or there comes out otherwise.
 */
export function commandLine(take: FinishedTake): string {
  const { details } = take;
  const backing = backingName(take);
  const aim = AIM_LADDER.find(({ id }) => id === details.aim)?.id;
  return [
    `npx landfall grade ${quoted(lineName(take))}`,
    ...(backing === null ? [] : [`--backing ${quoted(backing)}`]),
    `--chart ${quoted(details.chartText)}`,
    `--tempo ${details.bpm}`,
    `--swing ${details.swing}`,
    `--first-beat ${details.firstBeatSeconds ?? 0}`,
    `--reference ${details.reference}`,
    ...instrumentWords(details),
    ...(aim === undefined ? [] : [`--aim ${aim}`]),
  ].join(' ');
}

/** As the grading takes it: a capo off the neck, or an instrument that is no longer there, is left out. */
function instrumentWords({ instrument: id, capo = 0 }: TakeDetails): readonly string[] {
  const instrument = id === undefined ? null : instrumentOf(id);
  if (instrument === null) return [];
  const onNeck = instrument.neck !== null && capo > 0 && capo < instrument.neck.frets;
  return [`--instrument ${instrument.id}`, ...(onNeck ? [`--capo ${capo}`] : [])];
}
