/** Geometry of the line over the chords: where each note, chord and shore stands on the strip. All in CSS pixels. */
import type { Chord } from '../../core/music/chord.ts';
import type { ReportNote } from '../../core/report/schema.ts';
import { isAshore } from '../parts/roles.ts';

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

/** Fits a strip round the notes: `heightPx` high, `beatPx` a beat, whole bars from the first to the last. */
export function stripFor(
  notes: readonly ReportNote[],
  endBeat: number,
  beatsPerBar: number,
  beatPx: number,
  heightPx: number,
): Strip {
  const midis = notes.map(({ midi }) => midi);
  const low = midis.length === 0 ? 53 : Math.min(...midis);
  const high = midis.length === 0 ? 67 : Math.max(...midis);
  const range = Math.max(LEAST_RANGE, high - low + 2 * MARGIN);
  const first = Math.min(0, ...notes.map(({ beat }) => beat));
  const last = Math.max(endBeat, beatsPerBar);
  return {
    firstBeat: Math.floor(first / beatsPerBar) * beatsPerBar,
    lastBeat: Math.ceil(last / beatsPerBar) * beatsPerBar,
    beatPx,
    lowMidi: (low + high) / 2 - range / 2,
    semitonePx: heightPx / range,
    heightPx,
  };
}

export const xOf = (strip: Strip, beat: number): number => (beat - strip.firstBeat) * strip.beatPx;
export const beatOf = (strip: Strip, x: number): number => strip.firstBeat + x / strip.beatPx;
export const yOf = (strip: Strip, midi: number): number =>
  strip.heightPx - (midi - strip.lowMidi) * strip.semitonePx;
export const widthOf = (strip: Strip): number => (strip.lastBeat - strip.firstBeat) * strip.beatPx;

/** Notes that reach into [fromBeat, toBeat), with their place in the report. */
export function notesBetween(
  notes: readonly ReportNote[],
  fromBeat: number,
  toBeat: number,
): readonly { readonly note: ReportNote; readonly index: number }[] {
  return notes
    .map((note, index) => ({ note, index }))
    .filter(({ note }) => note.beat < toBeat && note.endBeat > fromBeat);
}

/** Rests longer than this lift the pen. */
const LIFT_BEATS = 0.75;

/**
 * The pen's path through the notes: along each, and in a slope from one to the next unless a rest lies between.
 * Two paths, because the pen presses where the chord names the tone.
 */
export function penPaths(
  strip: Strip,
  notes: readonly ReportNote[],
): { readonly thin: string; readonly thick: string } {
  let thin = '';
  let thick = '';
  let before: ReportNote | null = null;
  for (const note of notes) {
    const x = xOf(strip, note.beat);
    const y = yOf(strip, note.midi);
    const end = Math.max(x + 3, xOf(strip, note.endBeat));
    if (before !== null && note.beat - before.endBeat < LIFT_BEATS) {
      const fromX = Math.min(x - 2, Math.max(xOf(strip, before.beat) + 3, xOf(strip, before.endBeat)));
      const fromY = yOf(strip, before.midi);
      const middle = (fromX + x) / 2;
      thin += `M${px(fromX)} ${px(fromY)}C${px(middle)} ${px(fromY)} ${px(middle)} ${px(y)} ${px(x)} ${px(y)}`;
    }
    const stroke = `M${px(x)} ${px(y)}H${px(end)}`;
    if (isAshore(note.role)) thick += stroke;
    else thin += stroke;
    before = note;
  }
  return { thin, thick };
}

/** A height at which a chord tone lies, on every octave of the strip. */
export interface Shore {
  readonly y: number;
  readonly degree: string;
  /** Thirds and sevenths. */
  readonly guide: boolean;
}

export function shoresOf(strip: Strip, chord: Chord): readonly Shore[] {
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
