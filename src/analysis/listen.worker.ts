/** The listening worker: passes every message to `AnalysisSession`. */
import type { AnalysisRequest } from './messages.ts';
import { AnalysisSession } from './session.ts';

const session = new AnalysisSession((message, transfer = []) => self.postMessage(message, { transfer }));

self.onmessage = ({ data }: MessageEvent<AnalysisRequest>) => {
  void session.handle(data);
};
