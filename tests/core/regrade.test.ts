import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { instrumentOf } from '../../src/core/music/instruments.ts';
import { regradeVersion1 } from '../../src/core/regrade.ts';
import { readReport, type Report } from '../../src/core/take/schema.ts';
import { details } from '../storage/fakes.ts';

const kept = JSON.parse(
  readFileSync(new URL('../../fixtures/reports/version-1.json', import.meta.url), 'utf8'),
) as Report;

/** Fields that version 2 did not touch keep their values; of the others the sentences are gone. */
const sameInBoth = ({
  notes,
  landings,
  phrases,
  summary,
  shares,
  changes,
  thirds,
  palette,
  aims,
}: Report) => ({
  notes: notes.map(
    ({ onsetSeconds, midi, name, spelling, chord, degree, role, keyDegree, weight, beat }) => ({
      ...{ onsetSeconds, midi, name, spelling, chord, degree, role, keyDegree, weight, beat },
    }),
  ),
  landings,
  phrases,
  counts: summary.landings,
  shares,
  changes,
  thirds,
  palette,
  aims: aims.map(({ id, tried, verdict, result }) => ({ id, tried, verdict, result })),
});

describe('regradeVersion1', () => {
  const chart = parseChart(`key: A\n${details.chartText}`);
  if (!chart.ok) throw new Error('the chart of the fixture is no chart');
  const timeline = timelineFromTempo(chart.value, { bpm: details.bpm, swing: details.swing });
  const again = regradeVersion1(kept, timeline, { instrument: instrumentOf('guitar')! });

  it('gives a report of version 2 with the same grades', () => {
    expect(kept.version).toBe(1);
    expect(again?.version).toBe(2);
    expect(readReport(again)).toEqual({ ok: true, value: again });
    expect(sameInBoth(again!)).toEqual(sameInBoth(kept));
    expect(again!.advice.length).toBe(kept.advice.length);
  });

  it('takes nothing else', () => {
    expect(regradeVersion1(again, timeline, {})).toBeNull();
    expect(regradeVersion1('a report of a version to come', timeline, {})).toBeNull();
    expect(regradeVersion1({ ...kept, notes: [{ midi: 60 }] }, timeline, {})).toBeNull();
  });
});
