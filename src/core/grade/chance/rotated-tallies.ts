/**
 * Hits and weight of every different bar, over the rotations of the chart. For few bars each rotation is kept, for their
 * exact sum; for many only the sums and products are kept that a normal distribution needs, so that a long take fits into
 * memory.
 */
import { MOST_EXACT_PARTS, normalSum, sumOfRotations, type RotatedSum } from './rotated-sum.ts';

/** Hits and weight of each different bar. */
export interface Tally {
  readonly hits: Float64Array;
  readonly of: Float64Array;
}

export const emptyTally = (bars: number): Tally => ({
  hits: new Float64Array(bars),
  of: new Float64Array(bars),
});

export const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);

export class RotatedTallies {
  readonly #bars: number;
  readonly #kept: Tally[] = [];
  readonly #sums: Readonly<Record<'h' | 'o' | 'hh' | 'ho' | 'oo', Float64Array>>;
  #rotations = 0;
  #shares = 0;

  constructor(bars: number) {
    this.#bars = bars;
    const sums = () => new Float64Array(bars);
    this.#sums = { h: sums(), o: sums(), hh: sums(), ho: sums(), oo: sums() };
  }

  /** Takes one rotation in; one without any event is left out. The tally may be used again afterwards. */
  add({ hits, of }: Tally): void {
    const weight = sumOf(of);
    if (!(weight > 0)) return;
    this.#rotations++;
    this.#shares += sumOf(hits) / weight;
    if (this.#bars <= MOST_EXACT_PARTS) {
      this.#kept.push({ hits: hits.slice(), of: of.slice() });
      return;
    }
    const { h, o, hh, ho, oo } = this.#sums;
    for (let bar = 0; bar < this.#bars; bar++) {
      const hit = hits[bar]!;
      const all = of[bar]!;
      h[bar] = h[bar]! + hit;
      o[bar] = o[bar]! + all;
      hh[bar] = hh[bar]! + hit * hit;
      ho[bar] = ho[bar]! + hit * all;
      oo[bar] = oo[bar]! + all * all;
    }
  }

  /** The mean share over the rotations; null where no rotation had an event. */
  chance(): number | null {
    return this.#rotations === 0 ? null : Math.min(1, this.#shares / this.#rotations);
  }

  /** How far the hits as played are above their chance: summed over the bars, each rotated independently. */
  sum(played: Tally, chance: number): RotatedSum {
    const excess = ({ hits, of }: Tally) => hits.map((hit, bar) => hit - chance * of[bar]!);
    if (this.#bars <= MOST_EXACT_PARTS) return sumOfRotations(this.#kept.map(excess), excess(played));
    const { h, o, hh, ho, oo } = this.#sums;
    let mean = 0;
    let variance = 0;
    for (let bar = 0; bar < this.#bars; bar++) {
      const own = (h[bar]! - chance * o[bar]!) / this.#rotations;
      const squares = (hh[bar]! - 2 * chance * ho[bar]! + chance * chance * oo[bar]!) / this.#rotations;
      mean += own;
      variance += Math.max(0, squares - own * own);
    }
    return normalSum(sumOf(excess(played)), mean, variance);
  }
}
