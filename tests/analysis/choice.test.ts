import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { gradeHeard } from '../../src/core/grade-samples.ts';
import { choiceOf, type GradeOrder } from '../../src/core/grade-order.ts';
import { line } from '../core/grade/line.ts';

const order: GradeOrder = {
  chartText: '| C7 | F7 |',
  bpm: 120,
  swing: 0.5,
  firstBeatSeconds: 0,
  reference: 440,
  source: 'microphone',
};

describe('what the player chose', () => {
  it('says where the advised note lies, and which aim was tried for', () => {
    const played = line([
      [0, 1, 64],
      [4, 2, 70],
      [8, 1, 64],
    ]);
    const report = gradeHeard(
      played,
      { samples: { length: 48000 * 6 }, sampleRate: 48000 },
      {
        ...order,
        instrument: 'guitar',
        aim: 'third-on-arrival',
      },
    );
    if (!report.ok) throw new Error(english(report.problem));
    expect(report.value.settings.instrument).toBe('Guitar');
    expect(report.value.advice[0]!.where).toMatchObject({ kind: 'neck' });
    expect(report.value.aims.filter(({ tried }) => tried).map(({ id }) => id)).toEqual(['third-on-arrival']);
  });

  it('takes the capo where the instrument has frets for it', () => {
    expect(choiceOf({ ...order, instrument: 'guitar', capo: 3 }).instrument?.neck?.capo).toBe(3);
    expect(choiceOf({ ...order, instrument: 'guitar', capo: 99 }).instrument?.neck?.capo).toBe(0);
    expect(choiceOf({ ...order, instrument: 'flute', capo: 3 }).instrument?.name).toBe('Flute');
  });

  it('leaves out what is no longer there', () => {
    expect(choiceOf({ ...order, instrument: 'a lute of before', aim: 'an aim of before' })).toEqual({
      aims: [],
    });
  });
});
