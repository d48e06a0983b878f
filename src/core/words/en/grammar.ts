/** Numbers and plurals, for every file of this folder. */
import { withoutMinusZero } from '../entries/entry.ts';

export const percent = (share: number): string => `${Math.round(share * 100)} %`;
/** With so many digits. What rounds to nothing has no minus sign. */
export const decimal = (value: number, digits: number): string =>
  withoutMinusZero(value, digits).toFixed(digits);
export const several = (count: number, one: string, more = `${one}s`): string =>
  `${count} ${count === 1 ? one : more}`;
