/** Writes a take as one file. */
import { strToU8 } from 'fflate';
import { writeWav } from '../files/sound/write-wav.ts';
import { ZipWriter, type Bytes } from '../files/zip/write-zip.ts';
import { PARTS, VERSION } from './schema.ts';
import type { TakeToWrite } from './take-file.ts';

/** The pieces of the file in order: to be put one behind the other. */
export function writeTakeFile(take: TakeToWrite): readonly Bytes[] {
  const { details, samples, band, report } = take;
  const zip = new ZipWriter(details.startedAt);
  const text = (name: string, value: unknown) =>
    zip.entry({ name, parts: [strToU8(JSON.stringify(value, null, 1)) as Bytes], pack: true });
  const sound = (name: string, sound: Int16Array, cueFrame: number | null) =>
    zip.entry({ name, parts: [writeWav(sound, details.sampleRate, cueFrame)], pack: false });
  const { firstBeatSeconds } = details;
  const firstBeat =
    firstBeatSeconds === null || firstBeatSeconds < 0
      ? null
      : Math.round(firstBeatSeconds * details.sampleRate);
  return [
    ...text(PARTS.take, takeJson(take)),
    ...(report === null ? [] : text(PARTS.report, report)),
    ...(samples.length === 0 ? [] : sound(PARTS.line, samples, firstBeat)),
    ...(band === null ? [] : sound(PARTS.band, band, null)),
    ...zip.finish(),
  ];
}

function takeJson({ id, details, frames, messages }: TakeToWrite): object {
  const { path, ...rest } = details;
  return {
    format: 'landfall-take',
    version: VERSION,
    id,
    frames,
    details: {
      ...rest,
      ...(path && { path: { heldBackSamples: path.heldBackSamples, taps: [...path.taps] } }),
    },
    ...(messages && { messages }),
  };
}
