/**
 * The kinds of chord of MusicXML 4.0 (W3C Music Notation Community Group, data type kind-value) beside the qualities
 * that players write, and the arithmetic of its degree elements.
 */
import { readQuality } from '../../music/read-quality.ts';

/**
 * Every kind and our quality for it; null where no chord is meant. The standard stacks 13ths with their eleventh;
 * as players read "13" it is left out. The sixth chords of figured harmony sound like the sevenths given here.
 */
export const KINDS: Readonly<Record<string, string | null>> = {
  major: '',
  minor: 'm',
  augmented: '+',
  diminished: 'dim',
  dominant: '7',
  'major-seventh': 'maj7',
  'minor-seventh': 'm7',
  'diminished-seventh': 'dim7',
  'augmented-seventh': '7#5',
  'half-diminished': 'm7b5',
  'major-minor': 'm(maj7)',
  'major-sixth': '6',
  'minor-sixth': 'm6',
  'dominant-ninth': '9',
  'major-ninth': 'maj9',
  'minor-ninth': 'm9',
  'dominant-11th': '11',
  'major-11th': 'maj11',
  'minor-11th': 'm11',
  'dominant-13th': '13',
  'major-13th': 'maj13',
  'minor-13th': 'm13',
  'suspended-second': 'sus2',
  'suspended-fourth': 'sus4',
  power: '5',
  Neapolitan: '',
  Italian: '7',
  German: '7',
  French: '7b5',
  Tristan: 'm7b5',
  none: null,
};

/** Kinds that a chord is written as: those that say how it is built. */
const BUILT = Object.entries(KINDS).filter(
  (entry): entry is [string, string] => entry[1] !== null && /^[a-z]/.test(entry[0]),
);

/** More qualities that chords are spelled out from, for degrees that no kind has. */
const MORE_QUALITIES = ['7sus4', '9sus4', '13sus4', '6/9', 'm6/9', 'm9(maj7)', '7alt', 'quartal'];

/** One degree element: `alter` counts from where its type says (see {@link changed}). */
export interface DegreeChange {
  readonly type: 'add' | 'alter' | 'subtract';
  readonly value: number;
  readonly alter: number;
}

interface Degree {
  readonly number: number;
  /** Semitones from the major or perfect interval. */
  readonly accidental: number;
}

const read = (degree: string): Degree => ({
  number: Number(degree.replace(/^[b#]+/, '')),
  accidental: [...degree.replace(/\d+$/, '')].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), 0),
});
const write = ({ number, accidental }: Degree): string =>
  (accidental < 0 ? 'b' : '#').repeat(Math.abs(accidental)) + number;

/** Degrees of a quality of ours above the root, or null when it can't be read. */
export function degreesOf(quality: string): readonly string[] | null {
  const found = readQuality(quality);
  if (!found) return null;
  const { third, fifths, seventh, extensions } = found;
  return [third, ...fifths, seventh, ...extensions].filter((degree) => degree !== null);
}

/** What an added degree counts from: a dominant chord (MusicXML 4.0, degree-alter). */
const dominantAccidental = (number: number) => (number === 7 ? -1 : 0);

/** Degrees after the degree elements, by the rules of MusicXML 4.0 (degree-value, degree-alter, degree-type). */
export function changed(degrees: readonly string[], changes: readonly DegreeChange[]): readonly string[] {
  let now = degrees.map(read);
  for (const { type, value, alter } of changes) {
    const there = now.find(({ number }) => number === value);
    if (type === 'subtract') now = now.filter(({ number }) => number !== value);
    else if (type === 'alter' && there)
      now = now.map((one) => (one === there ? { ...one, accidental: one.accidental + alter } : one));
    else now = [...now, { number: value, accidental: dominantAccidental(value) + alter }];
  }
  return [...new Set(now.map(write))];
}

/** The kind and degree elements that give these degrees, with as few elements as can be. */
export function kindFor(degrees: readonly string[]): {
  readonly kind: string;
  readonly changes: readonly DegreeChange[];
} {
  const choices = BUILT.map(([kind, quality]) => ({
    kind,
    changes: changesBetween(degreesOf(quality) ?? [], degrees),
  }));
  return choices.reduce((best, one) => (one.changes.length < best.changes.length ? one : best));
}

function changesBetween(from: readonly string[], to: readonly string[]): readonly DegreeChange[] {
  const gone = from.filter((degree) => !to.includes(degree)).map(read);
  const come = to.filter((degree) => !from.includes(degree)).map(read);
  const altered = gone.flatMap((old) => {
    const alone = (list: readonly Degree[]) =>
      list.filter(({ number }) => number === old.number).length === 1;
    const now = come.find(({ number }) => number === old.number);
    return now && alone(gone) && alone(come) ? [{ old, now }] : [];
  });
  return [
    ...altered.map(({ old, now }) => ({
      type: 'alter' as const,
      value: old.number,
      alter: now.accidental - old.accidental,
    })),
    ...gone
      .filter((old) => !altered.some((pair) => pair.old === old))
      .map(({ number }) => ({ type: 'subtract' as const, value: number, alter: 0 })),
    ...come
      .filter((now) => !altered.some((pair) => pair.now === now))
      .map(({ number, accidental }) => ({
        type: 'add' as const,
        value: number,
        alter: accidental - dominantAccidental(number),
      })),
  ];
}

/** The plain qualities with their degrees, read once. */
let plain: readonly { readonly quality: string; readonly own: readonly string[] }[] | null = null;
function plainQualities() {
  plain ??= [...BUILT.map(([, quality]) => quality), ...MORE_QUALITIES].flatMap((quality) => {
    const own = degreesOf(quality);
    return own ? [{ quality, own }] : [];
  });
  return plain;
}

/** A quality of ours with exactly these degrees, or null: the one with fewest changes behind a plain quality. */
export function qualityFor(degrees: readonly string[]): string | null {
  const wanted = new Set(degrees);
  const bases = plainQualities().flatMap(({ quality, own }) => {
    const gone = own.filter((degree) => !wanted.has(degree));
    const come = degrees.filter((degree) => !own.includes(degree));
    return [{ quality, gone, come }];
  });
  const inOrder = bases.toSorted((a, b) => a.gone.length + a.come.length - b.gone.length - b.come.length);
  for (const { quality, gone, come } of inOrder) {
    const signs = come.map((degree) => (/^[b#]/.test(degree) ? degree : `add${degree}`));
    const left = gone
      .map((degree) => read(degree).number)
      .filter(
        (number) => (number === 3 || number === 5) && !come.some((degree) => read(degree).number === number),
      )
      .map((number) => `no${number}`);
    const words = [...signs, ...left];
    const symbol = words.length === 0 ? quality : `${quality}(${words.join(',')})`;
    const made = degreesOf(symbol);
    if (made && made.length === wanted.size && made.every((degree) => wanted.has(degree))) return symbol;
  }
  return null;
}
