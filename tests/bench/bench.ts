/**
 * `npm run bench`: one table, every listener on the same recordings of the reporting set, in one run. Ratios are
 * what counts; absolute speed depends on the machine, so nothing here fails on it.
 *
 *   npm run bench -- [--lines 2] [--without 'Basic Pitch,plain YIN (pitchfinder)']
 *   npm run bench -- --real FOLDER [--by source] [--only voice,violin] [--without 'Basic Pitch'] [--sure 0.5]
 *     [--wide clarinet] [--files] [--write FOLDER]
 *   npm run bench -- --class [--takes 40] [--seconds 180]
 *   npm run bench -- --growth [--only notes,recording] [--minutes 180]
 *
 * With --real the recordings are those of a folder, annotated (real/README.md); --write keeps what was heard.
 * Basic Pitch runs slower than real time, so it hears one line of each plucked instrument and no room.
 */
import { parseArgs } from 'node:util';
import { recording } from '../../fixtures/lines/cache.ts';
import { instruments } from '../../fixtures/lines/instruments.ts';
import { casesOf, firstSeeds, groups, type VariantName } from '../../fixtures/lines/sets.ts';
import { listen } from '../../src/core/listen.ts';
import { benchClass } from './class-bench.ts';
import { benchGrowth } from './growth-bench.ts';
import { pitchyDatedAt, plainPitchy, plainYin } from './listeners.ts';
import { addTallies, emptyTally, measure, scoreOfTally, type Listen, type Tally } from './measure.ts';
import { percentile } from './note-metrics.ts';
import { aubionotes, basicPitch } from './outside-listeners.ts';
import { benchReal } from './real/bench-real.ts';

const { values } = parseArgs({
  options: {
    lines: { type: 'string', default: '2' },
    without: { type: 'string', default: '' },
    real: { type: 'string' },
    by: { type: 'string', default: 'instrument' },
    only: { type: 'string', default: '' },
    sure: { type: 'string', default: '0.5' },
    wide: { type: 'string', default: 'clarinet' },
    files: { type: 'boolean', default: false },
    write: { type: 'string' },
    class: { type: 'boolean', default: false },
    growth: { type: 'boolean', default: false },
    minutes: { type: 'string', default: '180' },
    takes: { type: 'string', default: '40' },
    seconds: { type: 'string', default: '180' },
  },
});
const lines = Number(values.lines);
const without = values.without.split(',');

interface Entrant {
  readonly name: string;
  readonly listen: Listen | null;
  readonly lines: number;
  readonly variants: readonly VariantName[];
  /** Hears the plucked ones alone, being slow. */
  readonly pluckedOnly?: boolean;
}

const everyVariant: readonly VariantName[] = ['clean', 'mixed', 'backing20', 'backing10'];
const plucked = (groups['plucked'] ?? []).map((instrument) => instrument.name);
const all = instruments.map((instrument) => instrument.name);

/** What an entrant made of the whole bench. */
interface Result {
  /** By variant, then by instrument. */
  readonly tallies: Map<VariantName, Map<string, Tally>>;
  /** Times real time, by recording. */
  readonly speeds: Map<string, number>;
}

/**
 * Every recording is heard by all entrants in turn before the next one comes, so that whatever else the machine is
 * doing weighs on all of them alike.
 */
async function hearAll(
  entrants: readonly (Entrant & { listen: Listen })[],
): Promise<ReadonlyMap<string, Result>> {
  const results = new Map<string, Result>(
    entrants.map(({ name }) => [name, { tallies: new Map(), speeds: new Map() }]),
  );
  for (const variant of everyVariant)
    // Rooms and backing are asked of the plucked ones alone: the figures to compare with are theirs.
    for (const wanted of casesOf(
      'reporting',
      variant === 'clean' ? instruments : (groups['plucked'] ?? []),
      [variant],
      lines,
    )) {
      const recorded = await recording(wanted);
      for (const entrant of entrants) {
        const instrument = wanted.instrument.name;
        if (!entrant.variants.includes(variant) || wanted.seed - firstSeeds.reporting >= entrant.lines)
          continue;
        if (entrant.pluckedOnly === true && !plucked.includes(instrument)) continue;
        const { tally } = await measure(recorded, entrant.listen);
        const { tallies, speeds } = results.get(entrant.name) as Result;
        const rows = tallies.get(variant) ?? new Map<string, Tally>();
        rows.set(instrument, addTallies(rows.get(instrument) ?? emptyTally, tally));
        tallies.set(variant, rows);
        speeds.set(`${instrument} ${wanted.seed} ${variant}`, tally.audioSeconds / tally.workSeconds);
      }
    }
  return results;
}

