/** The entries of the English catalogue with any text in them: what a translation has to fill. */
export type Translated<English> = English extends string
  ? string
  : English extends (facts: infer Facts) => string
    ? (facts: Facts) => string
    : English extends readonly string[]
      ? readonly string[]
      : { readonly [Key in keyof English]: Translated<English[Key]> };

/** What an entry is given. */
export type Facts<Entry> = Entry extends (facts: infer Given) => string ? Given : never;
