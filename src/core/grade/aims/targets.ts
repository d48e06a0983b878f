/** The tones to land on for a chord, by what the player aims for. The playing screen shows them before the change. */
import type { Chord, Key } from '../../music/chord.ts';
import { degreeOver, nameOverChord } from '../../music/pitch-names.ts';
import type { Role } from '../../take/schema.ts';
import type { Aim } from './aim.ts';
import { USUAL_TONES, type AimChoice } from './aim-choices.ts';
import { isOver } from './aim-chords.ts';
import { roleOf } from '../assign/roles.ts';
import { palettePitchClasses } from '../assign/scales.ts';
import { namedTones } from '../assign/tone-names.ts';
import { holds } from '../assign/tone-sets.ts';

/** Any chord tone will do as one; so will a 6 or a 9 that the symbol does not write. */
export interface TargetTone {
  readonly pitchClass: number;
  /** From the chord's root. */
  readonly degree: string;
  readonly role: Role;
  /** Spelled note name, ASCII accidentals. */
  readonly name: string;
}

/**
 * The tones to land on, in the order of the aim (a third before a seventh). Over chords that the aim says nothing
 * about, and where the chord has no such tone, the guide tones; where there are none either, the chord's own tones.
 * @example targetsOf(aimChoiceOf('thirds'), parseChord('D7')!, key) // F#, "3"
 */
export function targetsOf(aim: AimChoice, chord: Chord, key: Key): readonly TargetTone[] {
  const palette = palettePitchClasses('both pentatonics', key, chord);
  const meant = isOver(aim, chord, key);
  for (const names of [meant ? aim.tones : [], USUAL_TONES, ['chord tone']]) {
    const found = names.flatMap((name) => tonesNamed(name, chord, key, palette));
    if (found.length > 0)
      return found.filter(
        (tone, i) => found.findIndex(({ pitchClass }) => pitchClass === tone.pitchClass) === i,
      );
  }
  return [];
}

/**
 * {@link targetsOf}, worked out once a chord: the display asks at every frame.
 * @param key one for all chords, or that in which a chord stands
 */
export function targetReader(
  aim: AimChoice,
  key: Key | ((chord: Chord) => Key),
): (chord: Chord) => readonly TargetTone[] {
  const known = new Map<Chord, readonly TargetTone[]>();
  return (chord) => {
    const found = known.get(chord) ?? targetsOf(aim, chord, typeof key === 'function' ? key(chord) : key);
    known.set(chord, found);
    return found;
  };
}

/** Where the tones of an aim are wanted: as a chord arrives, or while it lasts. */
export const aimIsForArrival = ({ events }: Pick<Aim, 'events'>): boolean =>
  events === 'landings' || events === 'changes';

/**
 * The tones that an aim itself asks for over a chord, worked out once a chord; none over a chord that the aim is not
 * about, nor for an aim that keeps off its tones.
 */
export function aimTonesReader(
  aim: Aim | null,
  keyOf: (chord: Chord) => Key,
): (chord: Chord) => readonly TargetTone[] {
  const known = new Map<Chord, readonly TargetTone[]>();
  return (chord) => {
    const before = known.get(chord);
    if (before !== undefined) return before;
    const key = keyOf(chord);
    const palette = palettePitchClasses('both pentatonics', key, chord);
    const found =
      aim === null || aim.test === 'is none of' || !isOver(aim, chord, key)
        ? []
        : aim.tones.flatMap((name) => asNamed(name, tonesNamed(name, chord, key, palette)));
    known.set(chord, found);
    return found;
  };
}

/** A sixth that is asked for is called 6, whatever the chord would call it. */
const asNamed = (name: string, tones: readonly TargetTone[]): readonly TargetTone[] =>
  /^[b#]?\d+$/.test(name) ? tones.map((tone) => ({ ...tone, degree: name })) : tones;

function tonesNamed(
  name: string,
  chord: Chord,
  key: Key,
  palette: ReadonlySet<number>,
): readonly TargetTone[] {
  const mask = namedTones(name, chord, key, palette);
  const own: readonly TargetTone[] = chord.tones.filter(({ pitchClass }) => holds(mask, pitchClass));
  const others = Array.from({ length: 12 }, (_, up) => (chord.rootPitchClass + up) % 12)
    .filter((pitchClass) => holds(mask, pitchClass) && !own.some((tone) => tone.pitchClass === pitchClass))
    .map((pitchClass) => ({
      pitchClass,
      degree: degreeOver(pitchClass, chord),
      role: roleOf(pitchClass, chord, palette),
      name: nameOverChord(pitchClass, chord),
    }));
  return [...own, ...others];
}
