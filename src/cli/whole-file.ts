/** Files that appear under their name only when they are whole: what stood there before stays until then. */
import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  lstatSync,
  openSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { failure, type Outcome } from '../core/base/outcome.ts';
import { diskProblem } from './file-source.ts';

/** What a player or a system sends to end a program; after it the unfinished file is removed. */
const ENDING_SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

interface UnfinishedFile {
  readonly path: string;
  readonly becomes: string;
  /** Ends the watch for signals. */
  stopWatching(): void;
}

/** Where the bytes go. */
interface Place {
  readonly descriptor: number;
  /** The unfinished file beside the file that it becomes; null where the bytes go straight to a device. */
  readonly part: UnfinishedFile | null;
}

/**
 * Writes a file beside its place, and renames it when it is whole. An error, a full disk or a signal in the middle
 * leaves what stood there before, and no half file. A device or a pipe is written straight.
 * @param fill writes to the descriptor; it must let the event loop run now and then, or no signal is noticed
 */
export async function writeWholeFile(
  file: string,
  fill: (descriptor: number) => Promise<Outcome<void>>,
): Promise<Outcome<void>> {
  try {
    const { descriptor, part } = openPlace(file);
    try {
      const filled = await fill(descriptor);
      closeSync(descriptor);
      if (part !== null && filled.ok) renameSync(part.path, part.becomes);
      return filled;
    } finally {
      // Renamed, it is no longer there.
      if (part !== null) rmSync(part.path, { force: true });
      part?.stopWatching();
    }
  } catch (error) {
    const told = diskProblem(file, error, 'write');
    if (told === null) throw error;
    return failure(told);
  }
}

function openPlace(file: string): Place {
  const before = statSync(file, { throwIfNoEntry: false });
  // A folder is refused by the system.
  if (before !== undefined && !before.isFile()) return straight(file);
  const becomes = before === undefined ? behindLink(file) : realpathSync(file);
  // A file that may not be changed is not to be replaced either.
  if (before !== undefined) accessSync(becomes, constants.W_OK);
  const path = join(dirname(becomes), `.landfall-${process.pid}-${Date.now().toString(36)}.part`);
  // Before there is a file: a signal that comes in between would leave it.
  const stopWatching = removeAtSignal(path);
  try {
    const descriptor = openSync(path, 'wx');
    if (before !== undefined) fchmodSync(descriptor, before.mode & 0o777);
    return { descriptor, part: { path, becomes, stopWatching } };
  } catch (error) {
    stopWatching();
    // In a folder where nothing new may be made, a file that is there may still be written.
    if (before !== undefined && isRefused(error)) return straight(becomes);
    throw error;
  }
}

const straight = (file: string): Place => ({ descriptor: openSync(file, 'w'), part: null });

const isRefused = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && (error.code === 'EACCES' || error.code === 'EPERM');

/** Where a link leads that has no file yet behind it. */
const behindLink = (file: string): string =>
  lstatSync(file, { throwIfNoEntry: false })?.isSymbolicLink() === true
    ? resolve(dirname(file), readlinkSync(file))
    : file;

/** Removes the file before the program ends by a signal. @returns ends the watch for signals */
function removeAtSignal(path: string): () => void {
  const leave = (signal: NodeJS.Signals) => {
    rmSync(path, { force: true });
    stop();
    process.kill(process.pid, signal);
  };
  const stop = () => {
    for (const signal of ENDING_SIGNALS) process.off(signal, leave);
  };
  for (const signal of ENDING_SIGNALS) process.on(signal, leave);
  return stop;
}
