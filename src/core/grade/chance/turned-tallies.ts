/**
 * Hits and weight of every figure, turn after turn. Few figures are kept turn by turn, for their exact sum; of many only
 * the moments are kept, which is all that a normal sum asks for, so that a long take fits into the memory.
 */
import { MOST_EXACT_PARTS, normalSum, sumOfTurns, type TurnedSum } from './turned-sum.ts';

/** Hits and weight of each figure. */
export interface Tally {
  readonly hits: Float64Array;
  readonly of: Float64Array;
}

export const emptyTally = (figures: number): Tally => ({
  hits: new Float64Array(figures),
  of: new Float64Array(figures),
});

export const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);

export class TurnedTallies {
  readonly #figures: number;
  readonly #kept: Tally[] = [];
  readonly #sums: Readonly<Record<'h' | 'o' | 'hh' | 'ho' | 'oo', Float64Array>>;
  #turns = 0;
  #shares = 0;

  constructor(figures: number) {
    this.#figures = figures;
    const sums = () => new Float64Array(figures);
    this.#sums = { h: sums(), o: sums(), hh: sums(), ho: sums(), oo: sums() };
  }

  /** Takes one turn in; one without any event is left out. The tally may be used again afterwards. */
  add({ hits, of }: Tally): void {
    const weight = sumOf(of);
    if (!(weight > 0)) return;
    this.#turns++;
    this.#shares += sumOf(hits) / weight;
    if (this.#figures <= MOST_EXACT_PARTS) {
      this.#kept.push({ hits: hits.slice(), of: of.slice() });
      return;
    }
    const { h, o, hh, ho, oo } = this.#sums;
    for (let figure = 0; figure < this.#figures; figure++) {
      const hit = hits[figure]!;
      const all = of[figure]!;
      h[figure] = h[figure]! + hit;
      o[figure] = o[figure]! + all;
      hh[figure] = hh[figure]! + hit * hit;
      ho[figure] = ho[figure]! + hit * all;
      oo[figure] = oo[figure]! + all * all;
    }
  }

  /** The mean share of the turns; null where no turn had an event. */
  chance(): number | null {
    return this.#turns === 0 ? null : Math.min(1, this.#shares / this.#turns);
  }

  /** How far hits are above their chance: the sum over the figures, each turned by itself. */
  sum(played: Tally, chance: number): TurnedSum {
    const excess = ({ hits, of }: Tally) => hits.map((hit, figure) => hit - chance * of[figure]!);
    if (this.#figures <= MOST_EXACT_PARTS) return sumOfTurns(this.#kept.map(excess), excess(played));
    const { h, o, hh, ho, oo } = this.#sums;
    let mean = 0;
    let variance = 0;
    for (let figure = 0; figure < this.#figures; figure++) {
      const own = (h[figure]! - chance * o[figure]!) / this.#turns;
      const squares = (hh[figure]! - 2 * chance * ho[figure]! + chance * chance * oo[figure]!) / this.#turns;
      mean += own;
      variance += Math.max(0, squares - own * own);
    }
    return normalSum(sumOf(excess(played)), mean, variance);
  }
}
