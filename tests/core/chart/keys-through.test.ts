/** A chart that changes its key on the way: a form through the keys, a modulation. Facts of keys: common practice. */
import { english } from '../../english.ts';
import { en } from '../../../src/core/words/en.ts';
import { describe, expect, it } from 'vitest';
import { timelineAsRead } from '../../../src/core/chart/as-read.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { chordKeys, keyAt } from '../../../src/core/chart/keys-through.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { practiceChart } from '../../../src/core/chart/practice-chart.ts';
import { transposeChart } from '../../../src/core/chart/transpose-chart.ts';
import { writeChart } from '../../../src/core/chart/write-chart.ts';
import { grade } from '../../../src/core/grade.ts';
import { instrumentOf } from '../../../src/core/music/instruments.ts';
import { parseKey } from '../../../src/core/music/keys.ts';
import { readingOf } from '../../../src/core/music/reading.ts';
import { explainBar } from '../../../src/core/report/explain.ts';
import { line } from '../grade/line.ts';

const chartOf = (text: string) => {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return chart.value;
};
const bluesInFourths = practiceChart(chartOf('key: C\n| C7 | F7 | G7 | C7 |'), {
  loop: null,
  keys: 'fourths',
  seed: 1,
});
const through = timelineFromTempo(bluesInFourths, { bpm: 120 });
describe('a chart that changes its key on the way', () => {
  it('is written and read back with its keys', () => {
    const chart = chartOf('key: Eb\n| Eb7 | Ab7 |\nkey: F\n| F7 | Bb7 |\n[C]\nkey: D minor\n| Dm7 | A7 |');
    expect(chart.sections.map(({ key }) => key?.tonic)).toEqual([undefined, 'F', 'D']);
    expect(chart.sections[2]?.key?.mode).toBe('minor');
    expect(chartOf(writeChart(chart))).toEqual(chart);
    const moved = transposeChart(chart, parseKey('Bb')!);
    expect([moved.key.tonic, ...moved.sections.slice(1).map(({ key }) => key?.tonic)]).toEqual([
      'Bb',
      'C',
      'A',
    ]);
  });

  it('says where it holds no bars, or no key', () => {
    for (const [text, word] of [
      ['| C7 |\nkey: F', 'no bars'],
      ['| C7 |\nkey: H\n| F7 |', 'is not a key'],
      ['| C7 |\nmeter: 3/4\n| F7 |', 'only feel and key'],
    ] as const) {
      const read = parseChart(text);
      expect(read.ok ? '' : english(read.problem)).toContain(word);
    }
  });

  it('has a key at each beat, round after round, and for each of its chords', () => {
    const tonics = Array.from({ length: 14 }, (_, chorus) => keyAt(through, 16 * chorus).tonic);
    expect(tonics.slice(0, 3)).toEqual(['C', 'F', 'Bb']);
    expect(tonics.slice(12)).toEqual(['C', 'F']);
    expect(keyAt(through, -1).tonic).toBe('C');
    expect(keyAt(through, 15.99).tonic).toBe('C');
    // F7 is the IV in C and the I in F.
    const keyOf = chordKeys(through);
    expect(keyOf(through.chordAt(4)!).tonic).toBe('C');
    expect(keyOf(through.chordAt(16)!).tonic).toBe('F');
    expect(through.chordAt(4)?.symbol).toBe(through.chordAt(16)?.symbol);
  });

  it('is read a transposition away key by key', () => {
    const alto = instrumentOf('alto-sax');
    const read = timelineAsRead(through, readingOf(alto, 'written'));
    expect([0, 16, 32].map((beat) => keyAt(read, beat).tonic)).toEqual(['A', 'D', 'G']);
  });

  it('is graded by the key of the chorus: degrees, colour, the IV', () => {
    // In C over C7: A (6 of the key, in its major pentatonic). A chorus later, in F over F7: D, and A over Bb7.
    const played = line(
      [
        [1, 0.4, 69],
        [9, 0.4, 74],
        [10, 0.4, 69],
      ],
      60,
    );
    const report = grade(played, through, {
      source: { kind: 'notes', durationSeconds: 16, sampleRate: null },
      referenceHz: 440,
    });
    expect(report.notes.map(({ chord, keyDegree, role }) => [chord, keyDegree, role])).toEqual([
      ['C7', '6', 'colour'],
      ['F7', '6', 'colour'],
      ['Bb7', '3', 'colour'],
    ]);
    expect(report.palette.overall.majorOnly).toBe(1);
    // A over Bb7 is the third of F over its IV.
    expect(report.palette.thirdOverFour.notes).toEqual([2]);
    expect(report.timeline.keys?.slice(0, 2)).toEqual([
      { fromBar: 0, tonic: 'C', mode: 'major' },
      { fromBar: 4, tonic: 'F', mode: 'major' },
    ]);
    expect(explainBar(report, 5, null, en)?.join(' ')).toContain('6 of F major');
  });

  it('a chart in one key says nothing of keys', () => {
    const plain = timelineFromTempo(chartOf('key: C\n| C7 | F7 |'), { bpm: 120 });
    expect(plain.keys).toBeUndefined();
    expect(keyAt(plain, 4)).toBe(plain.key);
  });
});
