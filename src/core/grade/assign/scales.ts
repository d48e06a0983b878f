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

/** The palette over a chord: that of the key in which the chord stands. */
export type PaletteOver = (chord: Chord) => ReadonlySet<number>;

/** {@link palettePitchClasses} over every chord of a timeline, worked out once a key. */
export function paletteOver(name: PaletteName, timeline: Timeline): PaletteOver {
  const keyOf = chordKeys(timeline);
  const known = new Map<Key, ReadonlySet<number>>();
  return (chord) => {
    const key = keyOf(chord);
    const palette = known.get(key) ?? palettePitchClasses(name, key);
    known.set(key, palette);
    return palette;
  };
}

/** Pitch classes of a palette in a key. */
export function palettePitchClasses(name: PaletteName, key: Key): ReadonlySet<number> {
  const semitones: Readonly<Record<PaletteName, readonly number[]>> = {
    'both pentatonics': [...MINOR_PENTATONIC, ...MAJOR_PENTATONIC],
    'minor pentatonic': MINOR_PENTATONIC,
    'major pentatonic': MAJOR_PENTATONIC,
    'blues scale': [...MINOR_PENTATONIC, FLAT_FIFTH],
    key: key.mode === 'major' ? MAJOR_SCALE : MINOR_SCALE,
  };
  return new Set(semitones[name].map((step) => (key.tonicPitchClass + step) % 12));
}