/** Mean F1 over instruments, each weighing the same; a dash where one was not heard. */
function meanF1(rows: ReadonlyMap<string, Tally> | undefined, names: readonly string[]): string {
  let sum = 0;
  for (const name of names) {
    const tally = rows?.get(name);
    if (!tally) return '–';
    sum += scoreOfTally(tally).f1;
  }
  return (sum / names.length).toFixed(3);
}

/** Columns of the table: a heading, and what stands under it. */
const columns: readonly (readonly [string, (result: Result, ours: Result) => string])[] = [
  ['twelve', ({ tallies }) => meanF1(tallies.get('clean'), all)],
  ['plucked', ({ tallies }) => meanF1(tallies.get('clean'), plucked)],
  ['mixed', ({ tallies }) => meanF1(tallies.get('mixed'), plucked)],
  ['band −20', ({ tallies }) => meanF1(tallies.get('backing20'), plucked)],
  ['band −10', ({ tallies }) => meanF1(tallies.get('backing10'), plucked)],
  ['on ms', (result) => percentile(onsetErrors(result), 0.5).toFixed(1)],
  ['p95 ms', (result) => percentile(onsetErrors(result), 0.95).toFixed(1)],
  ['oct %', (result) => octavePercent(result).toFixed(2)],
  ['× real', ({ speeds }) => percentile([...speeds.values()], 0.5).toFixed(1)],
  [
    '÷ ours',
    ({ speeds }, ours) =>
      percentile(
        [...speeds].map(([key, speed]) => speed / (ours.speeds.get(key) ?? NaN)),
        0.5,
      ).toFixed(2),
  ],
];

const cleanSum = ({ tallies }: Result): Tally =>
  [...(tallies.get('clean')?.values() ?? [])].reduce(addTallies, emptyTally);
const onsetErrors = (result: Result): readonly number[] => cleanSum(result).onsetErrorsMs.map(Math.abs);
const octavePercent = (result: Result): number => {
  const { octaveErrors, onsetsMatched } = cleanSum(result);
  return (100 * octaveErrors) / Math.max(1, onsetsMatched);
};

async function main(): Promise<void> {
  const invited: readonly Entrant[] = [
    { name: 'ours', listen, lines, variants: everyVariant },
    { name: 'plain pitchy', listen: plainPitchy, lines, variants: everyVariant },
    { name: 'pitchy dated at window start', listen: pitchyDatedAt(0), lines, variants: everyVariant },
    { name: 'plain YIN (pitchfinder)', listen: plainYin, lines: 1, variants: ['clean'] },
    { name: 'aubionotes', listen: aubionotes(), lines, variants: everyVariant },
    { name: 'Basic Pitch', listen: await basicPitch(), lines: 1, variants: ['clean'], pluckedOnly: true },
  ];
  const entrants = invited.filter(({ name }) => !without.includes(name));
  const there = entrants.filter(
    (entrant): entrant is Entrant & { listen: Listen } => entrant.listen !== null,
  );
  const results = await hearAll(there);
  const ours = results.get('ours') ?? { tallies: new Map(), speeds: new Map() };

  console.log(
    `Reporting set, bank MuseScore_General_Lite, ${lines} lines an instrument. F1: onset ±50 ms, pitch ±50 cents.\n` +
      'mixed and band: plucked only; mixed is rooms, noise, clicks, levels, detuning. Onset errors and octaves: clean lines.\n' +
      '× real and ÷ ours: median over recordings.\n',
  );
  console.log(''.padEnd(32) + columns.map(([head]) => head.padStart(10)).join(''));
  for (const { name } of entrants) {
    const result = results.get(name);
    const cells = result
      ? columns.map(([, cell]) => cell(result, ours).padStart(10)).join('')
      : '    skipped: not installed here';
    console.log(name.padEnd(32) + cells);
  }
  console.log(
    `\n${'F1 by instrument, clean'.padEnd(32)}${there.map(({ name }) => name.slice(0, 14).padStart(16)).join('')}`,
  );
  for (const name of all)
    console.log(
      name.padEnd(32) +
        there
          .map((entrant) => meanF1(results.get(entrant.name)?.tallies.get('clean'), [name]).padStart(16))
          .join(''),
    );
}

const listed = (text: string): readonly string[] => text.split(',').filter((part) => part !== '');

if (values.growth) await benchGrowth(listed(values.only), Number(values.minutes));
else if (values.class) await benchClass({ takes: Number(values.takes), seconds: Number(values.seconds) });
else if (values.real === undefined) await main();
else {
  const table = await benchReal({
    folder: values.real,
    by: values.by === 'source' ? 'source' : 'instrument',
    only: listed(values.only),
    without,
    sure: Number(values.sure),
    wide: listed(values.wide),
    files: values.files,
    write: values.write ?? null,
  });
  console.log(table.join('\n'));
}
