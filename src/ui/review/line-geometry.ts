/** Geometry of the line over the chords: where each note, each chord and each height of a chord tone is drawn on the strip. All in CSS pixels. */
import { smallest } from '../../core/base/extremes.ts';
import type { Chord } from '../../core/music/chord.ts';
import type { ReportNote } from '../../core/take/schema.ts';
import { isChordTone } from '../../core/grade/assign/roles.ts';
import type { LineNote } from './line-notes.ts';

/** How the strip is laid out: beats to the right, semitones upwards. */
export interface Strip {
  readonly firstBeat: number;
  readonly lastBeat: number;
  readonly beatPx: number;
  readonly lowMidi: number;
  readonly semitonePx: number;
  /** Of the part that holds the line, chord names not counted. */
  readonly heightPx: number;
}

/** Semitones kept free above and below the line. */
const MARGIN = 2.5;
/** A strip never shows less than this, so that a line on two notes does not look like a leap. */
const LEAST_RANGE = 14;

/** Kept free before the first bar line, so that a mark on it is whole. */
const LEFT_PX = 18;
/** Kept free above the highest note for its degree. */
const LABEL_PX = 16;

/** This share of the notes at each end may be left out of the scale, */
const FAR_OFF_SHARE = 0.01;
/** if they are farther than this from all others: most likely an octave error of the listener. */
const FAR_OFF_SEMITONES = 12;
/** In a line of so few notes each one counts. */
const LEAST_NOTES = 8;

/** What the line spans, a few far-off notes aside. */
function spanOf(midis: readonly number[]): readonly [low: number, high: number] {
  if (midis.length === 0) return [53, 67];
  const sorted = midis.toSorted((a, b) => a - b);
  const aside = sorted.length < LEAST_NOTES ? 0 : Math.max(1, Math.round(FAR_OFF_SHARE * sorted.length));
  const innerLow = sorted[aside]! - FAR_OFF_SEMITONES;
  const innerHigh = sorted[sorted.length - 1 - aside]! + FAR_OFF_SEMITONES;
  const near = sorted.filter((midi) => midi >= innerLow && midi <= innerHigh);
  return [near[0]!, near.at(-1)!];
}

/** Fits a strip round the notes: `heightPx` high, `beatPx` a beat, whole bars from the first to the last. */
export function stripFor(
  notes: readonly Pick<ReportNote, 'beat' | 'midi'>[],
  endBeat: number,
  beatsPerBar: number,
  beatPx: number,
  heightPx: number,
): Strip {
  const [low, high] = spanOf(notes.map(({ midi }) => midi));
  const range = Math.max(LEAST_RANGE, high - low + 2 * MARGIN);
  const first = smallest(
    notes.map(({ beat }) => beat),
    0,
  );
  const last = Math.max(endBeat, beatsPerBar);
  return {
    firstBeat: Math.floor(first / beatsPerBar) * beatsPerBar,
    lastBeat: Math.ceil(last / beatsPerBar) * beatsPerBar,
    beatPx,
    lowMidi: (low + high) / 2 - range / 2,
    semitonePx: (heightPx - LABEL_PX) / range,
    heightPx,
  };
}

/** Where sound was lost: a hatched stretch, wide enough to be seen. */
export interface Gap {
  readonly x: number;
  readonly widthPx: number;
}

/** A lost block of the browser's is a hundredth of a beat: it is shown wider than it was. */
const LEAST_GAP_PX = 8;

export const lostStretchesOn = (
  strip: Strip,
  lost: readonly { readonly atSeconds: number; readonly seconds: number }[],
  beatAt: (seconds: number) => number,
): readonly Gap[] =>
  lost.map(({ atSeconds, seconds }) => {
    const x = xOf(strip, beatAt(atSeconds));
    return { x, widthPx: Math.max(LEAST_GAP_PX, xOf(strip, beatAt(atSeconds + seconds)) - x) };
  });

export const xOf = (strip: Strip, beat: number): number => LEFT_PX + (beat - strip.firstBeat) * strip.beatPx;
export const beatOf = (strip: Strip, x: number): number => strip.firstBeat + (x - LEFT_PX) / strip.beatPx;
export const yOf = (strip: Strip, midi: number): number =>
  strip.heightPx - (midi - strip.lowMidi) * strip.semitonePx;

/** The whole bars that a drag from one beat to another touches, in beats. */
export function barsBetween(
  oneBeat: number,
  otherBeat: number,
  beatsPerBar: number,
): [from: number, to: number] {
  const first = Math.floor(Math.min(oneBeat, otherBeat) / beatsPerBar);
  const last = Math.max(first + 1, Math.ceil(Math.max(oneBeat, otherBeat) / beatsPerBar));
  return [first * beatsPerBar, last * beatsPerBar];
}

/** Room at either edge for the mark of a note that lies beyond it. */
const EDGE_PX = 22;

/** Where a note is drawn: at its height, or at the edge of the strip if it is beyond it. */
export interface NoteHeight {
  readonly y: number;
  readonly beyond: 'above' | 'below' | null;
}

