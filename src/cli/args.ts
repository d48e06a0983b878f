/** Words of the command line to an order, or the problem of the first one that can't be followed. */
import type { DroneTones } from '../core/band/settings.ts';
import { feelNames, type FeelName } from '../core/chart/feel-names.ts';
import { METERS, meterOf, type Meter } from '../core/chart/chart.ts';
import { AIM_CHOICES } from '../core/grade/aims/targets.ts';
import type { PaletteName } from '../core/grade/assign/settings.ts';
import type { Key } from '../core/music/chord.ts';
import { instrumentOf, withCapo, type Instrument } from '../core/music/instruments.ts';
import { parseKey } from '../core/music/keys.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import {
  countOf,
  numberOf,
  oneOf,
  refuse,
  riseIn,
  takeApart,
  wholeOf,
  WrongUsage,
  type Given,
  type RiseOrder,
} from './given.ts';
import { OPTIONS, PALETTES, type OptionName } from './options.ts';

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
        readonly rise: RiseOrder | null;
        /** Bars of a turn, where player and band took turns. */
        readonly turnBars: number | null;
        /** How it was played, where the chart does not say. */
        readonly feel: FeelName | null;
        /** Half steps that the chart is moved by. */
        readonly transpose: number | null;
      }
    | { readonly kind: 'beats'; readonly file: string };
  readonly meter: Meter | null;
  readonly swing: number | null;
  readonly key: Key | null;
  readonly referenceHz: number | 'auto';
  readonly anticipationBeats: number | null;
  readonly toleranceMs: number | null;
  readonly palette: PaletteName | null;
  /** Names of the house's aims, or of files. */
  readonly aims: readonly string[];
  readonly instrument: Instrument | null;
  readonly part: number | null;
  /** Bar from 1. */
  readonly explainBar: number | null;
  /** The chorus of that bar, from 1. */
  readonly explainChorus: number | null;
  /** Every figure on the page. */
  readonly full: boolean;
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
  readonly rise: RiseOrder | null;
  readonly turnBars: number | null;
  /** Id of the aim that the band's turns are examples of. */
  readonly aim: string | null;
  readonly drone: DroneTones | null;
  readonly choruses: number | null;
  readonly seed: number | null;
  /** The file to write, told by its ending. */
  readonly out: { readonly file: string; readonly kind: 'wav' | 'midi' | 'musicxml' };
}

export type Order =
  | GradeOrder
  | BandOrder
  | { readonly command: 'forms' | 'schema' | 'help' | 'version'; readonly json: boolean };

const METER_NAMES = METERS.map(({ written }) => written);

function keyIn(given: Given): Key | null {
  const asked = given.value('key');
  return asked === null ? null : (parseKey(asked) ?? refuse('cli.key', { given: asked }));
}

const feelIn = (given: Given): FeelName | null =>
  oneOf(given, 'feel', (text) => feelNames.find((name) => name === text.toLowerCase()) ?? null, feelNames);

function under(given: Given): GradeOrder['under'] {
  const chart = given.value('chart');
  const beats = given.value('beats');
  if (chart !== null && beats !== null) refuse('cli.chartOrBeats');
  if (beats !== null) {
    const idle = (['tempo', 'first-beat', 'rise', 'trade', 'feel', 'transpose'] as const).find(given.has);
    if (idle) refuse('cli.idleWithBeats', { option: idle });
    return { kind: 'beats', file: beats };
  }
  if (chart === null) return refuse('cli.noChords');
  return {
    kind: 'chart',
    chart,
    bpm: numberOf(given, 'tempo'),
    firstBeatSeconds: numberOf(given, 'first-beat') ?? 0,
    rise: riseIn(given),
    turnBars: countOf(given, 'trade'),
    feel: feelIn(given),
    transpose: countOf(given, 'transpose'),
  };
}

/** The instrument, a capo on its neck where one is given. */
function instrumentIn(given: Given): Instrument | null {
  const asked = given.value('instrument');
  const instrument =
    asked === null ? null : (instrumentOf(asked) ?? refuse('cli.instrument', { given: asked }));
  const fret = wholeOf(given, 'capo');
  if (fret === null) return instrument;
  const neck = instrument?.neck ?? refuse('cli.capoWithoutNeck');
  if (fret >= neck.frets) refuse('cli.capoFret', { most: neck.frets - 1, fret });
  return instrument && withCapo(instrument, fret);
}

