/** Words of the command line to an order, or a sentence about the first one that can't be followed. */
import { parseArgs } from 'node:util';
import { feelNames, type FeelName } from '../core/band/settings.ts';
import { METERS, meterOf, type Meter } from '../core/chart/chart.ts';
import type { PaletteName } from '../core/grading/settings.ts';
import type { Key } from '../core/music/chord.ts';
import { instrumentOf, withCapo, type Instrument } from '../core/music/instruments.ts';
import { parseKey } from '../core/music/keys.ts';
import { bad, good, type Outcome } from '../core/outcome.ts';
import { OPTIONS, PALETTES, RANGES, type OptionName } from './options.ts';

/** Everything that is null was not given. */
export interface GradeOrder {
  readonly command: 'grade';
  readonly file: string;
  /** A recording of what was played along with, to be taken out of the take. */
  readonly backing: string | null;
  readonly under:
    | {
        readonly kind: 'chart';
        /** Chart text or the name of a file with it. */
        readonly chart: string;
        readonly bpm: number | null;
        readonly firstBeatSeconds: number;
      }
    | { readonly kind: 'beats'; readonly file: string };
  readonly meter: Meter | null;
  readonly swing: number | null;
  readonly key: Key | null;
  readonly referenceHz: number | 'auto';
  readonly anticipationBeats: number | null;
  readonly palette: PaletteName | null;
  /** Names of the house's aims, or of files. */
  readonly aims: readonly string[];
  readonly instrument: Instrument | null;
  readonly part: number | null;
  /** Bar from 1. */
  readonly explainBar: number | null;
  readonly json: boolean;
}

/** What is null is the chart's own, or the house's. */
export interface BandOrder {
  readonly command: 'band';
  /** Chart text or the name of a file with it. */
  readonly chart: string;
  readonly bpm: number | null;
  readonly meter: Meter | null;
  readonly key: Key | null;
  readonly feel: FeelName | null;
  readonly swing: number | null;
  readonly choruses: number | null;
  readonly seed: number | null;
  /** The file to write, told by its ending. */
  readonly out: { readonly file: string; readonly kind: 'wav' | 'midi' | 'musicxml' };
}

export type Order =
  | GradeOrder
  | BandOrder
  | { readonly command: 'forms' | 'schema' | 'help' | 'version'; readonly json: boolean };

/** Leaves the reading with a sentence; never seen outside. */
class WrongUsage extends Error {}
const refuse = (sentence: string): never => {
  throw new WrongUsage(sentence);
};

interface Given {
  readonly words: readonly string[];
  readonly has: (name: OptionName) => boolean;
  readonly value: (name: OptionName) => string | null;
  readonly values: (name: OptionName) => readonly string[];
}

/** Takes the words apart; Node's own strictness would speak for us, so it is left off and done here. */
function takeApart(args: readonly string[]): Given {
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

function numberOf(given: Given, name: keyof typeof RANGES): number | null {
  const text = given.value(name);
  if (text === null) return null;
  const { lowest, highest, unit } = RANGES[name];
  const value = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text.trim()) ? Number(text) : NaN;
  if (value >= lowest && value <= highest) return value;
  const or = name === 'reference' ? ', or auto' : '';
  return refuse(`--${name} must be a number from ${lowest} to ${highest} ${unit}${or}, not "${text}".`);
}

function wholeOf(given: Given, name: 'part' | 'explain' | 'capo'): number | null {
  const text = given.value(name);
  if (text === null) return null;
  return /^[1-9]\d{0,5}$/.test(text)
    ? Number(text)
    : refuse(`--${name} must be a number from 1 up, not "${text}".`);
}

/** A number of things, within its range. */
function countOf(given: Given, name: 'choruses' | 'seed'): number | null {
  const value = numberOf(given, name);
  const { lowest, highest } = RANGES[name];
  return value === null || Number.isInteger(value)
    ? value
    : refuse(`--${name} must be a whole number from ${lowest} to ${highest}, not "${given.value(name)}".`);
}

/** One of a closed set by what `find` makes of its name. */
function oneOf<T>(given: Given, name: OptionName, find: (text: string) => T | null, what: string): T | null {
  const text = given.value(name);
  if (text === null) return null;
  return find(text) ?? refuse(`--${name} must be ${what}, not "${text}".`);
}

function under(given: Given): GradeOrder['under'] {
  const chart = given.value('chart');
  const beats = given.value('beats');
  if (chart !== null && beats !== null) refuse('Give --chart or --beats, not both.');
  if (beats !== null) {
    const idle = (['tempo', 'first-beat'] as const).find(given.has);
    if (idle) refuse(`--${idle} has no meaning with --beats: the list says when each beat comes.`);
    return { kind: 'beats', file: beats };
  }
  if (chart === null) return refuse('Say what chords are under the line: --chart with --tempo, or --beats.');
  return {
    kind: 'chart',
    chart,
    bpm: numberOf(given, 'tempo'),
    firstBeatSeconds: numberOf(given, 'first-beat') ?? 0,
  };
}

