/**
 * The live line: the player's line drawn by a pen between the last change and the next, on a page that stands still.
 * At the right edge stand the tones to land on, each at its height. At the change the page turns.
 */
import type { Landing } from '../../core/take/schema.ts';
import type { LiveMoment } from '../../state/session.svelte.ts';
import type { Inks } from '../parts/inks.ts';
import { isChordTone } from '../../core/grade/assign/roles.ts';
import {
  drawBeats,
  drawLanding,
  drawPenHead,
  drawPlace,
  drawTargetStroke,
  LANDING,
} from './draw-live-line.ts';

/** Ten seconds at 60 frames a second and more: longer pages are turned before that at any tempo played. */
const MOST_POINTS = 4096;
/** Bars on one page at most; a longer stretch of one chord is cut into pages. */
const PAGE_BARS = 2;
/** Semitones from the bottom to the top of the page: a hand's reach on most instruments; a wider line gets a wider page. */
const REACH = 19;
/** Semitones kept free above and below the line. */
const MARGIN = 1.5;
/** Marks and letters grow from this; smaller could not be read on a phone. */
const SMALLEST_UNIT_PX = 26;
/** Where the page lies before anything was heard. */
const MIDDLE_C = 60;
/** How slowly the page follows the register, in beats: calm enough to be read. */
const FOLLOW_BEATS = 0.5;
/** A shorter gap comes from the listener, not from the player: a thin line is drawn through it. */
const LIFT_BEATS = 0.4;
/** Widths of the pen in units: where the chord names the tone, elsewhere, and through a gap. */
const PEN = { chordTone: 0.17, otherTone: 0.07, gap: 0.04 } as const;
/**
 * A leap is drawn when it has lasted so long. At the start of a note the listener may hear another octave for a moment,
 * and the line would show a leap that was not played. The mark at the end of the line does not wait.
 */
const LEAP_SEMITONES = 4.5;
const LEAP_BEATS = 0.12;
/** How long the line takes to reach a new height, in beats, so that it has slopes and no stairs. */
const SWING_BEATS = 0.05;

interface Page {
  readonly fromBeat: number;
  readonly toBeat: number;
  /** Whether the page ends at the change, so that the tones to land on stand at its right edge. */
  readonly endsAtChange: boolean;
}

/** The stretch of beats that the page shows. `changedAt` is the last change. */
export function pageAt(beat: number, changedAt: number, nextBeat: number | null, beatsPerBar: number): Page {
  const most = PAGE_BARS * beatsPerBar;
  const start = Math.min(changedAt, beat);
  const page = Math.floor((beat - start) / most);
  const fromBeat = start + page * most;
  const toBeat = Math.min(fromBeat + most, nextBeat ?? Infinity);
  return { fromBeat, toBeat, endsAtChange: nextBeat !== null && toBeat === nextBeat };
}

/** What a page shows beside the moment. */
export interface LiveLineView {
  readonly beatsPerBar: number;
  /** The newest landing. */
  readonly landing: Landing | null;
  readonly quiet: boolean;
}

/** What the pen has written on this page, in plain buffers, and where its middle lies. */
export class LiveLinePen {
  readonly #beats = new Float64Array(MOST_POINTS);
  readonly #midis = new Float32Array(MOST_POINTS);
  readonly #onChordTone = new Uint8Array(MOST_POINTS);
  #count = 0;
  #page: Page = { fromBeat: 0, toBeat: 1, endsAtChange: false };
  #changedAt = 0;
  #lastChord: string | null = null;
  #lastBeat = -Infinity;
  #middle = NaN;
  #penMidi = NaN;
  /** The lowest and the highest that the pen has been on this page; NaN before it drew. */
  #lowest = NaN;
  #highest = NaN;
  /** Where the last leap began, in beats; NaN while the line goes by step. */
  #leapFrom = NaN;

