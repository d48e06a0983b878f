/** Numbers and plurals, for every file of this folder. */
import { withoutMinusZero } from '../entries/entry.ts';

/** Mit so vielen Stellen. Was zu null gerundet wird, hat kein Minus. */
export const decimal = (value: number, digits: number): string =>
  withoutMinusZero(value, digits).toFixed(digits).replace('.', ',');
export const several = (count: number, one: string, more: string): string =>
  `${count} ${count === 1 ? one : more}`;
export const percent = (share: number): string => `${Math.round(share * 100)} %`;
/** Mit so vielen Stellen höchstens. */
export const trimmed = (value: number, digits = 2): string =>
  String(Number(value.toFixed(digits))).replace('.', ',');
