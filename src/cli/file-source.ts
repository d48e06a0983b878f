/** Files of the disk for the core, and what the system's errors mean for a player. */
import { problem, type Problem } from '../core/words/problem.ts';
import { closeSync, fstatSync, openSync, readFileSync, readSync } from 'node:fs';
import { bytesInMemory, type ByteSource } from '../core/files/bytes/bytes.ts';
import { failure, good, type Outcome } from '../core/base/outcome.ts';

/** The system's error codes that players meet, by what they mean. */
const REASONS = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EACCES: 'notAllowed',
  EPERM: 'notAllowed',
  EISDIR: 'folder',
  EMFILE: 'tooManyOpen',
  EIO: 'disk',
  ENAMETOOLONG: 'nameTooLong',
} as const;

/** The problem that an error of the file system means, or null for any other error. */
export function diskProblem(name: string, error: unknown, tried: 'read' | 'write' = 'read'): Problem | null {
  if (!(error instanceof Error && 'code' in error && typeof error.code === 'string')) return null;
  const { code } = error;
  const reason = code in REASONS ? REASONS[code as keyof typeof REASONS] : 'other';
  return problem(`disk.${tried}`, { name, reason, system: code });
}

export interface OpenFile extends ByteSource {
  dispose(): void;
}

/** Opens a file for reading in pieces. A pipe has no pieces and is read whole. */
export function openFile(path: string): Outcome<OpenFile> {
  try {
    const descriptor = openSync(path, 'r');
    const stat = fstatSync(descriptor);
    if (!stat.isFile()) {
      const bytes = readFileSync(descriptor);
      closeSync(descriptor);
      return good({ ...bytesInMemory(path, bytes), dispose: () => undefined });
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
