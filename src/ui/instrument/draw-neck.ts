/** The neck in ink: strings are staff lines, frets are bar lines, figures stand where bar numbers would. */
import type { Instrument, Neck } from '../../core/music/instruments.ts';
import { nearestPosition, type NeckPosition } from '../../core/music/where-it-lies.ts';
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import { drawMark } from '../parts/draw-mark.ts';
import { drawPlayed, drawTargetStroke, drawSlur, drawSpot, letter, type Page } from './pen.ts';
import {
  FIGURED_FRETS,
  layNeck,
  placesIn,
  windowOf,
  type Box,
  type FretWindow,
  type NeckLayout,
} from './neck.ts';
import { at, type Twelve } from './tones.ts';
import type { InstrumentView, Surface } from './view.ts';

interface NeckPicture {
  readonly instrument: Instrument;
  readonly neck: Neck;
  readonly window: FretWindow;
  readonly leftHanded: boolean;
  readonly twelve: Twelve;
  /** Where the note just played lies, or null. */
  readonly hand: NeckPosition | null;
  /** Whole MIDI number of the nearest target, or null. */
  readonly goal: number | null;
  readonly label: (tone: TargetTone) => string;
}

/** Shares of the height: the figures under the neck, and the room for a slur over it. */
const FIGURES = 0.11;
const SLUR_ROOM = 0.1;
const INSET_PX = 6;

function drawNeck(surface: Surface, picture: NeckPicture): void {
  const { width, height } = surface;
  const { neck, window, leftHanded } = picture;
  const figures = Math.max(16, height * FIGURES);
  const top = height * SLUR_ROOM;
  const box = { left: INSET_PX, top, width: width - 2 * INSET_PX, height: height - figures - top };
  const lay = layNeck(neck, window, leftHanded, box);
  const unit = Math.max(11, Math.min(lay.stringGap * 0.82, lay.narrowest * 0.56, 40));
  const page: Page = { ...surface, unit };
  // Labels only where a space holds them beside the mark.
  const roomy = lay.narrowest > unit * 1.9;
  drawWood(page, picture, lay, box, figures, roomy);
  drawStrokes(page, picture, lay);
  // Before the tones, so that it gives way to their letters.
  drawWay(page, picture, lay, roomy);
  drawTones(page, picture, lay, roomy);
}

function drawWood(
  page: Page,
  { neck, window }: NeckPicture,
  lay: NeckLayout,
  { top, height: high }: Box,
  figures: number,
  roomy: boolean,
): void {
  const { context, inks } = page;
  const first = lay.hasOpen ? window.lowest : window.lowest - 1;
  const [up, down] = [top + lay.stringGap * 0.5, top + high - lay.stringGap * 0.5];
  const [nearX, farX] = [
    lay.hasOpen ? lay.fingerX(window.lowest) : lay.wireX(first),
    lay.wireX(window.highest),
  ];
  const strings = neck.openStrings.length;
  for (let string = 1; string <= strings; string += 1) {
    // The lower the string, the thicker it is wound.
    context.strokeStyle = inks.soft;
    context.lineWidth = 1 + (1.8 * (string - 1)) / (strings - 1);
    context.beginPath();
    context.moveTo(nearX, lay.stringY(string));
    context.lineTo(farX, lay.stringY(string));
    context.stroke();
  }
  for (let fret = first; fret <= window.highest; fret += 1) {
    const x = lay.wireX(fret);
    const nut = lay.hasOpen && fret === window.lowest;
    context.fillStyle = nut ? inks.ink : inks.rule;
    if (nut && neck.capo > 0)
      context.fillRect(x - 7, up - lay.stringGap * 0.4, 14, down - up + lay.stringGap * 0.8);
    else if (nut) {
      // Where the music begins: a double bar, heavy first.
      context.fillRect(x - 6, up, 6, down - up);
      context.fillRect(x + 3, up, 2, down - up);
    } else context.fillRect(x - 0.75, up, fret % 12 === 0 ? 3.5 : 1.5, down - up);
    if (fret > first && FIGURED_FRETS.includes(fret)) {
      letter(
        page,
        String(fret),
        markX(lay, page.unit, fret, roomy),
        top + high + figures / 2,
        figures * 0.95,
        800,
        inks.soft,
        'center',
      );
    }
  }
  if (neck.capo > 0 && lay.hasOpen) {
    letter(
      page,
      String(neck.capo),
      markX(lay, page.unit, window.lowest, roomy),
      top + high + figures / 2,
      figures * 0.95,
      800,
      inks.ink,
      'center',
    );
  }
}

/** Where the marks of one place stand: a tone that stays shows what it is on the left, what it becomes on the right. */
function markX(lay: NeckLayout, unit: number, fret: number, labelled: boolean): number {
  return lay.fingerX(fret) - (labelled ? unit * 0.25 : 0);
}

/** The strokes under the tones to land on. */
function drawStrokes(page: Page, { neck, window, twelve }: NeckPicture, lay: NeckLayout): void {
  const { unit } = page;
  for (const { string, fret, midi } of placesIn(neck, window)) {
    if (at(twelve.next, midi) === null) continue;
    const open = lay.hasOpen && fret === window.lowest;
    const half = open ? unit * 0.75 : Math.abs(lay.wireX(fret) - lay.wireX(fret - 1)) / 2 - 3;
    drawTargetStroke(page, lay.fingerX(fret) - half, lay.fingerX(fret) + half, lay.stringY(string));
  }
}

function drawTones(page: Page, picture: NeckPicture, lay: NeckLayout, roomy: boolean): void {
  const { neck, window, twelve, hand, label } = picture;
  const { unit } = page;
  for (const { string, fret, midi } of placesIn(neck, window)) {
    const [now, next] = [at(twelve.now, midi), at(twelve.next, midi)];
    const [x, y] = [markX(lay, unit, fret, roomy), lay.stringY(string)];
    const ringed = hand !== null && hand.string === string && hand.fret === fret;
    const inPalette = twelve.palette.has(midi % 12);
    if (ringed) drawPlayed(page, x, y);
    drawSpot(page, { x, y, now, next, inPalette, ringed }, { side: 'beside', label: roomy ? label : null });
    if (ringed && now === null && next === null && !inPalette)
      drawMark(page.context, 'outside', x, y, unit * 0.7, page.inks);
  }
}

function drawWay(
  page: Page,
  { instrument, window, hand, goal }: NeckPicture,
  lay: NeckLayout,
  roomy: boolean,
): void {
  const inSight = ({ fret }: NeckPosition) => fret >= window.lowest && fret <= window.highest;
  const place = hand === null || goal === null ? null : nearestPosition(goal, instrument, hand);
  if (hand === null || place === null || !inSight(hand) || !inSight(place)) return;
  const xOf = ({ fret }: NeckPosition) => markX(lay, page.unit, fret, roomy);
  drawSlur(page, xOf(hand), lay.stringY(hand.string), xOf(place), lay.stringY(place.string));
}

export const neckView: InstrumentView = {
  open() {
    let window: FretWindow | null = null;
    return (surface, { instrument, settings, twelve, hand, playedOnNeck, goal, label }) => {
      const { neck } = instrument;
      if (neck === null) return;
      window = windowOf(neck, settings.frets, surface.width, hand, window);
      drawNeck(surface, {
        instrument,
        neck,
        window,
        leftHanded: settings.leftHanded,
        twelve,
        hand: playedOnNeck ? hand : null,
        goal,
        label,
      });
    };
  },
};
