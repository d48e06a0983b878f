/** All catalogues at once, for the command line; the page fetches the one that is read. */
import { de } from './de.ts';
import { en } from './en.ts';
import type { Language } from './languages.ts';
import type { Words } from './words.ts';

export const languages = { en, de } as const satisfies Readonly<Record<Language, Words>>;

export const wordsOf = (language: Language): Words => languages[language];
