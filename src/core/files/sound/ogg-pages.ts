/** Ogg pages (RFC 3533): where each begins, whose it is, and how far its time has come. */
import { hasMark, viewOf, windowOver, type ByteSource } from '../bytes/bytes.ts';

export interface OggPage {
  /** The whole page, header included; valid until the next page is asked for. */
  readonly bytes: Uint8Array;
  readonly bodyOffset: number;
  readonly serial: number;
  /** The page begins with the rest of a packet from the page before. */
  readonly continued: boolean;
  readonly begins: boolean;
  readonly ends: boolean;
  /** Packets that end on this page. */
  readonly packets: number;
  /** Samples up to the last packet that ends here; null where none does. */
  readonly granule: number | null;
}

const HEADER_BYTES = 27;
const MOST_BYTES = HEADER_BYTES + 255 + 255 * 255;

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
    continued: (flags & 1) !== 0,
    begins: (flags & 2) !== 0,
    ends: (flags & 4) !== 0,
    packets: lacing.reduce((count, part) => count + (part < 255 ? 1 : 0), 0),
    granule: granule < 0n ? null : Number(granule),
  };
}

/** All pages of a file in order; what is no whole page is skipped, and `lost` called for each such place. */
export async function* oggPages(source: ByteSource, lost: () => void): AsyncGenerator<OggPage> {
  const window = windowOver(source);
  for (let at = 0; at < source.size;) {
    const bytes = await window.ensure(at, MOST_BYTES);
    const page = pageAt(bytes);
    if (page) {
      yield page;
      at += page.bytes.length;
      continue;
    }
    lost();
    let next = 1;
    while (next < bytes.length && !pageAt(bytes.subarray(next))) next++;
    at += next;
  }
}
