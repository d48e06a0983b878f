/** The catalogue of each language, fetched when somebody reads it: what the open page says first, all words with the rest. */
import { languageCodes, type Language } from '../../core/words/languages.ts';
import type { OpenPageWords, Words } from '../../core/words/words.ts';
import type { LatePart } from '../../state/late-part.svelte.ts';

/** One language. All words include those of the open page. */
export interface Catalogue {
  readonly openPage: LatePart<OpenPageWords>;
  readonly all: LatePart<Words>;
}

export type Catalogues = Readonly<Record<Language, Catalogue>>;

/** The words of a language that are there; null where none are. */
export const wordsThere = ({ openPage, all }: Catalogue): OpenPageWords | null => all.now ?? openPage.now;

/** The first language whose words are there: that of the page while it is opened. */
export const firstThere = (catalogues: Catalogues): Language =>
  languageCodes.find((code) => wordsThere(catalogues[code]) !== null) ?? 'en';
