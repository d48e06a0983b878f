/** What a take answers to the aim in hand: the words of a player, without the statistics. */
import { NOTHING } from '../../../src/core/grade/chance/shares.ts';
import { describe, expect, it } from 'vitest';
import { aimAnswer } from '../../../src/core/report/aim-sentences.ts';
import type { AimResult } from '../../../src/core/take/schema.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';

const result = (hits: number, of: number, moreChoruses: number | null = null): AimResult['result'] => ({
  ...NOTHING,
  hits,
  of,
  share: of === 0 ? null : hits / of,
  moreChoruses,
});
const aim = (change: Partial<AimResult>): AimResult => ({
  id: 'thirds',
  own: null,
  tried: true,
  verdict: 'not yet',
  events: 'landings',
  over: null,
  shareToReach: 0.5,
  leastEvents: 5,
  againstLuck: true,
  result: result(3, 9),
  coveredBy: null,
  missing: 'share',
  ...change,
});

describe('aimAnswer', () => {
  it('says what was reached, and how many would do', () => {
    expect(aimAnswer(aim({ verdict: 'reached', missing: null, result: result(7, 9) }), en)).toBe(
      'You did it: 7 of 9 landings.',
    );
    expect(aimAnswer(aim({}), en)).toBe('Not yet: 3 of 9 landings; 5 would be enough.');
    expect(aimAnswer(aim({ missing: 'luck', result: result(5, 9) }), en)).toBe(
      '5 of 9 landings, but luck may give as many.',
    );
  });

  it('after a short take one more chorus will tell; many are not counted out', () => {
    const short = (more: number | null) =>
      aimAnswer(aim({ verdict: 'too short to tell', missing: 'events', result: result(2, 3, more) }), en);
    expect(short(null)).toBe('2 of 3 landings so far. One more chorus will tell.');
    expect(short(1)).toBe('2 of 3 landings so far. One more chorus will tell.');
    expect(short(3)).toBe('2 of 3 landings so far. 3 more choruses will tell.');
    expect(short(16)).toBe('2 of 3 landings so far. A longer take will tell.');
  });

  it('says it where the chart or the take has none of it', () => {
    expect(aimAnswer(aim({ verdict: 'not in this chart', missing: null, over: ['IV7'] }), en)).toBe(
      'The chart has no IV7.',
    );
    expect(aimAnswer(aim({ result: result(0, 0), missing: 'events' }), en)).toBe('No landings in this take.');
  });

  it('never tells a p value, an interval or a share in per cent', () => {
    for (const words of [en, de])
      for (const missing of ['share', 'luck', 'events', null] as const)
        for (const verdict of ['reached', 'not yet', 'too short to tell'] as const)
          expect(aimAnswer(aim({ missing, verdict }), words)).not.toMatch(/%|\bp [=<]|interval/i);
    expect(aimAnswer(aim({}), de)).toBe('Noch nicht: 3 von 9 Landungen; 5 würden reichen.');
  });
});
