/** The listening worker without a thread: the same session behind the face of a Worker, messages cloned as between threads. */
import type { AnalysisMessage, AnalysisRequest } from '../../src/analysis/messages.ts';
import { AnalysisSession } from '../../src/analysis/session.ts';

export class InProcessWorker {
  onmessage: ((event: { data: AnalysisMessage }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  terminated = false;
  readonly messages: AnalysisMessage[] = [];
  readonly #session = new AnalysisSession((message) => {
    this.messages.push(message);
    queueMicrotask(() => {
      if (!this.terminated) this.onmessage?.({ data: structuredClone(message) });
    });
  });

  postMessage(request: AnalysisRequest, transfer: Transferable[] = []): void {
    // A Blob can't be cloned by every Node, and is never changed.
    const received = 'file' in request ? request : structuredClone(request, { transfer });
    try {
      void this.#session.handle(received);
    } catch {
      // What is thrown in a worker and not caught there comes to its page as an error.
      this.crash();
    }
  }

  terminate(): void {
    this.terminated = true;
  }

  /** The thread dies. */
  crash(): void {
    this.terminated = true;
    this.onerror?.({ message: 'it failed' });
  }

  static asWorker(worker: InProcessWorker): Worker {
    return worker as unknown as Worker;
  }
}
