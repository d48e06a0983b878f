/**
 * Evaluates the listener on made lines:
 *
 *   npx tsx tests/bench/evaluate.ts [--set tuning|reporting] [--instruments plucked|all|nylon,tenor]
 *     [--variants clean,room] [--lines 4] [--bank musescore|fluid|tim] [--listener ours|pitchy|yin] [--errors]
 *
 * --errors lists every error with its time, so that it can be looked at.
 */
import { parseArgs } from 'node:util';
import { recording } from '../../fixtures/lines/cache.ts';
import { instrumentNamed } from '../../fixtures/lines/instruments.ts';
import { casesOf, groups, variants, type SetName, type VariantName } from '../../fixtures/lines/sets.ts';
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
  },
});

async function chosenListener(name: string): Promise<Listen> {
  if (name === 'pitchy') return plainPitchy;
  if (name === 'yin') return plainYin;
  const path = '../../src/core/listen.ts';
  const { listen } = (await import(path)) as { listen: Listen };
  return listen;
}

async function main(): Promise<void> {
  const listen = await chosenListener(values.listener);
  const chosen = groups[values.instruments] ?? values.instruments.split(',').map(instrumentNamed);
  const wanted = values.variants === 'every' ? Object.keys(variants) : values.variants.split(',');
  for (const variant of wanted) {
    if (!(variant in variants))
      throw new RangeError(`no variant "${variant}"; there are ${Object.keys(variants).join(', ')}`);
    console.log(`\n${values.set}, ${variant}, bank ${values.bank}\n${headerLine}`);
    const rows: Tally[] = [];
    for (const instrument of chosen) {
      let row = emptyTally;
      for (const wantedCase of casesOf(
        values.set as SetName,
        [instrument],
        [variant as VariantName],
        Number(values.lines),
      )) {
        const recorded = await recording(wantedCase, values.bank as BankName);
        const { tally, heard, breakdown } = await measure(recorded, listen);
        row = addTallies(row, tally);
        if (!values.errors) continue;
        for (const error of breakdown.errors) {
          const truth = error.reference === null ? null : recorded.truth[error.reference];
          const estimate = error.estimate === null ? null : heard[error.estimate];
          const left = truth
            ? `truth ${truth.onsetSeconds.toFixed(3)} ${truth.midi.toFixed(2)} ${truth.articulation} v${truth.velocity} ${Math.round(1000 * (truth.offsetSeconds - truth.onsetSeconds))} ms`
            : '';
          const right = estimate
            ? `heard ${estimate.onsetSeconds.toFixed(3)} ${estimate.midi.toFixed(2)}`
            : '';
          console.log(
            `  ${instrument.name} ${wantedCase.seed}: ${error.kind.padEnd(8)} ${left.padEnd(52)} ${right}`,
          );
        }
      }
      rows.push(row);
      console.log(tallyLine(instrument.name, [row]));
    }
    console.log(tallyLine('mean', rows));
  }
}

await main();
