/** A pipe read to its end, within a size and a time: one that never ends is told so. */
import { closeSync, constants, fstatSync, openSync, readSync } from 'node:fs';
import { MOST_LIST_BYTES } from '../core/base/limits.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';

/**
 * What comes through a pipe is held whole: an hour and a half of a mono recording. What does not begin as a recording is
 * a list of notes, and ends at the limit of those.
 */
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

/** A pipe read to its end, in the pieces that it came in. */
export interface PipeContent {
  readonly pieces: readonly Uint8Array[];
  readonly size: number;
}

/** The marks with which recordings begin; all else is a list of notes or no take. */
const RECORDING_MARKS = ['RIFF', 'RF64', 'BW64', 'fLaC', 'OggS', 'ID3', 'PK'];

const mayBeRecording = (first: Uint8Array): boolean =>
  RECORDING_MARKS.some((mark) => Buffer.from(first.subarray(0, mark.length)).toString('latin1') === mark) ||
  // The sync word of an mp3 frame.
  (first[0] === 0xff && (first[1]! & 0xe0) === 0xe0);

/** Reads what is no regular file: a pipe, a terminal, a device. Throws the system's error. */
export function readPipe(
  path: string,
  { mostBytes = MOST_PIPE_BYTES, mostSeconds = MOST_PIPE_SECONDS }: PipeBounds = {},
): Outcome<PipeContent> {
  // Without waiting for a writer: a pipe that nobody writes to would hold the program for ever.
  const descriptor = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK);
  try {
    const mayComeLater = fstatSync(descriptor).isFIFO();
    const pieces: Uint8Array[] = [];
    let size = 0;
    let most = mostBytes;
    const start = Date.now();
    const passed = () => (Date.now() - start) / 1000;
    let piece = new Uint8Array(PIECE_BYTES);
    while (passed() < mostSeconds) {
      const got = readNow(descriptor, piece);
      // Nothing yet, or no writer yet.
      const isAwaited = got === 0 && size === 0 && mayComeLater && passed() < MOST_SILENT_SECONDS;
      if (got === null || isAwaited) {
        Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, WAIT_MILLISECONDS);
        continue;
      }
      if (got === 0) return good({ pieces, size });
      if (size === 0 && !mayBeRecording(piece)) most = Math.min(most, MOST_LIST_BYTES);
      size += got;
      if (size > most) return bad('disk.longPipe', { name: path, megabytes: Math.round(most / 1e6) });
      // A small piece is copied, so that it does not keep the room of a large one.
      pieces.push(got < PIECE_BYTES / 2 ? piece.slice(0, got) : piece.subarray(0, got));
      if (got >= PIECE_BYTES / 2) piece = new Uint8Array(PIECE_BYTES);
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
