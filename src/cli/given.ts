/** The words of the command line taken apart, and read one by one: numbers in their range, one of a closed set. */
import { problem, type Problem, type ProblemCode, type ProblemFacts } from '../core/words/problem.ts';
import { parseArgs } from 'node:util';
import { OPTIONS, RANGES, type OptionName } from './options.ts';

/** Faster by so much after so many bars; null: after each chorus. */
export interface RiseOrder {
  readonly byBpm: number;
  readonly everyBars: number | null;
}

/** What a file named `-` means everywhere: what is piped in. */
const STANDARD_INPUT = '/dev/stdin';

/** A step that is heard as a lift and no jump. */
const MOST_RISE = 40;

/** Leaves the reading with a problem; never seen outside. */
export class WrongUsage extends Error {
  readonly problem: Problem;
  constructor(told: Problem) {
    super(told.code);
    this.problem = told;
  }
}
export const refuse = <Code extends ProblemCode>(code: Code, ...facts: ProblemFacts<Code>): never => {
  throw new WrongUsage(problem(code, ...facts));
};

export interface Given {
  readonly words: readonly string[];
  readonly has: (name: OptionName) => boolean;
  readonly value: (name: OptionName) => string | null;
  readonly values: (name: OptionName) => readonly string[];
}

/** Takes the words apart; Node's own messages are in English alone, so its strictness is left off and done here. */
export function takeApart(args: readonly string[]): Given {
  const { tokens } = parseArgs({
    args: [...args],
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const words: string[] = [];
  const found = new Map<OptionName, string[]>();
  for (const token of tokens) {
    if (token.kind === 'positional') words.push(token.value === '-' ? STANDARD_INPUT : token.value);
    if (token.kind !== 'option') continue;
    if (!Object.hasOwn(OPTIONS, token.name)) refuse('cli.unknownOption', { option: token.rawName });
    const name = token.name as OptionName;
    const option = OPTIONS[name];
    if (option.type === 'boolean' && token.value !== undefined) refuse('cli.takesNoValue', { option: name });
    const missing = token.value === undefined || (!token.inlineValue && token.value.startsWith('--'));
    if (option.type === 'string' && missing) refuse('cli.valueMissing', { option: name });
    const before = found.get(name) ?? [];
    if (before.length > 0 && !('multiple' in option)) refuse('cli.givenTwice', { option: name });
    found.set(name, [...before, token.value ?? '']);
  }
  return {
    words,
    has: (name) => found.has(name),
    value: (name) => found.get(name)?.[0] ?? null,
    values: (name) => found.get(name) ?? [],
  };
}

export function numberOf(given: Given, name: keyof typeof RANGES): number | null {
  const text = given.value(name);
  if (text === null) return null;
  const { lowest, highest, unit } = RANGES[name];
  const value = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text.trim()) ? Number(text) : NaN;
  if (value >= lowest && value <= highest) return value;
  return refuse('cli.number', {
    option: name,
    lowest,
    highest,
    unit,
    auto: name === 'reference',
    given: text,
  });
}

export function wholeOf(given: Given, name: 'part' | 'explain' | 'chorus' | 'capo'): number | null {
  const text = given.value(name);
  if (text === null) return null;
  return /^[1-9]\d{0,5}$/.test(text) ? Number(text) : refuse('cli.fromOneUp', { option: name, given: text });
}

/** A number of things, within its range. */
export function countOf(
  given: Given,
  name: 'choruses' | 'seed' | 'trade' | 'transpose' | 'threads',
): number | null {
  const value = numberOf(given, name);
  const { lowest, highest, unit } = RANGES[name];
  return value === null || Number.isInteger(value)
    ? value
    : refuse('cli.wholeNumber', {
        option: name,
        lowest,
        highest,
        unit,
        given: given.value(name) ?? '',
      });
}

/** "4" or "4/24": faster by so many beats a minute, after each chorus or after so many bars. */
export function riseIn(given: Given): RiseOrder | null {
  const text = given.value('rise');
  if (text === null) return null;
  const read = /^(\d{1,2}(?:\.\d+)?)(?:\/(\d{1,4}))?$/.exec(text);
  const byBpm = Number(read?.[1] ?? NaN);
  const everyBars = read?.[2] === undefined ? null : Number(read[2]);
  return byBpm > 0 && byBpm <= MOST_RISE && everyBars !== 0
    ? { byBpm, everyBars }
    : refuse('cli.rise', { most: MOST_RISE, given: text });
}

/**
 * One of a closed set by what `find` makes of its name.
 * @param choices the names, for the problem
 */
export function oneOf<T>(
  given: Given,
  name: OptionName,
  find: (text: string) => T | null,
  choices: readonly string[],
): T | null {
  const text = given.value(name);
  if (text === null) return null;
  return find(text) ?? refuse('cli.oneOf', { option: name, choices, given: text });
}
