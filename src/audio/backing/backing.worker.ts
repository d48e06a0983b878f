/** Works on a backing off the main thread. Only passes messages: the work is in backing-job.ts. */
import type { BackingRequest } from './backing-messages.ts';
import { BackingJob } from './backing-job.ts';

const job = new BackingJob((message, transfer = []) => self.postMessage(message, { transfer }));

self.onmessage = ({ data }: MessageEvent<BackingRequest>) => {
  void job.handle(data);
};
