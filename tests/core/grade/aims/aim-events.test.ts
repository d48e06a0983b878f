/** What each kind of aim counts in a small take, by hand. C7 and F7 take turns, a bar each. */
import { describe, expect, it } from 'vitest';
import type { Aim } from '../../../../src/core/grade/aims/aim.ts';
import { gradeLine, type Played } from '../line.ts';

const aim = (changed: Partial<Aim>): Aim => ({
  ...{ id: 'own', events: 'notes', test: 'is one of', tones: ['third'] },
  ...{ shareToReach: 0.5, leastEvents: 1, againstLuck: false },
  ...changed,
});
/** Hits of events: "2/5". */
const counted = (played: readonly Played[], changed: Partial<Aim>, text = '| C7 | F7 |') => {
  const { hits, of } = gradeLine(text, played, { aims: [aim(changed)] }, 'C').aims[0]!.result;
  return `${hits}/${of}`;
};
/** Thirds on both downbeats, other tones between them. */
const LINE: readonly Played[] = [
  [0, 1, 64],
  [1, 1, 60],
  [2, 1, 62],
  [4, 1, 69],
  [5, 1, 72],
  [6, 1, 67],
  [9.5, 1, 64],
];

describe('an aim counts', () => {
  it('notes, over the chords that it is about', () => {
    expect(counted(LINE, {})).toBe('3/7');
    expect(counted(LINE, { over: ['IV'] })).toBe('1/3');
    expect(counted(LINE, { tones: ['root', 'third'] })).toBe('4/7');
    expect(counted(LINE, { test: 'is none of' })).toBe('4/7');
  });

  it('notes on strong beats: one and three', () => {
    expect(counted(LINE, { events: 'strong beats' })).toBe('2/4');
  });

  it('ends of phrases', () => {
    // A gap of a beat and more ends a phrase on D, on G and on E.
    expect(counted(LINE, { events: 'phrase ends' })).toBe('1/3');
  });

  it('landings', () => {
    expect(counted(LINE, { events: 'landings' })).toBe('2/2');
    expect(counted(LINE, { events: 'landings', tones: ['root'] })).toBe('0/2');
    expect(counted(LINE, { events: 'landings', over: ['IV'] })).toBe('1/1');
  });

  it('bars in which something is played, with one of the tones or with all', () => {
    expect(counted(LINE, { events: 'bars', test: 'has one of' })).toBe('3/3');
    expect(counted(LINE, { events: 'bars', test: 'has one of', tones: ['9'] })).toBe('2/3');
    expect(counted(LINE, { events: 'bars', test: 'has all of', tones: ['3', '9'] })).toBe('2/3');
    expect(counted(LINE, { events: 'bars', test: 'has all of', tones: ['3', '9'], over: ['I'] })).toBe('1/2');
    expect(counted(LINE, { events: 'bars', test: 'has all of', tones: ['3', '5'] })).toBe('1/3');
    // A note that runs ahead to the next bar counts there.
    expect(
      counted(
        [
          [0, 1, 60],
          [3.5, 1, 69],
        ],
        { events: 'bars', test: 'has one of' },
      ),
    ).toBe('1/2');
  });

  it('choruses', () => {
    expect(counted(LINE, { events: 'choruses', test: 'has one of', tones: ['9'] })).toBe('1/2');
  });

  it('moves of a b3', () => {
    const moves: readonly Played[] = [
      [0, 0.5, 63],
      [0.5, 1, 64],
      [2, 0.5, 63],
      [3, 0.5, 60],
      [4, 1, 69, { bendSemitones: 1 }],
    ];
    expect(counted(moves, { events: 'flat thirds', test: 'moves to' })).toBe('2/3');
    expect(counted(moves, { events: 'flat thirds', test: 'moves to', tones: ['root'] })).toBe('0/3');
    expect(counted(moves, { events: 'flat thirds', test: 'moves to', over: ['IV'] })).toBe('1/1');
  });

  it('changes into which a guide tone could step', () => {
    // Bb (b7 of C7) to A (3 of F7), then C to Bb: C is no guide tone.
    const steps: readonly Played[] = [
      [3, 1, 70],
      [4, 1, 69],
      [7, 1, 72],
      [8, 1, 70],
    ];
    const guide: Partial<Aim> = { events: 'changes', test: 'steps between', tones: ['guide tone'] };
    expect(counted(steps, guide)).toBe('1/2');
    // The first landing has no chord before it, nor has a landing without a note before it.
    expect(counted([[0, 1, 64]], guide)).toBe('0/0');
    // A power chord has no guide tone to step from, nor one to step to.
    expect(counted(steps, guide, '| C5 | F7 | C7 |')).toBe('0/1');
    expect(counted(steps, guide, '| C7 | F5 | C7 |')).toBe('0/0');
  });

  it('no chord that has none of its tones', () => {
    expect(counted(LINE, {}, '| C7sus4 | F7 |')).toBe('1/3');
    expect(counted(LINE, { events: 'landings' }, '| C5 | F7 |')).toBe('1/1');
    expect(counted(LINE, { events: 'bars', test: 'has one of' }, '| C5 | F7 |')).toBe('1/1');
  });

  it('no tone on the way to another, where it keeps off that tone', () => {
    // E passes between F and Eb over F7; then it stays.
    const passing: readonly Played[] = [
      [4, 0.5, 65],
      [4.5, 0.5, 64],
      [5, 1, 63],
      [6, 1, 64],
    ];
    expect(counted(passing, { test: 'is none of', tones: ['key 3'], over: ['IV'] })).toBe('2/3');
  });
});
