/** The words of the command line taken apart, and read one by one: numbers in their range, one of a closed set. */
import { parseArgs } from 'node:util';
import { OPTIONS, RANGES, type OptionName } from './options.ts';

/** Faster by so much after so many bars; null: after each chorus. */
export interface RiseOrder {
  readonly byBpm: number;
  readonly everyBars: number | null;
}

/** A step that is heard as a lift and no jump. */
const MOST_RISE = 40;

/** Leaves the reading with a sentence; never seen outside. */
export class WrongUsage extends Error {}
export const refuse = (sentence: string): never => {
  throw new WrongUsage(sentence);
};

export interface Given {
  readonly words: readonly string[];
  readonly has: (name: OptionName) => boolean;
  readonly value: (name: OptionName) => string | null;
  readonly values: (name: OptionName) => readonly string[];
}

/** Takes the words apart; Node's own strictness would speak for us, so it is left off and done here. */
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
    if (token.kind === 'positional') words.push(token.value);
    if (token.kind !== 'option') continue;
    if (!Object.hasOwn(OPTIONS, token.name)) refuse(`There is no option ${token.rawName}.`);
    const name = token.name as OptionName;
    const option = OPTIONS[name];
    if (option.type === 'boolean' && token.value !== undefined) refuse(`--${name} takes no value.`);
    const missing = token.value === undefined || (!token.inlineValue && token.value.startsWith('--'));
    if (option.type === 'string' && missing) refuse(`--${name} needs a value behind it.`);
    const before = found.get(name) ?? [];
    if (before.length > 0 && !('multiple' in option)) refuse(`--${name} is given twice.`);
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
  const or = name === 'reference' ? ', or auto' : '';
  return refuse(`--${name} must be a number from ${lowest} to ${highest} ${unit}${or}, not "${text}".`);
}

export function wholeOf(given: Given, name: 'part' | 'explain' | 'chorus' | 'capo'): number | null {
  const text = given.value(name);
  if (text === null) return null;
  return /^[1-9]\d{0,5}$/.test(text)
    ? Number(text)
    : refuse(`--${name} must be a number from 1 up, not "${text}".`);
}

/** A number of things, within its range. */
export function countOf(given: Given, name: 'choruses' | 'seed' | 'trade' | 'transpose'): number | null {
  const value = numberOf(given, name);
  const { lowest, highest } = RANGES[name];
  return value === null || Number.isInteger(value)
    ? value
    : refuse(`--${name} must be a whole number from ${lowest} to ${highest}, not "${given.value(name)}".`);
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
    : refuse(
        `--rise must be beats a minute up to ${MOST_RISE}, and bars behind a slash where it is not each chorus, like 4/24; not "${text}".`,
      );
}

/** One of a closed set by what `find` makes of its name. */
export function oneOf<T>(
  given: Given,
  name: OptionName,
  find: (text: string) => T | null,
  what: string,
): T | null {
  const text = given.value(name);
  if (text === null) return null;
  return find(text) ?? refuse(`--${name} must be ${what}, not "${text}".`);
}
