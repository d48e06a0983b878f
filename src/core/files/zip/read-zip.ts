/**
 * Reads a zip archive from its directory (PKWARE APPNOTE.TXT 6.3.10, Zip64 too), entry by entry and piece by piece. Nothing
 * in the archive is trusted: sizes, places and names are checked before anything is unpacked, and checksums after it.
 */
import { strFromU8 } from 'fflate';
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import type { Problem } from '../../words/problem.ts';
import { viewOf, type ByteSource } from '../bytes/bytes.ts';
import {
  CENTRAL_BYTES,
  CENTRAL_MARK,
  DEFLATED,
  END64_BYTES,
  END64_MARK,
  END_BYTES,
  END_MARK,
  EXTRA_ZIP64,
  FLAG_ENCRYPTED,
  FLAG_STRONG_ENCRYPTION,
  FLAG_UTF8,
  IN_EXTRA_16,
  IN_EXTRA_32,
  LOCAL_BYTES,
  LOCATOR64_BYTES,
  LOCATOR64_MARK,
  STORED,
} from './zip-format.ts';

export interface ZipEntry {
  readonly name: string;
  readonly method: typeof STORED | typeof DEFLATED;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  /** Of its local header in the file. */
  readonly offset: number;
}

export interface ZipArchive {
  readonly source: ByteSource;
  readonly entries: readonly ZipEntry[];
}

/** A comment at the end of an archive has up to 65,535 bytes. */
const LONGEST_COMMENT = 0xffff;
const LONGEST_NAME = 255;
const MOST_BYTES_OF_AN_ENTRY = CENTRAL_BYTES + 3 * 0xffff;

interface Directory {
  readonly start: number;
  readonly bytes: number;
  readonly count: number;
}

/** Leaves the reading of a directory with its problem; never seen outside. */
class Refused extends Error {
  readonly problem: Problem;
  constructor(told: Problem) {
    super(told.code);
    this.problem = told;
  }
}
const refuse = (outcome: { readonly problem: Problem }): never => {
  throw new Refused(outcome.problem);
};

/**
 * Opens an archive by its directory.
 * @param most so many entries it may have
 */
export async function openZip(source: ByteSource, most: number): Promise<Outcome<ZipArchive>> {
  try {
    const directory = await findDirectory(source);
    if (directory.count > most) refuse(bad('archive.manyParts', { name: source.name, most }));
    const entries = await readDirectory(source, directory);
    checkPlaces(source, entries, directory);
    return good({ source, entries });
  } catch (error) {
    if (error instanceof Refused) return failure(error.problem);
    throw error;
  }
}

async function findDirectory(source: ByteSource): Promise<Directory> {
  const { name, size } = source;
  const cut = () => refuse(bad('archive.cutShort', { name }));
  const length = Math.min(size, END_BYTES + LONGEST_COMMENT);
  const tail = (await source.read(size - length, length)).slice();
  const view = viewOf(tail);
  let at = tail.length - END_BYTES;
  while (
    at >= 0 &&
    !(view.getUint32(at, true) === END_MARK && at + END_BYTES + view.getUint16(at + 20, true) === tail.length)
  )
    at--;
  if (at < 0) return cut();
  const short: Directory = {
    count: view.getUint16(at + 10, true),
    bytes: view.getUint32(at + 12, true),
    start: view.getUint32(at + 16, true),
  };
  const disks = view.getUint16(at + 4, true) + view.getUint16(at + 6, true);
  if (disks !== 0 && disks !== 2 * IN_EXTRA_16) return cut();
  const isShort = short.count !== IN_EXTRA_16 && short.bytes !== IN_EXTRA_32 && short.start !== IN_EXTRA_32;
  const endsAt = size - length + at;
  const directory = isShort ? short : ((await readEnd64(source, endsAt)) ?? short);
  if (directory.start + directory.bytes > endsAt) return cut();
  if (directory.count * CENTRAL_BYTES > directory.bytes) return cut();
  return directory;
}

async function readEnd64(source: ByteSource, endsAt: number): Promise<Directory | null> {
  if (endsAt < LOCATOR64_BYTES) return null;
  const locator = viewOf(await source.read(endsAt - LOCATOR64_BYTES, LOCATOR64_BYTES));
  if (locator.getUint32(0, true) !== LOCATOR64_MARK) return null;
  const place = Number(locator.getBigUint64(8, true));
  const bytes = place + END64_BYTES <= endsAt ? await source.read(place, END64_BYTES) : null;
  if (bytes === null || bytes.length < END64_BYTES || viewOf(bytes).getUint32(0, true) !== END64_MARK)
    return refuse(bad('archive.cutShort', { name: source.name }));
  const view = viewOf(bytes);
  return {
    count: Number(view.getBigUint64(32, true)),
    bytes: Number(view.getBigUint64(40, true)),
    start: Number(view.getBigUint64(48, true)),
  };
}

