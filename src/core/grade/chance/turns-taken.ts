/** Which turns of a chart are asked: every one of a short chart, an even choice of a long one's. */
import { chance } from '../../base/random.ts';

/**
 * More turns than these say nothing more: the mean of so many differs from that of all by a hundredth or so of a share,
 * and every turn asks all notes again. Through all twelve keys a form of eight bars still has every turn.
 */
export const MOST_TURNS = 128;

/**
 * The turns, in bars, from 0 (the chart as it stands) up. Of a long chart's, one is drawn from each of as many equal
 * stretches: even steps would fall together with a form that comes again after as many bars.
 */
export function turnsTaken(bars: number): readonly number[] {
  if (bars <= MOST_TURNS) return Array.from({ length: bars }, (_, turn) => turn);
  const { next } = chance(bars);
  return Array.from({ length: MOST_TURNS }, (_, part) =>
    part === 0 ? 0 : Math.floor(((part + next()) * bars) / MOST_TURNS),
  );
}
