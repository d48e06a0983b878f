/** Appends samples to an open file and flushes each append. Uses no browser: the worker passes the file in. */
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { storageProblem } from './database.ts';

/** The part of FileSystemSyncAccessHandle (File System standard, WHATWG) that is used. */
export interface SyncFile {
  write(data: Int16Array<ArrayBuffer>, options: { at: number }): number;
  truncate(bytes: number): void;
  flush(): void;
  close(): void;
}

export class PcmFile {
  readonly #file: SyncFile;
  #bytes = 0;

  constructor(file: SyncFile) {
    this.#file = file;
    this.#file.truncate(0);
  }

  append(samples: Int16Array<ArrayBuffer>): Outcome<void> {
    try {
      const written = this.#file.write(samples, { at: this.#bytes });
      if (written < samples.byteLength) {
        // A full disk may accept a part of the bytes: the file is cut to whole samples.
        this.#bytes += written - (written % 2);
        this.#file.truncate(this.#bytes);
        this.#file.flush();
        return bad('storage.diskFull');
      }
      this.#file.flush();
      this.#bytes += written;
      return good(undefined);
    } catch (error) {
      return failure(storageProblem(error));
    }
  }

  dispose(): void {
    this.#file.close();
  }
}
