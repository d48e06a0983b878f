/** The rendering worker, with an answer as a promise. Answers are matched to requests by number. */
import type { Stroke } from '../../core/band/line.ts';
import type { HeardNote } from '../../core/take/note.ts';
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import type { BandSound } from '../../core/sound/render-events.ts';
import type { FromRenderWorker, RenderFailure, ToRenderWorker } from './render-messages.ts';
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

/**
 * Loads the kit into a worker of its own; sounds come at `sampleRate`. What could not be fetched is fetched again with
 * the next request: the network may be back.
 */
export function createBandRenderer(kitUrl: string, sampleRate: number): BandRenderer {
  const waiting = new Map<number, (answer: FromRenderWorker) => void>();
  let lastId = 0;
  /** null until the first request, and once it has failed. */
  let worker: Worker | null = null;
  /** null until the first request, and once the kit could not be loaded. */
  let opening: Promise<Outcome<unknown>> | null = null;

  const failAll = (failure: RenderFailure) => {
    for (const [id, answer] of waiting) answer({ id, ok: false, ...failure });
    waiting.clear();
  };
  const startWorker = (): Worker => {
    const started = new Worker(new URL('./band-render.worker.ts', import.meta.url), { type: 'module' });
    started.onmessage = ({ data }: MessageEvent<FromRenderWorker>) => {
      waiting.get(data.id)?.(data);
      waiting.delete(data.id);
    };
    started.onerror = (event) => {
      worker = null;
      opening = null;
      // A script that can't be fetched gives an event without any message (HTML, "run a worker").
      failAll({ reason: event.message || null, isNotLoaded: !('message' in event) });
    };
    return started;
  };

  const ask = async (message: (id: number) => ToRenderWorker) => {
    const id = ++lastId;
    worker ??= startWorker();
    const asked = worker;
    const answer = await new Promise<FromRenderWorker>((resolve) => {
      waiting.set(id, resolve);
      asked.postMessage(message(id));
    });
    if (answer.ok) return good(answer.result);
    return answer.isNotLoaded ? bad('band.notLoaded') : bad('band.failed', { reason: answer.reason });
  };
  const open = async (): Promise<Outcome<unknown>> => {
    opening ??= ask((id) => ({
      id,
      kind: 'open',
      kitUrl: new URL(kitUrl, location.href).href,
      sampleRate,
    }));
    const opened = await opening;
    if (!opened.ok) opening = null;
    return opened;
  };
  // At once, so that the first take need not wait for it.
  void open();
  const run = async (job: RenderJob) => {
    const ready = await open();
    return ready.ok ? ask((id) => ({ id, kind: 'job', job })) : ready;
  };
  return {
    ready: async () => {
      const ready = await open();
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
      worker?.terminate();
      failAll({ reason: null, isNotLoaded: false });
    },
  };
}
