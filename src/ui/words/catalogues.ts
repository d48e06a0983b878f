/** The catalogue of each language, fetched when somebody reads it. */
import { languageCodes, type Language } from '../../core/words/languages.ts';
import type { Words } from '../../core/words/words.ts';
import type { LatePart } from '../../state/late-part.svelte.ts';

export type Catalogues = Readonly<Record<Language, LatePart<Words>>>;

/** The first language whose words are there: that of the page while it is opened. */
export const firstThere = (catalogues: Catalogues): Language =>
  languageCodes.find((code) => catalogues[code].now !== null) ?? 'en';

/** @throws Error where they are not there yet */
export function wordsThere(catalogues: Catalogues, language: Language): Words {
  const { now } = catalogues[language];
  if (now === null) throw new Error(`The words of ${language} are read before they were fetched`);
  return now;
}
