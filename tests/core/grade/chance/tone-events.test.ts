/**
 * What luck may draw where a note could have been taken otherwise: an early note goes to the new chord only if it fits, so
 * that luck has a second go. F7 (F A C Eb) arrives at beat 4.
 */
import { describe, expect, it } from 'vitest';
import { landingEvent, noteEvent, type Wanted } from '../../../../src/core/grade/chance/tone-events.ts';
import { findChanges } from '../../../../src/core/grade/landings/landings.ts';
import { toneMask } from '../../../../src/core/grade/assign/tone-sets.ts';
import { gradedOver } from '../graded.ts';
import { chart, type Played } from '../line.ts';

const CHART = '| C7 | F7 |';
const C = 0;
const D = 2;
const E = 4;
const G = 7;
const A = 9;
const NONE = -1;
const thirds: Wanted = (chord) => toneMask(chord, 'thirds');

function landingOf(played: readonly Played[], index: number) {
  const notes = gradedOver(CHART, played);
  const change = findChanges(chart(CHART), notes)[1]!;
  const event = landingEvent(change, notes[index]!, notes);
  expect(event.chord.symbol).toBe('F7');
  return event.eventFor(thirds);
}

describe('a landing', () => {
  it('counts by its own tone where no other note could have been it', () => {
    const landing = landingOf(
      [
        [0, 1, 60],
        [4, 1, 69],
      ],
      1,
    );
    expect(landing).toMatchObject({ figure: '0 9', hit: true, hasEarlier: false, hasLater: false });
    expect([landing.counts(A, NONE, NONE), landing.counts(C, A, A)]).toEqual([true, false]);
  });

  it('would have been the early note before it, had that one fitted', () => {
    const landing = landingOf(
      [
        [3.5, 1, 62],
        [4.5, 1, 69],
      ],
      1,
    );
    expect(landing).toMatchObject({ hit: true, hasEarlier: true, hasLater: false });
    expect(landing.counts(A, NONE, D)).toBe(true);
    expect(landing.counts(C, NONE, D)).toBe(false);
    expect(landing.counts(A, NONE, C)).toBe(false);
    expect(landing.counts(C, NONE, A)).toBe(true);
  });

  it('would have been the note after it, had it come early and not fitted', () => {
    const landing = landingOf(
      [
        [3.5, 0.9, 69],
        [4.5, 1, 60],
      ],
      0,
    );
    expect(landing).toMatchObject({ hit: true, hasEarlier: false, hasLater: true });
    expect(landing.counts(A, NONE, NONE)).toBe(true);
    expect(landing.counts(D, A, NONE)).toBe(true);
    expect(landing.counts(D, C, NONE)).toBe(false);
    expect(landing.counts(C, A, NONE)).toBe(false);
  });

  it('that is early and alone has no second go', () => {
    expect(
      landingOf(
        [
          [0, 1, 60],
          [3.5, 1, 69],
        ],
        1,
      ),
    ).toMatchObject({ hasEarlier: false, hasLater: false });
  });

  it('held across the change counts by its own tone', () => {
    const landing = landingOf([[0, 6, 60]], 0);
    expect(landing).toMatchObject({ hit: false, hasEarlier: false, hasLater: false });
    expect([landing.counts(A, NONE, NONE), landing.counts(C, A, NONE)]).toEqual([true, false]);
  });
});

describe('a note', () => {
  const eventOf = (played: Played) => {
    const notes = gradedOver(CHART, [played]);
    return noteEvent(notes[0]!, notes[0]!.chord!, notes).eventFor(thirds);
  };

  it('counts over its chord', () => {
    const event = eventOf([1, 1, 64]);
    expect(event).toMatchObject({ figure: '4', hit: true, hasEarlier: false, hasLater: false });
    expect([E, A, C].map((drawn) => event.counts(drawn, NONE, NONE))).toEqual([true, false, false]);
  });

  it('that is early goes to the new chord where it fits, else to the old', () => {
    const event = eventOf([3.5, 1, 64]);
    expect(event.hit).toBe(true);
    expect([A, E, C, G].map((drawn) => event.counts(drawn, NONE, NONE))).toEqual([true, true, false, false]);
  });

  it('that is early for the first chord has no old one to go to', () => {
    const event = eventOf([-0.5, 1, 64]);
    expect([E, D, A].map((drawn) => event.counts(drawn, NONE, NONE))).toEqual([true, false, false]);
  });
});
