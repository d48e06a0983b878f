import type { Partial, Partials } from '../frames/partials.ts';
import { INNER_RATE, LONGEST_STRETCH, SHORTEST_STRETCH } from '../tuning/frames.ts';
import * as S from '../tuning/measure.ts';
import { hzToMidi, midiToHz } from '../../music/temperament.ts';
import type { HeardNote } from '../../take/note.ts';

/** The partials of `length` inner samples from a moment on; null where they are not there (yet, or any more). */
export type PartialsAt = (fromSeconds: number, length: number) => Partials | null;

/** What a note turned out to be: its pitch, and the second note, both as fractional MIDI numbers. */
export interface Pair {
  readonly midi: number;
  /** Null unless it is sure. */
  readonly second: number | null;
}

/**
 * Looks for a second note in the steady part of `note`. Its own pitch changes only where it was no note at all, but the
 * fundamental that two notes have in common.
 * @param restsFrom when its pitch came to rest, in seconds
 */
export function hearPair(partialsAt: PartialsAt, note: HeardNote, restsFrom: number): Pair {
  const alone = { midi: note.midi, second: null };
  if (note.bendSemitones !== 0 || (note.vibrato && note.vibrato.depthCents > S.WIDEST_SHAKE)) return alone;
  const from = Math.max(note.onsetSeconds, restsFrom) + S.LEAD_SECONDS;
  const length = Math.min(LONGEST_STRETCH, Math.floor((note.offsetSeconds - from) * INNER_RATE));
  const partials = length < SHORTEST_STRETCH ? null : partialsAt(from, length);
  if (partials === null) return alone;
  return inCommon(partials, note.midi) ?? { midi: note.midi, second: secondOf(partials, note.midi) };
}

/**
 * The second note that sounds with a main one, where it is sure, as a fractional MIDI number; else null. The main
 * note's harmonics are taken away; of what is left, each partial is tried as a fundamental (harmonic sum, Klapuri
 * 2006). Octaves, twelfths and further whole ratios share all their harmonics and are never told.
 */
export function secondOf(partials: Partials, mainMidi: number): number | null {
  const { list, binHz } = partials;
  const main = harmonicsOf(list, midiToHz(mainMidi), binHz, null);
  if (semitones(main.hz, midiToHz(mainMidi)) > S.ASTRAY) return null;
  if (main.own.length < S.LEAST_MAIN || main.missing > main.own.length) return null;
  const rest = list.filter(({ hz }) => !isNear(hz, main.hz, reachHz(hz, binHz)));
  const least = Math.max(S.LEAST_POWER * powerOf(main.own), S.LEAST_OF_REST * powerOf(rest));
  let best: Harmonics | null = null;
  for (const { hz } of rest) {
    for (let under = 1; under <= S.DEEPEST; under++) {
      const tried = harmonicsOf(rest, hz / under, binHz, main);
      if (!isSure(tried) || tried.power < least || semitones(tried.hz, hz / under) > S.ASTRAY) continue;
      if (best === null || isBetter(tried, best)) best = tried;
    }
  }
  if (best === null || isWholeRatio(best.hz / main.hz)) return null;
  // An overtone of a third note, so close to the main one that its fundamental is hidden?
  for (let under = 2; under <= S.DEEPEST; under++)
    if (Math.abs(best.hz / under - main.hz) < S.SECOND_HIDDEN_BINS * binHz) return null;
  return hzToMidi(best.hz);
}

/**
 * A fifth or a fourth repeats with the period of a note that nobody plays, an octave or two lower. Where the heard pitch
 * has no partial of its own and two of its harmonics, as notes, hold all the power, they are what sounds; else null.
 */
