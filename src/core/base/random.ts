/** Seeded random numbers: the band varies, and the same seed gives the same notes. */

export interface Chance {
  /** Uniform in [0, 1). */
  next(): number;
  /** One of the items, by weight where weights are given. */
  pick<T>(items: readonly T[], weights?: readonly number[]): T;
}

/**
 * A stream of random numbers for each place that needs one: the same `place` gives the same stream.
 * 32-bit integer hash with full avalanche (multiply and xor-shift rounds), a counter as its state.
 */
export function chance(...place: readonly number[]): Chance {
  let state = 0x9e3779b9;
  for (const part of place) state = scramble(state ^ scramble((part | 0) + 0x7f4a7c15));
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    return (scramble(state) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    pick: (items, weights) => {
      if (items.length === 0) throw new RangeError('pick needs at least one item');
      const weightOf = (i: number) => weights?.[i] ?? 1;
      let rest = next() * items.reduce((sum, _, i) => sum + weightOf(i), 0);
      const chosen = items.findIndex((_, i) => (rest -= weightOf(i)) < 0);
      return items[chosen < 0 ? items.length - 1 : chosen]!;
    },
  };
}

function scramble(value: number): number {
  let x = value | 0;
  x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
  x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
  return x ^ (x >>> 15);
}

/** No player strikes twice with the same velocity: it varies by up to this much in both directions. */
const velocityLoose = 5;

/** A MIDI velocity varied at random, 1 to 127. */
export function loosen(velocity: number, chance: Chance): number {
  const loose = Math.round((chance.next() * 2 - 1) * velocityLoose);
  return Math.min(127, Math.max(1, velocity + loose));
}
