/** Words of the command line to an order, or the problem of the first one that can't be followed. */
import { feelNames, type FeelName } from '../core/chart/feel-names.ts';
import { METERS, meterOf } from '../core/chart/chart.ts';
import { AIM_CHOICES } from '../core/grade/aims/aim-choices.ts';
import type { Key } from '../core/music/chord.ts';
import { instrumentOf, withCapo, type Instrument } from '../core/music/instruments.ts';
import { parseKey } from '../core/music/keys.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { TAKE_FILE_ENDING } from '../core/take-file/schema.ts';
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
} from './given.ts';
import { DRONES, OPTIONS, PALETTES, type OptionName } from './options.ts';
import {
  COMMANDS,
  type BandOrder,
  type BatchOrder,
  type ChordsOrder,
  type ClassOrder,
  type Command,
  type GradeOrder,
  type Order,
} from './orders.ts';

/** Files that hold sound, by their names. */
const AUDIO_ENDING = /\.(wav|mp3|flac|ogg)$/i;

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
  if (chart === null) return hasOwnBand(given) ? foundIn(given) : { kind: 'take file' };
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

/** A recording with a backing, or one that may have a band in it; several files have no chart in common that is found. */
function hasOwnBand(given: Given): boolean {
  const [, file = '', ...more] = given.words;
  return given.has('backing') || (more.length === 0 && !given.has('lines') && AUDIO_ENDING.test(file));
}

/** Without a chart the chords are those of the backing, or of the recording: what lays a chart out has no meaning then. */
function foundIn(given: Given): GradeOrder['under'] {
  const laid = ['tempo', 'first-beat', 'rise', 'trade', 'feel', 'transpose', 'meter'] as const;
  const idle = laid.find(given.has);
  if (idle) refuse('cli.idleWithFound', { option: idle });
  return { kind: 'found' };
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
  if ((more.length > 0 || given.has('lines')) && given.has('explain')) refuse('cli.explainsOneFile');
  if (more.length > 0 && given.has('backing')) refuse('cli.backingOfOneFile');
  const chords = under(given);
  if (chords.kind === 'take file') checkTakeFiles(given);
  return {
    command: 'grade',
    file,
    moreFiles: more,
    batch: batchIn(given),
    backing: given.value('backing'),
    under: chords,
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
    lines: given.has('lines'),
  };
}

/** Options that have a meaning for a take file; it says itself what it is graded by. */
const TAKE_FILE_OPTIONS: readonly OptionName[] = [
  ...(['json', 'explain', 'chorus', 'full', 'lines', 'threads', 'anew', 'language'] as const),
];

/** Without chords only files that carry them can be graded: by their ending, so that a slip is told at once. */
function checkTakeFiles(given: Given): void {
  const [, ...files] = given.words;
  if (!files.every((file) => file.toLowerCase().endsWith(TAKE_FILE_ENDING))) refuse('cli.noChords');
  const idle = (Object.keys(OPTIONS) as OptionName[]).find(
    (name) => given.has(name) && !TAKE_FILE_OPTIONS.includes(name),
  );
  if (idle) refuse('cli.idleForTakeFile', { option: idle });
}

const batchIn = (given: Given): BatchOrder => ({
  threads: countOf(given, 'threads'),
  anew: given.has('anew'),
});

const CLASS_ONLY = ['sheet', 'csv', 'html'] as const;
const CLASS_OPTIONS: readonly OptionName[] = [
  ...CLASS_ONLY,
  ...(['json', 'first-beat', 'threads', 'anew', 'language'] as const),
];

function classOrder(given: Given): ClassOrder {
  const [, ...paths] = given.words;
  const idle = (Object.keys(OPTIONS) as OptionName[]).find(
    (name) => given.has(name) && !CLASS_OPTIONS.includes(name),
  );
  if (idle) refuse('cli.idleForClass', { option: idle });
  if (paths.length === 0) refuse('cli.classFolder');
  const outputs = (['csv', 'json', 'html'] as const).filter(given.has);
  if (outputs.length > 1) refuse('cli.oneOutput');
  return {
    command: 'class',
    paths,
    sheet: given.value('sheet') ?? refuse('cli.classSheet'),
    firstBeatSeconds: numberOf(given, 'first-beat') ?? 0,
    output: outputs[0] ?? 'text',
    batch: batchIn(given),
  };
}

