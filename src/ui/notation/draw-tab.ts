/**
 * The tablature under a line: a line for each string, broken where a fret stands on it. Frets are counted from the capo, as
 * in print (common practice).
 */
import type { Neck } from '../../core/music/instruments.ts';
import type { WrittenPage } from '../../core/notation/written-page.ts';
import { drawLine, drawText } from './draw-text.ts';
import { headMiddle, type DrawnMeasure } from './staff-notes.ts';

const STRING_SPACE = 13.5;
const FRET_SIZE = 15;
/** Room that a figure takes to each side of its middle, for one and for two digits. */
const HALF_FIGURE = [5.5, 9.5] as const;

export const tabHeight = ({ openStrings }: Neck): number => (openStrings.length - 1) * STRING_SPACE;

export function drawTab(
  svg: SVGSVGElement,
  page: WrittenPage,
  { from, width, head }: { readonly from: number; readonly width: number; readonly head: number },
  drawn: readonly DrawnMeasure[],
  top: number,
): void {
  const neck = page.neck!;
  const strings = neck.openStrings.length;
  const yOf = (string: number) => top + (string - 1) * STRING_SPACE;
  const gaps = Array.from({ length: strings }, (): { from: number; to: number }[] => []);
  const figure = (string: number, x: number, text: string) => {
    const half = HALF_FIGURE[text.length > 1 ? 1 : 0];
    gaps[string - 1]!.push({ from: x - half, to: x + half });
    drawText(svg, text, x, yOf(string) + FRET_SIZE * 0.35, {
      size: FRET_SIZE,
      className: 'fret',
      middle: true,
    });
  };
  drawn.forEach(({ content }, i) => {
    page.line.measures[from + i]!.signs.forEach((sign, k) => {
      if (sign.note === null || sign.tiedFrom) return;
      const note = content.notes[k]!;
      const x = headMiddle(note);
      for (const [before, grace] of [...sign.graces].reverse().entries())
        for (const { string, fret } of page.notes[grace]!.places)
          figure(string, x - 21 - 19 * before, String(fret - neck.capo));
      const { places, bend } = page.notes[sign.note]!;
      for (const { string, fret } of places) figure(string, x, String(fret - neck.capo));
      if (bend > 0 && places[0]) drawBend(svg, x + 9, yOf(places[0].string), top, bend);
    });
  });
  gaps.forEach((own, index) => {
    const y = yOf(index + 1);
    let at = 0;
    for (const gap of own.toSorted((a, b) => a.from - b.from)) {
      if (gap.from > at) drawLine(svg, [at, y], [gap.from, y]);
      at = Math.max(at, gap.to);
    }
    if (at < width) drawLine(svg, [at, y], [width, y]);
  });
  const bottom = top + tabHeight(neck);
  drawLine(svg, [0.5, top], [0.5, bottom]);
  for (const { stave } of drawn) {
    const x = stave.getX() + stave.getWidth() - 0.5;
    drawLine(svg, [x, top], [x, bottom]);
  }
  if (head > 0) {
    const middle = (top + bottom) / 2;
    for (const [i, letter] of ['T', 'A', 'B'].entries())
      drawText(svg, letter, 14, middle + (i - 1) * 17 + 6, { size: 17, className: 'fret', middle: true });
  }
}

/** An arrow over the staff, and how far it is bent: ½, 1, 1½ whole steps. */
function drawBend(svg: SVGSVGElement, x: number, y: number, top: number, semitones: number): void {
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  const tip = top - 11;
  path.setAttribute(
    'd',
    `M${x} ${y}Q${x + 9} ${y} ${x + 9} ${tip}M${x + 6} ${tip + 5}L${x + 9} ${tip}L${x + 12} ${tip + 5}`,
  );
  path.setAttribute('fill', 'none');
  path.setAttribute('stroke', 'currentColor');
  svg.append(path);
  const whole = Math.floor(semitones / 2);
  const text = `${whole > 0 ? whole : ''}${semitones % 2 === 1 ? '½' : ''}`;
  drawText(svg, text, x + 15, tip + 4, { size: 12, className: 'fret' });
}
