/** Works on a backing off the main thread. Only passes messages: the work is in backing-room.ts. */
import type { BackingRequest } from './backing-messages.ts';
import { BackingRoom } from './backing-room.ts';

const room = new BackingRoom((message, transfer = []) => self.postMessage(message, { transfer }));

self.onmessage = ({ data }: MessageEvent<BackingRequest>) => {
  void room.handle(data);
};
