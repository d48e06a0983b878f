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

/** What was heard stays, and its names by chord and key; what is made of it follows today's definitions. */
const sameInBoth = ({ notes, phrases, summary }: Report) => ({
  notes: notes.map(({ onsetSeconds, midi, spelling, keyDegree, weight, beat }) => ({
    ...{ onsetSeconds, midi, spelling, keyDegree, weight, beat },
  })),
  phrases: phrases.map(({ firstNote, lastNote }) => ({ firstNote, lastNote })),
  changes: summary.landings.count,
});

describe('regradeVersion1', () => {
  const chart = parseChart(`key: A\n${details.chartText}`);
  if (!chart.ok) throw new Error('the chart of the fixture is no chart');
  const timeline = timelineFromTempo(chart.value, { bpm: details.bpm, swing: details.swing });
  const again = regradeVersion1(kept, timeline, { instrument: instrumentOf('guitar')! });

  it('gives a report of version 2 of the same notes', () => {
    expect(kept.version).toBe(1);
    expect(again?.version).toBe(2);
    expect(readReport(again)).toEqual({ ok: true, value: again });
    expect(sameInBoth(again!)).toEqual(sameInBoth(kept));
  });

  it('takes nothing else', () => {
    expect(regradeVersion1(again, timeline, {})).toBeNull();
    expect(regradeVersion1('a report of a version to come', timeline, {})).toBeNull();
    expect(regradeVersion1({ ...kept, notes: [{ midi: 60 }] }, timeline, {})).toBeNull();
  });
});