  /** Takes the moment in; `beatsPerBar` is the chart's. */
  follow(live: LiveMoment, beatsPerBar: number): void {
    const chord = live.chordNow?.symbol ?? null;
    const nextBeat = live.beatsToNext === null ? null : live.beat + live.beatsToNext;
    if (chord !== this.#lastChord) {
      this.#changedAt = live.beat < 0 ? live.beat : Math.round(live.beat * 2) / 2;
      this.#lastChord = chord;
    }
    const page = pageAt(live.beat, this.#changedAt, nextBeat, beatsPerBar);
    if (Math.abs(page.fromBeat - this.#page.fromBeat) > 0.25) {
      this.#count = 0;
      this.#lowest = this.#highest = NaN;
    }
    this.#page = page;
    const midi = live.note?.midi ?? NaN;
    const sinceBeats = Math.max(0, live.beat - this.#lastBeat);
    this.#lastBeat = live.beat;
    const draws = !Number.isNaN(midi) && !this.#leaps(midi, live.beat);
    if (draws) {
      this.#middle = lean(this.#middle, midi, sinceBeats / FOLLOW_BEATS);
      this.#penMidi = lean(this.#penMidi, midi, sinceBeats / SWING_BEATS);
      this.#keepOnPage(this.#penMidi);
    }
    if (this.#count === MOST_POINTS) return;
    this.#beats[this.#count] = live.beat;
    this.#midis[this.#count] = draws ? this.#penMidi : NaN;
    this.#onChordTone[this.#count] = isChordTone(live.note?.role ?? null) ? 1 : 0;
    this.#count += 1;
  }

  /** The page follows the register, but never so far that something drawn on it is cut off. */
  #keepOnPage(midi: number): void {
    this.#lowest = Number.isNaN(this.#lowest) ? midi : Math.min(this.#lowest, midi);
    this.#highest = Number.isNaN(this.#highest) ? midi : Math.max(this.#highest, midi);
    const free = this.#reach / 2 - MARGIN;
    this.#middle = Math.min(this.#lowest + free, Math.max(this.#highest - free, this.#middle));
  }

  /** Semitones from the bottom of this page to its top. */
  get #reach(): number {
    const drawn = Number.isNaN(this.#lowest) ? 0 : this.#highest - this.#lowest;
    return Math.max(REACH, drawn + 2 * MARGIN);
  }

  /** Whether this is a leap that has not stood long enough to be drawn. */
  #leaps(midi: number, beat: number): boolean {
    if (Number.isNaN(this.#penMidi) || Math.abs(midi - this.#penMidi) < LEAP_SEMITONES) {
      this.#leapFrom = NaN;
      return false;
    }
    if (Number.isNaN(this.#leapFrom)) this.#leapFrom = beat;
    return beat - this.#leapFrom < LEAP_BEATS;
  }

  /** On a quiet page there is no line: the place moves, and what was landed stands where the page begins. */
  draw(
    context: CanvasRenderingContext2D,
    width: number,
    height: number,
    live: LiveMoment,
    { beatsPerBar, landing, quiet }: LiveLineView,
    inks: Inks,
  ): void {
    const unit = Math.max(SMALLEST_UNIT_PX, Math.min(width / 12, height / 7));
    const right = width - unit * 1.7;
    const middle = Number.isNaN(this.#middle) ? MIDDLE_C : this.#middle;
    const { fromBeat, toBeat, endsAtChange } = this.#page;
    const left = unit * 0.7;
    const xOf = (beat: number) => left + ((beat - fromBeat) / (toBeat - fromBeat)) * (right - left);
    const reach = this.#reach;
    const yOf = (midi: number) => height / 2 - ((midi - middle) / reach) * (height - unit);

    drawBeats(context, fromBeat, toBeat, beatsPerBar, xOf, height, inks);
    if (endsAtChange)
      drawTargetStroke(context, live.targets, { middle, reach }, yOf, { right, width, height }, unit, inks);
    if (quiet) drawPlace(context, xOf(live.beat), height, inks);
    else this.#drawLine(context, xOf, yOf, unit, inks);
    if (landing !== null && landing.beat >= fromBeat - 0.5 && landing.beat < toBeat) {
      const midi = this.#midis.subarray(0, this.#count).find((heard) => !Number.isNaN(heard));
      const y = Math.max(
        LANDING.fromEdge * unit,
        Math.min(height - LANDING.fromEdge * unit, yOf(midi ?? middle)),
      );
      drawLanding(context, landing, xOf(landing.beat), y, height, unit, inks);
    }
    const { note } = live;
    // What is heard for a moment only, an octave off, does not turn the page, and is not lost either.
    const head = (midi: number) => Math.max(unit / 2, Math.min(height - unit / 2, yOf(midi)));
    if (note !== null && !quiet) drawPenHead(context, note.role, xOf(live.beat), head(note.midi), unit, inks);
  }

  #drawLine(
    context: CanvasRenderingContext2D,
    xOf: (beat: number) => number,
    yOf: (midi: number) => number,
    unit: number,
    inks: Inks,
  ): void {
    context.strokeStyle = inks.ink;
    context.lineCap = 'round';
    context.lineJoin = 'round';
    // One path for each stretch of one width: a page has hundreds of points.
    let last = -1;
    let width = 0;
    for (let i = 0; i < this.#count; i += 1) {
      const midi = this.#midis[i] ?? NaN;
      if (Number.isNaN(midi)) continue;
      const beat = this.#beats[i] ?? 0;
      const lastBeat = this.#beats[last] ?? -Infinity;
      const joined = beat - lastBeat < LIFT_BEATS;
      const wanted = !joined
        ? 0
        : last < i - 1
          ? PEN.gap
          : this.#onChordTone[i] === 1
            ? PEN.chordTone
            : PEN.otherTone;
      if (wanted !== width) {
        if (width > 0) context.stroke();
        width = wanted;
        context.lineWidth = unit * width;
        context.beginPath();
        if (joined) context.moveTo(xOf(lastBeat), yOf(this.#midis[last] ?? midi));
      }
      if (joined) context.lineTo(xOf(beat), yOf(midi));
      last = i;
    }
    if (width > 0) context.stroke();
  }
}

/** Moves a value towards another, the further the longer; a value that is not there yet jumps. */
const lean = (from: number, to: number, shareOfTime: number): number =>
  Number.isNaN(from) ? to : from + (to - from) * (1 - Math.exp(-shareOfTime));
