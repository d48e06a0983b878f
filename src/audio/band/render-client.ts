/** The rendering worker, with an answer as a promise. Answers are matched to requests by number. */
import type { Stroke } from '../../core/band/line.ts';
import type { HeardNote } from '../../core/take/note.ts';
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import type { BandSound } from '../../core/sound/render-events.ts';
import type { FromRenderWorker, ToRenderWorker } from './render-messages.ts';
import type { BandJob, RenderJob } from '../../core/sound/render-job.ts';

export interface BandRenderer {
  /** Resolves when the kit is loaded. */
  ready(): Promise<Outcome<void>>;
  band(job: Omit<BandJob, 'kind'>): Promise<Outcome<BandSound>>;
  line(
    strokes: readonly Stroke[],
    program: number,
    place: { readonly bpm: number; readonly startBeat: number },
  ): Promise<Outcome<Float32Array<ArrayBuffer>>>;
  /** Notes from second 0 on. @param instrument whose sound is wanted; the guitar's where it is left out */
  notes(
    notes: readonly HeardNote[],
    durationSeconds: number,
    instrument?: string,
  ): Promise<Outcome<Float32Array<ArrayBuffer>>>;
  dispose(): void;
}

/** Loads the kit into a worker of its own; sounds come at `sampleRate`. */
export function createBandRenderer(kitUrl: string, sampleRate: number): BandRenderer {
  const worker = new Worker(new URL('./band-render.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (answer: FromRenderWorker) => void>();
  let lastId = 0;
  const failAll = (reason: string | null) => {
    for (const [id, answer] of waiting) answer({ id, ok: false, reason });
    waiting.clear();
  };
  worker.onmessage = ({ data }: MessageEvent<FromRenderWorker>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  };
  worker.onerror = (event) => failAll(event.message || null);

  const ask = async (message: (id: number) => ToRenderWorker) => {
    const id = ++lastId;
    const answer = await new Promise<FromRenderWorker>((resolve) => {
      waiting.set(id, resolve);
      worker.postMessage(message(id));
    });
    if (answer.ok) return good(answer.result);
    return bad('band.failed', { reason: answer.reason });
  };
  const opened = ask((id) => ({ id, kind: 'open', kitUrl: new URL(kitUrl, location.href).href, sampleRate }));
  const run = async (job: RenderJob) => {
    const ready = await opened;
    return ready.ok ? ask((id) => ({ id, kind: 'job', job })) : ready;
  };
  return {
    ready: async () => {
      const ready = await opened;
      return ready.ok ? good(undefined) : ready;
    },
    band: async (job) => (await run({ kind: 'band', ...job })) as Outcome<BandSound>,
    line: async (strokes, program, place) =>
      (await run({ kind: 'line', strokes, program, ...place })) as Outcome<Float32Array<ArrayBuffer>>,
    notes: async (notes, durationSeconds, instrument) =>
      (await run({
        kind: 'notes',
        notes,
        durationSeconds,
        ...(instrument !== undefined && { instrument }),
      })) as Outcome<Float32Array<ArrayBuffer>>,
    dispose: () => {
      worker.terminate();
      failAll(null);
    },
  };
}
