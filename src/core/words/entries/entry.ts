/** What the entries of every language are made with. */

/** A spelled note taken apart. */
export interface NoteName {
  /** A to G. */
  readonly letter: string;
  /** Semitones: −1 for one flat, 2 for a double sharp. */
  readonly alteration: number;
  /** null where no octave is meant. */
  readonly octave: number | null;
}

const signs = (alteration: number): string => (alteration < 0 ? 'b' : '#').repeat(Math.abs(alteration));

/** "F#4", "Bb": letters and ASCII accidentals, as English and the report have them. */
export const noteAscii = ({ letter, alteration, octave }: NoteName): string =>
  `${letter}${signs(alteration)}${octave ?? ''}`;

/** "F#", "Bb", without an octave. */
export const chordRootAscii = ({ letter, alteration }: NoteName): string => `${letter}${signs(alteration)}`;

/** The value; 0 where it would be shown as "-0.00" with so many digits. */
export const withoutMinusZero = (value: number, digits: number): number =>
  Math.abs(value) < 0.5 / 10 ** digits ? 0 : value;

/**
 * Items in a row with a word before the last.
 * @example joinWith(['a', 'b', 'c'], 'and') // 'a, b and c'
 */
export function joinWith(items: readonly string[], word: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)!}`;
}

/** What a player could have meant by a chord symbol that can't be read. */
export type ChordHint =
  | { readonly kind: 'capital'; /** The symbol with a capital root. */ readonly write: string }
  /** A root with its German name, as H for B or Es for Eb. */
  | { readonly kind: 'german'; /** The symbol with the English name. */ readonly write: string }
  | { readonly kind: 'beginning'; /** As far as it can be read. */ readonly readable: string }
  | { readonly kind: 'none' };

const CONVERTIBLE = [
  'mp4',
  'aiff',
  'caf',
  'rifx',
  'wma',
  'webm',
  'ape',
  'wavpack',
  'au',
  'aac',
  'avi',
  'w64',
  'amr',
  'mp2',
  'ac3',
  'tta',
  'dsd',
  'voc',
  '8svx',
  'mpeg',
] as const;
/** MIDI within RIFF. */
type WrappedMidi = 'rmid';
const ARCHIVES = ['zip', 'gzip', '7z'] as const;
type SilentFile = 'webp' | 'png' | 'jpeg' | 'gif' | 'bmp' | 'pdf' | 'program';

/** Kinds of files that are known and can't be graded. */
export type ForeignFile = (typeof CONVERTIBLE | typeof ARCHIVES)[number] | WrappedMidi | SilentFile;
export const isArchive = (kind: ForeignFile): boolean => ARCHIVES.some((archive) => archive === kind);
/** Whether there is sound in it that another program can save in a form that is read. */
export const isConvertible = (kind: ForeignFile): boolean => CONVERTIBLE.some((known) => known === kind);

/** What an Ogg file may hold besides Vorbis. */
export type OggCodec = 'opus' | 'flac' | 'speex' | 'theora';

/** What a field of a file has to hold. */
export type WantedValue =
  | { readonly kind: 'text' | 'number' | 'integer' | 'boolean' | 'list' | 'object' | 'other' }
  | { readonly kind: 'one of'; /** As JSON writes them. */ readonly values: readonly string[] }
  | { readonly kind: 'at least' | 'at most' | 'characters' | 'entries'; readonly limit: number };

/** What a field holds instead. */
export type FoundValue =
  | { readonly kind: 'nothing' | 'null' | 'list' | 'object' | 'unbounded' }
  | { readonly kind: 'value'; /** As JSON writes it. */ readonly json: string };
