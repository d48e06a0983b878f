/** Sounds as private files of this page, each written by a worker of its own and safe after every append. */
import { good, type Outcome } from '../core/base/outcome.ts';
import { Requests } from '../core/base/requests.ts';
import { attempt, isNamed, storageProblem } from './database.ts';
import type { PcmFileAnswer, PcmFileRequest } from './pcm-file.worker.ts';
import { soundsFolder } from './sounds-folder.ts';
import type { Sounds, SoundWriter } from './sounds.ts';

const fileName = (id: string) => `${id}.pcm`;

/** A message without its number; one kind at a time. */
type Order<R> = R extends { readonly id: number } ? Omit<R, 'id'> : never;

export class OpfsWriter implements SoundWriter {
  readonly #requests = new Requests();
  readonly #worker: Worker;
  /** Came back from the worker; the next append fills it, so that a long take makes no more of them than a short one. */
  #written: Int16Array<ArrayBuffer> | null = null;

  constructor(worker: Worker) {
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<PcmFileAnswer>) => {
      this.#written = data.written ?? this.#written;
      this.#requests.answer(data.id, data.outcome);
    };
    worker.onerror = () => this.#requests.fail(storageProblem(null));
  }

  open(name: string): Promise<Outcome<void>> {
    return this.#ask({ kind: 'open', name });
  }

  append(samples: Int16Array): Promise<Outcome<void>> {
    const own = this.#written?.length === samples.length ? this.#written : new Int16Array(samples.length);
    this.#written = null;
    own.set(samples);
    return this.#ask({ kind: 'append', samples: own }, [own.buffer]);
  }

  async close(): Promise<void> {
    await this.#ask({ kind: 'close' });
    this.#worker.terminate();
    this.#requests.fail(storageProblem(null));
  }

  #ask(order: Order<PcmFileRequest>, transfer: Transferable[] = []): Promise<Outcome<void>> {
    return this.#requests.ask((id) => this.#worker.postMessage({ ...order, id }, transfer));
  }
}

/** Returns null where this browser has no private files, or none that a worker can write. */
export async function opfsSounds(): Promise<Sounds | null> {
  // Safari before 16.4 has the folder, but not the function that writes. A page can see only the folder, so that
  // `create`
  // may still fail, and the caller then uses the database.
  if (typeof navigator.storage?.getDirectory !== 'function' || typeof Worker === 'undefined') return null;
  try {
    await soundsFolder();
  } catch {
    return null;
  }
  return { create, read, frames, remove };
}

async function create(id: string): Promise<Outcome<SoundWriter>> {
  const writer = new OpfsWriter(
    new Worker(new URL('./pcm-file.worker.ts', import.meta.url), { type: 'module' }),
  );
  const opened = await writer.open(fileName(id));
  if (opened.ok) return good(writer);
  await writer.close();
  return opened;
}

/** The file as it stands; null where there is none. */
async function fileOf(id: string): Promise<File | null> {
  try {
    return await (await (await soundsFolder()).getFileHandle(fileName(id))).getFile();
  } catch (error) {
    if (isNamed(error, 'NotFoundError')) return null;
    throw error;
  }
}

function read(id: string): Promise<Outcome<Int16Array>> {
  return attempt(async () => {
    const bytes = await (await fileOf(id))?.arrayBuffer();
    return bytes ? new Int16Array(bytes, 0, Math.floor(bytes.byteLength / 2)) : new Int16Array(0);
  });
}

async function frames(id: string): Promise<number> {
  return Math.floor(((await fileOf(id))?.size ?? 0) / 2);
}

async function remove(id: string): Promise<void> {
  if ((await fileOf(id)) !== null) await (await soundsFolder()).removeEntry(fileName(id));
}
