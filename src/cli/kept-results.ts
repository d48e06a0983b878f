/**
 * Results of a batch that were worked out before, so that one that was stopped goes on where it stopped. A result is
 * known by what went into it: the content of the file, the order, and the program that graded.
 */
import { createHash } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fstatSync,
  mkdirSync,
  openSync,
  readFileSync,
  readSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';

/** Where programs keep what can be worked out again: the XDG Base Directory Specification, and each system's own place. */
function cacheFolder(): string {
  const { XDG_CACHE_HOME, LOCALAPPDATA } = process.env;
  if (XDG_CACHE_HOME) return XDG_CACHE_HOME;
  if (process.platform === 'win32' && LOCALAPPDATA) return LOCALAPPDATA;
  return process.platform === 'darwin' ? join(homedir(), 'Library/Caches') : join(homedir(), '.cache');
}

export const resultsFolder = (): string => join(cacheFolder(), 'landfall', 'results');

const PIECE = 1 << 20;

/** What tells this program from another build of it: its parts are imported by names that hold their own content. */
export const programMark = (script: string): string =>
  createHash('sha256').update(readFileSync(script)).digest('hex');

/**
 * The key of a result.
 * @param program from {@link programMark}
 * @throws the error of the file system where the file can't be read; a RangeError for a pipe or a device, which would
 * be used up by the reading or never end
 */
export function resultKey(file: string, order: unknown, program: string): string {
  const hash = createHash('sha256').update(JSON.stringify([program, order]));
  const descriptor = openSync(file, 'r');
  try {
    if (!fstatSync(descriptor).isFile()) throw new RangeError(`${file} is no file`);
    const piece = Buffer.alloc(PIECE);
    for (;;) {
      const got = readSync(descriptor, piece, 0, PIECE, null);
      if (got === 0) return hash.digest('hex');
      hash.update(piece.subarray(0, got));
    }
  } finally {
    closeSync(descriptor);
  }
}

/**
 * Makes a folder and those above it. Node's own way (`recursive`) never comes back where the system says of a folder
 * that is there that it is not, as Linux does of new folders in /proc.
 */
function makeFolder(folder: string): void {
  if (existsSync(folder)) return;
  const above = dirname(folder);
  if (above !== folder) makeFolder(above);
  try {
    mkdirSync(folder);
  } catch (error) {
    // Another worker may have made it in the meantime.
    if (!existsSync(folder)) throw error;
  }
}

/** Results on the disk. Where nothing can be written or read, it works as if nothing had been kept. */
export class KeptResults<T> {
  readonly #folder: string;
  readonly #read: (value: unknown) => T | null;

  /** @param read checks what stands in a file; null for what can't be used */
  constructor(folder: string, read: (value: unknown) => T | null) {
    this.#folder = folder;
    this.#read = read;
  }

  find(key: string): T | null {
    try {
      return this.#read(JSON.parse(readFileSync(this.#path(key), 'utf8')));
    } catch {
      return null;
    }
  }

  keep(key: string, value: T): void {
    const unfinished = `${this.#path(key)}.${process.pid}`;
    try {
      makeFolder(this.#folder);
      // Renamed when it is whole, so that a batch that is killed leaves no half result.
      writeFileSync(unfinished, JSON.stringify(value));
      renameSync(unfinished, this.#path(key));
    } catch {
      // A full or closed disk only means that this result is worked out again the next time.
      rmSync(unfinished, { force: true });
    }
  }

  #path(key: string): string {
    return join(this.#folder, `${key}.json`);
  }
}
