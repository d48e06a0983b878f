/** The mix of the key's two pentatonics, by length. */
import type { Chord, Key } from '../../music/chord.ts';
import { degreeInKey, degreeOver } from '../../music/pitch-names.ts';
import type { Mixture, Palette } from '../../take/schema.ts';
import { isDominantSeventh } from '../assign/roles.ts';
import { isOnTheWay, type FunctionFound } from '../landings/functions.ts';
import type { LengthPart } from '../assign/length-parts.ts';
import { MAJOR_PENTATONIC, MINOR_PENTATONIC } from '../assign/scales.ts';

/** Semitones above the tonic of the IV's root and of the key's major third. */
const FOURTH = 5;
const MAJOR_THIRD = 4;

type Shade = 'minorOnly' | 'majorOnly' | 'both' | 'neither';

/** @param parts notes cut at the changes they cross, so that each part is told over its own chord */
export function mixPalette(
  parts: readonly LengthPart[],
  keyOf: (chord: Chord) => Key,
  functions: readonly (FunctionFound | null)[],
): Palette {
  const byChord = new Map<string, LengthPart[]>();
  for (const part of parts) {
    // In another key the same chord is another degree.
    const name = `${part.chord.symbol} in ${keyOf(part.chord).tonic}`;
    const group = byChord.get(name);
    if (group === undefined) byChord.set(name, [part]);
    else group.push(part);
  }
  const clashes = parts.filter(
    (part) =>
      isThirdOverFour(part.pitchClass, part.chord, keyOf(part.chord)) && !isOnTheWay(functions[part.note]),
  );
  return {
    overall: mixtureOf(parts, keyOf),
    byChord: [...byChord.values()].map((group) => ({
      chord: group[0]!.chord.symbol,
      degree: degreeInKey(group[0]!.chord.rootPitchClass, keyOf(group[0]!.chord)),
      mixture: mixtureOf(group, keyOf),
    })),
    thirdOverFour: {
      notes: [...new Set(clashes.map((part) => part.note))],
      seconds: secondsOf(clashes),
      degree: clashes[0] === undefined ? null : degreeOver(clashes[0].pitchClass, clashes[0].chord),
    },
  };
}

/**
 * The key's major third over the IV, where that is a dominant seventh: the major seventh beside its b7, a clash. Over a
 * plain triad or a sixth chord it is none.
 */
export function isThirdOverFour(pitchClass: number, chord: Chord, key: Key): boolean {
  const above = (semitones: number) => (key.tonicPitchClass + semitones) % 12;
  return (
    chord.rootPitchClass === above(FOURTH) && pitchClass === above(MAJOR_THIRD) && isDominantSeventh(chord)
  );
}

function mixtureOf(parts: readonly LengthPart[], keyOf: (chord: Chord) => Key): Mixture {
  const total = secondsOf(parts);
  const share = (shade: Shade) =>
    total === 0
      ? null
      : Math.min(
          1,
          secondsOf(parts.filter((part) => shadeOf(part.pitchClass, keyOf(part.chord)) === shade)) / total,
        );
  return {
    seconds: total,
    minorOnly: share('minorOnly'),
    majorOnly: share('majorOnly'),
    both: share('both'),
    neither: share('neither'),
  };
}

function shadeOf(pitchClass: number, key: Key): Shade {
  const step = (pitchClass - key.tonicPitchClass + 12) % 12;
  const minor = MINOR_PENTATONIC.includes(step);
  const major = MAJOR_PENTATONIC.includes(step);
  if (minor && major) return 'both';
  if (minor) return 'minorOnly';
  return major ? 'majorOnly' : 'neither';
}

const secondsOf = (parts: readonly LengthPart[]): number =>
  parts.reduce((sum, part) => sum + part.seconds, 0);
