/** Jobs spread over worker threads, one a core; results come back in the order of the jobs. */
import { Worker } from 'node:worker_threads';
import { problem } from '../core/words/problem.ts';
import type { BatchJob, BatchResult } from './batch-job.ts';

/** A worker that stops by an error is replaced; the job in which it stopped has failed, and no other. */
class JobWorker {
  readonly #script: string;
  #worker: Worker | null = null;

  constructor(script: string) {
    this.#script = script;
  }

  do(job: BatchJob): Promise<BatchResult> {
    const worker = (this.#worker ??= new Worker(this.#script));
    return new Promise((resolve) => {
      const settle = (result: BatchResult) => {
        worker.off('message', settle).off('error', fail).off('exit', leave);
        resolve(result);
      };
      const fail = (error: unknown) => {
        this.#worker = null;
        const reason = error instanceof Error ? error.message : String(error);
        settle({ kind: 'problem', problem: problem('cli.fault', { reason }) });
      };
      const leave = (code: number) => {
        fail(new Error(`worker ended with ${code}`));
      };
      worker.on('message', settle).on('error', fail).on('exit', leave);
      worker.postMessage(job);
    });
  }

  async stop(): Promise<void> {
    await this.#worker?.terminate();
  }
}

/**
 * Does jobs on `threads` workers and yields the results in the order of the jobs. No more than a few results wait for an
 * earlier one, so that memory does not grow with the number of jobs.
 * @param script the built command line, which serves jobs when it is started as a worker
 */
export async function* runJobs(
  jobs: readonly BatchJob[],
  { script, threads }: { readonly script: string; readonly threads: number },
): AsyncGenerator<{ readonly job: BatchJob; readonly result: BatchResult }> {
  const workers = Array.from({ length: Math.min(threads, jobs.length) }, () => new JobWorker(script));
  const free = [...workers];
  const waiting: { readonly job: BatchJob; readonly result: Promise<BatchResult> }[] = [];
  const released: (() => void)[] = [];
  let next = 0;
  const start = async (job: BatchJob): Promise<BatchResult> => {
    while (free.length === 0) await new Promise<void>((resolve) => released.push(resolve));
    const worker = free.pop()!;
    try {
      return await worker.do(job);
    } finally {
      free.push(worker);
      released.shift()?.();
    }
  };
  try {
    while (next < jobs.length || waiting.length > 0) {
      while (next < jobs.length && waiting.length < AHEAD * workers.length) {
        const job = jobs[next++]!;
        waiting.push({ job, result: start(job) });
      }
      const { job, result } = waiting.shift()!;
      yield { job, result: await result };
    }
  } finally {
    await Promise.all(workers.map((worker) => worker.stop()));
  }
}

/** Jobs begun for each worker while the first one of them is not done: enough that no worker waits. */
const AHEAD = 4;
