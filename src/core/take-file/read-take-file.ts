/**
 * Reads a take from a file. All of it is checked before it is given out, the checksums of the sounds too, so that a file
 * that is cut or damaged changes nothing.
 */
import * as v from 'valibot';
import { bad, failure, good, type Outcome } from '../base/outcome.ts';
import type { ByteSource } from '../files/bytes/bytes.ts';
import { decodeText } from '../files/bytes/text.ts';
import { openZip, type ZipArchive } from '../files/zip/read-zip.ts';
import { readPart } from '../files/zip/unpack.ts';
import { timelineOf } from '../timeline-of-order.ts';
import { gradeOrder } from '../grade-order.ts';
import { readKeptNotes } from '../kept-notes.ts';
import { readKeptReport } from '../kept-report.ts';
import type { TakeDetails } from '../take/details-schema.ts';
import { PARTS, TAKE_FILE_LIMITS, takeJsonSchema, VERSION } from './schema.ts';
import { readSoundPart } from './sound-part.ts';
import type { TakeFile } from './take-file.ts';

type TakeJson = v.InferOutput<typeof takeJsonSchema>;

/** Reads and checks a take file; a part that it has besides the known ones is left alone. */
export async function readTakeFile(source: ByteSource): Promise<Outcome<TakeFile>> {
  const { name } = source;
  const archive = await openZip(source, TAKE_FILE_LIMITS.parts);
  if (!archive.ok) return archive;
  const json = await jsonPart(archive.value, PARTS.take, TAKE_FILE_LIMITS.takeJsonBytes);
  if (!json.ok) return json;
  if (json.value === undefined) return bad('takeFile.none', { name });
  const read = readTakeJson(json.value, name);
  if (!read.ok) return read;
  const { id, frames, messages = null } = read.value;
  const details = detailsOf(read.value.details);
  if (frames > TAKE_FILE_LIMITS.hours * 3600 * details.sampleRate)
    return bad('takeFile.tooLong', { name, hours: TAKE_FILE_LIMITS.hours });
  const timeline = timelineOf(gradeOrder(details));
  if (!timeline.ok) return bad('takeFile.chart', { name, cause: timeline.problem });
  const report = await reportPart(archive.value, details);
  if (!report.ok) return report;
  const line = await readSoundPart(archive.value, PARTS.line, details.sampleRate, frames);
  if (!line.ok) return line;
  const band = await readSoundPart(archive.value, PARTS.band, details.sampleRate, null);
  if (!band.ok) return band;
  const hasLine =
    line.value !== null || messages !== null || readKeptNotes({ report: report.value }) !== null;
  if (!hasLine) return bad('takeFile.noLine', { name });
  return good({
    id,
    details,
    frames,
    messages,
    report: report.value,
    line: line.value,
    band: line.value && band.value,
  });
}

/** Whether this may be a take file: a zip archive with a part `take.json`. Reads its directory only. */
export async function isTakeFile(source: ByteSource): Promise<boolean> {
  const archive = await openZip(source, TAKE_FILE_LIMITS.parts);
  return archive.ok && archive.value.entries.some(({ name }) => name === PARTS.take);
}

function readTakeJson(json: unknown, name: string): Outcome<TakeJson> {
  const version = typeof json === 'object' && json !== null && 'version' in json ? json.version : null;
  if (typeof version === 'number' && version > VERSION) return bad('takeFile.newer', { name, version });
  const read = v.safeParse(takeJsonSchema, json);
  if (read.success) return good(read.output);
  return bad('takeFile.field', { name, part: PARTS.take, field: v.getDotPath(read.issues[0]) ?? '' });
}

/** Typed taps, as the store keeps them. A band that is not there can't be taken out. */
function detailsOf({ path, ...details }: TakeJson['details']): TakeDetails {
  return path === undefined
    ? details
    : {
        ...details,
        path: { heldBackSamples: path.heldBackSamples, taps: Float32Array.from(path.taps) },
      };
}

/** null where there is none. What is not known of it is left out. */
async function reportPart(archive: ZipArchive, details: TakeDetails): Promise<Outcome<unknown>> {
  const json = await jsonPart(archive, PARTS.report, TAKE_FILE_LIMITS.reportBytes);
  if (!json.ok) return json;
  if (json.value === undefined) return good(null);
  const report = readKeptReport({ report: json.value, details });
  if (!report.ok) {
    const field = report.problem.code === 'report.unreadable' ? (report.problem.facts.field ?? '') : '';
    return bad('takeFile.field', { name: archive.source.name, part: PARTS.report, field });
  }
  const heard = readKeptNotes({ report: json.value });
  return good({ ...report.value, ...(heard && { heard }) });
}

/** The value of a part that is JSON; undefined where there is no such part. */
async function jsonPart(archive: ZipArchive, part: string, mostBytes: number): Promise<Outcome<unknown>> {
  const { name } = archive.source;
  const entry = archive.entries.find((one) => one.name === part);
  if (entry === undefined) return good(undefined);
  const bytes = await readPart(archive, entry, mostBytes);
  if (!bytes.ok) return failure(bytes.problem);
  const text = decodeText(bytes.value);
  if (text === null) return bad('takeFile.notJson', { name, part });
  try {
    return good(JSON.parse(text) as unknown);
  } catch {
    return bad('takeFile.notJson', { name, part });
  }
}
