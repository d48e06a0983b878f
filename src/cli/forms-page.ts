/** The list of built-in forms, for a terminal. */
import { listForms } from '../core/chart/forms.ts';

/** A line a form: its name, how long it is, what it trains. */
export function formsPage(): string {
  const forms = listForms();
  const width = Math.max(...forms.map(({ name }) => name.length)) + 2;
  const lines = forms.map(({ name, bars, mode, trains }) => {
    const length = `${bars} ${bars === 1 ? 'bar' : 'bars'}, ${mode}`;
    return `${name.padEnd(width)}${length.padEnd(16)}${trains}`;
  });
  return [
    ...lines,
    '',
    'Take one with --chart "form:NAME in KEY", like --chart "form:minor blues in A".',
  ].join('\n');
}
