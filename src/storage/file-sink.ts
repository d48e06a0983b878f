/**
 * A file for the player that is written piece by piece: straight to the disk where the browser offers it (File System
 * Access, WICG), else gathered in Blobs, which browsers keep on their own disk, and then downloaded.
 */
import { good, type Outcome } from '../core/base/outcome.ts';
import { attempt, isNamed } from './database.ts';

type Parts = readonly Uint8Array<ArrayBuffer>[];

interface Sink {
  write(parts: Parts): Promise<Outcome<void>>;
  close(): Promise<Outcome<void>>;
  giveUp(): Promise<void>;
}

/** The part of the standard that is used; not every browser has it, nor the types of the page. */
interface WithPicker {
  showSaveFilePicker(options: { readonly suggestedName: string }): Promise<FileSystemFileHandle>;
}
const hasPicker = (page: object): page is WithPicker => 'showSaveFilePicker' in page;

/**
 * @param download hands a finished Blob to the player
 * @returns null where the player closed the dialogue without naming a file
 */
export async function openSink(
  fileName: string,
  download: (blob: Blob, fileName: string) => void,
): Promise<Outcome<Sink | null>> {
  const page: object = globalThis;
  if (!hasPicker(page)) return good(sinkOfBlobs(fileName, download));
  try {
    const handle = await page.showSaveFilePicker({ suggestedName: fileName });
    return await attempt(async () => sinkOf(await handle.createWritable()));
  } catch (error) {
    // A page in a frame, or one that the player has not touched, may not ask.
    return isNamed(error, 'AbortError') ? good(null) : good(sinkOfBlobs(fileName, download));
  }
}

/** What is written becomes the file when it is closed; until then an older file of that name stays. */
const sinkOf = (file: FileSystemWritableFileStream): Sink => ({
  write: (parts) =>
    attempt(async () => {
      for (const part of parts) await file.write(part);
    }),
  close: () => attempt(() => file.close()),
  giveUp: () => file.abort().catch(() => undefined),
});

function sinkOfBlobs(fileName: string, download: (blob: Blob, fileName: string) => void): Sink {
  let blobs: Blob[] = [];
  return {
    write: (parts) =>
      attempt(() => {
        blobs.push(new Blob([...parts]));
        return Promise.resolve();
      }),
    close: () =>
      attempt(() => {
        download(new Blob(blobs, { type: 'application/zip' }), fileName);
        blobs = [];
        return Promise.resolve();
      }),
    giveUp: () => {
      blobs = [];
      return Promise.resolve();
    },
  };
}
