/**
 * What comes back from the outside world (a file, a chart, a device): a value, or one sentence that says
 * what is wrong, where, and what to do. A caller's bug throws instead.
 */
export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly sentence: string };

export const good = <T>(value: T): Outcome<T> => ({ ok: true, value });
export const bad = (sentence: string): Outcome<never> => ({ ok: false, sentence });
