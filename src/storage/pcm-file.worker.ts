/** Writes one take: opens its private file and hands every message on to `PcmFile`. */
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import { soundsFolder } from './sounds-folder.ts';
import { storageProblem } from './database.ts';
import { PcmFile, type SyncFile } from './pcm-file.ts';

export type PcmFileRequest =
  | { readonly id: number; readonly kind: 'open'; readonly name: string }
  | { readonly id: number; readonly kind: 'append'; readonly samples: Int16Array<ArrayBuffer> }
  | { readonly id: number; readonly kind: 'close' };

export interface PcmFileAnswer {
  readonly id: number;
  readonly outcome: Outcome<void>;
  /**
   * What was appended, handed back to be filled again. This worker creates so few objects that its garbage collector seldom
   * runs: buffers that stayed with it held several minutes of sound in memory.
   */
  readonly written?: Int16Array<ArrayBuffer>;
}

let file: PcmFile | null = null;

async function open(name: string): Promise<Outcome<void>> {
  try {
    const handle = await (await soundsFolder()).getFileHandle(name, { create: true });
    // Only workers have this function, so that the page's type library does not contain it.
    const opener = handle as unknown as { createSyncAccessHandle(): Promise<SyncFile> };
    file = new PcmFile(await opener.createSyncAccessHandle());
    return good(undefined);
  } catch (error) {
    return failure(storageProblem(error));
  }
}

async function act(request: PcmFileRequest): Promise<Outcome<void>> {
  if (request.kind === 'open') return open(request.name);
  if (request.kind === 'append') return file?.append(request.samples) ?? failure(storageProblem(null));
  file?.dispose();
  file = null;
  return good(undefined);
}

self.onmessage = async ({ data }: MessageEvent<PcmFileRequest>) => {
  const outcome = await act(data);
  if (data.kind !== 'append') return self.postMessage({ id: data.id, outcome } satisfies PcmFileAnswer);
  const { id, samples } = data;
  self.postMessage({ id, outcome, written: samples } satisfies PcmFileAnswer, { transfer: [samples.buffer] });
};
