/** Slows a line down off the main thread. Only passes messages: the work is in slow-job.ts. */
import type { SlowRequest } from './slow-messages.ts';
import { SlowJob } from './slow-job.ts';

const job = new SlowJob((message, transfer = []) => self.postMessage(message, { transfer }));

self.onmessage = ({ data }: MessageEvent<SlowRequest>) => {
  void job.handle(data);
};
