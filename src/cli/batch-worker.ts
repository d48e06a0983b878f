/** The worker's side of a batch: a job comes in, its result goes out. */
import { parentPort } from 'node:worker_threads';
import { doJob, type BatchJob } from './batch-job.ts';

/** Answers every job that the main thread sends, one after the other. */
export function serveJobs(): void {
  const port = parentPort;
  if (port === null) throw new Error('serveJobs is for a worker thread');
  port.on('message', (job: BatchJob) => {
    void doJob(job).then((result) => {
      port.postMessage(result);
    });
  });
}
