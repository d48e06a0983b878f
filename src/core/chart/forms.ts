/** Built-in forms in any key, and the one argument by which a player names a form or writes a chart. */
import { MOST_QUOTED } from '../words/problem.ts';
import { bad, good, type Outcome } from '../base/outcome.ts';
import { keyOn, parseKey } from '../music/keys.ts';
import type { Chart } from './chart.ts';
import type { FeelName } from './feel-names.ts';
import { FORMS, type Form, type FormGroup } from './form-data.ts';
import { parseChart, type ChartDefaults } from './parse-chart.ts';
import { playedBars } from './play-order.ts';
import { transposeChart } from './transpose-chart.ts';

/** A form as a list shows it. */
export interface FormEntry {
  readonly name: string;
  readonly group: FormGroup;
  readonly mode: 'major' | 'minor';
  readonly bars: number;
  readonly feel: FeelName;
  readonly bpm: number;
}

/** All built-in forms, group by group (`FORM_GROUPS`), in teaching order. */
export const listForms = (): readonly FormEntry[] =>
  FORMS.map((form) => ({
    name: form.name,
    group: form.group,
    mode: form.mode,
    bars: playedBars(inC(form)).length,
    feel: form.feel,
    bpm: form.bpm,
  }));

/**
 * A built-in form in a key ("Bb", "A minor"; a tonic alone takes the form's own mode). Names are matched without
 * regard to case, hyphens and the order of words. The problem says which forms there are, or what is wrong with the key.
 *
 * @example formChart('minor blues', 'A')
 */
export function formChart(name: string, key: string): Outcome<Chart> {
  const form = FORMS.find((known) =>
    [known.name, ...known.aliases].some((called) => plain(called) === plain(name)),
  );
  if (!form) {
    return bad('form.unknown', {
      form: name.trim().slice(0, MOST_QUOTED),
      known: FORMS.map((known) => known.name),
    });
  }
  const wanted = parseKey(key);
  if (!wanted) return bad('form.key', { key: key.trim(), form: form.name });
  const tonic = /^\s*[A-Ga-g][b#♭♯]?\s*$/u.test(key);
  if (!tonic && wanted.mode !== form.mode) {
    return bad('form.mode', {
      form: form.name,
      mode: form.mode,
      tonic: wanted.tonic,
      asked: wanted.mode,
    });
  }
  return good(transposeChart(inC(form), keyOn(wanted.tonicPitchClass, form.mode, respelled(key))));
}

const FORM_ARGUMENT = /^\s*form\s*:(.*?)(?:\sin\s+(.*))?$/is;

/** Whether a form is asked for by its name, and not by a chart's text. */
export const isFormArgument = (text: string): boolean => FORM_ARGUMENT.test(text);

/**
 * What a player gives for a chart: "form:NAME in KEY" (in C without a key) or chart text.
 *
 * @example readChartArgument('form:12-bar blues in Bb')
 * @example readChartArgument('| G7 | C7 | G7 | D7 |')
 */
export function readChartArgument(text: string, defaults: ChartDefaults = {}): Outcome<Chart> {
  const asked = FORM_ARGUMENT.exec(text);
  if (!asked) return parseChart(text, defaults);
  return formChart(asked[1] ?? '', asked[2] ?? 'C');
}

/** Names are told apart by their words, not by case, hyphens or the order of the words. */
const plain = (name: string): string =>
  (name.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [])
    .filter((word) => word !== 'form')
    .sort()
    .join(' ');

/** The tonic as the player spelled it: "Gb" and "F#" are both in use. */
const respelled = (key: string): string => {
  const name = key.trim().replace('♭', 'b').replace('♯', '#');
  return name.charAt(0).toUpperCase() + (/^.[b#]/.test(name) ? name.charAt(1) : '');
};

function inC(form: Form): Chart {
  const key = form.mode === 'major' ? 'C' : 'C minor';
  const chart = parseChart(`title: ${form.name}\nkey: ${key}\n${form.text}`);
  if (!chart.ok) throw new Error(`the form ${form.name} is miswritten: ${chart.problem.code}`);
  return chart.value;
}
