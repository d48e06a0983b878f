/**
 * What luck alone would give, by one draw a figure: a figure is one pitch class drawn from the player's own, and it
 * scores at all the places where it stands together. The sum over the figures has an exact distribution.
 *
 * The rule of the anticipation looks at pitch: an early note goes to the new chord only if it fits. So luck has a second
 * try where a note was early enough, and a player who ignores the chords would seem to follow them. The draws allow for
 * it: where the first draw does not fit, the next note is drawn separately.
 */
import { addAllIndependent, type Distribution } from '../../base/statistics.ts';

/** An event that counts or not, where luck draws pitch classes. */
export interface PitchEvent {
  readonly figure: string;
  readonly hit: boolean;
  /** A note before this one could have been taken in its place, had it fitted. */
  readonly hasEarlier: boolean;
  /** A note after this one would have been taken in its place, had this one not fitted. */
  readonly hasLater: boolean;
  /**
   * Whether the event counts, had these pitch classes been drawn.
   * @param drawn for the note itself
   * @param later for the note after, where there is one
   * @param earlier for the note before, where there is one
   */
  counts(drawn: number, later: number, earlier: number): boolean;
}

/** An event of which only the chance is known. */
export interface ChanceEvent {
  readonly figure: string;
  readonly hit: boolean;
  readonly chance: number;
}

export type LuckEvent = PitchEvent | ChanceEvent;

/** The distribution of hits by luck. */
export interface Luck {
  readonly total: Distribution;
  /** Variance of the hits of figures that stand once, and of those that come back. */
  readonly singleVariance: number;
  readonly repeatedVariance: number;
}

/**
 * The distribution of hits by luck.
 * @param own the player's share of each pitch class; see chance.ts
 */
export function luckOf(events: readonly LuckEvent[], own: readonly number[]): Luck {
  const figures = new Map<string, LuckEvent[]>();
  for (const event of events) {
    const figure = figures.get(event.figure);
    if (figure === undefined) figures.set(event.figure, [event]);
    else figure.push(event);
  }
  const parts: Distribution[] = [];
  let singleVariance = 0;
  let repeatedVariance = 0;
  for (const figure of figures.values()) {
    const weights = hitsOfFigure(figure, own);
    parts.push({ from: 0, weights });
    const variance = varianceOf(weights);
    if (figure.length === 1) singleVariance += variance;
    else repeatedVariance += variance;
  }
  return { total: addAllIndependent(parts), singleVariance, repeatedVariance };
}

/** How likely one figure is to score 0, 1, 2 … times at its places. */
export function hitsOfFigure(figure: readonly LuckEvent[], own: readonly number[]): readonly number[] {
  const pitched = figure.filter((event): event is PitchEvent => 'counts' in event);
  return pitched.length === figure.length
    ? hitsByPitch(pitched, own)
    : hitsByChance(figure.filter((event): event is ChanceEvent => 'chance' in event));
}

const NO_DRAW: readonly (readonly [pitchClass: number, weight: number])[] = [[-1, 1]];

function hitsByPitch(figure: readonly PitchEvent[], own: readonly number[]): readonly number[] {
  const weights = new Array<number>(figure.length + 1).fill(0);
  const played = own.flatMap((weight, pitchClass) => (weight > 0 ? [[pitchClass, weight] as const] : []));
  const laterDraws = figure.some((event) => event.hasLater) ? played : NO_DRAW;
  const earlierDraws = figure.some((event) => event.hasEarlier) ? played : NO_DRAW;
  let drawn = 0;
  for (const [pitchClass, share] of played)
    for (const [later, laterShare] of laterDraws)
      for (const [earlier, earlierShare] of earlierDraws) {
        const weight = share * laterShare * earlierShare;
        let hits = 0;
        for (const event of figure) if (event.counts(pitchClass, later, earlier)) hits++;
        weights[hits] = weights[hits]! + weight;
        drawn += weight;
      }
  // Twelve shares that add to one may add to a hair less; a player with no length at all draws nothing.
  weights[0] = Math.max(0, weights[0]! + 1 - drawn);
  return weights;
}

/** One draw for all: an event counts where the draw is under its chance. */
function hitsByChance(figure: readonly ChanceEvent[]): readonly number[] {
  const chances = figure.map(({ chance }) => chance).sort((a, b) => b - a);
  return [1, ...chances].map((chance, k) => chance - (chances[k] ?? 0));
}

function varianceOf(weights: readonly number[]): number {
  const mean = weights.reduce((sum, weight, k) => sum + weight * k, 0);
  return weights.reduce((sum, weight, k) => sum + weight * (k - mean) ** 2, 0);
}
