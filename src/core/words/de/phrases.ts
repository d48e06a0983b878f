/** Phrases that several files share, none of which is the open page’s. */

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const noun = (count: number, one: string, many: string): string => (count === 1 ? one : many);
export const times = (count: number): string => ['nie', 'einmal', 'zweimal'][count] ?? `${count}-mal`;
export const inBrackets = (items: readonly string[]): string =>
  items.length === 0 ? '' : ` (${items.join(', ')})`;

export function luck(expected: number | null): string {
  if (expected === null) return 'was der Zufall ergäbe, ist nicht bekannt';
  if (expected === 0) return 'der Zufall ergibt keine';
  if (expected < 0.5) return 'der Zufall ergibt weniger als eine';
  return `der Zufall ergibt etwa ${Math.round(expected)}`;
}

export function moreShows(count: number | 'many'): string {
  if (count === 'many') return 'ein längerer Take wird es zeigen';
  return count === 1 ? 'ein weiterer Chorus wird es zeigen' : `${count} weitere Chorusse werden es zeigen`;
}
export const decimalOf = (value: number): string => String(value).replace('.', ',');

export const MODES = { major: 'Dur', minor: 'Moll' } as const;

export const quoted = (texts: readonly string[]): readonly string[] => texts.map((text) => `„${text}“`);

export const TIME_UNITS = { milliseconds: 'Millisekunden', samples: 'Abtastwerten' } as const;
