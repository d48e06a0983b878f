/** What the open page needs to know of a built-in form. */
export interface FormChoice {
  readonly name: string;
  readonly title: string;
  /** What playing over it trains, in a few words. */
  readonly trains: string;
}
