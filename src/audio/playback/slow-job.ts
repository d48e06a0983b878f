/** What the slowing worker does, without the worker: keeps one line and hands out stretches of it, slower, in pieces. */
import { bad, good, type Outcome } from '../../core/base/outcome.ts';
import { atRate, stretchInPieces } from '../backing/stretch.ts';
import type { SlowAnswer, SlowRequest, SlowRun } from './slow-messages.ts';

/** Enough to hear at once, short enough to be ready at once; later pieces are longer, to ask less often. */
const FIRST_PIECE_SECONDS = 1;
const PIECE_SECONDS = 4;

export class SlowJob {
  readonly #post: (message: SlowAnswer, transfer?: Transferable[]) => void;
  #line: { readonly samples: Float32Array; readonly sampleRate: number } | null = null;
  #run: { readonly number: number; readonly pieces: Promise<Iterator<readonly Float32Array[]>> } | null =
    null;

  constructor(post: (message: SlowAnswer, transfer?: Transferable[]) => void) {
    this.#post = post;
  }

  /** Never rejects: an error is sent as the answer. */
  async handle(request: SlowRequest): Promise<void> {
    let outcome: Outcome<Float32Array<ArrayBuffer> | null>;
    try {
      outcome = good(request.kind === 'open' ? this.#open(request) : await this.#next(request.run));
    } catch (error) {
      outcome = bad('playback.notSlowed', { reason: error instanceof Error ? error.message : String(error) });
    }
    this.#post(
      { id: request.id, outcome },
      outcome.ok && outcome.value !== null ? [outcome.value.buffer] : [],
    );
  }

  #open({ samples, sampleRate, wantedRate }: Extract<SlowRequest, { kind: 'open' }>): null {
    this.#line = {
      samples: sampleRate === wantedRate ? samples : atRate(samples, sampleRate, wantedRate),
      sampleRate: wantedRate,
    };
    this.#run = null;
    return null;
  }

  async #next(run: SlowRun): Promise<Float32Array<ArrayBuffer> | null> {
    if (this.#line === null) throw new Error('no line was opened');
    const { samples, sampleRate } = this.#line;
    const isFirst = this.#run?.number !== run.number;
    // A run that another one has followed is over: there is one engine.
    if (isFirst && run.number < (this.#run?.number ?? 0)) return null;
    if (isFirst) {
      const from = Math.round(run.fromSeconds * sampleRate);
      const stretch = samples.subarray(from, Math.round(run.toSeconds * sampleRate));
      this.#run = { number: run.number, pieces: stretchInPieces([stretch], sampleRate, run.speed) };
    }
    const own = this.#run;
    const pieces = await own!.pieces;
    if (own !== this.#run) return null;
    const wanted = (isFirst ? FIRST_PIECE_SECONDS : PIECE_SECONDS) * sampleRate;
    const gathered: Float32Array[] = [];
    let frames = 0;
    while (frames < wanted) {
      const { value, done } = pieces.next();
      const piece = done ? undefined : value[0];
      if (piece === undefined) break;
      gathered.push(piece);
      frames += piece.length;
    }
    return frames === 0 ? null : joined(gathered, frames);
  }
}

function joined(pieces: readonly Float32Array[], frames: number): Float32Array<ArrayBuffer> {
  const whole = new Float32Array(frames);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
