/** A sound of a take file: WAV, one channel of 16 bits, at the rate and of the length that the take says. */
import { bad, failure, good, type Outcome } from '../base/outcome.ts';
import { fourCharacters, viewOf, type ByteSource } from '../files/bytes/bytes.ts';
import { isWav, readWavHeader } from '../files/sound/wav-header.ts';
import type { ZipArchive, ZipEntry } from '../files/zip/read-zip.ts';
import { PartFault, piecesOf } from '../files/zip/unpack.ts';
import type { SoundPart } from './take-file.ts';
import { TAKE_FILE_LIMITS } from './schema.ts';

/** Far more than the chunks before the samples take. */
const HEAD_BYTES = 4096;
/** Chunks behind the samples: cue points, and what other programs add. */
const MOST_OTHER_BYTES = 1 << 20;

/**
 * Finds a sound and reads it once, so that its checksum is known to be right.
 * @param frames how many it must have; null where it only may not have more than two hours
 * @returns null where there is no such part
 */
export async function readSoundPart(
  archive: ZipArchive,
  part: string,
  sampleRate: number,
  frames: number | null,
): Promise<Outcome<SoundPart | null>> {
  const { name } = archive.source;
  const entry = archive.entries.find((one) => one.name === part);
  if (entry === undefined) return good(null);
  const wrong = bad('takeFile.sound', { name, part, sampleRate });
  const most = frames ?? TAKE_FILE_LIMITS.hours * 3600 * sampleRate;
  if (entry.size > 2 * most + MOST_OTHER_BYTES) return wrong;
  try {
    const header = await headerOf(archive, entry);
    if (header === null) return wrong;
    const isOurs = header.format === 'signed16' && header.channels === 1 && header.sampleRate === sampleRate;
    if (!isOurs || (frames !== null && header.frames !== frames)) return wrong;
    const place = { from: header.dataOffset, bytes: 2 * header.frames };
    let read = 0;
    for await (const samples of samplesOf(archive, entry, place)) read += samples.length;
    if (read !== header.frames) return wrong;
    return good({ samples: () => samplesOf(archive, entry, place) });
  } catch (error) {
    if (error instanceof PartFault) return failure(error.problem);
    throw error;
  }
}

async function headerOf(archive: ZipArchive, entry: ZipEntry) {
  let head = new Uint8Array(0);
  for await (const piece of piecesOf(archive, entry)) {
    const before = head;
    head = new Uint8Array(Math.min(HEAD_BYTES, before.length + piece.length));
    head.set(before);
    head.set(piece.subarray(0, head.length - before.length), before.length);
    if (head.length === HEAD_BYTES) break;
  }
  if (!isWav(head) || fourCharacters(head, 0) !== 'RIFF') return null;
  const source: ByteSource = {
    name: archive.source.name,
    size: entry.size,
    read: (offset, length) => head.subarray(offset, offset + length),
  };
  const header = await readWavHeader(source);
  return header.ok ? header.value : null;
}

/** The samples between two places of a part; the whole part is read, for its checksum. */
async function* samplesOf(
  archive: ZipArchive,
  entry: ZipEntry,
  { from, bytes }: { readonly from: number; readonly bytes: number },
): AsyncGenerator<Int16Array> {
  let at = 0;
  let odd: number | null = null;
  for await (const piece of piecesOf(archive, entry)) {
    const inside = piece.subarray(Math.max(0, from - at), Math.max(0, from + bytes - at));
    at += piece.length;
    if (inside.length === 0) continue;
    const whole: Uint8Array = odd === null ? inside : withFirst(odd, inside);
    odd = whole.length % 2 === 1 ? whole[whole.length - 1]! : null;
    const samples = new Int16Array(whole.length >> 1);
    const view = viewOf(whole);
    for (let i = 0; i < samples.length; i++) samples[i] = view.getInt16(2 * i, true);
    yield samples;
  }
}

function withFirst(byte: number, rest: Uint8Array): Uint8Array {
  const whole = new Uint8Array(rest.length + 1);
  whole[0] = byte;
  whole.set(rest, 1);
  return whole;
}
