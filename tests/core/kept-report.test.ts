import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readKeptReport } from '../../src/core/kept-report.ts';
import { details } from '../storage/fakes.ts';

const version1 = JSON.parse(
  readFileSync(new URL('../../fixtures/reports/version-1.json', import.meta.url), 'utf8'),
) as Record<string, unknown>;
const take = {
  details: {
    ...details,
    chartText: `key: A\n${details.chartText}`,
    firstBeatSeconds: 0,
    instrument: 'guitar',
  },
};

test('a take that was kept with a report of version 1 opens with one of version 2', () => {
  const read = readKeptReport({ ...take, report: version1 });
  expect(read).toMatchObject({ ok: true, value: { version: 2 } });
  if (read.ok) expect(read.value.notes).toHaveLength((version1['notes'] as unknown[]).length);
});

test('what is no report is a problem, and the take is graded from its sound', () => {
  expect(readKeptReport({ ...take, report: null })).toMatchObject({
    ok: false,
    problem: { code: 'report.unreadable' },
  });
});
