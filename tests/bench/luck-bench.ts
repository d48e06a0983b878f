/**
 * How often players of known skill are called lucky: wanderers, riffs without regard to the chords, players who land on
 * thirds. `npx tsx tests/bench/luck-bench.ts 400 1000` prints one row a kind, of 400 seeds from 1000 on; the short form of
 * it is in tests/outside/known-players.test.ts.
 */
import { grade } from '../../src/core/grade.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { line, SETTINGS, TWELVE_BARS, type Played } from '../core/grade/line.ts';
import {
  CHROMATIC,
  MAJOR_PENTATONIC,
  MINOR_PENTATONIC,
  MIXOLYDIAN,
  chartTimeline,
  riff,
  thirdPlayer,
  wanderer,
} from './made-players.ts';

const BARS = 48;
const SCALES = {
  'minor pentatonic': MINOR_PENTATONIC,
  'major pentatonic': MAJOR_PENTATONIC,
  mixolydian: MIXOLYDIAN,
  chromatic: CHROMATIC,
};
const timeline = chartTimeline(TWELVE_BARS);

/** What was said of the takes of one kind. */
interface Counts {
  runs: number;
  more: number;
  less: number;
  tooShort: number;
  /** Takes with a mark beside a cell of the table other than the headline's. */
  marked: number;
  reached: number;
  suspected: number;
}

function countTakes(seeds: number, play: (seed: number) => readonly Played[]): Counts {
  const counts: Counts = { runs: seeds, more: 0, less: 0, tooShort: 0, marked: 0, reached: 0, suspected: 0 };
  for (let seed = firstSeed; seed < firstSeed + seeds; seed++) {
    const report: Report = grade(line(play(seed)), timeline, SETTINGS);
    const { verdict } = report.shares.landings.thirds;
    if (verdict === 'above chance') counts.more++;
    if (verdict === 'below chance') counts.less++;
    if (verdict === 'too short to tell') counts.tooShort++;
    const cells = Object.entries(report.shares).flatMap(([kind, set]) =>
      Object.entries(set).filter(([tones]) => !(kind === 'landings' && tones === 'thirds')),
    );
    if (cells.some(([, share]) => share.verdict === 'above chance' || share.verdict === 'below chance'))
      counts.marked++;
    if (report.aims.some((aim) => aim.verdict === 'reached')) counts.reached++;
    if (report.suspected !== null) counts.suspected++;
  }
  return counts;
}

function print(name: string, counts: Counts): void {
  const { runs, more, less, tooShort, marked, reached, suspected } = counts;
  console.log(
    `${name.padEnd(36)}${runs} runs: more than luck ${more}, less ${less}, too short ${tooShort}, ` +
      `marks elsewhere ${marked}, an aim reached ${reached}, wrong chart suspected ${suspected}`,
  );
}

const seeds = Number(process.argv[2] ?? 200);
const firstSeed = Number(process.argv[3] ?? 1);
const scales = Object.values(SCALES);
/** The seeds take turns with the scales. */
const scaleOf = (seed: number) => scales[seed % scales.length]!;

for (const choruses of [1, 2, 3])
  print(
    `every third, ${choruses} choruses`,
    countTakes(seeds, (seed) => thirdPlayer(seed, timeline, choruses, 1, scaleOf(seed))),
  );
print(
  'three thirds in ten, four choruses',
  countTakes(seeds, (seed) => thirdPlayer(seed, timeline, 4, 0.3, scaleOf(seed))),
);
for (const riffBars of [1, 2, 4])
  for (const [name, scale] of Object.entries(SCALES))
    print(
      `riff of ${riffBars}, ${name}`,
      countTakes(seeds, (seed) => riff(seed, scale, riffBars, BARS)),
    );
for (const [name, scale] of Object.entries(SCALES))
  print(
    `wanders, ${name}`,
    countTakes(seeds, (seed) => wanderer(seed, scale, 4 * BARS)),
  );
