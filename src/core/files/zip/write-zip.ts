/**
 * Writes a zip archive entry by entry (PKWARE APPNOTE.TXT 6.3.10), so that one of many gigabytes needs the memory of its
 * largest entry only. Sizes stand before the content, where every reader expects them; what does not fit 32 bits goes into
 * the fields of Zip64.
 */
import { deflateSync, strToU8 } from 'fflate';
import { crc32 } from './crc32.ts';
import {
  CENTRAL_BYTES,
  CENTRAL_MARK,
  DEFLATED,
  END64_BYTES,
  END64_MARK,
  END_BYTES,
  END_MARK,
  EXTRA_ZIP64,
  FLAG_UTF8,
  IN_EXTRA_16,
  IN_EXTRA_32,
  LOCAL_BYTES,
  LOCAL_MARK,
  LOCATOR64_BYTES,
  LOCATOR64_MARK,
  STORED,
} from './zip-format.ts';

export type Bytes = Uint8Array<ArrayBuffer>;

export interface NewEntry {
  /** With slashes between folders. */
  readonly name: string;
  /** The content, in pieces. */
  readonly parts: readonly Bytes[];
  /** Text is packed; sound is stored as it is, so that it is written fast and read in any place. */
  readonly pack: boolean;
}

interface WrittenEntry {
  readonly name: Bytes;
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  readonly offset: number;
}

/** Date and time as MS-DOS has them, two seconds exact, in UTC; before 1980 there is none. */
function dosTime(iso: string): { readonly date: number; readonly time: number } {
  const [year = 1980, month = 1, day = 1, hour = 0, minute = 0, second = 0] =
    /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d):(\d\d)/.exec(iso)?.slice(1).map(Number) ?? [];
  if (year < 1980 || year > 2107) return { date: (1 << 5) | 1, time: 0 };
  return {
    date: ((year - 1980) << 9) | (month << 5) | day,
    time: (hour << 11) | (minute << 5) | (second >> 1),
  };
}

/** One record: little-endian numbers one after the other. */
class Fields {
  readonly bytes: Bytes;
  readonly #view: DataView;
  #at = 0;
  constructor(length: number) {
    this.bytes = new Uint8Array(length);
    this.#view = new DataView(this.bytes.buffer);
  }
  two(...values: readonly number[]): this {
    for (const value of values) this.#view.setUint16((this.#at += 2) - 2, value, true);
    return this;
  }
  four(...values: readonly number[]): this {
    for (const value of values) this.#view.setUint32((this.#at += 4) - 4, value, true);
    return this;
  }
  eight(...values: readonly number[]): this {
    for (const value of values) this.#view.setBigUint64((this.#at += 8) - 8, BigInt(value), true);
    return this;
  }
}

const isLong = (value: number) => value >= IN_EXTRA_32;
const as32 = (value: number) => Math.min(value, IN_EXTRA_32);
const as16 = (value: number) => Math.min(value, IN_EXTRA_16);

/** The extra field of Zip64; empty where every value fits 32 bits. */
function zip64Extra(values: readonly number[]): Bytes {
  if (values.length === 0) return new Uint8Array(0);
  return new Fields(4 + 8 * values.length).two(EXTRA_ZIP64, 8 * values.length).eight(...values).bytes;
}

export class ZipWriter {
  readonly #stamp: { readonly date: number; readonly time: number };
  readonly #entries: WrittenEntry[] = [];
  #offset: number;

  /**
   * @param changedAt ISO 8601: the date of every entry
   * @param startsAt bytes that stand before the archive in its file; only tests need others than 0
   */
  constructor(changedAt: string, startsAt = 0) {
    this.#stamp = dosTime(changedAt);
    this.#offset = startsAt;
  }

  /** The pieces of the next entry, to be written in this order. */
  entry({ name, parts, pack }: NewEntry): readonly Bytes[] {
    const size = parts.reduce((sum, part) => sum + part.length, 0);
    const crc = parts.reduce((before, part) => crc32(part, before), 0);
    const content = pack ? [deflateSync(joined(parts)) as Bytes] : parts;
    const packedSize = content.reduce((sum, part) => sum + part.length, 0);
    const method = pack ? DEFLATED : STORED;
    const written = { name: strToU8(name) as Bytes, method, crc, packedSize, size, offset: this.#offset };
    this.#entries.push(written);
    const header = this.#local(written);
    this.#offset += header.reduce((sum, part) => sum + part.length, 0) + packedSize;
    return [...header, ...content];
  }

  /** The directory, which closes the archive. */
  finish(): readonly Bytes[] {
    const start = this.#offset;
    const directory = this.#entries.flatMap((entry) => this.#central(entry));
    const bytes = directory.reduce((sum, part) => sum + part.length, 0);
    const count = this.#entries.length;
    const end = new Fields(END_BYTES)
      .four(END_MARK)
      .two(0, 0, as16(count), as16(count))
      .four(as32(bytes), as32(start))
      .two(0).bytes;
    if (count < IN_EXTRA_16 && !isLong(bytes) && !isLong(start)) return [...directory, end];
    const end64 = new Fields(END64_BYTES)
      .four(END64_MARK)
      .eight(END64_BYTES - 12)
      .two(45, 45)
      .four(0, 0)
      .eight(count, count, bytes, start).bytes;
    const locator = new Fields(LOCATOR64_BYTES)
      .four(LOCATOR64_MARK, 0)
      .eight(start + bytes)
      .four(1).bytes;
    return [...directory, end64, locator, end];
  }

  #local({ name, method, crc, packedSize, size }: WrittenEntry): readonly Bytes[] {
    // In a local header both sizes stand in the extra field, or none (4.5.3).
    const long = isLong(size) || isLong(packedSize);
    const extra = zip64Extra(long ? [size, packedSize] : []);
    const { date, time } = this.#stamp;
    const header = new Fields(LOCAL_BYTES)
      .four(LOCAL_MARK)
      .two(long ? 45 : 20, FLAG_UTF8, method, time, date)
      .four(crc, long ? IN_EXTRA_32 : packedSize, long ? IN_EXTRA_32 : size)
      .two(name.length, extra.length);
    return [header.bytes, name, extra];
  }

  #central({ name, method, crc, packedSize, size, offset }: WrittenEntry): readonly Bytes[] {
    const extra = zip64Extra([size, packedSize, offset].filter(isLong));
    const { date, time } = this.#stamp;
    const header = new Fields(CENTRAL_BYTES)
      .four(CENTRAL_MARK)
      .two(45, extra.length > 0 ? 45 : 20, FLAG_UTF8, method, time, date)
      .four(crc, as32(packedSize), as32(size))
      .two(name.length, extra.length, 0, 0, 0)
      .four(0, as32(offset));
    return [header.bytes, name, extra];
  }
}

function joined(parts: readonly Bytes[]): Bytes {
  if (parts.length === 1) return parts[0]!;
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
