/**
 * Evaluates the listener on made lines:
 *
 *   npx tsx tests/bench/evaluate.ts [--set tuning|reporting] [--instruments plucked|all|nylon,tenor]
 *     [--variants clean,room] [--lines 4] [--bank musescore|fluid|tim] [--listener ours|pitchy|yin] [--errors]
 *     [--real] [--nothing] [--hand] [--from 5020]
 *
 * --real adds lines of real guitar and sax notes (where ../shared is there); --nothing counts notes heard in minutes
 * without any; --hand takes the moment the hand acts as truth, not the moment the bank's sample speaks.
 * --from N begins at that seed of the set.
 * --errors lists every error with its time, so that it can be looked at.
 */
import { parseArgs } from 'node:util';
import { recording } from '../../fixtures/lines/cache.ts';
import { instrumentNamed } from '../../fixtures/lines/instruments.ts';
import { noNotes } from '../../fixtures/lines/no-notes.ts';
import { haveRealNotes, realLine } from '../../fixtures/lines/real-notes.ts';
import type { Rendered } from '../../fixtures/lines/render.ts';
import {
  casesOf,
  firstSeeds,
  groups,
  variants,
  type SetName,
  type VariantName,
} from '../../fixtures/lines/sets.ts';
import type { BankName } from '../../fixtures/lines/synth.ts';
import { plainPitchy, plainYin } from './listeners.ts';
import { addTallies, emptyTally, measure, type Listen, type Tally } from './measure.ts';
import { headerLine, tallyLine } from './table.ts';

const { values } = parseArgs({
  options: {
    set: { type: 'string', default: 'tuning' },
    instruments: { type: 'string', default: 'all' },
    variants: { type: 'string', default: 'clean' },
    lines: { type: 'string', default: '4' },
    bank: { type: 'string', default: 'musescore' },
    listener: { type: 'string', default: 'ours' },
    errors: { type: 'boolean', default: false },
    real: { type: 'boolean', default: false },
    nothing: { type: 'boolean', default: false },
    hand: { type: 'boolean', default: false },
    from: { type: 'string' },
  },
});

/** First seed. */
const first = Number(values.from ?? firstSeeds[values.set as SetName]);

async function chosenListener(name: string): Promise<Listen> {
  if (name === 'pitchy') return plainPitchy;
  if (name === 'yin') return plainYin;
  const path = '../../src/core/listen.ts';
  const { listen } = (await import(path)) as { listen: Listen };
  return listen;
}

/** Measures one recording, and lists its errors where asked. */
async function take(name: string, recorded: Rendered, listen: Listen): Promise<Tally> {
  const truth = values.hand
    ? recorded.truth.map((note) => ({ ...note, onsetSeconds: note.handSeconds }))
    : recorded.truth;
  const { tally, heard, breakdown } = await measure({ ...recorded, truth }, listen);
  if (!values.errors) return tally;
  for (const error of breakdown.errors) {
    const note = error.reference === null ? null : truth[error.reference];
    const estimate = error.estimate === null ? null : heard[error.estimate];
    const left = note
      ? `truth ${note.onsetSeconds.toFixed(3)} ${note.midi.toFixed(2)} ${note.articulation} v${note.velocity} ` +
        `${Math.round(1000 * (note.offsetSeconds - note.onsetSeconds))} ms`
      : '';
    const right = estimate ? `heard ${estimate.onsetSeconds.toFixed(3)} ${estimate.midi.toFixed(2)}` : '';
    console.log(`  ${name}: ${error.kind.padEnd(8)} ${left.padEnd(52)} ${right}`);
  }
  return tally;
}

async function realRows(listen: Listen, set: SetName, lines: number): Promise<void> {
  if (!haveRealNotes()) {
    console.log('\nreal notes: skipped, ../shared/real-audio is not there');
    return;
  }
  console.log(`\n${set}, real notes laid in line\n${headerLine}`);
  for (const instrument of ['guitar', 'sax'] as const)
    for (const overlapSeconds of [0, 0.15]) {
      let row = emptyTally;
      for (let seed = first; seed < first + lines; seed++)
        row = addTallies(
          row,
          await take(`${instrument} ${seed}`, await realLine(instrument, seed, { overlapSeconds }), listen),
        );
      console.log(tallyLine(`${instrument}${overlapSeconds > 0 ? ' over' : ''}`, [row]));
    }
}

async function nothingRows(listen: Listen): Promise<void> {
  console.log('\nnotes heard in a minute without any');
  for (const kind of ['room', 'hum', 'clicks', 'speech'] as const) {
    const counts = [];
    for (const seed of [first, first + 1]) counts.push((await listen(noNotes(kind, seed), 48_000)).length);
    console.log(`${kind.padEnd(12)} ${counts.join(' ')}`);
  }
}

async function main(): Promise<void> {
  const listen = await chosenListener(values.listener);
  const set = values.set as SetName;
  const lines = Number(values.lines);
  const chosen = groups[values.instruments] ?? values.instruments.split(',').map(instrumentNamed);
  const wanted =
    values.variants === 'every' ? Object.keys(variants) : values.variants.split(',').filter((v) => v !== '');
  for (const variant of wanted) {
    if (!(variant in variants))
      throw new RangeError(`no variant "${variant}"; there are ${Object.keys(variants).join(', ')}`);
    console.log(`\n${set}, ${variant}, bank ${values.bank}\n${headerLine}`);
    const rows: Tally[] = [];
    for (const instrument of chosen) {
      let row = emptyTally;
      for (const wantedCase of casesOf(set, [instrument], [variant as VariantName], lines, first)) {
        const recorded = await recording(wantedCase, values.bank as BankName);
        row = addTallies(row, await take(`${instrument.name} ${wantedCase.seed}`, recorded, listen));
      }
      rows.push(row);
      console.log(tallyLine(instrument.name, [row]));
    }
    console.log(tallyLine('mean', rows));
  }
  if (values.real) await realRows(listen, set, lines);
  if (values.nothing) await nothingRows(listen);
}

await main();
