/** How many choruses more would give an answer, as a player is told it. */

/** More choruses than this are no next step: they are not counted out. */
const MOST_CHORUSES = 6;

/** null where nothing is to be told. */
export function toldChoruses(count: number): number | 'many';
export function toldChoruses(count: number | null): number | 'many' | null;
export function toldChoruses(count: number | null): number | 'many' | null {
  return count !== null && count > MOST_CHORUSES ? 'many' : count;
}
