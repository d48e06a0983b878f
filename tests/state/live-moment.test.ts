import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../src/core/chart/parse-chart.ts';
import { cachingNextChange } from '../../src/state/live-moment.ts';

function timeline(text: string) {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return timelineFromTempo(chart.value, { bpm: 100 });
}

describe('a timeline that is asked at every frame', () => {
  it.each(['| A7 | D7 | A7 | A7 |', '| Bm7 E7 | Amaj7 | % | N.C. |', '| C7 |'])(
    'answers %s as the plain one does, forward and after a step back',
    (text) => {
      const plain = timeline(text);
      const kept = cachingNextChange(plain);
      const beats = Array.from({ length: 400 }, (_, frame) => -4 + frame / 8);
      for (const beat of [...beats, 0, 3.9, 4, 2, ...beats]) {
        expect(kept.nextChange(beat)).toEqual(plain.nextChange(beat));
      }
    },
  );

  it('looks once for each change', () => {
    let asked = 0;
    const plain = timeline('| A7 | D7 |');
    const kept = cachingNextChange({
      ...plain,
      nextChange: (beat) => {
        asked += 1;
        return plain.nextChange(beat);
      },
    });
    for (let frame = 0; frame < 960; frame += 1) kept.nextChange(frame / 60);
    expect(asked).toBe(4);
  });
});
