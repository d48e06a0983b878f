import { describe, expect, it } from 'vitest';
import { dayOf, formOf, practisedTakes } from '../../src/state/practised-takes.ts';
import type { TakeCard } from '../../src/state/take.ts';

const card = (change: Partial<TakeCard>): TakeCard => ({
  id: 'one',
  title: '12-bar blues in Bb',
  key: 'Bb',
  startedAt: new Date(2026, 2, 1, 23, 30).toISOString(),
  source: 'microphone',
  chartText: '| Bb7 |',
  bpm: 100,
  feel: 'swing',
  swing: 0.6,
  reference: 440,
  sampleRate: 44_100,
  firstBeatSeconds: 0,
  durationSeconds: 60,
  summary: {
    notes: 1,
    chordToneShare: 1,
    thirdShare: 1,
    landings: { count: 1, open: 0, chordTones: 1, thirds: 1 },
    counts: { aim: null, changes: [], choruses: [] },
  },
  ...change,
});

describe('kept takes as the page over days counts them', () => {
  it('gathers a form over its keys, and leaves the title of a chart as it is', () => {
    expect(formOf(card({}))).toBe('12-bar blues');
    expect(formOf(card({ title: 'Late in the day' }))).toBe('Late in the day');
  });

  it('counts days as the player’s calendar does: midnight parts them, not the day of London', () => {
    const late = new Date(2026, 2, 1, 23, 59);
    expect(dayOf(new Date(2026, 2, 2, 0, 1)) - dayOf(late)).toBe(1);
    expect(dayOf(late) - dayOf(new Date(2026, 2, 1, 0, 1))).toBe(0);
  });

  it('leaves out what is not graded, and what was graded before there were counts', () => {
    const { counts: _, ...before } = card({}).summary!;
    const takes = [card({}), card({ id: 'two', summary: null }), card({ id: 'three', summary: before })];
    expect(practisedTakes(takes).map(({ id }) => id)).toEqual(['one']);
  });
});
