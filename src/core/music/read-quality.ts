/**
 * What follows the root in a chord symbol, read into degrees. The grammar is how players write chords:
 * a triad ("m", "dim", "+", "sus"), a number that stacks thirds ("7", "9", "13"), then changes to it
 * ("b9", "#11", "add9", "no5", "(b9,b13)"). *Common practice.*
 */

/** The degrees of a chord by what they do in it. */
export interface QualityDegrees {
  readonly third: string | null;
  readonly fifths: readonly string[];
  readonly seventh: string | null;
  readonly extensions: readonly string[];
}

/** A quality being read: each rule of the grammar writes here. */
interface Draft {
  third: string | null;
  fifths: string[];
  seventh: string | null;
  sixth: string | null;
  /** Stacked by the number alone; an alteration of the same number takes its place ("13b9" has no 9). */
  stacked: string[];
  /** Written out one by one. */
  written: string[];
  /** "maj" was written, so that a number stacks on the major seventh. */
  majorSeventh: boolean;
  diminished: boolean;
}

/** Symbols that the grammar can't take apart, and what they stand for. */
const WHOLE: ReadonlyMap<string, string> = new Map(
  Object.entries({
    b9sus: '7b9sus4',
    b9sus4: '7b9sus4',
    phryg: '7b9sus4',
    m11A: 'm11#5',
    dom: '7',
    dom7: '7',
    dom9: '9',
    dom13: '13',
  }),
);

/** Fourths stacked up from the root; the third one is the minor third. */
const QUARTAL: QualityDegrees = { third: 'b3', fifths: [], seventh: 'b7', extensions: ['4'] };

/**
 * The altered dominant: root, third, seventh and every altered tone. It names no natural fifth: in the scale
 * that players mean by it (the seventh mode of melodic minor) the fifth is there only as #11 (b5) and b13 (#5).
 */
const ALTERED: QualityDegrees = {
  third: '3',
  fifths: [],
  seventh: 'b7',
  extensions: ['b9', '#9', '#11', 'b13'],
};

