/** Files of the disk for the core, and what the system's errors mean for a player. */
import { problem, type Problem } from '../core/words/problem.ts';
import { closeSync, fstatSync, openSync, readFileSync, readSync, statSync } from 'node:fs';
import { lastAtOrBefore } from '../core/chart/beat-maps.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import { readPipe, type PipeContent } from './read-pipe.ts';

/** The system's error codes that players meet, by what they mean. */
const REASONS = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EACCES: 'notAllowed',
  EPERM: 'notAllowed',
  EISDIR: 'folder',
  EMFILE: 'tooManyOpen',
  EIO: 'disk',
  ENOSPC: 'full',
  EDQUOT: 'full',
  EFBIG: 'full',
  EROFS: 'readOnly',
  EBUSY: 'inUse',
  ETXTBSY: 'inUse',
  EAGAIN: 'inUse',
  ENAMETOOLONG: 'nameTooLong',
  ELOOP: 'linkLoop',
  ENXIO: 'nothingThere',
  ENODEV: 'nothingThere',
  ESTALE: 'disk',
} as const;

/** The problem that an error of the file system means, or null for any other error. */
export function diskProblem(name: string, error: unknown, tried: 'read' | 'write' = 'read'): Problem | null {
  if (!(error instanceof Error && 'code' in error && typeof error.code === 'string')) return null;
  const { code } = error;
  const known = code in REASONS ? REASONS[code as keyof typeof REASONS] : 'other';
  // Bytes that are no UTF-8 have become this sign in the name, so that no file of that name is found.
  const reason = known === 'missing' && name.includes('\ufffd') ? 'oddName' : known;
  return problem(`disk.${tried}`, { name, reason, system: code });
}

export interface OpenFile extends ByteSource {
  dispose(): void;
}

/**
 * All bytes of a file or a pipe; null where it has more than `most`. Throws the system's error.
 */
export function bytesWithin(path: string, most: number): Outcome<Uint8Array | null> {
  const stat = statSync(path);
  // A folder is refused by the system as it is read.
  if (stat.isFile() || stat.isDirectory())
    return good(stat.isFile() && stat.size > most ? null : readFileSync(path));
  const piped = readPipe(path, { mostBytes: most });
  return piped.ok ? good(new Uint8Array(Buffer.concat(piped.value.pieces))) : piped;
}

/** What came through a pipe, read in any place without a second copy of it all. */
function pipeSource(name: string, { pieces, size }: PipeContent): OpenFile {
  const starts: number[] = [];
  pieces.reduce((at, piece) => (starts.push(at), at + piece.length), 0);
  return {
    name,
    size,
    read(offset, length) {
      const bytes = new Uint8Array(Math.max(0, Math.min(length, size - offset)));
      let k = Math.max(0, lastAtOrBefore(starts, offset));
      for (let at = 0; at < bytes.length; k++) {
        const from = offset + at - starts[k]!;
        const part = pieces[k]!.subarray(from, from + bytes.length - at);
        bytes.set(part, at);
        at += part.length;
      }
      return bytes;
    },
    dispose: () => undefined,
  };
}

/** Opens a file for reading in pieces. A pipe has no pieces and is read whole. */
export function openFile(path: string): Outcome<OpenFile> {
  try {
    const kind = statSync(path);
    if (!kind.isFile() && !kind.isDirectory()) {
      const content = readPipe(path);
      return content.ok ? good(pipeSource(path, content.value)) : content;
    }
    const descriptor = openSync(path, 'r');
    const stat = fstatSync(descriptor);
    if (stat.isDirectory()) {
      closeSync(descriptor);
      return failure(problem('disk.read', { name: path, reason: 'folder', system: 'EISDIR' }));
    }
    return good({
      name: path,
      size: stat.size,
      read(offset, length) {
        const bytes = new Uint8Array(Math.max(0, Math.min(length, stat.size - offset)));
        let got = 0;
        while (got < bytes.length) {
          const more = readSync(descriptor, bytes, got, bytes.length - got, offset + got);
          if (more === 0) break;
          got += more;
        }
        return bytes.subarray(0, got);
      },
      dispose: () => {
        closeSync(descriptor);
      },
    });
  } catch (error) {
    const told = diskProblem(path, error);
    if (told === null) throw error;
    return failure(told);
  }
}
