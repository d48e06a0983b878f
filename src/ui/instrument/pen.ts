/** What every instrument view draws alike: a tone now, a target on its stroke, the slur that leads there. */
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import { cutRim } from '../parts/cut-rim.ts';
import { drawMark } from '../parts/draw-mark.ts';
import { withSigns } from '../parts/engrave.ts';
import type { Inks } from '../parts/inks.ts';

/** A canvas with what is drawn on it everywhere the same. */
export interface Page {
  readonly context: CanvasRenderingContext2D;
  readonly width: number;
  readonly height: number;
  readonly inks: Inks;
  /** Height of a target's mark, in CSS pixels. */
  readonly unit: number;
}

/** Sizes against a target's mark. */
const NOW_SIZE = 0.74;
const NOW_LETTER = 0.66;
const TARGET_LETTER = 0.8;
/** On a string, where no tone of the chord that sounds has a letter, there is room for one that is read from afar. */
const STRING_LETTER = 1.3;
const PALETTE_SIZE = 0.34;
const SLUR_WEIGHT = 0.16;

export type LabelOf = (tone: TargetTone) => string;

/** A tone of the chord that sounds: its mark, small. */
export function drawNow({ context, inks, unit }: Page, tone: TargetTone, x: number, y: number): void {
  drawMark(context, tone.role, x, y, unit * NOW_SIZE, inks);
}

/** A tone to land on: its mark, large; the caller has drawn its stroke. */
export function drawTarget({ context, inks, unit }: Page, tone: TargetTone, x: number, y: number): void {
  drawMark(context, tone.role, x, y, unit, inks);
}

/** One place of an instrument, and what lies there. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly now: TargetTone | null;
  readonly next: TargetTone | null;
  readonly inPalette: boolean;
  /** Whether the pen's ring stands here, so that a label keeps off it. */
  readonly ringed: boolean;
}

/**
 * How an instrument sets its labels: on a string there is room beside a mark, on a key above it. A tone that stays
 * shows what it is before (left of, above) what it becomes.
 */
export interface Setting {
  readonly side: 'beside' | 'above';
  /** null where there is no room: the shapes tell alone then. */
  readonly label: LabelOf | null;
}

/** What lies at a place: a tone to land on, else one of the chord that sounds, else a hint of the palette. */
export function drawSpot(page: Page, spot: Spot, { side, label }: Setting): void {
  const { x, y, now, next, inPalette, ringed } = spot;
  const { unit, inks } = page;
  const write = (tone: TargetTone, size: number, weight: 500 | 800, colour: string) => {
    if (label === null) return;
    if (side === 'above')
      letter(page, label(tone), x, y - unit * (0.4 + 0.68 * size), unit * size, weight, colour, 'center');
    else letter(page, label(tone), x + unit * (ringed ? 0.82 : 0.58), y, unit * size, weight, colour);
  };
  if (next !== null) {
    if (now !== null && label !== null && side === 'above') drawNow(page, now, x, y - unit * 1.9);
    else if (now !== null && label !== null && !ringed) drawNow(page, now, x - unit * 0.9, y);
    drawTarget(page, next, x, y);
    write(next, side === 'beside' ? STRING_LETTER : TARGET_LETTER, 800, inks.ink);
  } else if (now !== null) {
    drawNow(page, now, x, y);
    // Letters this small are not read from afar, and crowd the strings: the shape tells.
    if (side === 'above') write(now, NOW_LETTER, 500, inks.soft);
  } else if (inPalette) drawPalette(page, x, y);
}

/** A tone of the palette: a small open lozenge, no more than a hint. */
export function drawPalette({ context, inks, unit }: Page, x: number, y: number): void {
  drawMark(context, 'colour', x, y, unit * PALETTE_SIZE, inks);
}

/** The stroke under a tone that the line can land on. */
export function drawTargetStroke({ context, inks, unit }: Page, fromX: number, toX: number, y: number): void {
  context.strokeStyle = inks.accent;
  context.lineWidth = Math.max(3, unit * 0.16);
  context.lineCap = 'butt';
  context.beginPath();
  context.moveTo(fromX, y);
  context.lineTo(toX, y);
  context.stroke();
}

/** The note just played: a pen's ring round its place. */
export function drawPlayed({ context, inks, unit }: Page, x: number, y: number): void {
  const ring = (width: number) => {
    context.lineWidth = width;
    context.beginPath();
    context.arc(x, y, unit * 0.62, 0, 2 * Math.PI);
    context.stroke();
  };
  cutRim(context, () => ring(unit * 0.3));
  context.strokeStyle = inks.ink;
  ring(unit * 0.13);
}

/** The way from the note just played to the nearest target: a slur, thin at its ends as an engraver cuts it. */
export function drawSlur(
  { context, inks, unit, height }: Page,
  fromX: number,
  fromY: number,
  toX: number,
  toY: number,
): void {
  const length = Math.hypot(toX - fromX, toY - fromY);
  if (length < unit * 0.9) return;
  // Over the notes where there is room, else under them.
  const gap = unit * 0.66;
  const roomAbove = Math.min(fromY, toY) - gap;
  const up = roomAbove > unit * 0.3 || Math.max(fromY, toY) > height / 2 ? -1 : 1;
  // The curve rises half as far as its handle.
  const weight = unit * SLUR_WEIGHT;
  const most = up < 0 ? Math.max(2 * (roomAbove - weight - 2), unit * 0.3) : Infinity;
  const bend = Math.min(length * 0.35, unit * 1.6, most);
  const [x1, x2] = [fromX, toX];
  const [y1, y2] = [fromY + up * gap, toY + up * gap];
  const [middleX, middleY] = [(x1 + x2) / 2, (y1 + y2) / 2 + up * bend];
  const shape = new Path2D();
  shape.moveTo(x1, y1);
  shape.quadraticCurveTo(middleX, middleY + weight, x2, y2);
  shape.quadraticCurveTo(middleX, middleY - weight, x1, y1);
  context.lineJoin = 'round';
  context.lineWidth = unit * 0.22;
  cutRim(context, () => context.stroke(shape));
  context.fillStyle = inks.ink;
  context.fill(shape);
  context.strokeStyle = inks.ink;
  context.lineWidth = 1.5;
  context.stroke(shape);
}

/** Letters with a rim of page, so that lines do not run through them, none beyond the right edge; `y` is their middle. */
export function letter(
  { context, width }: Page,
  text: string,
  x: number,
  y: number,
  size: number,
  weight: 500 | 800,
  colour: string,
  align: CanvasTextAlign = 'left',
): void {
  context.font = `${weight} ${size}px 'Landfall Chord Signs', Besley, serif`;
  context.textBaseline = 'middle';
  context.textAlign = align;
  const most = align === 'left' ? width - context.measureText(withSigns(text)).width - 1 : width;
  const left = Math.min(x, most);
  context.lineJoin = 'round';
  context.lineWidth = size * 0.28;
  cutRim(context, () => context.strokeText(withSigns(text), left, y));
  context.fillStyle = colour;
  context.fillText(withSigns(text), left, y);
  context.textAlign = 'left';
}
