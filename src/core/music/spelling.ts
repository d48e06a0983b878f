/**
 * Letters and accidentals: how an interval from a note is spelled. The arithmetic is that of the library tonal.
 */
import { Interval, Note } from 'tonal';

/** Degrees count from a root: any accidentals, then 1 to 13. */
const DEGREE = /^(b*|#*)(1[0-3]|[1-9])$/;

/** The twelve pitch classes with sharps, for where neither a chord nor a key says more. */
export const SHARP_NAMES = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'] as const;
const FLAT_NAMES = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'] as const;

/** A whole number brought into 0 to 11. */
export const wrapPitchClass = (semitones: number): number => ((semitones % 12) + 12) % 12;

/** Pitch class of a spelled note without octave: "Fb" is 4. Throws when the text is no note name. */
export function pitchClassOf(name: string): number {
  const chroma = Note.chroma(name);
  if (!Number.isInteger(chroma))
    throw new RangeError(`"${name}" is no note name: a letter A to G, then b or #`);
  return chroma;
}

/** Semitones from the root up to a degree, 0 to 23: "b3" is 3, "#11" is 18. Throws on what is no degree. */
export function semitonesOf(degree: string): number {
  return Interval.semitones(intervalOf(degree));
}

/** The note that stands on a degree of a root, spelled by its letter: ("Gb", "b7") is "Fb". */
export function spellDegree(root: string, degree: string): string {
  return Note.transpose(root, intervalOf(degree));
}

/** The interval that leads from one spelled note up to another, to be used with {@link moveByInterval}. */
export const intervalBetween = (from: string, to: string): string => Interval.distance(from, to);

/** A spelled note moved by an interval; a double accidental gives way to the plain name players would write. */
export const moveByInterval = (name: string, interval: string): string =>
  plainSpelling(Note.transpose(name, interval));

/** The same sound without double accidentals: "Bbb" is "A"; "E#" and "Cb" stay. */
export function plainSpelling(name: string): string {
  if (name.length <= 2) return name;
  const pitchClass = pitchClassOf(name);
  return (name.includes('b') ? FLAT_NAMES : SHARP_NAMES)[pitchClass] ?? name;
}

/** Tonal's name for the interval of a degree: "b7" is "7m", "#11" is "11A", "bb7" is "7d". */
function intervalOf(degree: string): string {
  const match = DEGREE.exec(degree);
  if (!match) throw new RangeError(`"${degree}" is no degree: accidentals, then 1 to 13, like b3 or #11`);
  const [, accidentals = '', number = '1'] = match;
  const perfect = [1, 4, 5, 8, 11, 12].includes(Number(number));
  if (accidentals.startsWith('#')) return number + 'A'.repeat(accidentals.length);
  if (accidentals === '') return number + (perfect ? 'P' : 'M');
  if (perfect) return number + 'd'.repeat(accidentals.length);
  return number + (accidentals === 'b' ? 'm' : 'd'.repeat(accidentals.length - 1));
}
