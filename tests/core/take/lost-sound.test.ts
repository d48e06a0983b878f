import { english } from '../../english.ts';
import { en } from '../../../src/core/words/en.ts';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { readChartArgument } from '../../../src/core/chart/forms.ts';
import { grade } from '../../../src/core/grade.ts';
import { lostSentence } from '../../../src/core/report/sentences.ts';
import { placeLost } from '../../../src/core/grade/assign/place-lost.ts';
import { readReport } from '../../../src/core/take/schema.ts';
import { reportText } from '../../../src/core/report/text.ts';

const chart = readChartArgument('| A7 | % | % | E7 |');
if (!chart.ok) throw new Error(english(chart.problem));
/** A beat is half a second, a bar two, a chorus eight; the first downbeat comes at 2 s. */
const timeline = timelineFromTempo(chart.value, { bpm: 120, firstBeatSeconds: 2 });
const lost = [
  { atSeconds: 1, seconds: 0.01 },
  { atSeconds: 6.5, seconds: 0.023 },
  { atSeconds: 9.75, seconds: 0.4 },
  { atSeconds: 12.25, seconds: 0.02 },
];

describe('lost sound', () => {
  it('has its place in the form: count-in, bar under a chord that stands, chorus', () => {
    expect(placeLost(lost, timeline).map(({ beat, bar, chorus }) => [beat, bar, chorus])).toEqual([
      [-2, null, null],
      [9, 2, 0],
      [15.5, 3, 0],
      [20.5, 1, 1],
    ]);
  });

  it('is told with its length and its bars, each once, many as a number', () => {
    expect(lostSentence(undefined, en)).toBeNull();
    expect(lostSentence([], en)).toBeNull();
    expect(lostSentence(placeLost(lost, timeline), en)).toBe(
      'The browser lost 453 ms of sound, in the count-in, bar 3, bar 4 and bar 2 of chorus 2; ' +
        'what was played there is not in the report.',
    );
    const twice = [lost[1]!, { ...lost[1]!, atSeconds: 6.6 }];
    expect(lostSentence(placeLost(twice, timeline), en)).toMatch(/lost 46 ms of sound, in bar 3;/);
    const many = Array.from({ length: 9 }, (_, i) => ({ atSeconds: 2 + 2 * i, seconds: 0.01 }));
    expect(lostSentence(placeLost(many, timeline), en)).toMatch(/bar 1 of chorus 2 and 4 more bars;/);
  });

  it('stands in the report, its page and its schema; and not where none was lost', () => {
    const source = { kind: 'microphone', durationSeconds: 20, sampleRate: 48_000 } as const;
    const report = grade([], timeline, { source: { ...source, lost }, referenceHz: 440 });
    expect(report.source.lost).toEqual(placeLost(lost, timeline));
    expect(readReport(JSON.parse(JSON.stringify(report)))).toEqual({ ok: true, value: report });
    expect(reportText(report, en)).toMatch(/^Lost +The browser lost 453 ms/m);
    const whole = grade([], timeline, { source: { ...source, lost: [] }, referenceHz: 440 });
    expect(whole.source).toEqual(source);
    expect(reportText(whole, en)).not.toMatch(/^Lost/m);
  });
});