/** The instrument, a capo on its neck where one is given. */
function instrumentIn(given: Given): Instrument | null {
  const instrument = oneOf(given, 'instrument', instrumentOf, 'one that landfall --help lists');
  const fret = wholeOf(given, 'capo');
  if (fret === null) return instrument;
  const neck = instrument?.neck ?? refuse('--capo needs an --instrument with a neck.');
  if (fret >= neck.frets) refuse(`--capo must be a fret from 1 to ${neck.frets - 1}, not ${fret}.`);
  return instrument && withCapo(instrument, fret);
}

function gradeOrder(given: Given): GradeOrder {
  const [, file, ...more] = given.words;
  if (file === undefined) return refuse('Say which file to grade.');
  if (given.has('json') && given.has('explain')) refuse('Give --json or --explain, not both.');
  if (more.length > 0) refuse(`One file at a time: what is "${more[0]}"? Put a chart in quotes.`);
  return {
    command: 'grade',
    file,
    backing: given.value('backing'),
    under: under(given),
    meter: oneOf(given, 'meter', meterOf, `one of ${METERS.map(({ written }) => written).join(', ')}`),
    swing: numberOf(given, 'swing'),
    key: oneOf(given, 'key', parseKey, 'a key like Bb or "F# minor"'),
    referenceHz: given.value('reference') === 'auto' ? 'auto' : (numberOf(given, 'reference') ?? 440),
    anticipationBeats: numberOf(given, 'anticipation'),
    palette: oneOf(
      given,
      'palette',
      (text) => PALETTES.find((name) => name === text.toLowerCase()) ?? null,
      `one of ${PALETTES.join(', ')}`,
    ),
    aims: given.values('aim'),
    instrument: instrumentIn(given),
    part: wholeOf(given, 'part'),
    explainBar: wholeOf(given, 'explain'),
    json: given.has('json'),
  };
}

/** Options that have a meaning for the band; the others speak of a take. */
const BAND_ONLY = ['feel', 'choruses', 'seed', 'out'] as const;
const BAND_OPTIONS: readonly OptionName[] = ['chart', 'tempo', 'meter', 'key', 'swing', ...BAND_ONLY];

const OUT_KINDS = [
  { ending: /\.wav$/i, kind: 'wav' },
  { ending: /\.midi?$/i, kind: 'midi' },
  { ending: /\.(?:musicxml|xml)$/i, kind: 'musicxml' },
] as const;

function bandOrder(given: Given): BandOrder {
  const idle = (Object.keys(OPTIONS) as OptionName[]).find(
    (name) => given.has(name) && !BAND_OPTIONS.includes(name),
  );
  if (idle) refuse(`--${idle} has no meaning for landfall band.`);
  if (given.words.length > 1)
    refuse(`landfall band takes no file: what is "${given.words[1]}"? Put a chart in quotes.`);
  const chart = given.value('chart') ?? refuse('Say what the band plays: --chart.');
  const file = given.value('out') ?? refuse('Say where to write: --out band.wav or --out band.mid.');
  const kind =
    OUT_KINDS.find(({ ending }) => ending.test(file))?.kind ??
    refuse(`--out must end in .wav, .mid or .musicxml, not "${file}".`);
  return {
    command: 'band',
    chart,
    bpm: numberOf(given, 'tempo'),
    meter: oneOf(given, 'meter', meterOf, `one of ${METERS.map(({ written }) => written).join(', ')}`),
    key: oneOf(given, 'key', parseKey, 'a key like Bb or "F# minor"'),
    feel: oneOf(
      given,
      'feel',
      (text) => feelNames.find((name) => name === text.toLowerCase()) ?? null,
      `one of ${feelNames.join(', ')}`,
    ),
    swing: numberOf(given, 'swing'),
    choruses: countOf(given, 'choruses'),
    seed: countOf(given, 'seed'),
    out: { file, kind },
  };
}

/**
 * Reads the words behind `landfall`.
 * @example readArgs(['grade', 'take.wav', '--chart', 'form:minor blues in A', '--tempo', '96'])
 */
export function readArgs(args: readonly string[]): Outcome<Order> {
  try {
    const given = takeApart(args);
    const json = given.has('json');
    if (given.has('help')) return good({ command: 'help', json });
    if (given.has('version')) return good({ command: 'version', json });
    const [command, ...more] = given.words;
    const idle = BAND_ONLY.find(given.has);
    if (idle && command !== 'band') refuse(`--${idle} is for landfall band.`);
    if (command === 'grade') return good(gradeOrder(given));
    if (command === 'band') return good(bandOrder(given));
    if (command === 'forms' || command === 'schema' || command === 'help') {
      return more.length === 0 ? good({ command, json }) : bad(`landfall ${command} takes no file.`);
    }
    return bad(command === undefined ? 'Say what to do.' : `There is no command "${command}".`);
  } catch (error) {
    if (error instanceof WrongUsage) return bad(error.message);
    throw error;
  }
}
