/** The list of built-in forms, for a terminal. */
import { FORM_GROUPS } from '../core/chart/form-data.ts';
import { listForms, type FormEntry } from '../core/chart/forms.ts';
import type { Words } from '../core/words/words.ts';

/** By what they train, a line a form: the name to ask for it by, how long it is, what it trains. */
export function formsPage({ ready, cli }: Words): string {
  const forms = listForms();
  const trains: Readonly<Record<string, { readonly trains: string }>> = ready.forms;
  const width = Math.max(...forms.map(({ name }) => name.length)) + 2;
  const line = ({ name, bars, mode }: FormEntry) =>
    `  ${name.padEnd(width)}${cli.formLength({ bars, mode }).padEnd(16)}${trains[name]?.trains ?? ''}`;
  const lines = FORM_GROUPS.flatMap((group) => [
    ready.formGroups[group],
    ...forms.filter((form) => form.group === group).map(line),
  ]);
  return [...lines, '', cli.formHint].join('\n');
}
