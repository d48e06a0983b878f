/**
 * A file as the core sees it: a name for the sentences, a size, and pieces on request. The command line hands
 * in a file descriptor, the app a Blob, a test an array; a file of two gigabytes is never held whole.
 */
export interface ByteSource {
  /** The name that the player sees; it begins every sentence about the file. */
  readonly name: string;
  readonly size: number;
  /** At most `length` bytes from `offset`; fewer at the end of the file. May reject when the disk fails. */
  read(offset: number, length: number): Promise<Uint8Array> | Uint8Array;
}

/** A file that is already in memory. */
export function bytesInMemory(name: string, bytes: Uint8Array): ByteSource {
  return { name, size: bytes.length, read: (offset, length) => bytes.subarray(offset, offset + length) };
}

const tag = (bytes: Uint8Array, offset: number, length: number) =>
  String.fromCharCode(...bytes.subarray(offset, offset + length));

/** Four bytes as a chunk or file mark: "RIFF". Shorter at the end of the array. */
export const fourCharacters = (bytes: Uint8Array, offset: number) => tag(bytes, offset, 4);

/** True where `mark` (ASCII) stands at `offset`. */
export const hasMark = (bytes: Uint8Array, mark: string, offset = 0) =>
  tag(bytes, offset, mark.length) === mark;

export const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/**
 * A window that slides over a source, so that a decoder can look at bytes without waiting for each.
 * `ensure` before looking; positions are offsets in the file.
 */
export interface ByteWindow {
  /** The bytes from `position` on: at least `length` of them unless the file ends before. */
  ensure(position: number, length: number): Promise<Uint8Array>;
}

/** Read ahead by this much: large enough that the disk is asked seldom, small against any memory. */
const READ_AHEAD_BYTES = 1 << 20;

export function windowOver(source: ByteSource): ByteWindow {
  let start = 0;
  let bytes: Uint8Array = new Uint8Array(0);
  return {
    async ensure(position, length) {
      const held = start + bytes.length;
      if (position < start || (position + length > held && held < source.size)) {
        bytes = await source.read(position, Math.max(length, READ_AHEAD_BYTES));
        start = position;
      }
      return bytes.subarray(Math.min(position - start, bytes.length));
    },
  };
}
