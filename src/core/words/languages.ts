/** The languages that Landfall speaks, and which of them a player is likely to read. */
import { de } from './de.ts';
import { en } from './en.ts';
import type { Words } from './words.ts';

export const languages = { en, de } as const satisfies Readonly<Record<string, Words>>;

/** The code of ISO 639-1. */
export type Language = keyof typeof languages;
export const languageCodes = Object.keys(languages) as readonly Language[];

export const wordsOf = (language: Language): Words => languages[language];

/**
 * The first language of a list of wishes that Landfall speaks; English where it speaks none of them.
 * @param tags language tags in the order of preference, as BCP 47 writes them: "de-AT"
 */
export function closestLanguage(tags: readonly string[]): Language {
  const wanted = tags.map((tag) => tag.toLowerCase().split('-')[0]);
  const found = wanted.flatMap((code) => languageCodes.filter((known) => known === code));
  return found[0] ?? 'en';
}
