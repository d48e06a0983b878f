/** What is drawn on the page of the live line: beats, the staff line of the next change, the last landing, the mark at the end of the line. */
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { Landing, Role } from '../../core/take/schema.ts';
import { cutRim } from '../parts/cut-rim.ts';
import { drawMark } from '../parts/draw-mark.ts';
import { withSigns } from '../parts/engrave.ts';
import type { Inks } from '../parts/inks.ts';

export function drawBeats(
  context: CanvasRenderingContext2D,
  fromBeat: number,
  toBeat: number,
  beatsPerBar: number,
  xOf: (beat: number) => number,
  height: number,
  inks: Inks,
): void {
  context.lineWidth = 1.5;
  for (let beat = Math.ceil(fromBeat); beat <= toBeat; beat += 1) {
    const barLine = beat % beatsPerBar === 0;
    context.strokeStyle = barLine ? inks.soft : inks.rule;
    context.beginPath();
    context.moveTo(xOf(beat), barLine ? height * 0.06 : height * 0.92);
    context.lineTo(xOf(beat), height);
    context.stroke();
  }
}

/** Where we are between the two changes, and nothing of what is played. */
export function drawPlace(context: CanvasRenderingContext2D, x: number, height: number, inks: Inks): void {
  context.fillStyle = inks.accent;
  context.fillRect(x - 2, height * 0.86, 4, height * 0.14);
}

/** The targets at every octave of the page; from each a stroke runs into the page. */
export function drawTargetStroke(
  context: CanvasRenderingContext2D,
  targets: readonly TargetTone[],
  { middle, reach }: { readonly middle: number; readonly reach: number },
  yOf: (midi: number) => number,
  { right, width, height }: { readonly right: number; readonly width: number; readonly height: number },
  unit: number,
  inks: Inks,
): void {
  context.font = `800 ${unit * 0.62}px 'Landfall Chord Signs', Besley, serif`;
  context.textBaseline = 'middle';
  context.fillStyle = inks.ink;
  context.fillRect(right - 1.5, 0, 3, height);
  const labelled: number[] = [];
  for (const { pitchClass, role, degree } of targets) {
    const low = middle - reach / 2;
    for (let midi = low + ((((pitchClass - low) % 12) + 12) % 12); midi < middle + reach / 2; midi += 12) {
      const y = yOf(midi);
      if (y < unit * 0.8 || y > height - unit * 0.4) continue;
      context.strokeStyle = inks.accent;
      context.lineWidth = unit * 0.07;
      context.beginPath();
      context.moveTo(right - unit * 1.4, y);
      context.lineTo(width, y);
      context.stroke();
      drawMark(context, role, right, y, unit * 0.72, inks);
      // Tones that lie close together leave no room for the degree: there the shape alone says which tone it is.
      if (labelled.some((other) => Math.abs(other - y) < unit * 0.7)) continue;
      labelled.push(y);
      context.fillText(withSigns(degree), right + unit * 0.62, y - unit * 0.36);
    }
  }
}

/** The landing is read from where the player stands: in units, how far it keeps from the edges, and the room its letter takes. */
export const LANDING = { mark: 1.45, letter: 1.35, fromEdge: 0.85 } as const;
/** Height of a capital letter or a figure as a share of its size. */
const LETTER_HEIGHT = 0.72;

/** What the line just did: the landing that opened this page, large at its left edge. */
export function drawLanding(
  context: CanvasRenderingContext2D,
  { role, degree }: Landing,
  x: number,
  y: number,
  height: number,
  unit: number,
  inks: Inks,
): void {
  if (role === null || degree === null) return;
  drawMark(context, role, x, y, unit * LANDING.mark, inks);
  context.font = `800 ${unit * LANDING.letter}px 'Landfall Chord Signs', Besley, serif`;
  context.textBaseline = 'alphabetic';
  context.lineWidth = unit * 0.24;
  const { left, foot } = placeOfLetter(x, y, height, unit);
  cutRim(context, () => context.strokeText(withSigns(degree), left, foot));
  context.fillStyle = inks.ink;
  context.fillText(withSigns(degree), left, foot);
}

/**
 * Where the letter of a landing begins, and the line it stands on: over the mark, where the line does not go on; under it where
 * there is no room; beside it on a page that is too low for both, as a phone may have. A sign hangs to the left.
 */
export function placeOfLetter(x: number, y: number, height: number, unit: number) {
  const tall = LETTER_HEIGHT * LANDING.letter * unit;
  // A flat reaches over the figures.
  const rim = 0.2 * unit;
  const [away, left] = [0.62 * LANDING.mark * unit, x - unit * 0.42];
  if (y - away - tall - rim >= 0) return { left, foot: y - away };
  if (y + away + tall <= height - rim) return { left, foot: y + away + tall };
  return {
    left: x + unit * 0.95,
    foot: Math.max(tall + rim, Math.min(height - rim / 2, y + tall / 2)),
  };
}

export function drawPenHead(
  context: CanvasRenderingContext2D,
  role: Role | null,
  x: number,
  y: number,
  unit: number,
  inks: Inks,
): void {
  if (role !== null) drawMark(context, role, x, y, unit * 0.9, inks);
  else {
    context.fillStyle = inks.ink;
    context.beginPath();
    context.arc(x, y, unit * 0.16, 0, 2 * Math.PI);
    context.fill();
  }
}
