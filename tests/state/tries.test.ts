/** Bars of a take are tried again: the loop, how often it goes round, and what holds when the trial is over. */
import { describe, expect, it } from 'vitest';
import { usualPractice } from '../../src/state/practice-settings.ts';
import { besideVerbs } from '../../src/ui/review/beside-verbs.ts';
import { notTried } from '../../src/state/tries.svelte.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { makeReview } from './by-command.ts';
import { RATE, world } from './world.ts';

/** Over | A7 | D7 | Bm7 | E7 | at 120: a note on each beat; D7 is met on C#, its major seventh. */
const melody = [73, 69, 64, 69, 61, 69, 74, 69, 62, 66, 71, 66, 68, 71, 74, 71];

async function played(settings: Parameters<typeof world>[0] = {}) {
  const w = await world({
    settings: {
      ownChart: '| A7 | D7 | Bm7 | E7 |',
      reference: 440,
      aim: 'thirds',
      choruses: 3,
      ...settings?.settings,
    },
  });
  await w.session.start();
  // A bar of count-in, then a beat each half second.
  const plucks = melody.map((midi, beat) => ({ atSeconds: 2 + beat / 2, midi, seconds: 0.4 }));
  await w.play(pluckLine(plucks, RATE, 11));
  await w.session.stop();
  return w;
}

describe('bars that are tried again', () => {
  it('go round with the same aim, and the try stands beside the take that they are from', async () => {
    const w = await played();
    const first = await makeReview(w);
    expect(notTried(first)).toBeNull();
    const { details, timeline } = first;
    const through = [{ fromBar: 0, tonic: 'A', mode: 'major' as const }];
    expect(notTried({ ...first, timeline: { ...timeline, keys: through as never } })).toBe('keys');
    expect(notTried({ ...first, details: { ...details, backing: { id: 'mine' } as never } })).toBe(
      'recording',
    );
    await w.session.again({ tryBars: { fromBar: 1, toBar: 2 } });
    expect(w.session.timeline?.bars).toBe(2);
    expect(w.session.timeline?.chart).toContain('A7');
    expect(w.setup.settings).toMatchObject({ aim: 'thirds', choruses: 4 });
    const plucks = [73, 69, 64, 69, 66, 69, 74, 69].map((midi, beat) => ({
      atSeconds: 2 + beat / 2,
      midi,
      seconds: 0.4,
    }));
    await w.play(pluckLine(plucks, RATE, 7));
    await w.session.stop();
    const tried = await makeReview(w);
    expect(tried.details).toMatchObject({ aim: 'thirds' });
    expect(tried.report.landings.slice(0, 2).map(({ chord, role }) => [chord, role])).toEqual([
      ['A7', 'third'],
      ['D7', 'third'],
    ]);
    expect(w.tries.tried?.first.report).toEqual(first.report);
    expect(w.tries.tried?.bars).toEqual({ fromBar: 1, toBar: 2 });
    // Either is heard from the page of the try: the bars of the first take, and the whole try.
    const { firstPlayback, playback } = w.session;
    const verbs = besideVerbs(w.tries.tried!, { first: firstPlayback!, now: playback! });
    const [firstPlayer, nowPlayer] = [w.players.at(-1)!, w.players.at(-2)!];
    verbs.hear('now');
    await w.settle();
    expect(verbs.hearing).toBe('now');
    expect(nowPlayer.orders.at(-1)?.passage).toMatchObject({ fromSeconds: 0, loops: false });
    verbs.hear('first');
    await w.settle();
    expect(verbs.hearing).toBe('first');
    // A bar of count-in of 2 s, then two bars of 2 s.
    expect(firstPlayer.orders.at(-1)?.passage?.fromSeconds).toBeCloseTo(2, 2);
    expect(firstPlayer.orders.at(-1)?.passage?.toSeconds).toBeCloseTo(6, 2);
    verbs.hear('first');
    expect(verbs.hearing).toBeNull();

    // Again: the same bars. The whole form: as it was before.
    await w.session.again();
    expect(w.session.timeline?.bars).toBe(2);
    w.session.close();
    expect(w.setup.settings).toMatchObject({ choruses: 3, practice: { loop: null } });
    expect(w.tries.tried).toBeNull();
  });

  it('are not remembered as the player’s own set-up', async () => {
    const w = await played();
    await makeReview(w);
    await w.session.again({ tryBars: { fromBar: 2, toBar: 2 } });
    w.setup.setBpm(90);
    expect(w.settings.saved.at(-1)).toMatchObject({ bpm: 90, choruses: 3, practice: { loop: null } });
    await w.session.stop();
    expect(w.setup.settings).toMatchObject({ bpm: 90, choruses: 3, practice: { loop: null } });
  });

  it('of a take that was a loop are counted from the loop’s first bar', async () => {
    const practice = { ...usualPractice.practice, loop: { fromBar: 2, toBar: 4 } };
    const w = await played({ settings: { practice } });
    await makeReview(w);
    await w.session.again({ tryBars: { fromBar: 1, toBar: 2 } });
    expect(w.setup.settings.practice.loop).toEqual({ fromBar: 2, toBar: 3 });
    await w.session.stop();
    expect(w.setup.settings.practice.loop).toEqual({ fromBar: 2, toBar: 4 });
  });
});
