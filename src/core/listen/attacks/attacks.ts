import { BLOCKS_KEPT, TICKS_KEPT, type Traces } from '../frames/analyser.ts';
import { BLOCK, INNER_RATE, TICK_HOP } from '../frames-tuning.ts';
import * as S from '../tuning.ts';

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
export function evenEnergy(attack: Attack): boolean {
  return attack.energyRatio > 1 / S.LEGATO_ENERGY && attack.energyRatio < S.LEGATO_ENERGY;
}

/** Ticks on each side in which a peak must be the highest: 16 ms. */
const PEAK_REACH = 4;
/** Energy before and after is taken over one period of E1: 25 ms. */
const ENERGY_BLOCKS = 25;
/** Ticks of the local median, before and after: 120 ms and 32 ms. */
const MEDIAN_BEFORE = 30;
const MEDIAN_AFTER = 8;
/** Blocks (1 ms) averaged on each side when the steepest rise is sought. */
const RISE_BLOCKS = 4;

/** Picks attacks from the flux, MEDIAN_AFTER ticks late. */
export class AttackPicker {
  readonly #traces: Traces;
  readonly #sorted = new Float32Array(MEDIAN_BEFORE + MEDIAN_AFTER + 1);
  #tick = 0;

  constructor(traces: Traces) {
    this.#traces = traces;
  }

  /** All attacks since the last call. */
  pick(found: Attack[]): void {
    for (; this.#tick + MEDIAN_AFTER < this.#traces.ticks; this.#tick++) {
      const attack = this.#at(this.#tick);
      if (attack) found.push(attack);
    }
  }

  #at(tick: number): Attack | null {
    const { flux } = this.#traces;
    const here = flux[tick % TICKS_KEPT]!;
    if (here < S.ATTACK_FLUX) return null;
    for (let k = 1; k <= PEAK_REACH; k++) {
      if (tick >= k && flux[(tick - k) % TICKS_KEPT]! > here) return null;
      if (flux[(tick + k) % TICKS_KEPT]! >= here) return null;
    }
    const first = Math.max(0, tick - MEDIAN_BEFORE);
    const count = tick + MEDIAN_AFTER - first + 1;
    for (let k = 0; k < count; k++) this.#sorted[k] = flux[(first + k) % TICKS_KEPT]!;
    const sorted = this.#sorted.subarray(0, count).sort();
    const ratio = here / Math.max(sorted[count >> 1]!, 0.004);
    if (ratio < S.ATTACK_RATIO) return null;
    const block = this.#foot(this.#steepest(tick));
    return {
      seconds: (block * BLOCK) / INNER_RATE,
      flux: here,
      ratio,
      energyRatio:
        this.#energy(block, ENERGY_BLOCKS) / (this.#energy(block - ENERGY_BLOCKS, ENERGY_BLOCKS) + 1e-12),
    };
  }

  /** The block of steepest relative rise within the window of the tick. */
  #steepest(tick: number): number {
    const end = ((tick + 1) * TICK_HOP) / BLOCK;
    let best = -Infinity;
    let at = end - 8;
    const floor = 0.02 * this.#bright(Math.max(0, end - 22), 24) + 1e-10;
    for (let block = Math.max(0, end - 20); block <= end; block++) {
      const before = this.#bright(block - RISE_BLOCKS, RISE_BLOCKS) + floor;
      const after = this.#bright(block, RISE_BLOCKS) + floor;
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
    const before = this.#energy(steepest - 40, 16);
    let peak = 0;
    for (let b = steepest; b < steepest + 40; b += 4) peak = Math.max(peak, this.#energy(b, 8));
    const threshold = 1.5 * before + S.FOOT_SHARE * peak;
    let block = steepest;
    while (block > steepest - 30 && this.#energy(block - 3, 3) > threshold) block--;
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
