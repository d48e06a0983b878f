/** The scales that colour is drawn from, as semitones above the key's tonic. *Common practice.* */
import { chordKeys } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord, Key } from '../../music/chord.ts';
import type { PaletteName } from './settings.ts';

export const MINOR_PENTATONIC: readonly number[] = [0, 3, 5, 7, 10];
export const MAJOR_PENTATONIC: readonly number[] = [0, 2, 4, 7, 9];
const FLAT_FIFTH = 6;
const MAJOR_SCALE: readonly number[] = [0, 2, 4, 5, 7, 9, 11];
const MINOR_SCALE: readonly number[] = [0, 2, 3, 5, 7, 8, 10];
/** What players add to the minor pentatonic in a minor key: 2, b6 and 6. */
const MINOR_COLOURS: readonly number[] = [...MINOR_PENTATONIC, 2, 8, 9];
const DOMINANT = 7;
const LEADING_TONE = 11;
const MINOR_THIRD = 3;

/** The palette over a chord: that of the key in which the chord stands. */
export type PaletteOver = (chord: Chord) => ReadonlySet<number>;

/** {@link palettePitchClasses} over every chord of a timeline, worked out once a chord. */
export function paletteOver(name: PaletteName, timeline: Timeline): PaletteOver {
  const keyOf = chordKeys(timeline);
  const known = new Map<Chord, ReadonlySet<number>>();
  return (chord) => {
    const palette = known.get(chord) ?? palettePitchClasses(name, keyOf(chord), chord);
    known.set(chord, palette);
    return palette;
  };
}

/**
 * Pitch classes of a palette in a key. "Both pentatonics" are the minor and the major pentatonic of a major key; in a
 * minor key they are the minor pentatonic with 2, b6 and 6, and over its dominant the leading tone too.
 * @param chord what it is asked over; only the dominant of a minor key makes a difference
 */
export function palettePitchClasses(
  name: PaletteName,
  key: Key,
  chord: Chord | null = null,
): ReadonlySet<number> {
  const semitones: Readonly<Record<PaletteName, readonly number[]>> = {
    'both pentatonics': key.mode === 'minor' ? MINOR_COLOURS : [...MINOR_PENTATONIC, ...MAJOR_PENTATONIC],
    'minor pentatonic': MINOR_PENTATONIC,
    'major pentatonic': MAJOR_PENTATONIC,
    'blues scale': [...MINOR_PENTATONIC, FLAT_FIFTH],
    key: key.mode === 'major' ? MAJOR_SCALE : MINOR_SCALE,
  };
  const led =
    name === 'both pentatonics' && key.mode === 'minor' && isDominant(chord, key) ? [LEADING_TONE] : [];
  return new Set([...semitones[name], ...led].map((step) => (key.tonicPitchClass + step) % 12));
}

/** A chord on the fifth of the key that has no minor third: V, V7, V7sus4. */
function isDominant(chord: Chord | null, key: Key): boolean {
  if (chord?.rootPitchClass !== (key.tonicPitchClass + DOMINANT) % 12) return false;
  return !chord.tones.some(
    ({ role, pitchClass }) => role === 'third' && pitchClass === (chord.rootPitchClass + MINOR_THIRD) % 12,
  );
}
