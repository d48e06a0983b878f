/** A pipe read to its end, within a size and a time: one that never ends is told so. */
import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { bad, good, type Outcome } from '../core/base/outcome.ts';

/** What comes through a pipe is held whole: an hour and a half of a mono recording. */
export const MOST_PIPE_BYTES = 512_000_000;
/** All of it must come within this time. */
export const MOST_PIPE_SECONDS = 120;
/** A pipe that nobody has written to by now is empty. */
const MOST_SILENT_SECONDS = 10;
const PIECE_BYTES = 1 << 16;
/** How long a pipe without news is left alone before it is asked again. */
const WAIT_MILLISECONDS = 20;

/** Bounds for tests; left out, those above. */
export interface PipeBounds {
  readonly mostBytes?: number;
  readonly mostSeconds?: number;
}

/** Reads what is no regular file: a pipe, a terminal, a device. Throws the system's error. */
export function readPipe(
  path: string,
  { mostBytes = MOST_PIPE_BYTES, mostSeconds = MOST_PIPE_SECONDS }: PipeBounds = {},
): Outcome<Uint8Array> {
  // Without waiting for a writer: a pipe that nobody writes to would hold the program for ever.
  const descriptor = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
  try {
    const mayComeLater = fstatSync(descriptor).isFIFO();
    const parts: Uint8Array[] = [];
    let size = 0;
    const start = Date.now();
    const passed = () => (Date.now() - start) / 1000;
    while (passed() < mostSeconds) {
      const piece = new Uint8Array(PIECE_BYTES);
      const got = readNow(descriptor, piece);
      // Nothing yet, or no writer yet.
      const isAwaited = got === 0 && size === 0 && mayComeLater && passed() < MOST_SILENT_SECONDS;
      if (got === null || isAwaited) {
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MILLISECONDS);
        continue;
      }
      if (got === 0) return good(new Uint8Array(Buffer.concat(parts)));
      size += got;
      if (size > mostBytes)
        return bad('disk.longPipe', { name: path, megabytes: Math.round(mostBytes / 1e6) });
      parts.push(piece.subarray(0, got));
    }
    return bad('disk.slowPipe', { name: path, seconds: mostSeconds });
  } finally {
    closeSync(descriptor);
  }
}

/** Bytes that are there; null where none are there yet. */
function readNow(descriptor: number, into: Uint8Array): number | null {
  try {
    return readSync(descriptor, into, 0, into.length, null);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EAGAIN') return null;
    throw error;
  }
}
