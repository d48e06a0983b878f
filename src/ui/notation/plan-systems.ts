/** Which measures stand in which line, and how wide each is. */
import { Formatter } from 'vexflow/core';
import type { WrittenPage } from '../../core/notation/written-page.ts';
import { signatureOf, standingSignature, type SystemPlan } from './draw-system.ts';
import { staffMeasure } from './staff-notes.ts';

/** Measures of a line at most: the form is read in fours. */
const MOST_IN_LINE = 4;
/** What VexFlow needs at least is too close to be read at a distance. */
const AIR = 1.45;
const LEAST_WIDTH = 90;
const PADDING = 36;
/** The last line, of a chorus too, is not drawn out further than this. */
const MOST_STRETCH = 1.6;

/**
 * Lays measures into lines of `width` units; a chorus begins a line. A measure that needs more than a line is drawn closer.
 */
export function planSystems(page: WrittenPage, width: number): readonly SystemPlan[] {
  const { measures } = page.line;
  const wanted = measures.map((measure, index) => {
    const { voice } = staffMeasure(page, measure, standingSignature(page, index));
    const least = new Formatter().joinVoices([voice]).preCalculateMinTotalWidth([voice]);
    const turns = index > 0 && page.over[index]!.key !== null ? 60 : 0;
    return Math.max(LEAST_WIDTH, least * AIR + PADDING) + turns;
  });
  const systems: SystemPlan[] = [];
  let from = 0;
  while (from < measures.length) {
    const head = headWidth(page, from);
    let count = 1;
    let sum = wanted[from]!;
    while (
      count < MOST_IN_LINE &&
      from + count < measures.length &&
      page.over[from + count]!.chorus === null &&
      head + sum + wanted[from + count]! <= width
    ) {
      sum += wanted[from + count]!;
      count++;
    }
    const isLast = from + count === measures.length || page.over[from + count]!.chorus !== null;
    const stretch = (width - 1 - head) / sum;
    const factor = isLast ? Math.min(stretch, MOST_STRETCH) : stretch;
    systems.push({ from, head, widths: wanted.slice(from, from + count).map((own) => own * factor) });
    from += count;
  }
  return systems;
}

/** Clef, signature and, in the first line, the meter. */
function headWidth(page: WrittenPage, from: number): number {
  const key = page.over.slice(0, from + 1).findLast((one) => one.key !== null)?.key;
  const signs = key ? signCount(signatureOf(key)) : 0;
  return 44 + 11 * signs + (from === 0 ? 34 : 0);
}

const signCount = (signature: string): number =>
  Math.abs(
    ['Cb', 'Gb', 'Db', 'Ab', 'Eb', 'Bb', 'F', 'C', 'G', 'D', 'A', 'E', 'B', 'F#', 'C#'].indexOf(signature) -
      7,
  );
