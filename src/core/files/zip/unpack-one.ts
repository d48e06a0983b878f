/** One part of a small zip archive that is in memory, unpacked as far as a written limit. */
import { Unzip, UnzipInflate } from 'fflate';

/** A score has a handful of parts beside it, pictures above all. */
const MOST_PARTS = 1000;
/** Deflate packs 1,032 bytes into one at the most, so that one piece becomes 4 MB at the most. */
const PIECE_BYTES = 1 << 12;

/**
 * The content of the first part of this name. The sizes that the archive states are not relied on: the unpacking itself is
 * counted, and ends where it passes the limit.
 * @returns null where there is no such part among the first thousand, or it is larger
 * @throws where the archive is damaged
 */
export function unpackOne(archive: Uint8Array, name: string, mostBytes: number): Uint8Array | null {
  const pieces: Uint8Array[] = [];
  let size = 0;
  let isFound = false;
  let isDone = false;
  let parts = 0;
  const unzip = new Unzip((file) => {
    parts++;
    if (file.name !== name || isFound) return;
    isFound = true;
    file.ondata = (error, piece, final) => {
      if (error) throw error;
      size += piece.length;
      if (size <= mostBytes) pieces.push(piece);
      isDone = final;
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  for (
    let at = 0;
    at < archive.length && !isDone && size <= mostBytes && parts <= MOST_PARTS;
    at += PIECE_BYTES
  )
    // A copy: the stream may keep what it is given.
    unzip.push(archive.slice(at, at + PIECE_BYTES), at + PIECE_BYTES >= archive.length);
  if (!isFound || size > mostBytes) return null;
  if (!isDone) throw new RangeError(`${name} is cut short`);
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
