/** The language of the command line, found before anything else so that every refusal is in it. */
import { parseArgs } from 'node:util';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { languageCodes, type Language } from '../core/words/languages.ts';
import { OPTIONS } from './options.ts';

/** English unless `--language` names another; a problem where it names one that Landfall has not. */
export function languageIn(args: readonly string[]): Outcome<Language> {
  const { values } = parseArgs({ args: [...args], options: OPTIONS, strict: false, allowPositionals: true });
  const given = values['language'];
  if (typeof given !== 'string') return good('en');
  const known = languageCodes.find((code) => code === given.toLowerCase());
  return known === undefined ? bad('cli.language', { given, known: languageCodes }) : good(known);
}
