/**
 * Chords for two hands: the tones that tell a chord apart, placed so that every voice moves as little as it can.
 * Third and seventh are always there, then what the symbol names, then fifth and root; the bass has the root.
 * Common practice of jazz keyboard (guide-tone voicings without root).
 */
import type { Chord, Key } from '../music/chord.ts';

/** MIDI keys of one chord, low to high. */
export type Voicing = readonly number[];

/**
 * D3 to G4. Below it close intervals are unclear, above it the player's register begins.
 */
export const voicingRange = { lowest: 50, highest: 67 } as const;
/** Where the middle of a voicing rests when nothing else decides. */
const restingCentre = 58.5;

const fullestVoicing = 4;
/** Below F#3 two voices stand at least a minor third apart (low interval limits; common practice). */
const closeFrom = 54;
const widestGap = 9;

const cost = {
  /** A semitone of motion in any voice costs 1; in the top voice, which is heard best, it costs this in addition. */
  topMotion: 0.8,
  /** A semitone of the centre away from its resting place. */
  drift: 0.25,
  /** A minor second, which only chords with colour tones may need. */
  minorSecond: 1.5,
  /** A minor second between the two top voices, which makes the top one hard to hear. */
  clusterOnTop: 4,
  /** A minor ninth between two voices sounds like a wrong note. */
  minorNinth: 8,
  /** The bass note again on top. */
  doubledBass: 2,
  /** The same twice running: parallel octaves with the bass. */
  parallelOctaves: 60,
} as const;

const majorScale = [0, 2, 4, 5, 7, 9, 11];
const minorScale = [0, 2, 3, 5, 7, 8, 10];
const wrap = (pitchClass: number) => ((pitchClass % 12) + 12) % 12;

/** The pitch class under the chord: the bass after the slash, else the root. */
export function bassPitchClass(chord: Chord): number {
  if (chord.bass === null) return chord.rootPitchClass;
  const natural = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 }[chord.bass[0] ?? ''];
  if (natural === undefined) throw new RangeError(`a bass note starts with A to G, not "${chord.bass}"`);
  return wrap([...chord.bass.slice(1)].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), natural));
}

/** Whether a pitch class belongs to the key's scale (major, or natural minor). */
export function inKey(pitchClass: number, key: Key): boolean {
  const scale = key.mode === 'major' ? majorScale : minorScale;
  return scale.includes(wrap(pitchClass - key.tonicPitchClass));
}

/**
 * The pitch classes a voicing takes, most needed first: guide tones, altered fifth, what the symbol names,
 * a ninth of the key where the feel adds it, fifth, root.
 */
export function voicedTones(chord: Chord, key: Key, addsNinth: boolean): readonly number[] {
  const role = (wanted: string) => chord.tones.filter((tone) => tone.role === wanted);
  const fifths = role('fifth');
  const guides = [...role('third'), ...role('seventh')];
  const extensions = role('extension').toReversed();
  // A suspended fourth or second stands where the third would.
  const suspended =
    role('third').length === 0 ? extensions.filter((t) => t.degree === '4' || t.degree === '2') : [];
  const ninth = wrap(chord.rootPitchClass + 2);
  const hasSeventh = role('seventh').length > 0;
  const ninthFits =
    addsNinth &&
    hasSeventh &&
    inKey(ninth, key) &&
    !extensions.some((t) => ['b9', '#9', '9', '2'].includes(t.degree));
  const ordered = [
    ...suspended,
    ...guides,
    ...fifths.filter((tone) => tone.degree !== '5'),
    ...extensions,
    ...(ninthFits ? [{ pitchClass: ninth }] : []),
    ...fifths,
    ...role('root'),
  ];
  return [...new Set(ordered.map((tone) => tone.pitchClass))].slice(0, fullestVoicing);
}

/** Every playable placing of the tones inside the range. */
export function placings(pitchClasses: readonly number[]): readonly Voicing[] {
  let found: number[][] = [[]];
  for (const pitchClass of pitchClasses) {
    const places: number[] = [];
    for (let midi = voicingRange.lowest; midi <= voicingRange.highest; midi++) {
      if (midi % 12 === pitchClass) places.push(midi);
    }
    found = found.flatMap((voicing) => places.map((midi) => [...voicing, midi]));
  }
  return found.map((voicing) => voicing.toSorted((a, b) => a - b)).filter(isPlayable);
}

