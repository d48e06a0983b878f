/** What is kept on this machine, as any version may have left it: read or refused, never thrown over. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { readKeptNotes } from '../../src/core/kept-notes.ts';
import { readKeptReport } from '../../src/core/kept-report.ts';
import { timelineOf } from '../../src/core/timeline-of-order.ts';
import { gradeOrder } from '../../src/core/grade-order.ts';
import { TakeDetailsSchema } from '../../src/core/take/details-schema.ts';
import { settingsFields, usualSettings } from '../../src/state/settings.ts';
import { BackingRecordSchema } from '../../src/storage/backing-record.ts';
import { ChartRecordSchema, MessagesSchema, TakeRecordSchema } from '../../src/storage/records.ts';
import { details, madeTake } from '../core/take-file/made-take.ts';
import { damaged, expectSentences, fuzz, withShortLists } from './fuzz.ts';

const RECORD = {
  ...{ id: 'a-1', finished: true, frames: 65_001 },
  details: {
    ...details,
    ...{
      rise: { byBpm: 4, everyBars: 12 },
      trade: { bars: 4, aim: 'thirds' },
      lost: [{ atSeconds: 1, seconds: 0.5 }],
    },
    drone: { tones: 'root', semitones: [0, 5] },
  },
  summary: {
    ...{ notes: 12, chordToneShare: 0.5, thirdShare: null },
    landings: { count: 4, open: 1, chordTones: 2, thirds: 1 },
    counts: { aim: { id: 'x', goal: 0.5, hits: 1, of: 2 }, changes: [], choruses: [{ hits: 1, of: 2 }] },
  },
};

describe('records of this machine', { timeout: 300_000 }, () => {
  it('takes: what their schema lets through can be laid on time and looked at', () => {
    fuzz(damaged(RECORD), (value) => {
      const read = v.safeParse(TakeRecordSchema, value);
      if (!read.success) return;
      const timeline = timelineOf(gradeOrder(read.output.details));
      expectSentences(timeline);
      if (!timeline.ok) return;
      const { beatMap } = timeline.value;
      expect(Number.isFinite(beatMap.secondsAt(64))).toBe(true);
      expect(Number.isFinite(beatMap.beatAt(64))).toBe(true);
    });
  });

  it('reports and notes', () => {
    const { report } = madeTake();
    fuzz(
      fc.oneof({ weight: 6, arbitrary: damaged(report) }, { weight: 1, arbitrary: fc.anything() }),
      (value) => {
        readKeptNotes({ report: value });
        readKeptReport({ report: value, details } as Parameters<typeof readKeptReport>[0]);
      },
      // A report of five notes has six hundred places; a case takes half a millisecond.
      2000,
    );
  });

  it('MIDI messages, details and settings', () => {
    fuzz(
      fc.oneof(
        damaged(usualSettings),
        damaged(details),
        damaged([{ seconds: 0, bytes: [144, 60, 90] }]),
        fc.anything(),
      ),
      (value) => {
        v.safeParse(MessagesSchema, value);
        v.safeParse(TakeDetailsSchema, value);
        for (const [name, schema] of Object.entries(settingsFields))
          v.safeParse(
            schema,
            typeof value === 'object' && value !== null ? (value as Record<string, unknown>)[name] : value,
          );
      },
    );
  });
});

/** Records of the stores that earlier versions wrote (fixtures/stores); sounds are numbers and are not damaged. */
const earlierRecords = (version: number): readonly (readonly [store: string, record: unknown])[] => {
  const { stores } = JSON.parse(
    readFileSync(new URL(`../../fixtures/stores/version-${version}.json`, import.meta.url), 'utf8'),
  ) as { readonly stores: Readonly<Record<string, readonly (readonly [unknown, unknown])[]>> };
  return Object.entries(stores).flatMap(([store, records]) =>
    ['chunks', 'backingFiles'].includes(store) ? [] : records.map(([, record]) => [store, record] as const),
  );
};

const readEarlier: Readonly<Record<string, (value: unknown) => void>> = {
  takes(value) {
    const read = v.safeParse(TakeRecordSchema, value);
    if (read.success) expectSentences(timelineOf(gradeOrder(read.output.details)));
  },
  reports(value) {
    readKeptNotes({ report: value });
    expectSentences(readKeptReport({ report: value, details } as Parameters<typeof readKeptReport>[0]));
  },
  messages: (value) => void v.safeParse(MessagesSchema, value),
  charts(value) {
    const read = v.safeParse(ChartRecordSchema, value);
    if (read.success) expectSentences(parseChart(read.output.chartText));
  },
  backings(value) {
    const read = v.safeParse(BackingRecordSchema, value);
    if (read.success) expectSentences(parseChart(read.output.chartText));
  },
};

describe('records of earlier versions', { timeout: 300_000 }, () => {
  it.each([1, 2, 3])('of a store of version %i', (version) => {
    const cases = earlierRecords(version).map(([store, record]) =>
      damaged(withShortLists(record)).map((value) => [store, value] as const),
    );
    expect(cases.length).toBeGreaterThan(3);
    fuzz(fc.oneof(...cases), ([store, value]) => readEarlier[store]!(value));
  });
});
