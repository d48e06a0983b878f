/** Renders off the main thread. Only passes messages: the work is in render-job.ts. */
import { buffersOf, runJob } from '../../core/sound/render-job.ts';
import type { FromRenderWorker, ToRenderWorker } from './render-messages.ts';
import { createSynth, loadKit, type Synth } from '../../core/sound/synth.ts';
import { warmUp } from '../../core/sound/warm-up.ts';

let synth: Promise<Synth> | null = null;

class KitNotLoaded extends Error {}

/** null where the server does not answer, stops in the middle, or has no such file. */
async function fetched(url: string): Promise<ArrayBuffer | null> {
  try {
    const answer = await fetch(url);
    return answer.ok ? await answer.arrayBuffer() : null;
  } catch {
    return null;
  }
}

async function open(kitUrl: string, sampleRate: number): Promise<Synth> {
  const bytes = await fetched(kitUrl);
  if (bytes === null) throw new KitNotLoaded();
  const opened = createSynth(await loadKit(bytes), sampleRate);
  const steps = warmUp(opened);
  // One step at a time, so that requests that came meanwhile are answered in between.
  const next = () => void (steps.next().done !== true && setTimeout(next));
  setTimeout(next);
  return opened;
}

const send = (message: FromRenderWorker, transfer: Transferable[] = []) =>
  self.postMessage(message, { transfer });

self.onmessage = async ({ data }: MessageEvent<ToRenderWorker>) => {
  try {
    if (data.kind === 'open') synth = open(data.kitUrl, data.sampleRate);
    const ready = await synth;
    if (!ready) throw new Error('the renderer was not opened');
    if (data.kind === 'open') return send({ id: data.id, ok: true, result: null });
    const result = runJob(ready, data.job);
    send({ id: data.id, ok: true, result }, buffersOf(result));
  } catch (error) {
    send({
      id: data.id,
      ok: false,
      reason: error instanceof Error ? error.message : String(error),
      isNotLoaded: error instanceof KitNotLoaded,
    });
  }
};