function isPlayable(voicing: Voicing): boolean {
  return voicing.every((midi, i) => {
    const below = voicing[i - 1];
    if (below === undefined) return true;
    const gap = midi - below;
    return gap >= (below < closeFrom ? 3 : 1) && gap <= widestGap;
  });
}

/** What one voicing costs by itself. */
function ownCost(voicing: Voicing, bass: number): number {
  const centre = voicing.reduce((sum, midi) => sum + midi, 0) / voicing.length;
  let sum = cost.drift * Math.abs(centre - restingCentre);
  for (let i = 0; i < voicing.length; i++) {
    for (let j = i + 1; j < voicing.length; j++) {
      const interval = voicing[j]! - voicing[i]!;
      if (interval === 13) sum += cost.minorNinth;
      if (interval === 1) sum += j === voicing.length - 1 ? cost.clusterOnTop : cost.minorSecond;
    }
  }
  if (voicing.at(-1)! % 12 === bass) sum += cost.doubledBass;
  return sum;
}

/** Semitones that all voices move together; each voice goes to the nearest of the other chord where sizes differ. */
export function motion(from: Voicing, to: Voicing): number {
  if (from.length === to.length) return from.reduce((sum, midi, i) => sum + Math.abs(midi - to[i]!), 0);
  const [few, many] = from.length < to.length ? [from, to] : [to, from];
  return many.reduce((sum, midi) => sum + Math.min(...few.map((other) => Math.abs(midi - other))), 0);
}

function stepCost(from: Voicing, fromBass: number, to: Voicing, toBass: number): number {
  const [fromTop, toTop] = [from.at(-1)!, to.at(-1)!];
  const parallel = fromTop % 12 === fromBass && toTop % 12 === toBass && fromTop !== toTop;
  return (
    motion(from, to) + cost.topMotion * Math.abs(fromTop - toTop) + (parallel ? cost.parallelOctaves : 0)
  );
}

/**
 * The path of least motion through a chorus that goes round: the cheapest sequence of placings (Viterbi) through
 * three turns, of which the middle one is taken, so that the seam moves as little as the rest.
 */
export function voiceChords(
  chords: readonly Chord[],
  key: Key | readonly Key[],
  addsNinth: boolean,
): readonly Voicing[] {
  if (chords.length === 0) return [];
  const layers = chords.map((chord, i) => {
    const tones = voicedTones(chord, 'tonic' in key ? key : key[i]!, addsNinth);
    const bass = bassPitchClass(chord);
    const candidates = placingsOf(tones).map((voicing) => ({ voicing, own: ownCost(voicing, bass) }));
    return { bass, candidates };
  });
  const turns = [...layers, ...layers, ...layers];
  const back: number[][] = [];
  let totals = turns[0]!.candidates.map((c) => c.own);
  for (let step = 1; step < turns.length; step++) {
    const [before, now] = [turns[step - 1]!, turns[step]!];
    const from: number[] = [];
    totals = now.candidates.map((candidate) => {
      let best = Infinity;
      let bestFrom = 0;
      before.candidates.forEach((previous, i) => {
        const sum = totals[i]! + stepCost(previous.voicing, before.bass, candidate.voicing, now.bass);
        if (sum < best) [best, bestFrom] = [sum, i];
      });
      from.push(bestFrom);
      return best + candidate.own;
    });
    back.push(from);
  }
  let at = totals.indexOf(Math.min(...totals));
  const path: Voicing[] = [];
  for (let step = turns.length - 1; step >= 0; step--) {
    path.unshift(turns[step]!.candidates[at]!.voicing);
    at = back[step - 1]?.[at] ?? 0;
  }
  return path.slice(chords.length, 2 * chords.length);
}

/** Where four tones of a chord have no placing, the least needed one is left out. */
function placingsOf(tones: readonly number[]): readonly Voicing[] {
  for (let size = tones.length; size > 0; size--) {
    const found = placings(tones.slice(0, size));
    if (found.length > 0) return found;
  }
  throw new RangeError('a chord needs at least one tone');
}