/** Options that have a meaning for the band; the others are about a take. */
const BAND_ONLY = ['drone', 'choruses', 'seed', 'out'] as const;
const BAND_OPTIONS: readonly OptionName[] = [
  ...(['chart', 'tempo', 'meter', 'key', 'swing', 'feel', 'rise', 'trade', 'aim'] as const),
  ...BAND_ONLY,
  'language',
];

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
    drone: oneOf(given, 'drone', (text) => DRONES.get(text.toLowerCase()) ?? null, [...DRONES.keys()]),
    swing: numberOf(given, 'swing'),
    choruses: countOf(given, 'choruses'),
    seed: countOf(given, 'seed'),
    out: { file, kind },
  };
}

const CHORDS_OPTIONS: readonly OptionName[] = ['json', 'language'];

/** The options that have a meaning for a command. */
export function optionsOf(command: Command): readonly OptionName[] {
  if (command === 'band') return BAND_OPTIONS;
  if (command === 'class') return CLASS_OPTIONS;
  if (command === 'schema') return ['language'];
  if (command !== 'grade') return CHORDS_OPTIONS;
  const ofOthers: readonly OptionName[] = [...BAND_ONLY, ...CLASS_ONLY];
  return (Object.keys(OPTIONS) as OptionName[]).filter((name) => !ofOthers.includes(name));
}

function chordsOrder(given: Given): ChordsOrder {
  const [, file, ...more] = given.words;
  const idle = (Object.keys(OPTIONS) as OptionName[]).find(
    (name) => given.has(name) && !CHORDS_OPTIONS.includes(name),
  );
  if (idle) refuse('cli.idleForChords', { option: idle });
  if (file === undefined) return refuse('cli.chordsFile');
  if (more[0] !== undefined) refuse('cli.chordsOneFile', { word: more[0] });
  return { command: 'chords', file, json: given.has('json') };
}

const SCHEMAS = ['report', 'sheet', 'take', 'answer'] as const;

function schemaOrder([asked = 'report', ...more]: readonly string[]): Order {
  const of = SCHEMAS.find((name) => name === asked);
  if (of === undefined || more.length > 0) return refuse('cli.noSuchSchema', { asked, known: SCHEMAS });
  return { command: 'schema', of };
}

/** `landfall help band` and `landfall band --help` ask for the same. */
function helpOrder(words: readonly string[]): Order {
  const [first, second] = words;
  const asked = first === 'help' ? second : first;
  return { command: 'help', of: COMMANDS.find((name) => name === asked) ?? null };
}

/**
 * Reads the words behind `landfall`.
 * @example readArgs(['grade', 'take.wav', '--chart', 'form:minor blues in A', '--tempo', '96'])
 */
export function readArgs(args: readonly string[]): Outcome<Order> {
  try {
    const given = takeApart(args);
    const json = given.has('json');
    if (given.has('help')) return good(helpOrder(given.words));
    if (given.has('version')) return good({ command: 'version', json });
    const [command, ...more] = given.words;
    const idle = BAND_ONLY.find(given.has);
    if (idle && command !== 'band') refuse('cli.bandOnly', { option: idle });
    const ofClass = CLASS_ONLY.find(given.has);
    if (ofClass && command !== 'class') refuse('cli.classOnly', { option: ofClass });
    if (command === 'chords') return good(chordsOrder(given));
    if (command === 'class') return good(classOrder(given));
    if (command === 'grade') return good(gradeOrder(given));
    if (command === 'band') return good(bandOrder(given));
    if (command === 'schema') return good(schemaOrder(more));
    if (command === 'help') {
      const order = helpOrder(given.words);
      const [asked] = more;
      if (asked === undefined || COMMANDS.some((name) => name === asked)) return good(order);
      return bad('cli.unknownCommand', { command: asked });
    }
    if (command === 'forms')
      return more.length === 0 ? good({ command, json }) : bad('cli.noFileWanted', { command });
    return command === undefined ? bad('cli.noCommand') : bad('cli.unknownCommand', { command });
  } catch (error) {
    if (error instanceof WrongUsage) return failure(error.problem);
    throw error;
  }
}
