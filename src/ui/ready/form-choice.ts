/** The built-in forms as the set list shows them. */
import type { FormEntry } from '../../core/chart/forms.ts';

export interface FormChoice {
  readonly name: string;
  readonly title: string;
  readonly group: string;
  /** What playing over it trains, in a sentence. */
  readonly trains: string;
}

/** Names become titles: a capital in front, dashes between the roman numerals. */
export const formChoices = (entries: readonly FormEntry[]): readonly FormChoice[] =>
  entries.map(({ name, group, trains }) => ({ name, title: titleOf(name), group: titleOf(group), trains }));

/** @example titleOf('minor ii-V-I') // "Minor ii–V–I" */
export function titleOf(name: string): string {
  const dashed = name.replaceAll(/(?<=[iv])-(?=[iv])/giu, '–');
  return dashed.charAt(0).toUpperCase() + dashed.slice(1);
}
