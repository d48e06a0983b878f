/** Slows a line down off the main thread. Only passes messages: the work is in slow-room.ts. */
import type { SlowRequest } from './slow-messages.ts';
import { SlowRoom } from './slow-room.ts';

const room = new SlowRoom((message, transfer = []) => self.postMessage(message, { transfer }));

self.onmessage = ({ data }: MessageEvent<SlowRequest>) => {
  void room.handle(data);
};
