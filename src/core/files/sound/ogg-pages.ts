/** Ogg pages (RFC 3533): where each begins, whose it is, and how far its time has come; and the packets on them. */
import { hasMark, viewOf, windowOver, type ByteSource } from '../bytes/bytes.ts';

export interface OggPage {
  /** The whole page, header included; valid until the next page is asked for. */
  readonly bytes: Uint8Array;
  readonly bodyOffset: number;
  readonly serial: number;
  /** Its number in its stream. */
  readonly sequence: number;
  /** The page begins with the rest of a packet from the page before. */
  readonly continued: boolean;
  /** The first page of its stream. */
  readonly begins: boolean;
  readonly ends: boolean;
  /** Lengths of its segments; one under 255 ends a packet. */
  readonly lacing: Uint8Array;
  /** Samples up to the last packet that ends here; null where none does. */
  readonly granule: number | null;
}

const HEADER_BYTES = 27;
const MOST_BYTES = HEADER_BYTES + 255 + 255 * 255;
const CHECK_OFFSET = 22;
const FULL_SEGMENT = 255;

/** The check sum of a page: polynomial 0x04c11db7, from 0, not reflected (RFC 3533, section 6). */
const CHECK = Uint32Array.from({ length: 256 }, (_, byte) => {
  let sum = byte << 24;
  for (let bit = 0; bit < 8; bit++) sum = (sum << 1) ^ (sum < 0 ? 0x04c1_1db7 : 0);
  return sum;
});

/** Whether the page is as it was written: its check sum, reckoned with the field of the sum itself at nought. */
export function isIntact({ bytes }: Pick<OggPage, 'bytes'>): boolean {
  let sum = 0;
  for (let at = 0; at < bytes.length; at++) {
    const byte = at >= CHECK_OFFSET && at < CHECK_OFFSET + 4 ? 0 : bytes[at]!;
    sum = (sum << 8) ^ CHECK[(sum >>> 24) ^ byte]!;
  }
  return sum >>> 0 === viewOf(bytes).getUint32(CHECK_OFFSET, true);
}

function pageAt(bytes: Uint8Array): OggPage | null {
  if (bytes.length < HEADER_BYTES || !hasMark(bytes, 'OggS') || bytes[4] !== 0) return null;
  const segments = bytes[26]!;
  const bodyOffset = HEADER_BYTES + segments;
  const lacing = bytes.subarray(HEADER_BYTES, bodyOffset);
  const length = bodyOffset + lacing.reduce((sum, part) => sum + part, 0);
  if (lacing.length < segments || length > bytes.length) return null;
  const view = viewOf(bytes);
  const granule = view.getBigInt64(6, true);
  const flags = bytes[5]!;
  return {
    bytes: bytes.subarray(0, length),
    bodyOffset,
    serial: view.getUint32(14, true),
    sequence: view.getUint32(18, true),
    continued: (flags & 1) !== 0,
    begins: (flags & 2) !== 0,
    ends: (flags & 4) !== 0,
    lacing,
    granule: granule < 0n ? null : Number(granule),
  };
}

/** The first page begins a file, or stands behind a tag; where there is none so far in, there is none. */
const FIRST_PAGE_WITHIN_BYTES = 1 << 20;

/**
 * All pages of a file in order; what is no whole page is skipped, and `lost` called for each such place.
 * @param from where the first of them is looked for
 */
export async function* oggPages(
  source: ByteSource,
  lost: () => void,
  from = 0,
): AsyncGenerator<OggPage & { readonly endOffset: number }> {
  const window = windowOver(source);
  let found = false;
  for (let at = from; at < source.size && (found || at < from + FIRST_PAGE_WITHIN_BYTES);) {
    const bytes = await window.ensure(at, MOST_BYTES);
    const page = pageAt(bytes);
    if (page) {
      found = true;
      at += page.bytes.length;
      yield { ...page, endOffset: at };
      continue;
    }
    lost();
    let next = bytes.indexOf(0x4f, 1);
    while (next >= 0 && !pageAt(bytes.subarray(next))) next = bytes.indexOf(0x4f, next + 1);
    at += next < 0 ? bytes.length : next;
  }
}

export interface OggPacket {
  readonly bytes: Uint8Array;
  /** Samples up to this packet's end, where its page says so. */
  readonly granule: number | null;
  /** Something before it was lost. */
  readonly afterLoss: boolean;
  /** The stream is marked to end with it. */
  readonly ends: boolean;
  /** Where the page behind it begins in the file. */
  readonly nextPage: number;
}

/** The packets of one stream in order. Pages that are damaged or missing are left out, and `lost` called for each. */
export async function* oggPackets(
  source: ByteSource,
  serial: number,
  lost: () => void,
  start = 0,
): AsyncGenerator<OggPacket> {
  let parts: Uint8Array[] = [];
  let afterLoss = false;
  let expected: number | null = null;
  const lose = () => {
    if (!afterLoss) lost();
    afterLoss = true;
    parts = [];
  };
  for await (const page of oggPages(source, lose, start)) {
    if (page.serial !== serial) continue;
    if (!isIntact(page)) {
      lose();
      continue;
    }
    if (expected !== null && page.sequence !== expected) lose();
    expected = page.sequence + 1;
    const { bytes, lacing, bodyOffset, granule, ends } = page;
    // The rest of a packet whose beginning is gone is none, nor is a beginning without its rest.
    let isRest = page.continued && parts.length === 0;
    if (!page.continued && parts.length > 0) lose();
    const last = lacing.findLastIndex((part) => part < FULL_SEGMENT);
    let at = bodyOffset;
    let from = at;
    for (const [segment, length] of lacing.entries()) {
      at += length;
      if (length === FULL_SEGMENT) continue;
      if (isRest) lose();
      else {
        const whole = joined([...parts, bytes.subarray(from, at)]);
        yield {
          bytes: whole,
          granule: segment === last ? granule : null,
          afterLoss,
          ends: ends && segment === last,
          nextPage: page.endOffset,
        };
        afterLoss = false;
      }
      isRest = false;
      parts = [];
      from = at;
    }
    if (from < at && !isRest) parts.push(bytes.slice(from, at));
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * A small file of these packets, each on pages of its own, without times and check sums: for a decoder that asks for
 * neither.
 */
export function oggFileOf(packets: readonly Uint8Array[], serial: number): Uint8Array {
  const pages: Uint8Array[] = [];
  for (const [number, packet] of packets.entries()) {
    const lacing = [...new Array<number>(Math.floor(packet.length / FULL_SEGMENT)).fill(FULL_SEGMENT)];
    lacing.push(packet.length % FULL_SEGMENT);
    for (let from = 0; from < lacing.length; from += FULL_SEGMENT) {
      const segments = lacing.slice(from, from + FULL_SEGMENT);
      const body = packet.subarray(from * FULL_SEGMENT, (from + segments.length) * FULL_SEGMENT);
      const header = new Uint8Array(HEADER_BYTES);
      header.set([0x4f, 0x67, 0x67, 0x53, 0, (from > 0 ? 1 : 0) | (number === 0 ? 2 : 0)]);
      header.fill(0xff, 6, 14);
      viewOf(header).setUint32(14, serial, true);
      viewOf(header).setUint32(18, pages.length, true);
      header[26] = segments.length;
      pages.push(joined([header, Uint8Array.from(segments), body]));
    }
  }
  return joined(pages);
}
