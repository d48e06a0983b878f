/** Small pieces of sentences that several screens say, in the language of `words`. */
import { speakSigns, spokenChord, withSigns } from './engrave.ts';
import { clockWords as wholeClockWords } from '../../core/base/clock-words.ts';
import { parseKey } from '../../core/music/keys.ts';
import { keyAsRead, type Reading } from '../../core/music/reading.ts';
import type { Landing } from '../../core/take/schema.ts';
import { spelledNote } from '../../core/words/spelling.ts';
import type { TakeDetails } from '../../state/take.ts';
import type { OpenPageWords } from '../../core/words/words.ts';

/** "A 7: third, flat 3, 20 ms late." for a screen reader and the live region. */
export function landingSentence(landing: Landing, words: OpenPageWords): string {
  const { note, role, degree, offsetMs } = landing;
  const chord = spokenChord(landing.chord, words);
  const { parts, music } = words;
  if (note === null || role === null)
    return parts.landing({ chord, role: parts.open, degree: '', timing: '' });
  return parts.landing({
    chord,
    role: music.roles[role],
    degree: degree === null ? '' : speakSigns(degree, words),
    timing: timingWords(offsetMs, words) ?? '',
  });
}

/** "20 ms late", "on the beat", or null where it is not known. Nobody hears a difference of less than 10 ms. */
export function timingWords(offsetMs: number | null, { parts }: OpenPageWords): string | null {
  if (offsetMs === null) return null;
  const ms = Math.round(Math.abs(offsetMs));
  if (ms < 10) return parts.onTheBeat;
  return offsetMs < 0 ? parts.early({ ms }) : parts.late({ ms });
}

/** "+6 cents", "−12 cents", "in tune": with a true minus sign. */
export function centsWords(cents: number, { parts }: OpenPageWords): string {
  const rounded = Math.round(cents);
  return rounded === 0 ? parts.inTune : parts.cents({ cents: rounded });
}

/** "7 of 12". */
export const ofAll = (count: number, all: number, { parts }: OpenPageWords): string =>
  parts.ofAll({ count, all });

/** 96.4 seconds as "1:36", to the nearest second. */
export const clockWords = (seconds: number): string => wholeClockWords(Math.max(0, Math.round(seconds)));

/** "F#4" as "F♯4", in German "Fis4". */
export const noteWords = (name: string, words: OpenPageWords): string => withSigns(spelledNote(name, words));

/** A key as "A minor" or "F♯", in German "a-Moll" or "Fis-Dur". What is no key stays as it is. */
export function keyWords(key: string, words: OpenPageWords): string {
  const parsed = parseKey(key);
  if (parsed === null) return withSigns(key);
  const { tonic, mode } = parsed;
  return words.parts.key({ tonic: noteWords(tonic, words), mode });
}

/**
 * The title of a take as the player reads it: a built-in form by its name in this language, and the key it ends in as
 * it is written for the player's instrument. "12-bar blues in A" is one in B for a tenor.
 */
export function titleAsRead(title: string, reading: Reading, words: OpenPageWords): string {
  const [, name, key] = /^(.*) in ([A-G][b#]?(?: minor)?)$/u.exec(title) ?? [];
  const parsed = key === undefined ? null : parseKey(key);
  if (name === undefined || parsed === null) return title;
  const forms: Readonly<Record<string, { readonly title: string }>> = words.ready.forms;
  const read = keyAsRead(parsed, reading);
  return words.parts.titleInKey({
    title: forms[name]?.title ?? name,
    key: words.parts.key({ tonic: spelledNote(read.tonic, words), mode: read.mode }),
  });
}

/**
 * A take by the name that the player gave it; else by its form and key, in the player's language, or by the title of a
 * chart or a recording of the player's own, as it was written.
 */
export function takeTitle(
  {
    name,
    title,
    source,
    setup,
    backing,
  }: Pick<TakeDetails, 'name' | 'title' | 'source' | 'setup' | 'backing'>,
  reading: Reading,
  words: OpenPageWords,
): string {
  if (name !== undefined && name !== '') return name;
  if (source === 'demo') return words.parts.demo;
  const isOwn = backing !== undefined || setup?.form === null;
  return isOwn ? title : titleAsRead(title, reading, words);
}
