/** How a take did by each aim. C7 and F7 take turns, a bar each; at 120 bpm a bar lasts two seconds. */
import { describe, expect, it } from 'vitest';
import type { Aim } from '../../../../src/core/grade/aims/aim.ts';
import { chooseNextAim } from '../../../../src/core/grade/aims/aim-results.ts';
import { AIM_LADDER } from '../../../../src/core/grade/aims/aims.ts';
import { gradeLine, TWELVE_BARS, type Played } from '../line.ts';

const roots = (changed: Partial<Aim> = {}): Aim => ({
  ...{ id: 'roots', events: 'landings', test: 'is one of', tones: ['root'] },
  ...{ shareToReach: 0.5, leastEvents: 2, againstLuck: false },
  ...changed,
});
/** A landing a bar: these pitches, one on each downbeat. */
const landings = (...pitches: readonly number[]) => pitches.map((midi, bar): Played => [4 * bar, 1, midi]);
const judged = (played: readonly Played[], aim: Aim, text = '| C7 | F7 |') => {
  const { verdict, missing, result } = gradeLine(text, played, { aims: [aim] }, 'C').aims[0]!;
  return [verdict, missing, `${result.hits}/${result.of}`];
};
const C = 60;
const E = 64;
const F = 65;
const A = 69;

describe('an aim of a teacher', () => {
  it('is reached at its share, where it need not be more than luck', () => {
    expect(judged(landings(C, A), roots())).toEqual(['reached', null, '1/2']);
    expect(judged(landings(C, A, E, A), roots())).toEqual(['not yet', 'share', '1/4']);
    // A third is as much as one in three, though neither is a whole number in binary.
    expect(judged(landings(C, A, E), roots({ shareToReach: 1 / 3 }))).toEqual(['reached', null, '1/3']);
  });

  it('takes as many events as it says', () => {
    expect(judged(landings(C), roots())).toEqual(['too short to tell', 'events', '1/1']);
    expect(judged(landings(C, F), roots())).toEqual(['reached', null, '2/2']);
    expect(judged(landings(C, F), roots({ leastEvents: 3 }))).toEqual(['too short to tell', 'events', '2/2']);
  });

  it('that must be more than luck stays open while the take is too short to tell', () => {
    expect(judged(landings(C, F), roots({ againstLuck: true }))).toEqual([
      'too short to tell',
      'luck',
      '2/2',
    ]);
    expect(judged(landings(C, A, E, A), roots({ againstLuck: true }))).toEqual([
      'too short to tell',
      'share',
      '1/4',
    ]);
  });

  it('that must be more than luck is not reached where the share is out of reach by now', () => {
    const missed = landings(
      ...Array.from({ length: 24 }, (_, bar) => (bar % 2 === 0 ? E + (bar % 3) : A + (bar % 5))),
    );
    expect(judged(missed, roots({ againstLuck: true, shareToReach: 0.9 })).slice(0, 2)).toEqual([
      'not yet',
      'share',
    ]);
  });

  it('is not asked where the chart has no such chord, or no such tone', () => {
    expect(judged(landings(C, F), roots({ over: ['II'] }))).toEqual(['not in this chart', null, '0/0']);
    expect(judged(landings(C, F), roots({ over: ['IV'] }))).toEqual(['too short to tell', 'events', '1/1']);
    expect(judged(landings(C, F), roots({ tones: ['third'] }), '| C5 | F5 |')[0]).toBe('not in this chart');
    const flatThirds = roots({ events: 'flat thirds', test: 'moves to', tones: ['b3'] });
    expect(judged(landings(C, F), flatThirds, '| Cm7 | Fm7 |')[0]).toBe('not in this chart');
    expect(judged(landings(C, F), flatThirds)[0]).toBe('too short to tell');
  });

  it('to keep off a tone shows nothing until the take uses that tone elsewhere, four times', () => {
    const off = roots({
      events: 'notes',
      over: ['IV'],
      test: 'is none of',
      tones: ['key 3'],
      shareToReach: 0.9,
    });
    const thirds = (count: number) => [
      ...Array.from({ length: count }, (_, i): Played => [i / 2, 0.5, E]),
      ...landings(C, F, C, F).slice(1),
    ];
    expect(judged(thirds(3), off).slice(0, 2)).toEqual(['too short to tell', 'use elsewhere']);
    expect(judged(thirds(4), off).slice(0, 2)).toEqual(['reached', null]);
  });
});

