/**
 * A neck on the page, as geometry: frets as bar lines, strings as staff lines, the highest string on top as in any
 * tablature. A left-handed player sees it mirrored; numbers stay as they are.
 */
import type { Neck } from '../../core/music/instruments.ts';
import type { NeckPosition } from '../../core/music/where-it-lies.ts';

/** The frets in sight: fingers may lie from `lowest` to `highest`. With `lowest` at the nut, open strings too. */
export interface FretWindow {
  readonly lowest: number;
  readonly highest: number;
}

/** Frets that a hand covers without moving, with a stretch. */
export const HAND_FRETS = 5;
/** Narrower spaces could not be read at a glance. */
const NARROWEST_FRET_PX = 30;
/** Room for the open strings beside the nut, against the first fret's space. */
const OPEN_SPACE = 0.62;
/**
 * Frets narrow towards the bridge, but half as fast as on the instrument (there by 2^(1/12) a fret), so that the
 * upper ones can be read.
 */
const NARROWING = 2 ** (-1 / 24);

const wholeNeck = ({ frets, capo }: Neck): FretWindow => ({ lowest: capo, highest: frets });

/**
 * The frets to show.
 * @param choice all, where the hand is, or five frets from one on
 * @param hand where the last note lies, or null before there was one
 * @param before the window until now: a page is only turned when the hand leaves it
 */
export function windowOf(
  neck: Neck,
  choice: 'all' | 'hand' | number,
  widthPx: number,
  hand: NeckPosition | null,
  before: FretWindow | null,
): FretWindow {
  const whole = wholeNeck(neck);
  const fits = widthPx / (whole.highest - whole.lowest + OPEN_SPACE) >= NARROWEST_FRET_PX;
  if (choice === 'all' && fits) return whole;
  if (typeof choice === 'number') return fiveFrom(neck, choice);
  const open = hand === null || hand.fret === neck.capo;
  if (before !== null && before.highest - before.lowest <= HAND_FRETS) {
    if (open || (hand.fret >= before.lowest && hand.fret <= before.highest)) return before;
  }
  return fiveFrom(neck, open ? neck.capo : hand.fret - 1);
}

function fiveFrom({ frets, capo }: Neck, fret: number): FretWindow {
  // Near the nut the open strings come along.
  if (fret <= capo + 1) return { lowest: capo, highest: Math.min(frets, capo + HAND_FRETS) };
  const lowest = Math.min(fret, frets - HAND_FRETS + 1);
  return { lowest, highest: lowest + HAND_FRETS - 1 };
}

export interface NeckLayout {
  readonly window: FretWindow;
  /** Whether the nut or the capo is in sight, and the open strings beside it. */
  readonly hasOpen: boolean;
  /** The fret's wire; the nut's and the capo's too. */
  wireX(fret: number): number;
  /** Where a mark stands for a finger on this fret: between the wires, or beside the nut. */
  fingerX(fret: number): number;
  /** 1 is the highest string, on top. */
  stringY(string: number): number;
  /** Between two strings. */
  readonly stringGap: number;
  /** The narrowest space between two wires. */
  readonly narrowest: number;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Lays a neck into a box; the outer strings keep half a gap to its edges. */
export function layNeck(neck: Neck, window: FretWindow, leftHanded: boolean, box: Box): NeckLayout {
  const hasOpen = window.lowest === neck.capo;
  const first = hasOpen ? window.lowest + 1 : window.lowest;
  const count = window.highest - first + 1;
  const widths = Array.from({ length: count }, (_, i) => NARROWING ** i);
  const open = hasOpen ? OPEN_SPACE : 0;
  const whole = open + widths.reduce((sum, width) => sum + width, 0);
  const scale = box.width / whole;
  /** wires[0] is the nut, or the wire below the lowest fret in sight. */
  const wires = [open * scale];
  for (const width of widths) wires.push(wires.at(-1)! + width * scale);
  const mirrored = (x: number) => box.left + (leftHanded ? box.width - x : x);
  const wire = (fret: number) => {
    const x = wires[fret - first + 1];
    if (x === undefined)
      throw new RangeError(`fret ${fret} is not in sight: ${first - 1} to ${window.highest}`);
    return x;
  };
  const strings = neck.openStrings.length;
  const stringGap = box.height / strings;
  return {
    window,
    hasOpen,
    wireX: (fret) => mirrored(wire(fret)),
    fingerX: (fret) =>
      mirrored(hasOpen && fret === window.lowest ? (open * scale) / 2 : (wire(fret - 1) + wire(fret)) / 2),
    stringY: (string) => box.top + (string - 0.5) * stringGap,
    stringGap,
    narrowest: (widths.at(-1) ?? 1) * scale,
  };
}

/** Every place in sight where a finger can lie, with the pitch it sounds. */
export function placesIn(
  neck: Neck,
  { lowest, highest }: FretWindow,
): readonly (NeckPosition & { readonly midi: number })[] {
  return neck.openStrings.flatMap((open, index) =>
    Array.from({ length: highest - lowest + 1 }, (_, i) => ({
      string: neck.openStrings.length - index,
      fret: lowest + i,
      midi: open + lowest + i,
    })),
  );
}

/** The frets that carry a figure on most necks. */
export const FIGURED_FRETS: readonly number[] = [3, 5, 7, 9, 12, 15, 17, 19, 21, 24];
