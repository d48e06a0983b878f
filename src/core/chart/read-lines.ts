/** Chart text line by line: headings, section names, and bars between bar signs. */
import type { Key } from '../music/chord.ts';
import { MOST_BARS } from '../base/limits.ts';
import { parseChord } from '../music/parse-chord.ts';
import type { BarSigns, ChartBar, ChartChord, Meter } from './chart.ts';
import { refuse, type Piece } from './chart-problem.ts';
import { readBar } from './read-bar.ts';
import { hasSigns, passesOf, takeSigns } from './read-signs.ts';
import { headingOf, isHeadingWord, keyIn, readHeading, type Headings } from './read-headings.ts';

const BAR_SIGN = /:\|\|:|:\|:|:\|\||:\|\]|:\||\|\|:|\|:|\|\||\|\]|\|/g;
/** A comment is a # with white space (or a line's start) before it: "C#7" is a chord. */
const COMMENT = /(?:^|\s)#.*$/;
const IN_BRACKETS = /^\s*\[\s*((?![\d\s,.-]*\])[^\][|]*?)\s*\]/;
const BEFORE_BARS = /^\s*([^\][|:\s][^\][|:]*?)\s*:(?=\s|$)/;
/** What no page shows and no score may hold counts as white space. */
// eslint-disable-next-line no-control-regex -- these are the characters that are meant
const CONTROLS = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\ufffe\uffff]/g;
/** White space that no one wrote by hand is cut, so that no expression looks at it again and again. */
const LONG_SPACE = /\s{100,}/g;
/** Letters and signs of double width, as Japanese and Chinese keyboards type them (Unicode, FF01 to FF5E), and what they stand for. */
const FULL_WIDTH = /[\uff01-\uff5e]/g;
const FULL_WIDTH_OFFSET = 0xfee0;
/** A title keeps its signs as they are. */
const TITLE = /^\s*title\s*:/i;
const TITLE_COLON = /^(\s*title\s*)：/i;
/** What a section may be called. A number alone would read as an ending. */
const SECTION_NAME = /^(?!\d+$)[\p{L}\p{N}][\p{L}\p{N} .'’&+()♭♯-]*$/u;
/** Letters that name sections, though most of them would read as chords too: "A", "B2", "C'". */
const SECTION_LETTER = /^[A-Z]\d?['’]*$/;
const ENDING = /^\s*(?:\[\s*(\d(?:\s*[,-]\s*\d)*)(?:\s*[\].]|(?=\s|$))|(\d(?:[,-]\d)*)(?:\.|(?=\s|$)))/;
const TIMES_ROUND = /^\s*x\s?(\d+)(?=\s|$)/i;
const MOST_TIMES_ROUND = 32;

interface SectionDraft {
  readonly name: string | null;
  feel: string | null;
  key?: Key;
  readonly bars: ChartBar[];
  readonly piece: Piece;
}

/** Everything read so far. */
export interface Reading {
  readonly headings: Headings;
  readonly sections: SectionDraft[];
  pickup: ChartBar | null;
  before: readonly ChartChord[] | null;
  /** A repeat that is not closed yet: its sign, and the bar that it opens with. */
  repeatOpen: { readonly sign: Piece; readonly bar: number | null } | null;
  /** A repeat sign stands before the next bar. */
  opening: boolean;
  /** Segno or coda, written before the next bar. */
  signs: BarSigns;
}

/** A reading before the first line. */
export const startReading = (meter: Meter): Reading => ({
  headings: { title: null, key: null, meter, feel: null, bpm: null, swing: null, pickupBeats: 0 },
  sections: [],
  pickup: null,
  before: null,
  repeatOpen: null,
  opening: false,
  signs: {},
});

/** Reads one line of the text into the reading. `line` counts from 1. */
export function readLine(text: string, line: number, reading: Reading): void {
  const typed = text.replace(TITLE_COLON, '$1:');
  const narrow = TITLE.test(typed)
    ? typed
    : typed.replaceAll(FULL_WIDTH, (sign) => String.fromCharCode(sign.charCodeAt(0) - FULL_WIDTH_OFFSET));
  const plain = narrow
    .replace(COMMENT, '')
    .replaceAll('‖', '||')
    .replaceAll(CONTROLS, ' ')
    .replaceAll(LONG_SPACE, ' ');
  if (plain.trim() === '') return;
  const piece = { text: plain, line, column: 1 };
  if (plain.includes('|')) readBarLine(piece, reading);
  else readWordLine(trimmed(piece), reading);
}

const barsIn = (reading: Reading): number =>
  reading.sections.reduce((sum, section) => sum + section.bars.length, 0);

const begun = (reading: Reading): boolean => reading.pickup !== null || barsIn(reading) > 0;

/** A line without bar signs: a heading or the name of a section. */
function readWordLine(piece: Piece, reading: Reading): void {
  const { piece: rest, before, behind } = takeSigns(piece);
  // A line of signs alone; "Coda" alone names the section that is one.
  if (rest.text === '' && !/^coda$/i.test(piece.text)) return keepSigns(piece, before, behind, reading);
  const bracketed = /^\[([^\]]*)\]$/.exec(piece.text);
  if (bracketed) return startSection(piece, (bracketed[1] ?? '').trim(), reading);
  const heading = headingOf(piece.text);
  if (heading && (heading.value !== '' || isHeadingWord(heading.word))) {
    return takeHeading(piece, heading.word, heading.value, reading);
  }
  const name = piece.text.replace(/\s*:$/, '');
  const words = name.split(/\s+/);
  const chords = words.filter((word) => parseChord(word)).length;
  if (chords * 2 > words.length && !SECTION_LETTER.test(name)) {
    refuse(piece, 'chart.noBarLines', { line: piece.line });
  }
  startSection(piece, name, reading);
}

function takeHeading(piece: Piece, word: string, value: string, reading: Reading): void {
  if (word === 'feel') {
    const last = reading.sections.at(-1);
    if (last && last.bars.length === 0) {
      last.feel = value;
      return;
    }
    if (begun(reading)) {
      reading.sections.push({ name: null, feel: value, bars: [], piece });
      return;
    }
  } else if (word === 'key' && value !== '' && begun(reading)) {
    const key = keyIn(piece, value);
    const last = reading.sections.at(-1);
    if (last && last.bars.length === 0) last.key = key;
    else reading.sections.push({ name: null, feel: null, key, bars: [], piece });
    return;
  } else if (isHeadingWord(word) && begun(reading)) {
    refuse(piece, 'chart.headingTooLate', { line: piece.line, word });
  }
  if (value === '') refuse(piece, 'chart.headingEmpty', { line: piece.line, word });
  readHeading(piece, word, value, reading.headings);
}

function startSection(piece: Piece, name: string, reading: Reading): void {
  if (!SECTION_NAME.test(name)) {
    refuse(piece, 'chart.sectionName', { line: piece.line, section: name });
  }
  refuseEmptySection(reading);
  reading.sections.push({ name, feel: null, bars: [], piece });
}

/** Refuses a chart whose last section holds no bars. */
export function refuseEmptySection(reading: Reading): void {
  const last = reading.sections.at(-1);
  if (last && last.bars.length === 0) {
    if (last.name !== null && last.name.length > 1 && parseChord(last.name)) {
      refuse(last.piece, 'chart.chordWithoutBarLines', { text: last.name });
    }
    refuse(last.piece, 'chart.sectionEmpty', { section: last.name, feel: last.feel });
  }
}

/** A line with bar signs. */
function readBarLine(piece: Piece, reading: Reading): void {
  let sign = '';
  let from = 0;
  for (const match of piece.text.matchAll(BAR_SIGN)) {
    const content = slice(piece, from, match.index);
    const signPiece = slice(piece, match.index, match.index + match[0].length);
    takeBetweenSigns(from === 0 ? takeLineStart(content, reading) : content, sign, signPiece, reading);
    sign = match[0];
    from = match.index + sign.length;
  }
  takeBetweenSigns(slice(piece, from, piece.text.length), sign, null, reading);
}

/** Headings and a section name may stand before the first bar of their line: "key: Bb; meter: 3/4 | Bb | Eb |". */
function takeLineStart(piece: Piece, reading: Reading): Piece {
  const heading = headingOf(piece.text);
  if (heading && isHeadingWord(heading.word)) {
    for (const part of piece.text.split(';')) {
      const one = headingOf(part);
      if (!one) refuse(piece, 'chart.noHeading', { line: piece.line, text: part.trim() });
      takeHeading(piece, one.word, one.value, reading);
    }
    return slice(piece, piece.text.length, piece.text.length);
  }
  const section = BEFORE_BARS.exec(piece.text);
  if (!section) return piece;
  startSection(piece, section[1] ?? '', reading);
  return slice(piece, section[0].length, piece.text.length);
}

/** What stands between two bar signs: a bar, or nothing where signs touch. `next` is null at the line's end. */
function takeBetweenSigns(piece: Piece, sign: string, next: Piece | null, reading: Reading): void {
  let content = piece;
  if (sign.startsWith(':')) content = takeTimesRound(content, reading);
  if (sign.endsWith(':')) openRepeat(piece, sign, reading);
  const section = IN_BRACKETS.exec(content.text);
  if (section) {
    startSection(content, section[1] ?? '', reading);
    content = slice(content, section[0].length, content.text.length);
  }
  if (content.text.trim() !== '') takeBar(content, reading);
  else if (sign === '|' && next?.text === '|') {
    refuse(next, 'chart.barEmpty', { bar: nextBar(reading) });
  }
  if (next?.text.startsWith(':')) closeRepeat(next, reading);
}

/** Signs without a bar of their own: those that stand behind a bar go to the last, those before one to the next. */
function keepSigns(piece: Piece, before: BarSigns, behind: BarSigns, reading: Reading): void {
  const bars = reading.sections.at(-1)?.bars;
  const last = bars?.at(-1);
  if (hasSigns(behind)) {
    if (!bars || !last)
      return refuse(piece, 'chart.signWithoutBar', { line: piece.line, signs: piece.text.trim() });
    bars[bars.length - 1] = { ...last, signs: { ...last.signs, ...behind } };
  }
  reading.signs = { ...reading.signs, ...before };
}

function takeBar(piece: Piece, reading: Reading): void {
  const number = nextBar(reading);
  if (barsIn(reading) >= MOST_BARS) refuse(piece, 'chart.chorusTooLong', { bars: MOST_BARS });
  const ending = ENDING.exec(piece.text);
  const endings = ending ? passesOf(ending[1] ?? ending[2] ?? '', piece, number) : [];
  const {
    piece: content,
    before,
    behind,
  } = takeSigns(trimmed(slice(piece, ending?.[0].length ?? 0, piece.text.length)));
  if (content.text === '' && !ending && (hasSigns(before) || hasSigns(behind)))
    return keepSigns(piece, before, behind, reading);
  if (content.text === '') refuse(piece, 'chart.endingWithoutChord', { bar: number });
  const { meter, pickupBeats } = reading.headings;
  const isPickup = pickupBeats > 0 && !begun(reading);
  if (isPickup && pickupBeats >= meter.beatsPerBar) {
    refuse(piece, 'chart.pickupTooLong', { beats: pickupBeats, meter: meter.written });
  }
  const beats = isPickup ? pickupBeats : meter.beatsPerBar;
  const chords = readBar(content, { bar: number, beats, before: reading.before });
  const signs = { ...reading.signs, ...before, ...behind };
  reading.signs = {};
  const bar: ChartBar = {
    chords,
    repeatStart: reading.opening,
    repeatTimes: 0,
    endings,
    ...(hasSigns(signs) && { signs }),
  };
  reading.before = chords;
  if (isPickup) {
    if (bar.repeatStart || endings.length > 0 || bar.signs) refuse(piece, 'chart.pickupRepeated');
    reading.pickup = bar;
    return;
  }
  reading.opening = false;
  if (reading.sections.length === 0) reading.sections.push({ name: null, feel: null, bars: [], piece });
  reading.sections.at(-1)?.bars.push(bar);
}

/** The number of the bar that comes next, from 1; null for the pickup. */
const nextBar = (reading: Reading): number | null =>
  reading.headings.pickupBeats > 0 && !begun(reading) ? null : barsIn(reading) + 1;

function openRepeat(piece: Piece, sign: string, reading: Reading): void {
  const open = { text: sign, line: piece.line, column: Math.max(1, piece.column - sign.length) };
  const bar = nextBar(reading);
  if (reading.repeatOpen) refuse(open, 'chart.repeatInRepeat', { bar });
  reading.repeatOpen = { sign: open, bar };
  reading.opening = true;
}

function closeRepeat(sign: Piece, reading: Reading): void {
  const bars = reading.sections.at(-1)?.bars;
  const last = bars?.at(-1);
  if (!bars || !last || reading.opening) refuse(sign, 'chart.repeatWithoutBar', { line: sign.line });
  bars[bars.length - 1] = { ...last, repeatTimes: 2 };
  reading.repeatOpen = null;
}

/** ":| x3": the bars sound three times in all. */
function takeTimesRound(piece: Piece, reading: Reading): Piece {
  const times = TIMES_ROUND.exec(piece.text);
  if (!times) return piece;
  const count = Number(times[1]);
  if (count < 2 || count > MOST_TIMES_ROUND) {
    refuse(piece, 'chart.repeatTimes', { bar: barsIn(reading), times: count, most: MOST_TIMES_ROUND });
  }
  const bars = reading.sections.at(-1)?.bars;
  const last = bars?.at(-1);
  if (bars && last) bars[bars.length - 1] = { ...last, repeatTimes: count };
  return slice(piece, times[0].length, piece.text.length);
}

const slice = (piece: Piece, from: number, to: number): Piece => ({
  text: piece.text.slice(from, to),
  line: piece.line,
  column: piece.column + from,
});

function trimmed(piece: Piece): Piece {
  const start = piece.text.length - piece.text.trimStart().length;
  return slice(piece, start, start + piece.text.trim().length);
}
