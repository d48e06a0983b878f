/**
 * What a player may want to turn with the instrument in the hands: how loud the band is, how fast, how it swings, how
 * long it counts in. One letter takes a dial, plus and minus turn it; no key of a foot switch is among them.
 */
import type { Words } from '../../core/words/words.ts';
import { BPM_RANGE, clampTo, LEVEL_RANGE, MOST_COUNT_IN_BARS, SWING_RANGE } from '../../state/settings.ts';

export type DialId = 'band' | 'tempo' | 'swing' | 'count-in';

export interface Dial {
  readonly id: DialId;
  /** The letter that takes it, in every language: the first of its English name. */
  readonly key: string;
  readonly step: number;
  readonly lowest: number;
  readonly highest: number;
}

export const DIALS: readonly Dial[] = [
  // Above 0 dB only single parts may go: the band as a whole has no reason to.
  {
    id: 'band',
    key: 'b',
    step: 2,
    lowest: LEVEL_RANGE.lowest,
    highest: 0,
  },
  { id: 'tempo', key: 't', step: 4, ...BPM_RANGE },
  { id: 'swing', key: 's', step: 0.02, ...SWING_RANGE },
  {
    id: 'count-in',
    key: 'c',
    step: 1,
    lowest: 1,
    highest: MOST_COUNT_IN_BARS,
  },
];

/** Level in dB, quarters a minute, share of the beat that the first eighth takes, bars; null where it can't be turned. */
export type DialValues = Readonly<Record<DialId, number | null>>;

/** Where a dial stands after one step, never past its ends. @param value where it stands now */
export const turned = ({ step, lowest, highest }: Dial, value: number, way: 1 | -1): number =>
  Math.round(100 * clampTo({ lowest, highest }, value + way * step)) / 100;

/** A dial's value as it stands on the page. @example dialWords('band', -18, english) // "−18 dB" */
export function dialWords(id: DialId, value: number, { playing, numbers }: Words): string {
  switch (id) {
    case 'band':
      if (value <= LEVEL_RANGE.lowest) return playing.dials.silent;
      return `${value < 0 ? '−' : ''}${Math.abs(Math.round(value))} dB`;
    case 'tempo':
      return String(Math.round(value));
    case 'swing':
      return value <= SWING_RANGE.lowest ? playing.dials.straight : numbers.percent({ share: value });
    case 'count-in':
      return playing.dials.bars({ bars: value });
  }
}

/** What a turn means for the take: the care for the ears, and from when it holds. */
export function turnedSentence(id: DialId, dialValue: number, countingIn: boolean, words: Words): string {
  const value = dialWords(id, dialValue, words);
  const { dials } = words.playing;
  switch (id) {
    case 'band':
      return dials.bandCare({ level: value });
    case 'tempo':
      return dials.tempoSet({ value, countingIn });
    case 'swing':
      return dials.swingSet({ value, countingIn });
    case 'count-in':
      return dials.countInSet({ value, countingIn });
  }
}

export type DialPress =
  { readonly kind: 'take'; readonly id: DialId } | { readonly kind: 'turn'; readonly way: 1 | -1 } | null;

/** What a key means to the dials. @param key as `KeyboardEvent.key`; plus without its shift counts too */
export function dialPressOf(key: string): DialPress {
  if (key === '+' || key === '=') return { kind: 'turn', way: 1 };
  if (key === '-' || key === '_' || key === '−') return { kind: 'turn', way: -1 };
  const dial = DIALS.find((one) => one.key === key.toLowerCase());
  return dial === undefined ? null : { kind: 'take', id: dial.id };
}
