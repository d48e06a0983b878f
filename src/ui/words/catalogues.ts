/** The catalogue of each language, fetched when somebody reads it: first what the open page says, then what its later parts say, all words with the rest. */
import { languageCodes, type Language } from '../../core/words/languages.ts';
import type { OpenPageWords, WholePageWords, Words } from '../../core/words/words.ts';
import type { LatePart } from '../../state/late-part.svelte.ts';

/** One language. Each includes the one before it. */
export interface Catalogue {
  readonly openPage: LatePart<OpenPageWords>;
  readonly wholePage: LatePart<WholePageWords>;
  readonly all: LatePart<Words>;
}

/** How many words: each includes the one before it. */
export type Amount = keyof Catalogue;
const AMOUNTS: readonly Amount[] = ['openPage', 'wholePage', 'all'];

/** Whether so many words of a language are there, or more. */
export const hasWords = (catalogue: Catalogue, least: Amount): boolean =>
  AMOUNTS.slice(AMOUNTS.indexOf(least)).some((amount) => catalogue[amount].now !== null);

export type Catalogues = Readonly<Record<Language, Catalogue>>;

/** The words of a language that are there; null where none are. */
export const wordsThere = ({ openPage, wholePage, all }: Catalogue): OpenPageWords | null =>
  all.now ?? wholePage.now ?? openPage.now;

/** The first language whose words are there: that of the page while it is opened. */
export const firstThere = (catalogues: Catalogues): Language =>
  languageCodes.find((code) => wordsThere(catalogues[code]) !== null) ?? 'en';
