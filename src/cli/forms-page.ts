/** The list of built-in forms, for a terminal. */
import { FORM_GROUPS } from '../core/chart/form-data.ts';
import { listForms, type FormEntry } from '../core/chart/forms.ts';

/** By what they train, a line a form: its name, how long it is, what it trains. */
export function formsPage(): string {
  const forms = listForms();
  const width = Math.max(...forms.map(({ name }) => name.length)) + 2;
  const line = ({ name, bars, mode, trains }: FormEntry) => {
    const length = `${bars} ${bars === 1 ? 'bar' : 'bars'}, ${mode}`;
    return `  ${name.padEnd(width)}${length.padEnd(16)}${trains}`;
  };
  const lines = FORM_GROUPS.flatMap((group) => [
    group.charAt(0).toUpperCase() + group.slice(1),
    ...forms.filter((form) => form.group === group).map(line),
  ]);
  return [
    ...lines,
    '',
    'Take one with --chart "form:NAME in KEY", like --chart "form:minor blues in A".',
  ].join('\n');
}
