/** Phrases that several files share, none of which is the open page’s. */

/** "never", "once", "twice", "5 times" */
export const times = (count: number): string => ['never', 'once', 'twice'][count] ?? `${count} times`;
/** With so many digits at most. */
export const trimmed = (value: number, digits = 2): string => String(Number(value.toFixed(digits)));
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const noun = (count: number, one: string): string => (count === 1 ? one : `${one}s`);
export const inBrackets = (items: readonly string[]): string =>
  items.length === 0 ? '' : ` (${items.join(', ')})`;

/** What luck would give, in events. */
export function luck(expected: number | null): string {
  if (expected === null) return 'what luck gives is not known';
  if (expected === 0) return 'luck gives none';
  if (expected < 0.5) return 'luck gives less than one';
  return `luck gives about ${Math.round(expected)}`;
}

/** "one more chorus will tell", "3 more choruses will tell", "a longer take will tell" */
export function moreTells(count: number | 'many'): string {
  if (count === 'many') return 'a longer take will tell';
  return `${count === 1 ? 'one more chorus' : `${count} more choruses`} will tell`;
}

/** A file by the name that the player knows. */
export interface Named {
  readonly name: string;
}

export type Mode = 'major' | 'minor';

export const quoted = (texts: readonly string[]): readonly string[] => texts.map((text) => `"${text}"`);
