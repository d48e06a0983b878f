/** The content of one entry of a zip archive: in pieces, or whole where it is small. */
import { Inflate, strFromU8 } from 'fflate';
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import type { Problem } from '../../words/problem.ts';
import { viewOf } from '../bytes/bytes.ts';
import { crc32 } from './crc32.ts';
import type { ZipArchive, ZipEntry } from './read-zip.ts';
import { FLAG_UTF8, LOCAL_BYTES, LOCAL_MARK, STORED } from './zip-format.ts';

/** Deflate packs 1,032 bytes into one at the most, so that one piece becomes 17 MB at the most. */
const PACKED_PIECE_BYTES = 1 << 14;
const STORED_PIECE_BYTES = 1 << 20;

/** A part that can't be unpacked; carries its problem out of a loop over its pieces. */
export class PartFault extends Error {
  readonly problem: Problem;
  constructor(told: Problem) {
    super(told.code);
    this.problem = told;
  }
}

/**
 * The content piece by piece. Rejects with a `PartFault` where it is damaged: a wrong checksum is found behind the last
 * piece only.
 */
export async function* piecesOf(archive: ZipArchive, entry: ZipEntry): AsyncGenerator<Uint8Array> {
  const { source } = archive;
  const damaged = () =>
    new PartFault(bad('archive.damaged', { name: source.name, part: entry.name }).problem);
  const start = await contentStart(archive, entry);
  if (start === null) throw damaged();
  let crc = 0;
  let size = 0;
  for await (const piece of unpacked(archive, entry, start, damaged)) {
    size += piece.length;
    if (size > entry.size) throw damaged();
    crc = crc32(piece, crc);
    yield piece;
  }
  if (size !== entry.size || crc !== entry.crc) throw damaged();
}

async function* unpacked(
  { source }: ZipArchive,
  { method, packedSize }: ZipEntry,
  start: number,
  damaged: () => PartFault,
): AsyncGenerator<Uint8Array> {
  const step = method === STORED ? STORED_PIECE_BYTES : PACKED_PIECE_BYTES;
  let out: Uint8Array[] = [];
  const inflate = method === STORED ? null : new Inflate((piece) => out.push(piece));
  for (let at = 0; at < packedSize; at += step) {
    const length = Math.min(step, packedSize - at);
    const bytes = await source.read(start + at, length);
    if (bytes.length < length) throw damaged();
    if (inflate === null) {
      yield bytes;
      continue;
    }
    try {
      // A copy: the stream may keep what it is given.
      inflate.push(bytes.slice(), at + length === packedSize);
    } catch {
      throw damaged();
    }
    yield* out;
    out = [];
  }
}

/** Where the content begins: behind the local header, which must be that of the same entry; null where it is not. */
export async function contentStart(
  { source }: ZipArchive,
  { name, offset }: ZipEntry,
): Promise<number | null> {
  const header = await source.read(offset, LOCAL_BYTES);
  if (header.length < LOCAL_BYTES) return null;
  const view = viewOf(header);
  if (view.getUint32(0, true) !== LOCAL_MARK) return null;
  const isUtf8 = (view.getUint16(6, true) & FLAG_UTF8) !== 0;
  const nameLength = view.getUint16(26, true);
  const extraLength = view.getUint16(28, true);
  const written = strFromU8((await source.read(offset + LOCAL_BYTES, nameLength)).slice(), !isUtf8);
  return written === name ? offset + LOCAL_BYTES + nameLength + extraLength : null;
}

/** How far a part may be packed: text of ours reaches 20 to 1; small ones may be anything. */
const MOST_RATIO = 200;
const SMALL_BYTES = 1 << 20;

/**
 * The whole content of a part that is text.
 * @param mostBytes so large it may be, unpacked
 */
export async function readPart(
  archive: ZipArchive,
  entry: ZipEntry,
  mostBytes: number,
): Promise<Outcome<Uint8Array>> {
  const { name } = archive.source;
  const { name: part, size, packedSize } = entry;
  if (size > mostBytes || (size > SMALL_BYTES && size > packedSize * MOST_RATIO))
    return bad('archive.bomb', { name, part });
  const whole = new Uint8Array(size);
  let at = 0;
  try {
    for await (const piece of piecesOf(archive, entry)) {
      whole.set(piece, at);
      at += piece.length;
    }
  } catch (error) {
    if (error instanceof PartFault) return failure(error.problem);
    throw error;
  }
  return good(whole);
}
