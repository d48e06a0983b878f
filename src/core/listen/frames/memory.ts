import * as S from '../tuning/frames.ts';
import { PartialFinder, type Partials } from './partials.ts';

/** Inner samples remembered: 10.9 s, a power of two. */
const MEMORY = 131072;

/** The sound of the last ten seconds at the inner rate, to be looked at again once a note is known. */
export class SoundMemory {
  readonly #samples = new Float32Array(MEMORY);
  readonly #partials = new PartialFinder();
  #count = 0;

  push(samples: Float32Array): void {
    const from = this.#count & (MEMORY - 1);
    const fits = Math.min(samples.length, MEMORY - from);
    this.#samples.set(samples.subarray(0, fits), from);
    this.#samples.set(samples.subarray(fits), 0);
    this.#count += samples.length;
  }

  /** Partials of `length` inner samples from `seconds` on; null where they have not come in or are forgotten. */
  partialsAt(seconds: number, length: number): Partials | null {
    const from = Math.round(seconds * S.INNER_RATE);
    if (from < Math.max(0, this.#count - MEMORY) || from + length > this.#count) return null;
    return this.#partials.find((i) => this.#samples[(from + i) & (MEMORY - 1)]!, length);
  }
}
