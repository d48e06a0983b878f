/**
 * Floors under the listener, on a few lines of the REPORTING set (seeds from 5000): nobody tunes on these. The
 * whole set is measured by `npm run bench`. Metric: mir_eval.transcription's (see mir-eval.test.ts).
 */
import { describe, expect, test } from 'vitest';
import { needs } from '../needs.ts';
import { recording } from '../../fixtures/lines/cache.ts';
import { instruments } from '../../fixtures/lines/instruments.ts';
import { noNotes, type NoNotes } from '../../fixtures/lines/no-notes.ts';
import { haveRealNotes, realLine } from '../../fixtures/lines/real-notes.ts';
import { firstSeeds, groups, type VariantName } from '../../fixtures/lines/sets.ts';
import { listen } from '../../src/core/listen.ts';
import { addTallies, emptyTally, measure, medianOf, scoreOfTally, type Tally } from '../bench/measure.ts';
import { percentile } from '../bench/note-metrics.ts';

/**
 * What a run must reach: 0.005 under what was measured in the comment beside it. Real playing decides: when the network took
 * the place of the rules, "twelve" (from 0.961) and ringing strings (from 0.937) fell, and the other
 * figures got better; src/core/listen/README.md says what was gained for it.
 */
const floors = {
  /** Measured 0.956. */
  pluckedF1: 0.951,
  /** Measured 0.900. */
  everyPluckedF1: 0.895,
  /** Measured 0.952; the bass guitar, the distorted guitar and the clean one miss most. */
  twelveF1: 0.947,
  /** Measured 0.945. */
  backing20F1: 0.94,
  /** Measured 0.902. */
  ringingF1: 0.897,
  /** Measured 0.981 and 1. */
  realNotesF1: { guitar: 0.975, sax: 0.995 },
  /** Measured 0.85: three notes. */
  octaveErrorPercent: 0.9,
  /** Measured 2.5. */
  onsetMedianMs: 3,
  /** Measured 17.7. */
  onsetP95Ms: 18.5,
  /** As measured. */
  falseNotesAMinute: { room: 0, hum: 1, clicks: 0, speech: 1 } satisfies Record<NoNotes, number>,
} as const;

const seconds = 8;
const seed = firstSeeds.reporting;

async function heard(names: readonly string[], variant: VariantName): Promise<ReadonlyMap<string, Tally>> {
  const rows = new Map<string, Tally>();
  for (const instrument of instruments) {
    if (!names.includes(instrument.name)) continue;
    const recorded = await recording({ instrument, seed, variant, seconds });
    rows.set(instrument.name, (await measure(recorded, listen)).tally);
  }
  return rows;
}

const all = instruments.map((instrument) => instrument.name);
const plucked = (groups['plucked'] ?? []).map((instrument) => instrument.name);
const f1s = (rows: ReadonlyMap<string, Tally>, names: readonly string[]): readonly number[] =>
  names.map((name) => scoreOfTally(rows.get(name) ?? emptyTally).f1);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('the listener on lines that it was not tuned on', () => {
  test('twelve instruments, clean', async () => {
    const rows = await heard(all, 'clean');
    const sum = [...rows.values()].reduce(addTallies, emptyTally);
    expect(sum.references).toBeGreaterThan(250);
    expect(mean(f1s(rows, all))).toBeGreaterThanOrEqual(floors.twelveF1);
    expect(mean(f1s(rows, plucked))).toBeGreaterThanOrEqual(floors.pluckedF1);
    expect(Math.min(...f1s(rows, plucked))).toBeGreaterThanOrEqual(floors.everyPluckedF1);
    expect((100 * sum.octaveErrors) / sum.onsetsMatched).toBeLessThanOrEqual(floors.octaveErrorPercent);
    const onsets = sum.onsetErrorsMs.map(Math.abs);
    expect(medianOf(onsets)).toBeLessThanOrEqual(floors.onsetMedianMs);
    expect(percentile(onsets, 0.95)).toBeLessThanOrEqual(floors.onsetP95Ms);
  });

  test('plucked, a band 20 dB under the player', async () => {
    const rows = await heard(plucked, 'backing20');
    expect(mean(f1s(rows, plucked))).toBeGreaterThanOrEqual(floors.backing20F1);
  });

  test('plucked, every string ringing on', async () => {
    const rows = await heard(plucked, 'ringing');
    expect(mean(f1s(rows, plucked))).toBeGreaterThanOrEqual(floors.ringingF1);
  });

  test.each(['guitar', 'sax'] as const)(
    'real %s notes laid in line',
    {
      ...needs(haveRealNotes(), 'The recordings of single notes are not there: ../shared.'),
    },
    async (instrument) => {
      let sum = emptyTally;
      for (const line of [0, 1])
        sum = addTallies(sum, (await measure(await realLine(instrument, seed + line), listen)).tally);
      expect(scoreOfTally(sum).f1).toBeGreaterThanOrEqual(floors.realNotesF1[instrument]);
    },
  );
});

describe('what is no note', () => {
  test.each(['room', 'hum', 'clicks', 'speech'] as const)('a minute of %s', (kind) => {
    const notes = listen(noNotes(kind, seed), 48_000);
    expect(notes.length).toBeLessThanOrEqual(floors.falseNotesAMinute[kind]);
  });
});
