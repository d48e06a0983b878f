/** How a chord symbol or a degree is set: which letters stand large, which are raised, and with what signs. */
import { spelledNote } from '../../core/words/spelling.ts';
import type { OpenPageWords } from '../../core/words/words.ts';

/** A chord symbol taken apart the way an engraver sets it. */
export interface EngravedChord {
  /** "B" */
  readonly letter: string;
  /** "♭", "♯" or "" */
  readonly accidental: string;
  /** On the line, smaller: "m", "−", "dim" … */
  readonly stem: string;
  /** Raised: "7", "7♭9", "maj7", "sus4" … */
  readonly raised: string;
  /** After the slash, signs in place, or null. */
  readonly bass: string | null;
}

/** H is a German B. */
const SYMBOL = /^([A-Ha-h])(bb|##|b|#|♭|♯)?(.*)$/u;
const STEM = /^(min|mi|m(?!aj|a)|-|−|dim|aug)/u;

/**
 * Takes a symbol apart. A symbol that begins with no note letter ("N.C.", "%") comes back whole in `letter`.
 * @example engraveChord('Bbm7b5') // letter 'B', accidental '♭', stem 'm', raised '7♭5', bass null
 */
export function engraveChord(symbol: string): EngravedChord {
  const [, letter, accidental = '', rest = ''] = SYMBOL.exec(symbol.trim()) ?? [];
  if (letter === undefined) return { letter: symbol, accidental: '', stem: '', raised: '', bass: null };
  const slash = /\/([A-Ha-h](?:b|#|♭|♯)?)$/u.exec(rest);
  const quality = slash === null ? rest : rest.slice(0, slash.index);
  const stem = STEM.exec(quality)?.[0] ?? '';
  return {
    letter: letter.toUpperCase(),
    accidental: withSigns(accidental),
    stem: stem === '-' ? '−' : stem,
    raised: qualitySigns(quality.slice(stem.length)),
    bass: slash === null ? null : withSigns(slash[1] ?? ''),
  };
}

/** "Bb" → "B♭", "#11" → "♯11", "b7" → "♭7": ASCII accidentals of a note name or a degree become signs. */
export function withSigns(text: string): string {
  return text
    .replaceAll('##', '𝄪')
    .replaceAll('#', '♯')
    .replace(/(?<=^|[A-G♭])b+/gu, (run) => '♭'.repeat(run.length))
    .replace(/b(?=\d)/gu, '♭');
}

/**
 * How wide a symbol is set, in ems of its root letter: a guess from the letters' average widths, made so that a
 * name can be set smaller before it runs into its neighbour.
 */
export function chordWidth(symbol: string): number {
  const { letter, accidental, stem, raised, bass } = engraveChord(symbol);
  return (
    letter.length * 0.86 +
    accidental.length * 0.32 +
    stem.length * 0.52 +
    raised.length * 0.33 +
    (bass === null ? 0 : 0.3 + bass.length * 0.5)
  );
}

/** Chord symbols and note names inside a sentence get their signs; other words are left alone. */
export function signsInText(sentence: string): string {
  return sentence.replace(
    /(?<![\p{L}\d])(?:[A-G](?:bb|##|b|#)(?![a-zA-Z])|[A-G](?:bb|##|b|#)(?=m|maj|dim|sus|\d|-)|(?:b|#)\d{1,2}(?!\d))[\w#+]*/gu,
    (word) => withSigns(word),
  );
}

/**
 * A chord symbol as a screen reader should say it.
 * @example spokenChord('C#m7b5/E', english) // 'C sharp m7 flat 5 over E'
 */
export function spokenChord(symbol: string, words: OpenPageWords): string {
  const { letter, accidental, stem, raised, bass } = engraveChord(symbol);
  const { minor, over } = words.parts.signs;
  const tail = `${stem === '−' ? `${minor} ` : stem}${raised}`;
  const foot = bass === null ? '' : ` ${over} ${spokenNote(bass, words)}`;
  return speakSigns(`${spokenNote(`${letter}${accidental}`, words)} ${tail}${foot}`, words);
}

/** A note name with signs as the language spells it; anything else ("N.C.") stays. */
function spokenNote(name: string, words: OpenPageWords): string {
  const ascii = name.replaceAll('♭', 'b').replaceAll('♯', '#').replaceAll('𝄪', '##');
  return /^[A-G](?:b*|#*)$/u.test(ascii) ? spelledNote(ascii, words) : name;
}

/** @example speakSigns('♭7', english) // 'flat 7' */
export function speakSigns(text: string, words: OpenPageWords): string {
  const { signs } = words.parts;
  return withSigns(text)
    .replaceAll('♭', ` ${signs.flat} `)
    .replaceAll('♯', ` ${signs.sharp} `)
    .replaceAll('𝄪', ` ${signs.doubleSharp} `)
    .replaceAll('Δ', ` ${signs.majorSeventh} `)
    .replaceAll('ø', ` ${signs.halfDiminished} `)
    .replaceAll('°', ` ${signs.diminished} `)
    .replace(/\s+/gu, ' ')
    .trim();
}

function qualitySigns(quality: string): string {
  return quality
    .replace(/^o(?=7|$)/u, '°')
    .replace(/^h(?=7|$)/u, 'ø')
    .replaceAll('^', 'Δ')
    .replaceAll('△', 'Δ')
    .replaceAll('#', '♯')
    .replace(/b(?=\d)/gu, '♭');
}
