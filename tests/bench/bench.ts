/**
 * `npm run bench`: one table, every listener on the same recordings of the reporting set, in one run. Ratios are
 * what counts; absolute speed depends on the machine, so nothing here fails on it.
 *
 *   npm run bench -- [--lines 2] [--without basic-pitch,yin]
 *
 * Basic Pitch runs slower than real time, so it hears one line of each plucked instrument and no room.
 */
import { parseArgs } from 'node:util';
import { recording } from '../../fixtures/lines/cache.ts';
import { instruments } from '../../fixtures/lines/instruments.ts';
import { casesOf, groups, type VariantName } from '../../fixtures/lines/sets.ts';
import { listen } from '../../src/core/listen.ts';
import { pitchyDatedAt, plainPitchy, plainYin } from './listeners.ts';
import {
  addTallies,
  emptyTally,
  measure,
  medianOf,
  scoreOfTally,
  type Listen,
  type Tally,
} from './measure.ts';
import { percentile } from './note-metrics.ts';
import { aubionotes, basicPitch } from './outside-listeners.ts';

const { values } = parseArgs({
  options: { lines: { type: 'string', default: '2' }, without: { type: 'string', default: '' } },
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

/** F1 an instrument, and everything summed. */
async function enter(
  entrant: Entrant & { listen: Listen },
  variant: VariantName,
): Promise<ReadonlyMap<string, Tally>> {
  // Rooms and backing are asked of the plucked ones alone: the figures to compare with are theirs.
  const all = variant === 'clean' && entrant.pluckedOnly !== true;
  const chosen = all ? instruments : (groups['plucked'] ?? []);
  const rows = new Map<string, Tally>();
  for (const instrument of chosen) {
    let row = emptyTally;
    for (const wanted of casesOf('reporting', [instrument], [variant], entrant.lines))
      row = addTallies(row, (await measure(await recording(wanted), entrant.listen)).tally);
    rows.set(instrument.name, row);
  }
  return rows;
}

const meanF1 = (rows: ReadonlyMap<string, Tally>, names: readonly string[]): number =>
  names.reduce((sum, name) => sum + scoreOfTally(rows.get(name) ?? emptyTally).f1, 0) / names.length;

const cellOf = (tally: Tally | undefined): string => (tally ? scoreOfTally(tally).f1.toFixed(3) : '–');

async function main(): Promise<void> {
  const entrants: Entrant[] = [
    { name: 'ours', listen, lines, variants: everyVariant },
    { name: 'pitchy, plain', listen: plainPitchy, lines, variants: everyVariant },
    { name: 'pitchy, dated at window start', listen: pitchyDatedAt(0), lines, variants: everyVariant },
    { name: 'pitchfinder YIN, plain', listen: plainYin, lines: 1, variants: ['clean'] },
    { name: 'aubionotes', listen: aubionotes(), lines, variants: everyVariant },
    { name: 'Basic Pitch', listen: await basicPitch(), lines: 1, variants: ['clean'], pluckedOnly: true },
  ];
  const plucked = (groups['plucked'] ?? []).map((instrument) => instrument.name);
  const all = instruments.map((instrument) => instrument.name);
  const heads = [
    'twelve',
    'plucked',
    'mixed',
    'band −20',
    'band −10',
    'on ms',
    'p95 ms',
    'oct %',
    '× real',
    '÷ ours',
  ];
  console.log(
    `Reporting set, bank MuseScore_General_Lite, ${lines} lines an instrument. F1: onset ±50 ms, pitch ±50 cents.\n` +
      'mixed, band: plucked only; mixed = rooms, noise, clicks, levels, detuning. on ms, p95: |onset error| of matched notes.\n',
  );
  console.log(''.padEnd(32) + heads.map((head) => head.padStart(10)).join(''));
  let ourSpeed = NaN;
  const details: [string, ReadonlyMap<string, Tally>][] = [];
  for (const entrant of entrants) {
    if (without.includes(entrant.name)) continue;
    if (!entrant.listen) {
      console.log(`${entrant.name.padEnd(32)}    skipped: not installed on this machine`);
      continue;
    }
    const results = new Map<VariantName, ReadonlyMap<string, Tally>>();
    for (const variant of entrant.variants)
      results.set(variant, await enter({ ...entrant, listen: entrant.listen }, variant));
    const clean = results.get('clean') ?? new Map<string, Tally>();
    details.push([entrant.name, clean]);
    const sum = [...clean.values()].reduce(addTallies, emptyTally);
    const speed = sum.audioSeconds / sum.workSeconds;
    if (entrant.name === 'ours') ourSpeed = speed;
    const onsets = sum.onsetErrorsMs.map(Math.abs);
    const f1 = (variant: VariantName, names: readonly string[]): string => {
      const rows = results.get(variant);
      return rows && names.every((name) => rows.has(name)) ? meanF1(rows, names).toFixed(3) : '–';
    };
    const cells = [
      f1('clean', all),
      f1('clean', plucked),
      f1('mixed', plucked),
      f1('backing20', plucked),
      f1('backing10', plucked),
      medianOf(onsets).toFixed(1),
      percentile(onsets, 0.95).toFixed(1),
      ((100 * sum.octaveErrors) / Math.max(1, sum.onsetsMatched)).toFixed(2),
      speed.toFixed(speed < 10 ? 2 : 0),
      (speed / ourSpeed).toFixed(2),
    ];
    console.log(entrant.name.padEnd(32) + cells.map((cell) => cell.padStart(10)).join(''));
  }
  console.log(
    `\nF1 by instrument, clean${' '.repeat(9)}${details.map(([name]) => name.slice(0, 14).padStart(16)).join('')}`,
  );
  for (const name of all)
    console.log(name.padEnd(32) + details.map(([, rows]) => cellOf(rows.get(name)).padStart(16)).join(''));
}

await main();