const MAJOR = /^(?:major|maj|Maj|MAJ|MA|[Mm]a(?!dd|j)|M|j|\^)/;
/** "ma7" is a major seventh, "madd9" a minor chord. */
const MINOR = /^(?:minor|[Mm]in|MIN|[Mm]i|MI|m(?!a(?!dd))|-)/;
const DIMINISHED = /^(?:dim|°|o(?!m))/;
const HALF_DIMINISHED = /^(?:ø|h)7?/;
const AUGMENTED = /^(?:aug|\+(?!5|11))/;
const SUSPENDED = /^sus(24|2|4)?/;
const NUMBER = /^(?:6\/?9|67|6|7|9|11|13)/;
const MAJOR_SEVENTH = /^(?:major|maj|Maj|MAJ|MA|[Mm]a|M|j|\^|Δ)(7|9|11|13)|^#7|^Δ/;
const ADDED = /^add([b#+-]?)(2|4|6|9|11|13)/;
const LEFT_OUT = /^(?:no|omit)(3|5)(?:rd|th)?/;
const ALTERATION = /^([b#+-])(4|5|6|9|11|13)/;
const BARE = /^(6|9|11|13)/;

/** Alterations that make no sense as chord tones: they sound like a plainer tone that the chord already names. */
const SENSELESS = new Set(['b4', 'b11', '#6', '#13']);

/** Degrees of a quality ("m7b5", "13(#11)"), root aside, or null when it can't be read. ASCII but for Δ ° ø. */
export function readQuality(text: string): QualityDegrees | null {
  const quality = WHOLE.get(text) ?? text;
  if (quality === '4' || quality === 'quartal') return QUARTAL;
  if (/^7?(?:alt|\(alt\))7?$/.test(quality)) return ALTERED;
  if (quality === '5') return { third: null, fifths: ['5'], seventh: null, extensions: [] };
  if (quality === '2') return { third: '3', fifths: ['5'], seventh: null, extensions: ['2'] };
  const draft: Draft = {
    third: '3',
    fifths: ['5'],
    seventh: null,
    sixth: null,
    stacked: [],
    written: [],
    majorSeventh: false,
    diminished: false,
  };
  const afterTriad = readTriad(quality, draft);
  const afterNumber = readNumber(afterTriad, draft);
  return readChanges(afterNumber, draft) ? settle(draft) : null;
}

/** Reads the triad into the draft and gives the text that is left. */
function readTriad(text: string, draft: Draft): string {
  const cut = (pattern: RegExp) => {
    const match = pattern.exec(text);
    return match ? { rest: text.slice(match[0].length), match } : null;
  };
  if (text.startsWith('Δ')) {
    draft.majorSeventh = true;
    draft.seventh = '7';
    return text.slice(1);
  }
  const minor = cut(MINOR);
  if (minor) {
    draft.third = 'b3';
    return minor.rest;
  }
  const major = cut(MAJOR);
  if (major) {
    draft.majorSeventh = true;
    // "maj#11" is short for "maj7#11".
    if (/^[#+](?:4|11)/.test(major.rest)) draft.seventh = '7';
    return major.rest;
  }
  const diminished = cut(DIMINISHED);
  if (diminished) {
    draft.third = 'b3';
    draft.fifths = ['b5'];
    draft.diminished = true;
    return diminished.rest;
  }
  const half = cut(HALF_DIMINISHED);
  if (half) {
    draft.third = 'b3';
    draft.fifths = ['b5'];
    draft.seventh = 'b7';
    return half.rest;
  }
  const augmented = cut(AUGMENTED);
  if (augmented) {
    draft.fifths = ['#5'];
    return augmented.rest;
  }
  const suspended = cut(SUSPENDED);
  if (suspended) {
    suspend(suspended.match[1], draft);
    return suspended.rest;
  }
  return text;
}

/** Reads the stacking number into the draft and gives the text that is left. */
function readNumber(text: string, draft: Draft): string {
  const number = NUMBER.exec(text)?.[0];
  if (number === undefined) return text;
  const rest = text.slice(number.length);
  if (number === '67') {
    stack('7', draft);
    draft.written.push('6');
  } else if (number.startsWith('6')) {
    draft.sixth = '6';
    if (number.endsWith('9')) draft.written.push('9');
  } else {
    stack(number, draft);
  }
  return rest;
}

/** Thirds stacked as far as the number: 9 holds the seventh, 11 the ninth too; 13 leaves the eleventh out. */
function stack(number: string, draft: Draft): void {
  draft.seventh ??= draft.majorSeventh ? '7' : draft.diminished ? 'bb7' : 'b7';
  if (number !== '7') draft.stacked.push('9');
  if (number === '11' || number === '13') draft.stacked.push(number);
}

function suspend(number: string | undefined, draft: Draft): void {
  draft.third = null;
  if (number === '2' || number === '24') draft.written.push('2');
  if (number !== '2') draft.written.push('4');
}

/** Reads everything after the number. False when something is left that no rule takes. */
function readChanges(text: string, draft: Draft): boolean {
  let rest = text;
  let open = false;
  /** The sign just read that needs a change after it. A bare number needs one: "7(13)" is read, "713" is not. */
  let waiting = '';
  while (rest !== '') {
    const mark = rest.charAt(0);
    if (mark === ')') {
      if (!open || waiting !== '') return false;
      open = false;
      rest = rest.slice(1);
    } else if (mark === '(' || mark === ',' || mark === '/') {
      if (waiting !== '' || (mark === '(' && open)) return false;
      open ||= mark === '(';
      waiting = mark;
      rest = rest.slice(1);
    } else {
      const taken = readChange(rest, draft, waiting !== '');
      if (taken === 0) return false;
      waiting = '';
      rest = rest.slice(taken);
    }
  }
  return !open && waiting === '';
}

/** Reads one change and gives how many characters it took, 0 for none. */
function readChange(rest: string, draft: Draft, setApart: boolean): number {
  const suspended = SUSPENDED.exec(rest);
  if (suspended) {
    suspend(suspended[1], draft);
    const number = /^(?:7|9|11|13)/.exec(rest.slice(suspended[0].length))?.[0] ?? '';
    if (number !== '') stack(number, draft);
    return suspended[0].length + number.length;
  }
  const added = ADDED.exec(rest);
  if (added) {
    draft.written.push(sign(added[1]) + (added[2] ?? ''));
    return added[0].length;
  }
  const leftOut = LEFT_OUT.exec(rest);
  if (leftOut) {
    if (leftOut[1] === '3') draft.third = null;
    else draft.fifths = [];
    return leftOut[0].length;
  }
  const majorSeventh = MAJOR_SEVENTH.exec(rest);
  if (majorSeventh) {
    // "o7M7" names both sevenths: the second one is an extension.
    if (draft.seventh === null) draft.seventh = '7';
    else draft.written.push('7');
    if (majorSeventh[1] !== undefined && majorSeventh[1] !== '7') stack(majorSeventh[1], draft);
    return majorSeventh[0].length;
  }
  const alteration = ALTERATION.exec(rest);
  if (alteration) return alter(sign(alteration[1]), alteration[2] ?? '', draft) ? alteration[0].length : 0;
  const augmented = /^(?:aug|\+)/.exec(rest);
  if (augmented) {
    draft.fifths = ['#5'];
    return augmented[0].length;
  }
  const bare = setApart ? BARE.exec(rest) : null;
  if (bare) {
    draft.written.push(bare[1] ?? '');
    return bare[0].length;
  }
  return 0;
}

/** Charts write a raised tone # or +, a lowered one b or -. */
const sign = (mark: string | undefined): string => (mark === '+' ? '#' : mark === '-' ? 'b' : (mark ?? ''));

function alter(accidental: string, number: string, draft: Draft): boolean {
  const degree = accidental + number;
  if (SENSELESS.has(degree)) return false;
  if (number === '5') {
    draft.fifths = [...draft.fifths.filter((fifth) => fifth !== '5'), degree];
  } else {
    draft.stacked = draft.stacked.filter((stacked) => stacked !== number);
    draft.written.push(degree);
  }
  return true;
}

/** The draft as a finished quality: each degree once, extensions in rising order. */
function settle(draft: Draft): QualityDegrees {
  const written = [...draft.written];
  let seventh = draft.seventh;
  if (draft.sixth !== null) {
    if (seventh === null) seventh = draft.sixth;
    else written.push(draft.sixth);
  } else if (seventh === null && written.includes('6')) {
    // "add6" makes a 6 chord.
    seventh = '6';
  }
  const extensions = [...new Set([...draft.stacked, ...written])].filter((degree) => degree !== seventh);
  return {
    third: draft.third,
    fifths: [...new Set(draft.fifths)],
    seventh,
    extensions: extensions.sort((a, b) => height(a) - height(b)),
  };
}

/** Order of extensions: by number, then flat before natural before sharp. */
function height(degree: string): number {
  const number = Number(degree.replace(/^[b#]+/, ''));
  return number * 3 + (degree.startsWith('b') ? -1 : degree.startsWith('#') ? 1 : 0);
}