async function readDirectory(source: ByteSource, { start, bytes, count }: Directory): Promise<ZipEntry[]> {
  const { name } = source;
  const entries: ZipEntry[] = [];
  const known = new Set<string>();
  let at = start;
  while (entries.length < count) {
    const head = (await source.read(at, Math.min(MOST_BYTES_OF_AN_ENTRY, start + bytes - at))).slice();
    let from = 0;
    while (entries.length < count) {
      const length = entryLength(head, from);
      // The rest of this entry may not have been read with it.
      if (length === null && from > 0) break;
      if (length === null) return refuse(bad('archive.cutShort', { name }));
      const entry = readEntry(head.subarray(from, from + length), name);
      if (known.has(entry.name)) refuse(bad('archive.partTwice', { name, part: entry.name }));
      known.add(entry.name);
      entries.push(entry);
      from += length;
    }
    at += from;
  }
  return entries;
}

/** Bytes of the entry of the directory at `from`; null where it is none, or not whole. */
function entryLength(bytes: Uint8Array, from: number): number | null {
  if (from + CENTRAL_BYTES > bytes.length) return null;
  const view = viewOf(bytes);
  if (view.getUint32(from, true) !== CENTRAL_MARK) return null;
  const length =
    CENTRAL_BYTES +
    view.getUint16(from + 28, true) +
    view.getUint16(from + 30, true) +
    view.getUint16(from + 32, true);
  return from + length <= bytes.length ? length : null;
}

function readEntry(bytes: Uint8Array, name: string): ZipEntry {
  const view = viewOf(bytes);
  const flags = view.getUint16(8, true);
  const method = view.getUint16(10, true);
  const nameLength = view.getUint16(28, true);
  const written = bytes.subarray(CENTRAL_BYTES, CENTRAL_BYTES + nameLength);
  const part = partName(written, (flags & FLAG_UTF8) !== 0);
  if (part === null) return refuse(bad('archive.partName', { name }));
  if ((flags & (FLAG_ENCRYPTED | FLAG_STRONG_ENCRYPTION)) !== 0)
    return refuse(bad('archive.encrypted', { name, part }));
  if (method !== STORED && method !== DEFLATED) return refuse(bad('archive.packing', { name, part }));
  const extra = bytes.subarray(
    CENTRAL_BYTES + nameLength,
    CENTRAL_BYTES + nameLength + view.getUint16(30, true),
  );
  const long = longValues(extra);
  const value = (short: number) => (short === IN_EXTRA_32 ? (long.shift() ?? Infinity) : short);
  const size = value(view.getUint32(24, true));
  const packedSize = value(view.getUint32(20, true));
  const offset = value(view.getUint32(42, true));
  const possible = [size, packedSize, offset].every(Number.isSafeInteger);
  if (!possible || (method === STORED && size !== packedSize))
    return refuse(bad('archive.damaged', { name, part }));
  return { name: part, method, crc: view.getUint32(16, true), packedSize, size, offset };
}

/** The values of the extra field of Zip64, in order. */
function longValues(extra: Uint8Array): number[] {
  const view = viewOf(extra);
  for (let at = 0; at + 4 <= extra.length;) {
    const length = view.getUint16(at + 2, true);
    if (view.getUint16(at, true) === EXTRA_ZIP64 && at + 4 + length <= extra.length)
      return Array.from({ length: length >> 3 }, (_, k) => Number(view.getBigUint64(at + 4 + 8 * k, true)));
    at += 4 + length;
  }
  return [];
}

/**
 * The name of a part; null where it leads out of the archive or is none that a person gives: it climbs, begins at the
 * root or at a drive, or holds a character that is not printed.
 */
function partName(bytes: Uint8Array, utf8: boolean): string | null {
  const name = strFromU8(bytes, !utf8);
  const climbs = name.split('/').includes('..');
  const isRooted = name.startsWith('/') || name.includes('\\') || /^[a-z]:/i.test(name);
  // eslint-disable-next-line no-control-regex -- these very characters are refused
  const isOdd = name === '' || bytes.length > LONGEST_NAME || /[\u0000-\u001f\u007f-\u009f\ufffd]/.test(name);
  return climbs || isRooted || isOdd ? null : name;
}

/** No entry may lie over another, or over the directory: an archive whose parts share bytes is a bomb. */
function checkPlaces(source: ByteSource, entries: readonly ZipEntry[], { start }: Directory): void {
  const inOrder = entries.toSorted((a, b) => a.offset - b.offset);
  for (const [k, entry] of inOrder.entries()) {
    const ends = entry.offset + LOCAL_BYTES + entry.packedSize;
    if (ends > (inOrder[k + 1]?.offset ?? start))
      refuse(bad('archive.damaged', { name: source.name, part: entry.name }));
  }
}
