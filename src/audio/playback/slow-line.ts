/** The page's side of the slowing worker: a line that can be had slower at the same pitch, piece by piece or whole. */
import { good, type Outcome } from '../../core/base/outcome.ts';
import { Requests } from '../../core/base/requests.ts';
import { problem } from '../../core/words/problem.ts';
import type { SlowAnswer, SlowRequest, SlowRun } from './slow-messages.ts';

/** Answers with the next piece, or null at the end; pieces follow one another without a gap. */
export type NextPiece = () => Promise<Outcome<Float32Array<ArrayBuffer> | null>>;

export interface SlowLine {
  /** Begins a run; the one before ends. Seconds are of the line. */
  pieces(fromSeconds: number, toSeconds: number, speed: number): NextPiece;
  dispose(): void;
}

const WORKER_GONE = problem('playback.workerGone');

/**
 * The worker starts with the first run, so that a player who never slows down waits for nothing.
 * @param samplesOf the line's samples, asked for once, when the worker starts
 * @param wantedRate of the pieces, in Hz
 */
export function createSlowLine(
  samplesOf: () => Float32Array<ArrayBuffer>,
  { sampleRate, wantedRate }: { readonly sampleRate: number; readonly wantedRate: number },
  makeWorker: () => Worker = newWorker,
): SlowLine {
  const requests = new Requests();
  let worker: Worker | null = null;
  let lastRun = 0;

  const opened = (): Worker => {
    if (worker !== null) return worker;
    const fresh = makeWorker();
    fresh.onmessage = ({ data }: MessageEvent<SlowAnswer>) => requests.answer(data.id, data.outcome);
    fresh.onerror = () => requests.fail(WORKER_GONE);
    worker = fresh;
    const samples = samplesOf();
    void requests.ask((id) =>
      fresh.postMessage({ id, kind: 'open', samples, sampleRate, wantedRate } satisfies SlowRequest),
    );
    return fresh;
  };
  return {
    pieces: (fromSeconds, toSeconds, speed) => {
      const run: SlowRun = { number: ++lastRun, fromSeconds, toSeconds, speed };
      return () => {
        const to = opened();
        return requests.ask((id) => to.postMessage({ id, kind: 'next', run } satisfies SlowRequest));
      };
    },
    dispose: () => {
      worker?.terminate();
      requests.fail(WORKER_GONE);
    },
  };
}

/** All pieces as one. */
export async function wholeOf(next: NextPiece): Promise<Outcome<Float32Array<ArrayBuffer>>> {
  const pieces: Float32Array[] = [];
  for (;;) {
    const piece = await next();
    if (!piece.ok) return piece;
    if (piece.value === null) break;
    pieces.push(piece.value);
  }
  const whole = new Float32Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return good(whole);
}

const newWorker = () => new Worker(new URL('./slow.worker.ts', import.meta.url), { type: 'module' });