function gradeOrder(given: Given): GradeOrder {
  const [, file, ...more] = given.words;
  if (file === undefined) return refuse('cli.noFile');
  if (given.has('json') && given.has('explain')) refuse('cli.jsonOrExplain');
  if (given.has('chorus') && !given.has('explain')) refuse('cli.chorusOfNoBar');
  if (more[0] !== undefined) refuse('cli.oneFile', { word: more[0] });
  return {
    command: 'grade',
    file,
    backing: given.value('backing'),
    under: under(given),
    meter: oneOf(given, 'meter', meterOf, METER_NAMES),
    swing: numberOf(given, 'swing'),
    key: keyIn(given),
    referenceHz: given.value('reference') === 'auto' ? 'auto' : (numberOf(given, 'reference') ?? 440),
    anticipationBeats: numberOf(given, 'anticipation'),
    toleranceMs: numberOf(given, 'tolerance'),
    palette: oneOf(
      given,
      'palette',
      (text) => PALETTES.find((name) => name === text.toLowerCase()) ?? null,
      PALETTES,
    ),
    aims: given.values('aim'),
    instrument: instrumentIn(given),
    part: wholeOf(given, 'part'),
    explainBar: wholeOf(given, 'explain'),
    explainChorus: wholeOf(given, 'chorus'),
    full: given.has('full'),
    json: given.has('json'),
  };
}

/** Options that have a meaning for the band; the others speak of a take. */
const BAND_ONLY = ['drone', 'choruses', 'seed', 'out'] as const;
const BAND_OPTIONS: readonly OptionName[] = [
  ...(['chart', 'tempo', 'meter', 'key', 'swing', 'feel', 'rise', 'trade', 'aim'] as const),
  ...BAND_ONLY,
  'language',
];

/** Root alone, or the fifth with it. */
const DRONES: Readonly<Record<string, DroneTones>> = { root: 'root', fifth: 'root and fifth' };

const OUT_KINDS = [
  { ending: /\.wav$/i, kind: 'wav' },
  { ending: /\.midi?$/i, kind: 'midi' },
  { ending: /\.(?:musicxml|xml)$/i, kind: 'musicxml' },
] as const;

function bandOrder(given: Given): BandOrder {
  const idle = (Object.keys(OPTIONS) as OptionName[]).find(
    (name) => given.has(name) && !BAND_OPTIONS.includes(name),
  );
  if (idle) refuse('cli.idleForBand', { option: idle });
  if (given.words[1] !== undefined) refuse('cli.bandTakesNoFile', { word: given.words[1] });
  const chart = given.value('chart') ?? refuse('cli.bandChart');
  const file = given.value('out') ?? refuse('cli.bandOut');
  const kind = OUT_KINDS.find(({ ending }) => ending.test(file))?.kind ?? refuse('cli.bandOutKind', { file });
  return {
    command: 'band',
    chart,
    bpm: numberOf(given, 'tempo'),
    meter: oneOf(given, 'meter', meterOf, METER_NAMES),
    key: keyIn(given),
    feel: feelIn(given),
    rise: riseIn(given),
    turnBars: countOf(given, 'trade'),
    aim: oneOf(
      given,
      'aim',
      (text) => AIM_CHOICES.find(({ id }) => id === text.toLowerCase())?.id ?? null,
      AIM_CHOICES.map(({ id }) => id),
    ),
    drone: oneOf(given, 'drone', (text) => DRONES[text.toLowerCase()] ?? null, Object.keys(DRONES)),
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
    if (idle && command !== 'band') refuse('cli.bandOnly', { option: idle });
    if (command === 'grade') return good(gradeOrder(given));
    if (command === 'band') return good(bandOrder(given));
    if (command === 'forms' || command === 'schema' || command === 'help') {
      return more.length === 0 ? good({ command, json }) : bad('cli.noFileWanted', { command });
    }
    return command === undefined ? bad('cli.noCommand') : bad('cli.unknownCommand', { command });
  } catch (error) {
    if (error instanceof WrongUsage) return failure(error.problem);
    throw error;
  }
}
