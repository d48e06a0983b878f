/**
 * What went wrong, as a code and its facts. The catalogue turns it into a sentence where it is shown; until then it
 * travels as plain data, between the worker and the page too.
 */
import { onOneLine } from './one-line.ts';
import type { en } from './en.ts';
import type { OpenPageWords, Words } from './words.ts';

/** The facts of an entry. A fact named `cause` is another problem, which the entry takes as its sentence. */
type FactsOf<Entry> = Entry extends (facts: infer Facts) => string
  ? { readonly [Key in keyof Facts]: Key extends 'cause' ? Problem : Facts[Key] }
  : never;

/** Code and facts of one entry; an entry that is a plain text has no facts. */
type Coded<Entries> = {
  [Code in keyof Entries]: Entries[Code] extends string
    ? { readonly code: Code }
    : { readonly code: Code; readonly facts: FactsOf<Entries[Code]> };
}[keyof Entries];

type Problems = (typeof en)['problems'];
type Notices = (typeof en)['notices'];

export type ProblemCode = keyof Problems;
/** Something could not be done. */
export type Problem = Coded<Problems>;

export type NoticeCode = keyof Notices;
/** Something was odd and was mended, or is good to know. */
export type Notice = Coded<Notices>;

/** Either: what the app tells beside the screens. */
export type Message = Problem | Notice;

/** What has to be given beside a code. */
export type ProblemFacts<Code extends ProblemCode> = Problems[Code] extends string
  ? []
  : [facts: FactsOf<Problems[Code]>];
export type NoticeFacts<Code extends NoticeCode> = Notices[Code] extends string
  ? []
  : [facts: FactsOf<Notices[Code]>];

/** @example problem('cli.language', { given: 'fr', known: ['en', 'de'] }) */
export function problem<Code extends ProblemCode>(code: Code, ...[facts]: ProblemFacts<Code>): Problem {
  return (facts === undefined ? { code } : { code, facts: shortened(facts) }) as Problem;
}

/** As {@link problem}, for what failed nothing. */
export function notice<Code extends NoticeCode>(code: Code, ...[facts]: NoticeFacts<Code>): Notice {
  return (facts === undefined ? { code } : { code, facts: shortened(facts) }) as Notice;
}

/** Characters of a text from outside that a sentence repeats; the rest is cut off. */
export const MOST_QUOTED = 300;

/** Names of files are whole: the system limits them, and who copies one needs all of it. */
const WHOLE = new Set(['name', 'file', 'folders']);

/** Facts without endless texts: a symbol or a name from a file may have millions of characters. */
const shortened = (facts: object): object =>
  Object.fromEntries(
    Object.entries(facts).map(([key, fact]: [string, unknown]) => [
      key,
      WHOLE.has(key) ? fact : Array.isArray(fact) ? fact.map(quoted) : quoted(fact),
    ]),
  );

const quoted = (fact: unknown): unknown =>
  typeof fact === 'string' && fact.length > MOST_QUOTED ? `${fact.slice(0, MOST_QUOTED)}…` : fact;

interface AnyCoded {
  readonly code: string;
  readonly facts?: object;
}

/** The sentence of a problem, in the language of `words`. */
export const describeProblem = (told: Problem, words: Words): string =>
  sentenceOf(told, words.problems, words);

/** The sentence of a notice, in the language of `words`. */
export const describeNotice = (told: Notice, words: Words): string => sentenceOf(told, words.notices, words);

/** The sentence of either. */
export const describe = (told: Message, words: Words): string =>
  told.code in words.problems
    ? describeProblem(told as Problem, words)
    : describeNotice(told as Notice, words);

/** Whether the sentence can be told in these words, that of its cause too. */
export function isTold({ code, facts }: AnyCoded, words: OpenPageWords): boolean {
  const entries: { readonly problems: object; readonly notices?: object } = words;
  const { cause } = (facts ?? {}) as { readonly cause?: Problem };
  const isThere = code in entries.problems || code in (entries.notices ?? {});
  return isThere && (cause === undefined || isTold(cause, words));
}

/** As {@link describe}; an empty text as long as its words have not come to the page. */
export const describeOnceThere = (told: Message, words: OpenPageWords): string =>
  isTold(told, words) ? describe(told, words as Words) : '';

function sentenceOf(told: AnyCoded, entries: object, words: Words): string {
  const entry = (entries as Readonly<Record<string, string | ((facts: object) => string)>>)[told.code];
  if (entry === undefined) throw new RangeError(`"${told.code}" is no entry of the catalogue`);
  if (typeof entry === 'string') return entry;
  const { cause, ...rest } = (told.facts ?? {}) as { readonly cause?: Problem };
  const facts = factsOnOneLine(rest);
  return entry(cause === undefined ? facts : { ...facts, cause: describeProblem(cause, words) });
}

/** A sentence is one line, whatever it repeats. */
const factsOnOneLine = (facts: object): object =>
  Object.fromEntries(
    Object.entries(facts).map(([key, fact]: [string, unknown]) => [
      key,
      Array.isArray(fact) ? fact.map(lined) : lined(fact),
    ]),
  );

const lined = (fact: unknown): unknown => (typeof fact === 'string' ? onOneLine(fact) : fact);
