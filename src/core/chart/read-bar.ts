/** The text between two bar lines, read into chords with their beats. */
import { MOST_BAR_CHORDS } from '../base/limits.ts';
import { parseChord, readingHint, shownSymbol } from '../music/parse-chord.ts';
import type { Chord } from '../music/chord.ts';
import type { ChartChord } from './chart.ts';
import { refuse, type Piece } from './chart-problem.ts';

/** What a bar takes over from the bars before it. */
export interface BarContext {
  /** The bar's number, from 1; null for the pickup. */
  readonly bar: number | null;
  readonly beats: number;
  /** The bar before, for the repeat-bar sign; null at the start. */
  readonly before: readonly ChartChord[] | null;
}

/** Each beat mark holds the chord before it for a beat; some players write dots. */
const BEAT_MARKS = /^(?:\/+|\.+)$/;
const NO_CHORD = /^n\.?c\.?$/i;
/** "C7:1.5": a chord with its beats written out. */
const WITH_BEATS = /^(.+):(\d+(?:\.\d+)?)$/;
/** Beats are compared to a millionth: thirds of a beat don't add up exactly. */
const BEAT_TOLERANCE = 1e-6;

interface Slot {
  readonly chord: Chord | null;
  readonly beats: number | null;
  /** Beats counted by the marks behind it, itself included. */
  marks: number;
}

/**
 * Reads a bar. Chords alone share its beats; with beat marks each chord and each mark is a beat; with `:beats`
 * every chord has its length written. Refuses what cannot be read, with the problem and its place.
 */
export function readBar(piece: Piece, context: BarContext): readonly ChartChord[] {
  const words = wordsOf(piece);
  const tooMany = words[MOST_BAR_CHORDS];
  if (tooMany) refuse(tooMany, 'chart.chordsInBar', { bar: context.bar, most: MOST_BAR_CHORDS });
  const only = words.length === 1 ? words[0] : undefined;
  if (only && (only.text === '%' || only.text === '𝄎')) {
    if (!context.before) refuse(only, 'chart.repeatsNothing', { bar: context.bar });
    return context.before;
  }
  const slots: Slot[] = [];
  let marked = false;
  for (const word of words) {
    if (BEAT_MARKS.test(word.text)) {
      marked = true;
      const held = slots.at(-1) ?? goingOn(word, context);
      if (slots.length === 0) slots.push(held);
      held.marks += word.text.length;
    } else {
      slots.push(readSlot(word, context));
    }
  }
  if (slots.some((slot) => slot.beats !== null)) return withWrittenBeats(piece, slots, marked, context);
  if (!marked)
    return shareBeats(
      slots.map((slot) => slot.chord),
      context.beats,
    );
  // One mark alone holds the whole bar.
  if (slots.length === 1 && slots[0]?.marks === 1) return [{ chord: slots[0].chord, beats: context.beats }];
  return checkSum(
    piece,
    slots.map((slot) => ({ chord: slot.chord, beats: slot.marks })),
    context,
  );
}

/** Chords of one bar without beat marks: whole beats as evenly as they go, the longer first; else equal parts. */
export function shareBeats(chords: readonly (Chord | null)[], beats: number): readonly ChartChord[] {
  const count = chords.length;
  if (count > beats || !Number.isInteger(beats))
    return chords.map((chord) => ({ chord, beats: beats / count }));
  const whole = Math.floor(beats / count);
  const longer = beats - whole * count;
  return chords.map((chord, index) => ({ chord, beats: index < longer ? whole + 1 : whole }));
}

function goingOn(word: Piece, context: BarContext): Slot {
  const last = context.before?.at(-1);
  if (!last) refuse(word, 'chart.markFirst', { bar: context.bar });
  return { chord: last.chord, beats: null, marks: 0 };
}

function readSlot(word: Piece, context: BarContext): Slot {
  const timed = WITH_BEATS.exec(word.text);
  const symbol = timed?.[1] ?? word.text;
  const beats = timed ? Number(timed[2]) : null;
  if (beats === 0) refuse(word, 'chart.noBeats', { bar: context.bar, word: word.text, symbol });
  if (NO_CHORD.test(symbol)) return { chord: null, beats, marks: 1 };
  if (symbol === '%') refuse(word, 'chart.percentBesideChords', { bar: context.bar });
  const chord = parseChord(symbol);
  if (!chord)
    refuse(word, 'chart.chord', { bar: context.bar, symbol: shownSymbol(symbol), hint: readingHint(symbol) });
  return { chord, beats, marks: 1 };
}

function withWrittenBeats(
  piece: Piece,
  slots: readonly Slot[],
  marked: boolean,
  context: BarContext,
): readonly ChartChord[] {
  const timed: ChartChord[] = [];
  for (const { chord, beats } of slots) {
    if (beats === null || marked) {
      refuse(piece, 'chart.someBeats', { bar: context.bar });
    }
    timed.push({ chord, beats });
  }
  return checkSum(piece, timed, context);
}

function checkSum(piece: Piece, chords: readonly ChartChord[], context: BarContext): readonly ChartChord[] {
  const sum = chords.reduce((total, { beats }) => total + beats, 0);
  if (Math.abs(sum - context.beats) > BEAT_TOLERANCE) {
    refuse(piece, 'chart.beatSum', { bar: context.bar, written: sum, holds: context.beats });
  }
  return chords;
}

function wordsOf(piece: Piece): readonly Piece[] {
  return [...piece.text.matchAll(/\S+/gu)].map((match) => ({
    text: match[0],
    line: piece.line,
    column: piece.column + match.index,
  }));
}
