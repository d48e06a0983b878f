/** The built-in forms as the set list shows them. */
import type { FormEntry } from '../../core/chart/forms.ts';
import type { OpenPageWords } from '../../core/words/words.ts';

export interface FormChoice {
  /** As the core and the settings know it. */
  readonly name: string;
  readonly title: string;
  readonly group: string;
  /** What playing over it trains, in a sentence. */
  readonly trains: string;
}

/** Every form with its title, its group and what it trains, in the language of `words`. */
export function formChoices(entries: readonly FormEntry[], { ready }: OpenPageWords): readonly FormChoice[] {
  const forms: Readonly<Record<string, { readonly title: string; readonly trains: string }>> = ready.forms;
  return entries.map(({ name, group }) => {
    const form = forms[name];
    if (form === undefined) throw new RangeError(`the catalogue has no words for the form "${name}"`);
    return { name, ...form, group: ready.formGroups[group] };
  });
}
