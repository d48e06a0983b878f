import { LONGEST_STRETCH, SHORTEST_STRETCH, type Partial, type Partials } from '../frames/partials.ts';
import { INNER_RATE, PASS_HZ } from '../frames-tuning.ts';
import { hzToMidi, midiToHz } from '../../music/temperament.ts';
import type { HeardNote } from '../../take/note.ts';

/** The partials of `length` inner samples from a moment on; null where they are not there (yet, or any more). */
export type PartialsAt = (fromSeconds: number, length: number) => Partials | null;

/** The stretch begins so long after the attack or after the pitch came to rest: the pick and the old note are gone. */
const LEAD_SECONDS = 0.045;
/** A note that shakes by more cents than this has partials too broad to be told apart. */
const WIDEST_SHAKE = 20;

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
  if (note.bendSemitones !== 0 || (note.vibrato && note.vibrato.depthCents > WIDEST_SHAKE)) return alone;
  const from = Math.max(note.onsetSeconds, restsFrom) + LEAD_SECONDS;
  const length = Math.min(LONGEST_STRETCH, Math.floor((note.offsetSeconds - from) * INNER_RATE));
  const partials = length < SHORTEST_STRETCH ? null : partialsAt(from, length);
  if (partials === null) return alone;
  return inCommon(partials, note.midi) ?? { midi: note.midi, second: secondOf(partials, note.midi) };
}

/** Harmonics looked at. */
const HARMONICS = 10;
/** A partial belongs to a harmonic within so many bins of the window, or so much of its frequency (stiff strings). */
const REACH_BINS = 1.1;
const REACH_SHARE = 0.008;
/** Harmonics of its own, away from the main note's, that make a second note sure, */
const LEAST_OWN = 3;
/** the share of those below its highest that must be there, */
const LEAST_FOUND = 0.7;
/** and the share of all that the main note leaves over. */
const LEAST_OF_REST = 0.5;
/** Its own harmonics hold no less than this of the main note's power (12 dB). */
const LEAST_POWER = 0.063;
/** Harmonics of the main note that must be found, or nothing is sure. */
const LEAST_MAIN = 2;
/** Beside a harmonic of the main note, within so many bins, a partial may be hidden. */
const HIDDEN_BINS = 3;
/** A fundamental between these, a guitar's lowest fourth string and less, may be too weak to be found. */
const WEAK_HZ: readonly [number, number] = [75, 130];
/** A partial is tried as its fundamental, and as a harmonic up to this one of a fundamental that is hidden. */
const DEEPEST = 3;
/** A lower fundamental must explain so much more power than a higher one, and so many more partials. */
const MORE_POWER = 1.1;
const MORE_OWN = 2;
/** A fundamental refined by its harmonics that wanders further than this, in semitones, was none. */
const ASTRAY = 0.35;
/** Two notes that have a fundamental in common, itself silent, are harmonics of it up to this one, */
const HIGHEST_OF_TWO = 8;
/** hold so much of all power, */
const TWO_SHARE = 0.97;
/** and the upper one is the main note unless the lower is so much stronger (6 dB). */
const LOUDER = 4;
/** Ratios within so many semitones of a whole number are the main note's own overtones or its misreading. */
const WHOLE_RATIO = 0.4;

/**
 * The second note that sounds with a main one, where it is sure, as a fractional MIDI number; else null. The main
 * note's harmonics are taken away; of what is left, each partial is tried as a fundamental (harmonic sum, Klapuri
 * 2006). Octaves, twelfths and further whole ratios share all their harmonics and are never told.
 */
