/** The harmony element of MusicXML against our chords. */
import type { XmlElement } from '@rgrove/parse-xml';
import type { Chord } from '../../music/chord.ts';
import { parseChord, splitSymbol } from '../../music/parse-chord.ts';
import { spellDegree } from '../../music/spelling.ts';
import { changed, degreesOf, kindFor, KINDS, qualityFor, type DegreeChange } from './harmony-kinds.ts';
import { escaped } from '../../base/markup.ts';
import { childrenOf, firstOf, numberOf, textOf } from '../bytes/xml.ts';

/** What a harmony element says: a chord, none (N.C.), or something this reader has no chord for. */
export type ReadHarmony =
  | { readonly kind: 'chord'; readonly chord: Chord }
  | { readonly kind: 'none' }
  /** As the sentence about it names it. */
  | {
      readonly kind: 'unreadable';
      /** The symbol as the file shows it; null where nothing names its root. */ readonly what: string | null;
    };

/**
 * Reads a harmony element: its first chord, where several are stacked. The text that the file shows is kept where it
 * is read as the same tones; else the chord is written our way.
 */
export function readHarmony(harmony: XmlElement): ReadHarmony {
  const kindElement = firstOf(harmony, 'kind');
  const kind = kindElement?.text.trim() ?? '';
  if (kind === 'none') return { kind: 'none' };
  const shown = kindElement?.attributes['text']?.trim();
  const root = noteOf(harmony, 'root');
  if (root === null) {
    // As the file has it, letter or not: so it is found again in the score.
    const step = textOf(harmony, 'root', 'root-step') ?? '';
    const what = step + (shown ?? ` ${kind}`);
    return { kind: 'unreadable', what: what.trim() === '' ? null : what.trim() };
  }
  const unreadable = { kind: 'unreadable', what: root + (shown ?? ` ${kind}`) } as const;

  // The file's own word: not one that every object knows, such as "constructor".
  const plain = Object.hasOwn(KINDS, kind) ? KINDS[kind]! : null;
  // "other" is spelled out by its degrees alone.
  const base = kind === 'other' ? [] : plain === null ? null : degreesOf(plain);
  const changes = childrenOf(harmony, 'degree');
  if (changes.length > MOST_CHANGES) return unreadable;
  const degrees = base && changed(base, changes.flatMap(changeOf));
  const ending = bassOf(harmony, root, degrees ?? []);
  if (shown !== undefined) {
    const own = degreesOf(splitSymbol(root + shown)?.quality ?? '?');
    const same = degrees && own && own.length === degrees.length && own.every((one) => degrees.includes(one));
    // A kind that says nothing ("other" with no degrees) leaves the word to the text.
    if (own && (same || degrees === null || degrees.length === 0))
      return chordOf(root + shown + ending) ?? unreadable;
  }
  if (degrees === null || degrees.length === 0) return unreadable;
  const quality = qualityFor(degrees);
  return (quality === null ? null : chordOf(root + quality + ending)) ?? unreadable;
}

function chordOf(symbol: string): ReadHarmony | null {
  const chord = parseChord(symbol);
  return chord && { kind: 'chord', chord };
}

/** "Eb" from root-step and root-alter, or the bass's. */
function noteOf(harmony: XmlElement, name: 'root' | 'bass'): string | null {
  const step = textOf(harmony, name, `${name}-step`);
  if (step === null || !/^[A-G]$/.test(step)) return null;
  const alter = Math.round(numberOf(textOf(harmony, name, `${name}-alter`)) ?? 0);
  // Beyond a double sharp or flat there is no root that is written so.
  return Math.abs(alter) > MOST_ALTER ? null : step + (alter < 0 ? 'b' : '#').repeat(Math.abs(alter));
}

/** The bass as written, or the chord tone that an inversion puts there. */
function bassOf(harmony: XmlElement, root: string, degrees: readonly string[]): string {
  const bass = noteOf(harmony, 'bass');
  if (bass !== null) return `/${bass}`;
  const degree = degrees[(numberOf(textOf(harmony, 'inversion')) ?? 0) - 1];
  return degree === undefined ? '' : `/${spellDegree(root, degree)}`;
}

const MOST_ALTER = 2;
/** A chord has twelve tones at the most. */
const MOST_CHANGES = 12;

function changeOf(degree: XmlElement): readonly DegreeChange[] {
  const type = textOf(degree, 'degree-type');
  const value = numberOf(textOf(degree, 'degree-value'));
  if (
    value === null ||
    value < 1 ||
    value > 13 ||
    (type !== 'add' && type !== 'alter' && type !== 'subtract')
  )
    return [];
  const alter = Math.round(numberOf(textOf(degree, 'degree-alter')) ?? 0);
  // Beyond a double sharp or flat there is no tone that is written so.
  return !Number.isInteger(value) || Math.abs(alter) > MOST_ALTER ? [] : [{ type, value, alter }];
}

/**
 * A chord as a harmony element, null being N.C. The symbol as written stands in the kind's text attribute, so the
 * degrees, which say it again, are not to be printed.
 * @param offset divisions after the place in the bar where the element stands
 */
export function writeHarmony(chord: Chord | null, offset: number): readonly string[] {
  const place = offset === 0 ? [] : [`<offset>${offset}</offset>`];
  if (chord === null) {
    // A root is required; the standard shows none for this kind.
    const root = '<root><root-step text="">C</root-step></root>';
    return ['<harmony>', root, '<kind text="N.C.">none</kind>', ...place, '</harmony>'];
  }
  const { kind, changes } = kindFor(chord.tones.slice(1).map((tone) => tone.degree));
  const quality = splitSymbol(chord.symbol)?.quality ?? '';
  return [
    '<harmony>',
    `<root>${noteElements('root', chord.root)}</root>`,
    `<kind text="${escaped(quality)}">${kind}</kind>`,
    ...(chord.bass === null ? [] : [`<bass>${noteElements('bass', chord.bass)}</bass>`]),
    ...changes.map(
      ({ type, value, alter }) =>
        `<degree print-object="no"><degree-value>${value}</degree-value><degree-alter>${alter}</degree-alter>` +
        `<degree-type>${type}</degree-type></degree>`,
    ),
    ...place,
    '</harmony>',
  ];
}

function noteElements(name: 'root' | 'bass', note: string): string {
  const alter = [...note.slice(1)].reduce((sum, sign) => sum + (sign === '#' ? 1 : -1), 0);
  const step = `<${name}-step>${note.charAt(0)}</${name}-step>`;
  return alter === 0 ? step : `${step}<${name}-alter>${alter}</${name}-alter>`;
}