export function heightOf(strip: Strip, midi: number): NoteHeight {
  const y = yOf(strip, midi);
  if (y < 0) return { y: EDGE_PX, beyond: 'above' };
  if (y > strip.heightPx) return { y: strip.heightPx - EDGE_PX, beyond: 'below' };
  return { y, beyond: null };
}

/**
 * A stretch of whole bars that is drawn once and stays as it is while it is in sight: what comes into sight draws only
 * itself. A note belongs to the tile in which it begins.
 */
export interface Tile {
  /** Of all tiles of the strip, from 0. */
  readonly index: number;
  readonly fromBeat: number;
  readonly toBeat: number;
}

/** About so wide: drawn well within a frame, and only a few are in sight. */
const TILE_PX = 200;

/**
 * The tiles that can be seen through a window, with one more to either side, so that none is missing before it is drawn.
 * @param earliestBeat a tile with a note that is still in sight begins here, or null
 */
export function tilesIn(
  strip: Strip,
  beatsPerBar: number,
  { leftPx, windowPx }: { readonly leftPx: number; readonly windowPx: number },
  earliestBeat: number | null = null,
): readonly Tile[] {
  const beats = beatsPerBar * Math.max(1, Math.round(TILE_PX / (beatsPerBar * strip.beatPx)));
  const indexAt = (beat: number) => Math.floor((beat - strip.firstBeat) / beats);
  const last = Math.max(0, Math.ceil((strip.lastBeat - strip.firstBeat) / beats) - 1);
  const within = (index: number) => Math.min(last, Math.max(0, index));
  const left = within(indexAt(beatOf(strip, leftPx)) - 1);
  const from = earliestBeat === null ? left : Math.min(left, within(indexAt(earliestBeat)));
  const to = within(indexAt(beatOf(strip, leftPx + windowPx)) + 1);
  return Array.from({ length: to - from + 1 }, (_, i) => {
    const fromBeat = strip.firstBeat + (from + i) * beats;
    return { index: from + i, fromBeat, toBeat: Math.min(strip.lastBeat, fromBeat + beats) };
  });
}

export const widthOf = (strip: Strip): number => xOf(strip, strip.lastBeat);

/** Notes that reach into [fromBeat, toBeat). */
export const notesBetween = (
  line: readonly LineNote[],
  fromBeat: number,
  toBeat: number,
): readonly LineNote[] => line.filter(({ note }) => note.beat < toBeat && note.endBeat > fromBeat);

/** Rests longer than this lift the pen. */
const LIFT_BEATS = 0.75;
/** The share of a note that the pen stays on its height before it heads for the next. */
const STAY = 0.55;

/**
 * The pen's path through the notes: it stays on each, then swings over to the next unless a rest lies between.
 * Two paths, because the pen presses where the chord names the tone.
 * @param after the note to which the pen goes on from the last one
 */
export function penPaths(
  strip: Strip,
  notes: readonly ReportNote[],
  after?: ReportNote,
): { readonly thin: string; readonly thick: string } {
  let thin = '';
  let thick = '';
  for (const [i, note] of notes.entries()) {
    const next = notes[i + 1] ?? after;
    const joined = next !== undefined && next.beat - note.endBeat < LIFT_BEATS;
    const x = xOf(strip, note.beat);
    const { y } = heightOf(strip, note.midi);
    const whole = Math.max(3, xOf(strip, joined ? Math.min(note.endBeat, next.beat) : note.endBeat) - x);
    const stayX = x + whole * (joined ? STAY : 1);
    const stroke = `M${px(x)} ${px(y)}H${px(stayX)}`;
    if (isChordTone(note.role)) thick += stroke;
    else thin += stroke;
    if (!joined) continue;
    const nextX = xOf(strip, next.beat);
    const nextY = heightOf(strip, next.midi).y;
    const middle = (stayX + nextX) / 2;
    thin += `M${px(stayX)} ${px(y)}C${px(middle)} ${px(y)} ${px(middle)} ${px(nextY)} ${px(nextX)} ${px(nextY)}`;
  }
  return { thin, thick };
}

/** A height at which a chord tone lies, on every octave of the strip. */
export interface ChordToneLine {
  readonly y: number;
  readonly degree: string;
  /** Thirds and sevenths. */
  readonly guide: boolean;
}

export function chordToneLines(strip: Strip, chord: Chord): readonly ChordToneLine[] {
  const top = strip.lowMidi + strip.heightPx / strip.semitonePx;
  return chord.tones
    .filter(({ role }) => role !== 'extension')
    .flatMap(({ pitchClass, degree, role }) => {
      const lowest = Math.ceil((strip.lowMidi - pitchClass) / 12) * 12 + pitchClass;
      const count = Math.max(0, Math.ceil((top - lowest) / 12));
      return Array.from({ length: count }, (_, octave) => ({
        y: yOf(strip, lowest + 12 * octave),
        degree,
        guide: role === 'third' || role === 'seventh',
      }));
    });
}

const px = (value: number): string => value.toFixed(1);
