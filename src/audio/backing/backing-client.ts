/** The page's side of the backing worker: typed requests, answers as outcomes, one recording at a time. */
import type { Outcome } from '../../core/base/outcome.ts';
import { Requests } from '../../core/base/requests.ts';
import { problem } from '../../core/words/problem.ts';
import type {
  BackingAnswer,
  BackingFacts,
  BackingRequest,
  BakedRound,
  DetectedBeats,
  FoundChart,
  RoundOrder,
} from './backing-messages.ts';

const WORKER_GONE = problem('backing.workerGone');

type Order<R> = R extends unknown ? Omit<R, 'id'> : never;

export class BackingClient {
  readonly #requests = new Requests();
  readonly #worker: Worker;
  #progress: (share: number) => void = () => undefined;

  constructor(makeWorker: () => Worker = newWorker) {
    this.#worker = makeWorker();
    this.#worker.onmessage = ({ data }: MessageEvent<BackingAnswer>) => {
      if (data.kind === 'progress') this.#progress(data.share);
      else this.#requests.answer(data.id, data.outcome);
    };
    this.#worker.onerror = () => this.#requests.fail(WORKER_GONE);
  }

  /**
   * Reads a recording; the requests below are about it.
   * @param signal ends the worker in the middle of it; the answer is a problem then
   */
  async open(file: Blob, name: string, signal?: AbortSignal): Promise<Outcome<BackingFacts>> {
    const end = () => this.dispose();
    if (signal?.aborted) end();
    signal?.addEventListener('abort', end);
    const facts = await this.#ask<BackingFacts>({ kind: 'open', file, name });
    signal?.removeEventListener('abort', end);
    return facts;
  }

  beats(): Promise<Outcome<DetectedBeats>> {
    return this.#ask({ kind: 'beats' });
  }

  /**
   * @param beats seconds, rising; null: the ones that are found
   * @param progress called with the share that is done
   */
  chords(beats: readonly number[] | null, progress: (share: number) => void): Promise<Outcome<FoundChart>> {
    this.#progress = progress;
    return this.#ask({ kind: 'chords', beats });
  }

  whole(): Promise<Outcome<BakedRound>> {
    return this.#ask({ kind: 'whole' });
  }

  /** @param progress called with the share that is done, of the latest request */
  round(order: RoundOrder, progress: (share: number) => void): Promise<Outcome<BakedRound>> {
    this.#progress = progress;
    return this.#ask({ kind: 'round', order });
  }

  dispose(): void {
    this.#worker.terminate();
    this.#requests.fail(WORKER_GONE);
  }

  #ask<T>(order: Order<BackingRequest>): Promise<Outcome<T>> {
    return this.#requests.ask((id) => this.#worker.postMessage({ ...order, id }));
  }
}

const newWorker = () => new Worker(new URL('./backing.worker.ts', import.meta.url), { type: 'module' });
