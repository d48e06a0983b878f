/**
 * D.C., D.S., Fine, coda: bars in the order they sound. The worked examples are those of any notation handbook (common
 * practice, from memory): repeats are not taken after a jump, and of two endings the second is; a coda is played only
 * when it is jumped to. tests/outside/roadmap.test.ts holds them against another program's reading.
 */
import { english } from '../../english.ts';
import { describe, expect, it } from 'vitest';
import { readChart } from '../../../src/core/chart/parse-chart.ts';
import { playedBars } from '../../../src/core/chart/play-order.ts';
import { practiceChart } from '../../../src/core/chart/practice-chart.ts';
import { writeChart } from '../../../src/core/chart/write-chart.ts';
import { chartOf } from './charts.ts';
import { roadmaps } from './roadmaps.ts';

const orderOf = (text: string) =>
  playedBars(chartOf(text))
    .map(({ bar }) => bar.chords[0]!.chord!.root)
    .join(' ');

describe('a roadmap', () => {
  it.each(roadmaps)('$name', ({ text, order }) => {
    expect(orderOf(text)).toBe(order);
    // Written out it reads back to the same chart.
    const chart = chartOf(text);
    expect(chartOf(writeChart(chart))).toEqual({ ...chart, keyWritten: false });
  });

  it('is played out where bars are practised', () => {
    const chart = chartOf('| C | D Fine | E | F D.C. al Fine |');
    const looped = practiceChart(chart, { loop: { fromBar: 3, toBar: 6 }, keys: null, seed: 1 });
    expect(playedBars(looped).map(({ bar }) => bar.chords[0]!.chord!.root)).toEqual(['E', 'F', 'C', 'D']);
  });

  it('says which jump leads nowhere', () => {
    const sentence = (text: string) => {
      const read = readChart(text);
      return 'problem' in read ? english(read.problem.problem) : 'read';
    };
    expect(sentence('| C | D D.S. |')).toMatch(/^Bar 2 says D\.S\., but there is no segno/);
    expect(sentence('| C | D D.C. al Fine |')).toMatch(/no Fine/);
    expect(sentence('| C | D D.C. al Coda |')).toMatch(/no bar goes there/);
    expect(sentence('| C To Coda | D |')).toMatch(/^Bar 1 goes to the coda, but there is none/);
    expect(sentence('D.C.\n| C | D |')).toMatch(/no bar stands before/);
    expect(sentence('| C | D |\nSegno')).toMatch(/no bar behind it/);
    expect(sentence('pickup: 1\n| G7 Fine | C |')).toMatch(/pickup/);
  });

  it('does not read two chords as a jump', () => {
    expect(orderOf('| D C | D |')).toBe('D D');
    expect(orderOf('| C | D |\n[Coda]\n| E |')).toBe('C D E');
  });
});