export function secondOf(partials: Partials, mainMidi: number): number | null {
  const { list, binHz } = partials;
  const main = harmonicsOf(list, midiToHz(mainMidi), binHz, null);
  if (semitones(main.hz, midiToHz(mainMidi)) > ASTRAY) return null;
  if (main.own.length < LEAST_MAIN || main.missing > main.own.length) return null;
  const rest = list.filter(({ hz }) => !isNear(hz, main.hz, reachHz(hz, binHz)));
  const least = Math.max(LEAST_POWER * powerOf(main.own), LEAST_OF_REST * powerOf(rest));
  let best: Harmonics | null = null;
  for (const { hz } of rest) {
    for (let under = 1; under <= DEEPEST; under++) {
      const tried = harmonicsOf(rest, hz / under, binHz, main);
      if (!isSure(tried) || tried.power < least || semitones(tried.hz, hz / under) > ASTRAY) continue;
      if (best === null || isBetter(tried, best)) best = tried;
    }
  }
  if (best === null || isWholeRatio(best.hz / main.hz)) return null;
  // An overtone of a third note, so close to the main one that its fundamental is hidden?
  for (let under = 2; under <= DEEPEST; under++)
    if (Math.abs(best.hz / under - main.hz) < HIDDEN_BINS * binHz) return null;
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
  for (let upper = HIGHEST_OF_TWO; upper > 1; upper--) {
    const high = harmonicsOf(list, upper * common, binHz, null).hz;
    const second = secondOf(partials, hzToMidi(high));
    const low = second === null ? high : midiToHz(second);
    if (second === null || low >= high) continue;
    const of = (hz: number) => list.filter((partial) => isNear(partial.hz, hz, reachHz(partial.hz, binHz)));
    const [ofHigh, ofLow] = [of(high), of(low)];
    const both = new Set([...ofHigh, ...ofLow]);
    if (powerOf([...both]) < TWO_SHARE * powerOf(list)) continue;
    const shared = powerOf(ofHigh) + powerOf(ofLow) - powerOf([...both]);
    const pair = { midi: hzToMidi(high), second };
    return powerOf(ofLow) - shared > LOUDER * (powerOf(ofHigh) - shared)
      ? { midi: second, second: pair.midi }
      : pair;
  }
  return null;
}

/** Harmonics by which a note is known to sound on beside another. */
const BESIDE = 6;
const BESIDE_FOUND = 0.6;
const BESIDE_LEAST = 2;

/** Does `midi` sound beside `other`: are most of those of its harmonics there which the other does not hide? */
export function soundsBeside(partials: Partials, midi: number, other: number): boolean {
  const { list, binHz } = partials;
  const [hz, otherHz] = [midiToHz(midi), midiToHz(other)];
  let open = 0;
  let found = 0;
  for (let n = 1; n <= BESIDE && n * hz < PASS_HZ; n++) {
    if (isNear(n * hz, otherHz, HIDDEN_BINS * binHz)) continue;
    open++;
    if (nearest(list, n * hz, reachHz(n * hz, binHz)) !== null) found++;
  }
  return found >= BESIDE_LEAST && found >= BESIDE_FOUND * open;
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
  for (let n = 1; n <= HARMONICS; n++) {
    const found = nearest(list, n * hz, reachHz(n * hz, binHz));
    if (found === null) {
      if (other !== null && isNear(n * hz, other.hz, HIDDEN_BINS * binHz)) continue;
      // Nothing is sure without its fundamental, but small bodies hardly give the lowest ones.
      gap += n > 1 ? 1 : hz > WEAK_HZ[0] && hz < WEAK_HZ[1] ? 2 : HARMONICS;
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
  tried.hz < 0.8 * best.hz
    ? tried.power > best.power * MORE_POWER && tried.own.length >= best.own.length + MORE_OWN
    : tried.power > best.power;

const isSure = ({ own, missing }: Harmonics): boolean =>
  own.length >= LEAST_OWN && own.length >= LEAST_FOUND * (own.length + missing);

const reachHz = (hz: number, binHz: number): number => Math.max(REACH_BINS * binHz, REACH_SHARE * hz);

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
  return semitones(upward, Math.round(upward)) < WHOLE_RATIO;
}

/** How far apart, whichever is higher. */
const semitones = (a: number, b: number): number => Math.abs(12 * Math.log2(a / b));

const powerOf = (list: readonly Partial[]): number =>
  list.reduce((sum, { amplitude }) => sum + amplitude * amplitude, 0);