function inCommon(partials: Partials, midi: number): Pair | null {
  const { list, binHz } = partials;
  const common = midiToHz(midi);
  if (nearest(list, common, reachHz(common, binHz)) !== null) return null;
  for (let upper = S.HIGHEST_OF_TWO; upper > 1; upper--) {
    const high = harmonicsOf(list, upper * common, binHz, null).hz;
    const second = secondOf(partials, hzToMidi(high));
    const low = second === null ? high : midiToHz(second);
    if (second === null || low >= high) continue;
    const of = (hz: number) => list.filter((partial) => isNear(partial.hz, hz, reachHz(partial.hz, binHz)));
    const [ofHigh, ofLow] = [of(high), of(low)];
    const both = new Set([...ofHigh, ...ofLow]);
    if (powerOf([...both]) < S.TWO_SHARE * powerOf(list)) continue;
    const shared = powerOf(ofHigh) + powerOf(ofLow) - powerOf([...both]);
    const pair = { midi: hzToMidi(high), second };
    return powerOf(ofLow) - shared > S.LOUDER * (powerOf(ofHigh) - shared)
      ? { midi: second, second: pair.midi }
      : pair;
  }
  return null;
}

interface Harmonics {
  /** Fundamental, refined by the harmonics found. */
  readonly hz: number;
  /** Partials found at its harmonics, and their power together. */
  readonly own: readonly Partial[];
  readonly power: number;
  /** Harmonics under the highest found where no partial stands though one could. */
  readonly missing: number;
}

/** The harmonics of a fundamental near `guess` among `list`; those beside a harmonic of `other` may be hidden by it. */
function harmonicsOf(
  list: readonly Partial[],
  guess: number,
  binHz: number,
  other: Harmonics | null,
): Harmonics {
  let hz = guess;
  const own: Partial[] = [];
  let missing = 0;
  let gap = 0;
  let moment = 0;
  let weight = 0;
  for (let n = 1; n <= S.HARMONICS; n++) {
    const found = nearest(list, n * hz, reachHz(n * hz, binHz));
    if (found === null) {
      if (other !== null && isNear(n * hz, other.hz, S.SECOND_HIDDEN_BINS * binHz)) continue;
      // Nothing is sure without its fundamental, but small bodies hardly give the lowest ones.
      gap += n > 1 ? 1 : hz > S.WEAK_FROM_HZ && hz < S.WEAK_TO_HZ ? S.WEAK_MISSING : S.HARMONICS;
      continue;
    }
    missing += gap;
    gap = 0;
    own.push(found);
    // Least squares: higher harmonics say more exactly where the fundamental lies.
    moment += n * found.hz;
    weight += n * n;
    hz = moment / weight;
  }
  return { hz, own, power: powerOf(own), missing };
}

/** A lower fundamental explains whatever a higher one does: it must explain more. */
const isBetter = (tried: Harmonics, best: Harmonics): boolean =>
  tried.hz < S.LOWER_SHARE * best.hz
    ? tried.power > best.power * S.MORE_POWER && tried.own.length >= best.own.length + S.MORE_OWN
    : tried.power > best.power;

const isSure = ({ own, missing }: Harmonics): boolean =>
  own.length >= S.LEAST_OWN && own.length >= S.LEAST_FOUND * (own.length + missing);

const reachHz = (hz: number, binHz: number): number => Math.max(S.REACH_BINS * binHz, S.REACH_SHARE * hz);

function nearest(list: readonly Partial[], hz: number, reach: number): Partial | null {
  let best: Partial | null = null;
  let least = reach;
  for (const partial of list) {
    const apart = Math.abs(partial.hz - hz);
    if (apart <= least) [best, least] = [partial, apart];
  }
  return best;
}

/** Does `hz` lie within `reach` of a harmonic of `fundamental`? */
const isNear = (hz: number, fundamental: number, reach: number): boolean =>
  Math.abs(hz - Math.max(1, Math.round(hz / fundamental)) * fundamental) <= reach;

function isWholeRatio(ratio: number): boolean {
  const upward = Math.max(ratio, 1 / ratio);
  return semitones(upward, Math.round(upward)) < S.WHOLE_RATIO;
}

/** How far apart, whichever is higher. */
const semitones = (a: number, b: number): number => Math.abs(12 * Math.log2(a / b));

const powerOf = (list: readonly Partial[]): number =>
  list.reduce((sum, { amplitude }) => sum + amplitude * amplitude, 0);
