/** The tones to land on for a chord, by what the player aims for. The playing screen shows them before the change. */
import type { Chord, Key } from '../../music/chord.ts';
import { degreeOver, nameOverChord } from '../../music/pitch-names.ts';
import type { Role } from '../../take/schema.ts';
import type { Aim } from './aim.ts';
import { isOver } from './aim-chords.ts';
import { AIM_LADDER, PLAIN_AIMS } from './aims.ts';
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

export interface AimChoice {
  /** For storage, and for its words in the catalogue; it never changes. */
  readonly id: string;
  /** As an aim names them. */
  readonly tones: readonly string[];
  /** Degrees of the key that the tones are meant over; left out, every chord. */
  readonly over?: readonly string[];
}

const GUIDE_TONES: AimChoice = {
  id: 'guide-tones',
  tones: ['guide tone'],
};

const PLAIN_CHOICES: readonly AimChoice[] = [
  GUIDE_TONES,
  {
    id: 'thirds',
    tones: ['third'],
  },
  {
    id: 'chord-tones',
    tones: ['chord tone'],
  },
];

/** The tones that are shown for an aim. One to keep off a tone shows the guide tones. */
export const choiceForAim = ({ id, test, tones, over }: Aim): AimChoice => ({
  id,
  tones: test === 'is none of' ? GUIDE_TONES.tones : tones,
  ...(over === undefined || test === 'is none of' ? {} : { over }),
});

/** The plain choices first, then the rungs of the ladder. */
export const AIM_CHOICES: readonly AimChoice[] = [...PLAIN_CHOICES, ...AIM_LADDER.map(choiceForAim)];

/** What holds until something is chosen. */
export const USUAL_AIM = GUIDE_TONES.id;

/** The aims of the house: the plain ones, and the rungs of the ladder. */
export const HOUSE_AIMS: readonly Aim[] = [...PLAIN_AIMS, ...AIM_LADDER];

/** The rung that a plain choice stands for: the same tones, asked at the same place. */
const SAME_AS: Readonly<Record<string, string>> = { thirds: 'third-on-arrival' };

/**
 * The aim that a take with this choice is graded by; null for an id that is no longer known.
 * @example aimOf('thirds')?.id // "third-on-arrival"
 */
export const aimOf = (id: string): Aim | null =>
  HOUSE_AIMS.find((aim) => aim.id === (SAME_AS[id] ?? id)) ?? null;

/** The choice with an id; the usual one for an id that is no longer known. */
export const aimChoiceOf = (id: string): AimChoice =>
  AIM_CHOICES.find((choice) => choice.id === id) ?? GUIDE_TONES;

/**
 * The tones to land on, in the order of the aim (a third before a seventh). Over chords that the aim says nothing
 * about, and where the chord has no such tone, the guide tones; where there are none either, the chord's own tones.
 * @example targetsOf(aimChoiceOf('thirds'), parseChord('D7')!, key) // F#, "3"
 */
export function targetsOf(aim: AimChoice, chord: Chord, key: Key): readonly TargetTone[] {
  const palette = palettePitchClasses('both pentatonics', key, chord);
  const meant = isOver(aim, chord, key);
  for (const names of [meant ? aim.tones : [], GUIDE_TONES.tones, ['chord tone']]) {
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
