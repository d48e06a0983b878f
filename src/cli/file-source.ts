/** Files of the disk for the core, and what the system says about them in a player's words. */
import { closeSync, fstatSync, openSync, readFileSync, readSync } from 'node:fs';
import { bytesInMemory, type ByteSource } from '../core/files/bytes/bytes.ts';
import { badSentence, good, type Outcome } from '../core/base/outcome.ts';

/** The system's error codes that players meet. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'there is no such file',
  EACCES: 'you are not allowed to read it',
  EPERM: 'you are not allowed to read it',
  EISDIR: 'it is a folder; name a file in it',
  EMFILE: 'too many files are open',
  EIO: 'the disk could not read it',
  ENAMETOOLONG: 'no file can have so long a name',
};

/** A sentence for an error of the file system, or null for any other. */
export function diskSentence(name: string, error: unknown): string | null {
  if (!(error instanceof Error && 'code' in error && typeof error.code === 'string')) return null;
  return `${name} can't be read: ${REASONS[error.code] ?? `the system says ${error.code}`}.`;
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
    const sentence = diskSentence(path, error);
    if (sentence === null) throw error;
    return badSentence(sentence);
  }
}
