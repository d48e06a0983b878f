/**
 * `npm run bench -- --growth`: how the cost of grading at the command line grows, by doubling, up to the limits of
 * `src/pages/limits.md`: notes of a list and of a MIDI file, beats, bars of a chart and of a MusicXML score, choruses, and
 * minutes of a recording. What has to stay at 1.15 or below is the exponent e of cost = c · sizeᵉ.
 *
 *   npm run build && npm run bench -- --growth [--only beats,recording] [--minutes 180]
 *
 * Cost is the processor time of the process, user and system, less that of a list of one note, which is the program's
 * start; memory its highest resident set (getrusage(2), ru_maxrss).
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chance } from '../../src/core/base/random.ts';
import { LANDFALL } from '../cli/built.ts';
import { writeLongLine } from './long-line.ts';
import { beatsFile, chartText, midiFile, musicXmlFile, notesFile } from './growth-files.ts';

/** Costs below this are lost in what else the program does, seconds. */
const LEAST_SECONDS = 0.1;

/** At the end of the program: seconds of the processor, megabytes. */
const WATCH = `data:text/javascript,${encodeURIComponent(
  `import { writeFileSync } from 'node:fs';
  process.on('exit', () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    writeFileSync(process.env.MEASURED, JSON.stringify([(userCPUTime + systemCPUTime) / 1e6, maxRSS / 1024]));
  });`,
)}`;

interface Cost {
  readonly seconds: number;
  readonly megabytes: number;
}

async function costOf(folder: string, args: readonly string[]): Promise<Cost> {
  const measured = join(folder, 'measured.json');
  const child = spawn(process.execPath, ['--import', WATCH, LANDFALL, 'grade', ...args, '--json'], {
    env: { ...process.env, MEASURED: measured },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.setEncoding('utf8').on('data', (piece: string) => (said += piece));
  const code = await new Promise((resolve) => child.once('close', resolve));
  if (code !== 0) throw new Error(`landfall grade ${args.join(' ')}: ${said.trim()}`);
  const [seconds, megabytes] = JSON.parse(readFileSync(measured, 'utf8')) as [number, number];
  return { seconds, megabytes };
}

interface Growing {
  readonly name: string;
  readonly unit: string;
  readonly sizes: readonly number[];
  /** Writes what is graded into the folder, and says how. */
  readonly order: (size: number, path: (name: string) => string) => Promise<readonly string[]>;
}

const put = (path: string, content: string | Uint8Array) => {
  writeFileSync(path, content);
  return path;
};
/** From the largest down by halves, the smallest first. */
const doubled = (largest: number, times: number) =>
  Array.from({ length: times + 1 }, (_, i) => Math.round(largest / 2 ** (times - i)));

const BLUES = 'form: blues';
const HOURS_6 = 6 * 3600;

const growing = (minutes: number): readonly Growing[] => [
  {
    name: 'notes of a list',
    unit: 'notes',
    sizes: doubled(100_000, 7),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(size, HOURS_6 / 100_000)),
      ...['--chart', BLUES, '--tempo', '120'],
    ],
  },
  {
    name: 'notes of ten minutes',
    unit: 'notes',
    sizes: doubled(100_000, 7),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(size, 600 / size)),
      ...['--chart', BLUES, '--tempo', '120'],
    ],
  },
  {
    name: 'notes of a MIDI file',
    unit: 'notes',
    sizes: doubled(100_000, 7),
    order: async (size, path) => [
      put(path('notes.mid'), midiFile(size, HOURS_6 / 100_000)),
      ...['--chart', BLUES, '--tempo', '120'],
    ],
  },
  {
    name: 'beats',
    unit: 'beats',
    sizes: doubled(43_200, 5),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(size, 0.5)),
      ...['--beats', put(path('beats.csv'), beatsFile(size, 0.5, chance(size)))],
    ],
  },
  {
    name: 'beats, few notes',
    unit: 'beats',
    sizes: doubled(100_000, 5),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(100, 1)),
      ...['--beats', put(path('beats.csv'), beatsFile(size, 0.216, chance(size)))],
    ],
  },
  {
    name: 'bars of a chart',
    unit: 'bars',
    sizes: doubled(4000, 4),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(4 * size, 0.25)),
      ...['--chart', put(path('chart.txt'), chartText(size, chance(size))), '--tempo', '240'],
    ],
  },
  {
    name: 'bars of a MusicXML score',
    unit: 'bars',
    sizes: doubled(4000, 4),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(4 * size, 0.25)),
      ...['--chart', put(path('chart.musicxml'), musicXmlFile(size, chance(size))), '--tempo', '240'],
    ],
  },
  {
    name: 'choruses of 32 bars',
    unit: 'choruses',
    sizes: doubled(640, 5),
    order: async (size, path) => [
      put(path('notes.csv'), notesFile(16 * size, 2)),
      ...['--chart', put(path('chart.txt'), chartText(32, chance(32))), '--tempo', '240'],
    ],
  },
  {
    name: 'recording',
    unit: 'minutes',
    sizes: [1, 3, 6, 12, 24, 48, 90, 180, 360].filter((size) => size <= minutes),
    order: async (size, path) => {
      await writeLongLine(path('line.wav'), size);
      return [path('line.wav'), '--chart', '| A7 | D7 | A7 | E7 |', '--tempo', '120'];
    },
  },
];

const exponent = (from: Cost, to: Cost, times: number) =>
  Math.log(to.seconds / from.seconds) / Math.log(times);

/** @param only beginnings of names, none for all */
export async function benchGrowth(only: readonly string[], minutes: number): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-growth-'));
  const path = (name: string) => join(folder, name);
  try {
    const one = [put(path('one.csv'), notesFile(1, 1)), '--chart', BLUES, '--tempo', '120'];
    const start = await costOf(folder, one);
    console.log(
      `Start of the program: ${start.seconds.toFixed(2)} s of the processor, ${start.megabytes.toFixed(0)} MB. ` +
        `Seconds below are beyond it. The exponent "last" is that of the last doubling, "whole" from the first cost of ` +
        `${LEAST_SECONDS} s on.`,
    );
    const wanted = growing(minutes).filter(
      ({ name }) => only.length === 0 || only.some((beginning) => name.startsWith(beginning)),
    );
    for (const { name, unit, sizes, order } of wanted) {
      const costs: (Cost & { readonly size: number })[] = [];
      for (const size of sizes) {
        const cost = await costOf(folder, await order(size, path));
        costs.push({ ...cost, size, seconds: cost.seconds - start.seconds });
      }
      const shown = costs.map(
        ({ size, seconds, megabytes }) => `${size} ${seconds.toFixed(2)} s ${megabytes.toFixed(0)} MB`,
      );
      const [before, last] = costs.slice(-2);
      const first = costs.find(({ seconds }) => seconds >= LEAST_SECONDS);
      const between = (from: typeof last, to: typeof last) =>
        from && to && from !== to && from.seconds >= LEAST_SECONDS
          ? exponent(from, to, to.size / from.size).toFixed(2)
          : 'too small to tell';
      console.log(`${name}, ${unit}: ${shown.join(', ')}`);
      console.log(`    exponent: whole ${between(first, last)}, last ${between(before, last)}`);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}
