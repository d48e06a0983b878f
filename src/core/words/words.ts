/** What every language has to say: the entries of the English catalogue, with any text in them. */
import type { en } from './en.ts';

type Widened<T> = T extends string
  ? string
  : T extends (facts: infer Facts) => string
    ? (facts: Facts) => string
    : T extends readonly string[]
      ? readonly string[]
      : { readonly [Key in keyof T]: Widened<T[Key]> };

/** The catalogue of one language. */
export type Words = Widened<typeof en>;
