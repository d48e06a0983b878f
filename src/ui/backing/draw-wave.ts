/**
 * A recording as it is set: its sound as a hatching round a middle line, beats as strokes across it, bars as bar lines with
 * their numbers, chords under them. A note head on the middle line is the chosen beat; a disc above a stroke is a beat that was
 * set by hand.
 */
import type { BeatTrack } from '../../core/beats/track.ts';
import type { ChordPlace } from '../../state/backing-fields.ts';
import { signsInText } from '../parts/engrave.ts';
import type { Inks } from '../parts/inks.ts';

/** The stretch that is in sight, in seconds. */
export interface Sight {
  readonly from: number;
  readonly to: number;
}

export interface WavePage {
  readonly sight: Sight;
  readonly peaks: Float32Array;
  readonly peaksPerSecond: number;
  /** The loudest peak of all: the hatching is drawn as high as the page lets it. */
  readonly loudest: number;
  readonly track: BeatTrack;
  readonly beatsPerBar: number;
  readonly chosen: number | null;
  readonly chords: readonly ChordPlace[];
  /** Where the playing is. */
  readonly seconds: number;
  readonly taps: readonly number[];
}

/** Rows of the page, in CSS pixels. */
const NUMBERS_HIGH = 34;
const CHORDS_HIGH = 34;
/** Bar numbers and chords nearer than this would run into each other. */
const LEAST_NUMBER_GAP = 26;
const LEAST_CHORD_GAP = 46;
/** Strokes of the hatching. */
const HATCH_STEP = 3;
/** Paler than any beat. */
const HATCH_ALPHA = 0.6;

export const placeOf = ({ from, to }: Sight, width: number, seconds: number): number =>
  ((seconds - from) / (to - from)) * width;

export const secondsAtPlace = ({ from, to }: Sight, width: number, x: number): number =>
  from + (x / width) * (to - from);

export function drawWave(
  context: CanvasRenderingContext2D,
  width: number,
  height: number,
  page: WavePage,
  inks: Inks,
): void {
  const top = NUMBERS_HIGH;
  const bottom = height - CHORDS_HIGH;
  const middle = (top + bottom) / 2;
  drawSound(context, width, { middle, reach: (bottom - top) / 2 - 4 }, page, inks);
  context.fillStyle = inks.ink;
  context.fillRect(0, middle - 1, width, 2);
  drawBeats(context, width, { top, bottom, middle }, page, inks);
  drawChords(context, width, height, page, inks);
  for (const tap of page.taps) {
    const x = placeOf(page.sight, width, tap);
    context.fillStyle = inks.accent;
    context.fillRect(x - 1, bottom - 12, 2, 12);
  }
  const x = placeOf(page.sight, width, page.seconds);
  context.fillStyle = inks.accent;
  context.fillRect(x - 1, top - 6, 2, bottom - top + 12);
}

function drawSound(
  context: CanvasRenderingContext2D,
  width: number,
  { middle, reach }: { readonly middle: number; readonly reach: number },
  { sight, peaks, peaksPerSecond, loudest }: WavePage,
  inks: Inks,
): void {
  context.strokeStyle = inks.soft;
  context.lineWidth = 1;
  context.beginPath();
  for (let x = 0; x < width; x += HATCH_STEP) {
    const first = Math.max(0, Math.floor(secondsAtPlace(sight, width, x) * peaksPerSecond));
    const last = Math.min(
      peaks.length,
      Math.max(first + 1, Math.ceil(secondsAtPlace(sight, width, x + HATCH_STEP) * peaksPerSecond)),
    );
    let peak = 0;
    for (let i = first; i < last; i++) if (peaks[i]! > peak) peak = peaks[i]!;
    const high = (peak / Math.max(loudest, 1e-6)) * reach;
    context.moveTo(x + 1.5, middle - high);
    context.lineTo(x + 1.5, middle + high);
  }
  context.globalAlpha = HATCH_ALPHA;
  context.stroke();
  context.globalAlpha = 1;
}

function drawBeats(
  context: CanvasRenderingContext2D,
  width: number,
  { top, bottom, middle }: { readonly top: number; readonly bottom: number; readonly middle: number },
  { sight, track, beatsPerBar, chosen }: WavePage,
  inks: Inks,
): void {
  const half = (bottom - top) / 2;
  let lastNumber = -Infinity;
  context.font = `600 15px ${serif}`;
  context.textBaseline = 'alphabetic';
  context.textAlign = 'left';
  track.marks.forEach(({ seconds, pinned }, i) => {
    if (seconds < sight.from - 1 || seconds > sight.to + 1) return;
    const x = placeOf(sight, width, seconds);
    const inBar = (((i - track.downbeat) % beatsPerBar) + beatsPerBar) % beatsPerBar;
    const isBar = i >= track.downbeat && inBar === 0;
    const reach = isBar ? half : half * 0.45;
    context.fillStyle = i === chosen ? inks.accent : i < track.downbeat ? inks.soft : inks.ink;
    const wide = i === chosen ? 4 : isBar ? 3 : 2;
    context.fillRect(x - wide / 2, middle - reach, wide, 2 * reach);
    // Bar 1 begins behind a double bar.
    if (i === track.downbeat) context.fillRect(x - 7, middle - half, 4, 2 * half);
    if (pinned) disc(context, x, middle - reach - 5, 3.5);
    if (i === chosen) noteHead(context, x, middle);
    if (isBar && x - lastNumber > LEAST_NUMBER_GAP) {
      context.fillStyle = inks.ink;
      context.fillText(String(1 + (i - track.downbeat) / beatsPerBar), x - 1, top - 15);
      lastNumber = x;
    }
  });
}

function drawChords(
  context: CanvasRenderingContext2D,
  width: number,
  height: number,
  { sight, chords }: WavePage,
  inks: Inks,
): void {
  context.font = `700 18px ${serif}`;
  context.fillStyle = inks.ink;
  let last = -Infinity;
  for (const { seconds, symbol } of chords) {
    const x = placeOf(sight, width, seconds);
    if (x < -20 || x > width || x - last < LEAST_CHORD_GAP) continue;
    context.fillText(signsInText(symbol), x, height - 9);
    last = x;
  }
}

function disc(context: CanvasRenderingContext2D, x: number, y: number, radius: number): void {
  context.beginPath();
  context.arc(x, y, radius, 0, 2 * Math.PI);
  context.fill();
}

function noteHead(context: CanvasRenderingContext2D, x: number, y: number): void {
  context.beginPath();
  context.ellipse(x, y, 9, 6.5, -0.38, 0, 2 * Math.PI);
  context.fill();
}

const serif = "'Landfall Chord Signs', 'Besley', Georgia, serif";