describe('the aims of a take', () => {
  // Asked within each test, so that a mutation run knows which test asks what.
  const aims = () => gradeLine(TWELVE_BARS, landings(E, A, E, E, A, A), { aims: [roots()] }, 'C').aims;
  const of = (id: string) => aims().find((aim) => aim.id === id)!;

  it('are those tried for, then the ladder, with all that the report tells of them', () => {
    expect(aims().map(({ id }) => id)).toEqual(['roots', ...AIM_LADDER.map(({ id }) => id)]);
    expect(aims().map(({ tried }) => tried)).toEqual([true, ...AIM_LADDER.map(() => false)]);
    expect(of('roots')).toMatchObject({
      ...{ own: null, events: 'landings', over: null, shareToReach: 0.5, leastEvents: 2, againstLuck: false },
    });
    expect(of('off-the-third-over-four')).toMatchObject({ over: ['IV7'], leastEvents: 5, againstLuck: true });
  });

  it('correct p for their number, but for those tried for and the headline’s own', () => {
    const corrected = aims().filter(
      ({ result: { tail, correctedTail } }) => tail !== null && correctedTail! > tail,
    );
    expect(corrected.length).toBeGreaterThan(0);
    for (const id of ['roots', 'third-on-arrival'])
      expect(of(id).result.correctedTail, id).toBe(of(id).result.tail);
    const none = aims().filter(({ result }) => result.of === 0);
    expect(none.length).toBeGreaterThan(0);
    for (const { result } of none) expect(result.correctedTail).toBeNull();
  });

  it('that a harder one has shown are covered by it', () => {
    // Twelve different lines in, every landing is a third: the third is heard over the I as well.
    const played = Array.from({ length: 24 }, (_, bar): readonly Played[] => {
      const root = [0, 5, 0, 0, 5, 5, 0, 0, 7, 7, 0, 0][bar % 12]!;
      return [
        [4 * bar, 1, 60 + ((root + 4) % 12)],
        [4 * bar + 1, 1, 60 + ((bar * 7 + 1) % 12)],
        [4 * bar + 2, 1, 60 + ((bar * 5 + 2) % 12)],
      ];
    }).flat();
    const results = gradeLine(TWELVE_BARS, played, {}, 'C').aims;
    const verdicts = new Map(results.map(({ id, verdict, coveredBy }) => [id, [verdict, coveredBy]]));
    expect(verdicts.get('third-on-arrival')).toEqual(['reached', null]);
    expect(verdicts.get('third-over-one')![1]).toBe('third-on-arrival');
    expect(verdicts.get('add-the-sixth')![1]).toBeNull();
    // A teacher's aim may be called by a word that every object knows.
    const own = { ...AIM_LADDER.find(({ id }) => id === 'third-on-arrival')!, id: 'constructor' };
    const named = { ...own, own: { name: 'Thirds', task: 'Land on thirds.' } };
    const [first] = gradeLine(TWELVE_BARS, played, { aims: [named] }, 'C').aims;
    expect([first?.id, first?.verdict, first?.coveredBy]).toEqual(['constructor', 'reached', null]);
  });
});

describe('the aim to take next', () => {
  const results = () =>
    gradeLine(TWELVE_BARS, landings(E, A), { aims: [roots({ id: 'mine', leastEvents: 9 })] }, 'C').aims;

  it('is the one tried for, while that is open', () => {
    expect(chooseNextAim(results())).toEqual({ id: 'mine' });
  });

  it('is the first rung that is open once that is reached, or is not in this chart', () => {
    const withMine = (verdict: 'reached' | 'not in this chart' | 'not yet') =>
      chooseNextAim(results().map((one) => (one.id === 'mine' ? { ...one, verdict } : one)));
    expect(withMine('reached')).toEqual({ id: 'third-over-one' });
    expect(withMine('not in this chart')).toEqual({ id: 'third-over-one' });
    expect(withMine('not yet')).toEqual({ id: 'mine' });
  });

  it('is none when all are reached', () => {
    expect(chooseNextAim(results().map((one) => ({ ...one, verdict: 'reached' as const })))).toBeNull();
    expect(chooseNextAim([])).toBeNull();
  });
});
