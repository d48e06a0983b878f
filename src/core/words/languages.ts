/** The languages that Landfall has, and which of them a player is likely to read. */

/** Each by its own name; their catalogues are in `catalogues.ts`. */
export const languageNames = { en: 'English', de: 'Deutsch' } as const;

/** The code of ISO 639-1. */
export type Language = keyof typeof languageNames;
export const languageCodes = Object.keys(languageNames) as readonly Language[];

/**
 * The first language of a list of wishes that Landfall has; English where it has none of them.
 * @param tags language tags in the order of preference, as BCP 47 writes them: "de-AT"
 */
export function closestLanguage(tags: readonly string[]): Language {
  const wanted = tags.map((tag) => tag.toLowerCase().split('-')[0]);
  const found = wanted.flatMap((code) => languageCodes.filter((known) => known === code));
  return found[0] ?? 'en';
}
