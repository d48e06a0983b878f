/** The page's side of one listening worker: requests are sent to it, and each answer is matched to its request. */
import type { Outcome } from '../core/base/outcome.ts';
import { Requests } from '../core/base/requests.ts';
import { problem, type Problem } from '../core/words/problem.ts';
import type { AnalysisMessage, AnalysisRequest, Order } from './messages.ts';

export const WORKER_GONE = problem('listener.stopped');
const NOT_LOADED = problem('listener.notLoaded');

export class ListeningWorker {
  readonly #requests = new Requests();
  readonly #worker: Worker;
  #onMessage: (message: AnalysisMessage) => void = () => undefined;
  #onGone: () => void = () => undefined;
  #gone = false;

  constructor(makeWorker: () => Worker) {
    this.#worker = makeWorker();
    this.#worker.onmessage = ({ data }: MessageEvent<AnalysisMessage>) => {
      if (data.kind === 'answer') this.#requests.answer(data.id, data.outcome);
      else this.#onMessage(data);
    };
    this.#worker.onerror = (event) => {
      this.#gone = true;
      // A script that can't be fetched gives an event without any message (HTML, "run a worker").
      this.dispose('message' in event ? WORKER_GONE : NOT_LOADED);
      this.#onGone();
    };
  }

  /** False once its worker has failed or was ended. */
  get alive(): boolean {
    return !this.#gone;
  }

  /** Sets who is told what the worker sends besides answers, and who is told once it has failed. */
  take(onMessage: (message: AnalysisMessage) => void, onGone: () => void = () => undefined): void {
    this.#onMessage = onMessage;
    this.#onGone = onGone;
  }

  ask<T>(order: Order, transfer: Transferable[] = []): Promise<Outcome<T>> {
    return this.#requests.ask((id) => this.#worker.postMessage({ ...order, id }, transfer));
  }

  hop(samples: Float32Array<ArrayBuffer>, band: Float32Array<ArrayBuffer> | null): void {
    const request: AnalysisRequest = { kind: 'hop', samples, band };
    this.#worker.postMessage(request, band ? [samples.buffer, band.buffer] : [samples.buffer]);
  }

  /** Ends the worker; what was asked of it, and whatever is asked later, fails with the problem. */
  dispose(because: Problem = WORKER_GONE): void {
    this.#gone = true;
    this.#worker.terminate();
    this.#requests.fail(because);
  }
}
