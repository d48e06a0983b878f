/** Which bars of a long form are drawn: those in sight and as much above and below, so that a form of any length is light. */

/** Forms of so many bars are drawn whole; longer ones are rare, and heavy. */
export const MOST_BARS_WHOLE = 128;
/** What is drawn begins and ends at multiples of this, so that it rarely changes while the page is scrolled. */
const ROWS_AT_ONCE = 8;

/** Bars from 0; `to` is the first that is not drawn any more. Both lie at the beginning of a row, or at the end of all. */
export interface DrawnBars {
  readonly from: number;
  readonly to: number;
}

/** Where the list of bars lies: its upper edge below that of the window, and its whole height, in pixels. */
interface ListPlace {
  readonly top: number;
  readonly height: number;
}

/** @param bars of the whole form, `inRow` of them in a row */
export function drawnBars(bars: number, inRow: number, list: ListPlace, windowHeight: number): DrawnBars {
  if (bars <= MOST_BARS_WHOLE) return { from: 0, to: bars };
  const rows = Math.ceil(bars / inRow);
  const lastStart = Math.floor((rows - 1) / ROWS_AT_ONCE);
  const stepPixels = (ROWS_AT_ONCE * list.height) / rows;
  // A list that is not shown has no height.
  const stepAt = (pixels: number) => (stepPixels > 0 ? pixels / stepPixels : 0);
  const first = Math.min(lastStart, Math.max(0, Math.floor(stepAt(-list.top - windowHeight))));
  const end = Math.max(first + 1, Math.ceil(stepAt(2 * windowHeight - list.top)));
  return { from: first * ROWS_AT_ONCE * inRow, to: Math.min(bars, end * ROWS_AT_ONCE * inRow) };
}
