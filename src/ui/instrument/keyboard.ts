/** A keyboard on the page, as geometry: white keys are the spaces between strokes, black keys lie on the strokes. */

/** White keys by pitch class. */
const WHITE = [0, 2, 4, 5, 7, 9, 11];
/** Width of a black key against a white one. */
const BLACK = 0.6;
/** A white key is no narrower and no wider, in CSS pixels. */
const NARROWEST_KEY_PX = 30;
const WIDEST_KEY_PX = 72;
/** Octaves in sight: more would be searched, not seen. */
const MOST_OCTAVES = 4;
/** The lowest C and the highest B of a full keyboard. */
const LOWEST = 24;
const HIGHEST = 107;

export const isWhite = (midi: number): boolean => WHITE.includes(((midi % 12) + 12) % 12);

/** White keys below this one, counted from MIDI 0. */
const whitesBelow = (midi: number): number => {
  const octave = Math.floor(midi / 12);
  const pitchClass = midi - 12 * octave;
  return octave * 7 + WHITE.filter((white) => white < pitchClass).length;
};

export interface Keys {
  /** Whole MIDI numbers; both white. */
  readonly lowest: number;
  readonly highest: number;
}

/** The keys that fit, a C at the left, the register in the middle; turned by octaves only when the register leaves. */
export function keysOf(widthPx: number, register: number, before: Keys | null): Keys {
  const fewest = Math.max(1, Math.ceil(widthPx / WIDEST_KEY_PX / 7));
  const most = Math.max(1, Math.floor(widthPx / NARROWEST_KEY_PX / 7));
  const size = 12 * Math.min(MOST_OCTAVES, Math.max(fewest, most)) - 1;
  const fits = before !== null && before.highest - before.lowest === size;
  if (fits && register >= before.lowest && register <= before.highest) return before;
  const wanted = Math.round((register - size / 2) / 12) * 12;
  const lowest = Math.max(LOWEST, Math.min(wanted, HIGHEST - size));
  return { lowest, highest: lowest + size };
}

export interface KeyboardLayout {
  readonly keys: Keys;
  readonly keyWidth: number;
  /** Middle of a key. */
  keyX(midi: number): number;
  /** Left edge of a white key. */
  edgeX(midi: number): number;
  readonly blackWidth: number;
}

/** Lays keys into a width. */
export function layKeyboard(keys: Keys, left: number, width: number): KeyboardLayout {
  const from = whitesBelow(keys.lowest);
  const keyWidth = width / (whitesBelow(keys.highest) - from + 1);
  const edgeX = (midi: number) => left + (whitesBelow(midi) - from) * keyWidth;
  return {
    keys,
    keyWidth,
    edgeX,
    keyX: (midi) => edgeX(midi) + (isWhite(midi) ? keyWidth / 2 : 0),
    blackWidth: keyWidth * BLACK,
  };
}

/** Every key in sight, from the lowest. */
export const keysIn = ({ lowest, highest }: Keys): readonly number[] =>
  Array.from({ length: highest - lowest + 1 }, (_, i) => lowest + i);
