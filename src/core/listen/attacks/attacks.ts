import type { Traces } from '../frames/analyser.ts';
import { BLOCK, BLOCKS_KEPT, INNER_RATE, TICK_HOP, TICKS_KEPT } from '../tuning/frames.ts';
import * as S from '../tuning/attacks.ts';

/** A sudden rise in the sound, dated to the moment where it starts. */
export interface Attack {
  readonly seconds: number;
  /** Flux at its peak, nepers a bin. */
  readonly flux: number;
  /** Flux against the local median. */
  readonly ratio: number;
  /** Energy of the 25 ms after over that of the 25 ms before. */
  readonly energyRatio: number;
}

/** A new note whatever its pitch. */
export function isStrong(attack: Attack): boolean {
  return (
    (attack.flux >= S.STRONG_FLUX && attack.ratio >= S.STRONG_RATIO) ||
    (attack.flux >= S.CLEAR_FLUX && attack.ratio >= S.CLEAR_RATIO && attack.energyRatio >= S.CLEAR_ENERGY)
  );
}

/** No louder and no softer than before: the string was not struck anew. */
export function hasEvenEnergy(attack: Attack): boolean {
  return attack.energyRatio > 1 / S.LEGATO_ENERGY && attack.energyRatio < S.LEGATO_ENERGY;
}

/** Picks attacks from the flux, MEDIAN_AFTER ticks late. */
export class AttackPicker {
  readonly #traces: Traces;
  readonly #sorted = new Float32Array(S.MEDIAN_BEFORE + S.MEDIAN_AFTER + 1);
  #tick = 0;

  constructor(traces: Traces) {
    this.#traces = traces;
  }

  /** All attacks since the last call. */
  pick(found: Attack[]): void {
    for (; this.#tick + S.MEDIAN_AFTER < this.#traces.ticks; this.#tick++) {
      const attack = this.#at(this.#tick);
      if (attack) found.push(attack);
    }
  }

  #at(tick: number): Attack | null {
    const { flux } = this.#traces;
    const here = flux[tick % TICKS_KEPT]!;
    if (here < S.ATTACK_FLUX) return null;
    for (let k = 1; k <= S.PEAK_REACH; k++) {
      if (tick >= k && flux[(tick - k) % TICKS_KEPT]! > here) return null;
      if (flux[(tick + k) % TICKS_KEPT]! >= here) return null;
    }
    const first = Math.max(0, tick - S.MEDIAN_BEFORE);
    const count = tick + S.MEDIAN_AFTER - first + 1;
    for (let k = 0; k < count; k++) this.#sorted[k] = flux[(first + k) % TICKS_KEPT]!;
    const sorted = this.#sorted.subarray(0, count).sort();
    const ratio = here / Math.max(sorted[count >> 1]!, S.LEAST_MEDIAN_FLUX);
    if (ratio < S.ATTACK_RATIO) return null;
    const block = this.#foot(this.#steepest(tick));
    return {
      seconds: (block * BLOCK) / INNER_RATE,
      flux: here,
      ratio,
      energyRatio:
        this.#energy(block, S.ENERGY_BLOCKS) /
        (this.#energy(block - S.ENERGY_BLOCKS, S.ENERGY_BLOCKS) + 1e-12),
    };
  }

  /** The block of steepest relative rise within the window of the tick. */
  #steepest(tick: number): number {
    const end = ((tick + 1) * TICK_HOP) / BLOCK;
    let best = -Infinity;
    let at = end - S.NO_RISE_BLOCKS;
    const floor =
      S.RISE_FLOOR_SHARE * this.#bright(Math.max(0, end - S.RISE_FLOOR_BACK), S.RISE_FLOOR_BLOCKS) + 1e-10;
    for (let block = Math.max(0, end - S.STEEPEST_BLOCKS); block <= end; block++) {
      const before = this.#bright(block - S.RISE_BLOCKS, S.RISE_BLOCKS) + floor;
      const after = this.#bright(block, S.RISE_BLOCKS) + floor;
      const rise = Math.log(after / before);
      if (rise > best) {
        best = rise;
        at = block;
      }
    }
    return at;
  }

  /** Slow attacks begin well before their steepest rise: back to where the sound stands out from what was there. */
  #foot(steepest: number): number {
    const before = this.#energy(steepest - S.FOOT_BEFORE_BACK, S.FOOT_BEFORE_BLOCKS);
    let peak = 0;
    for (let b = steepest; b < steepest + S.FOOT_PEAK_WITHIN; b += S.FOOT_PEAK_STEP)
      peak = Math.max(peak, this.#energy(b, S.FOOT_PEAK_BLOCKS));
    const threshold = S.FOOT_ABOVE * before + S.FOOT_SHARE * peak;
    let block = steepest;
    while (block > steepest - S.FOOT_REACH && this.#energy(block - S.FOOT_BLOCKS, S.FOOT_BLOCKS) > threshold)
      block--;
    return block;
  }

  #energy(block: number, count: number): number {
    return mean(this.#traces.energy, block, count, this.#traces.blocks);
  }

  #bright(block: number, count: number): number {
    return mean(this.#traces.bright, block, count, this.#traces.blocks);
  }
}

function mean(ring: Float32Array, from: number, count: number, written: number): number {
  let sum = 0;
  for (let i = Math.max(0, from); i < Math.min(written, from + count); i++) sum += ring[i % BLOCKS_KEPT]!;
  return sum / count;
}
