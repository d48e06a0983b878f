/** ID3v2 tags (id3.org, version 2.4.0 structure): text and pictures that players put before the sound. */
import { hasMark, type ByteSource } from '../bytes/bytes.ts';

export const ID3_HEADER_BYTES = 10;

/** Length of the tag that begins here, its header and footer included; 0 where there is none. */
export function id3Length(bytes: Uint8Array): number {
  if (bytes.length < ID3_HEADER_BYTES || !hasMark(bytes, 'ID3')) return 0;
  const size = [6, 7, 8, 9].reduce((sum, at) => sum * 128 + (bytes[at]! & 0x7f), 0);
  const footer = (bytes[5]! & 0x10) !== 0 ? ID3_HEADER_BYTES : 0;
  return ID3_HEADER_BYTES + size + footer;
}

/** The file without the tag that it begins with, for a reader that expects none. */
export async function behindTag(source: ByteSource): Promise<ByteSource> {
  const skipped = id3Length(await source.read(0, ID3_HEADER_BYTES));
  if (skipped === 0) return source;
  return {
    name: source.name,
    size: Math.max(0, source.size - skipped),
    read: (offset, length) => source.read(offset + skipped, length),
  };
}
