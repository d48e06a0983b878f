/** Sets of tones as twelve-bit masks, bit 0 being C: the measure of every share. */
import type { Chord } from '../../music/chord.ts';

/** The three sets of tones that every kind of event is measured by. */
export type ToneSet = 'thirds' | 'guideTones' | 'chordTones';
export const toneSets: readonly ToneSet[] = ['thirds', 'guideTones', 'chordTones'];

/** All twelve. */
export const ALL_TONES = 0xfff;

export const maskOf = (pitchClasses: Iterable<number>): number => {
  let mask = 0;
  for (const pitchClass of pitchClasses) mask |= 1 << pitchClass;
  return mask;
};

export const holds = (mask: number, pitchClass: number): boolean => ((mask >> pitchClass) & 1) === 1;

/**
 * The tones of one chord that count: its third, its guide tones, or all that it names. Guide tones are the third and
 * the seventh (or sixth); of a chord without a third the fourth or second that is written in its place, and the
 * seventh. Empty where the chord has no such tone: it then stands outside the share.
 */
export function toneMask(chord: Chord, set: ToneSet): number {
  const suspended = !chord.tones.some(({ role }) => role === 'third');
  const tones = chord.tones.filter(({ role, degree }) => {
    if (set === 'chordTones' || role === 'third') return true;
    if (set === 'thirds') return false;
    return role === 'seventh' || (suspended && SUSPENDED_DEGREES.has(degree));
  });
  return maskOf(tones.map((tone) => tone.pitchClass));
}

/** What stands in the place of a third. */
const SUSPENDED_DEGREES: ReadonlySet<string> = new Set(['4', '2']);

/** All three masks, worked out once a chord. */
export type ChordMasks = Readonly<Record<ToneSet, number>>;

/** Remembers the masks of every chord it is asked for: rotations ask for the same few thousands of times. */
export function maskReader(): (chord: Chord) => ChordMasks {
  const known = new Map<Chord, ChordMasks>();
  return (chord) => {
    const found = known.get(chord);
    if (found !== undefined) return found;
    const masks: ChordMasks = {
      thirds: toneMask(chord, 'thirds'),
      guideTones: toneMask(chord, 'guideTones'),
      chordTones: toneMask(chord, 'chordTones'),
    };
    known.set(chord, masks);
    return masks;
  };
}

/** The part of a distribution over pitch classes that falls inside a mask. */
export function shareInside(distribution: readonly number[], mask: number): number {
  let sum = 0;
  for (let pitchClass = 0; pitchClass < 12; pitchClass++) {
    if (holds(mask, pitchClass)) sum += distribution[pitchClass]!;
  }
  // Twelve shares that add to one may add to a hair more.
  return Math.min(1, sum);
}
