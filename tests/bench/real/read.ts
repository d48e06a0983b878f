/** What comes back from a file of the bench: a value, or one English sentence for whoever runs it. */
export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly sentence: string };

export const read = <T>(value: T): Read<T> => ({ ok: true, value });
export const unreadable = (sentence: string): Read<never> => ({ ok: false, sentence });
