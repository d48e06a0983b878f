/** A share beside its chance, worked out by hand. */
import { describe, expect, it } from 'vitest';
import { askShare, eventShares, NOTHING, NOTHING_ASKED } from '../../../../src/core/grade/chance/shares.ts';
import type { LuckEvent } from '../../../../src/core/grade/chance/draws.ts';
import { noteEvent } from '../../../../src/core/grade/chance/tone-events.ts';
import { gradedOver } from '../graded.ts';
import type { Played } from '../line.ts';

const coin = (figure: string, hit: boolean): LuckEvent => ({ figure, hit, chance: 0.5 });

describe('a share', () => {
  it('has its hits, its doubt, and the chance that luck gives', () => {
    const events = [true, true, true, false].map((hit, i) => coin(String(i), hit));
    const { share, question, lower } = askShare(events, [], 0.9, 1);
    expect(share).toMatchObject({
      ...{ hits: 3, of: 4, share: 0.75, chance: 0.5, expected: 2, fairExpected: 2, chanceBy: 'own notes' },
      ...{ verdict: 'too short to tell' },
    });
    // Three or four heads of four: 5/16; three or fewer: 15/16.
    expect([share.tail, share.fairTail, share.correctedTail]).toEqual(
      [1, 2, 3].map(() => expect.closeTo(5 / 16, 12) as number),
    );
    expect(lower).toBeCloseTo(15 / 16, 12);
    // Wilson's interval of 3 in 4, by his formula.
    expect(share.low).toBeCloseTo(0.301, 3);
    expect(share.high).toBeCloseTo(0.954, 3);
    expect(question).toMatchObject({ events: 4, chance: 0.5, choruses: 1 });
    expect(share.moreChoruses).toBeGreaterThan(0);
  });

  it('is more than luck where all of five coins fall right', () => {
    const events = Array.from({ length: 5 }, (_, i) => coin(String(i), true));
    expect(askShare(events, [], 0.9, 1).share.verdict).toBe('above chance');
    // The same figure five times is one draw.
    expect(
      askShare(
        events.map((event) => ({ ...event, figure: 'a' })),
        [],
        0.9,
        1,
      ).share.verdict,
    ).toBe('too short to tell');
  });

  it('is nothing without events', () => {
    expect(askShare([], [], 0.9, 1)).toBe(NOTHING_ASKED);
    expect(NOTHING_ASKED).toEqual({ share: NOTHING, question: null, lower: null });
    expect(NOTHING).toMatchObject({ hits: 0, of: 0, share: null, verdict: 'too short to tell' });
  });
});

describe('the shares of notes', () => {
  const shares = (text: string, played: readonly Played[]) => {
    const notes = gradedOver(text, played, 'C');
    return eventShares(
      notes.map((note) => noteEvent(note, note.chord!, notes)),
      notes,
      { thirds: 0.5, guideTones: 0.6, chordTones: 0.9 },
      1,
    );
  };

  it('count thirds, guide tones and chord tones', () => {
    const { thirds, guideTones, chordTones } = shares('| C7 |', [
      [0, 1, 64],
      [1, 1, 70],
      [2, 1, 67],
      [3, 1, 62],
    ]);
    expect([thirds, guideTones, chordTones].map(({ share }) => share.hits)).toEqual([1, 2, 3]);
    // A quarter of the player's own notes are E, half E or Bb, three quarters tones of C7.
    expect([thirds, guideTones, chordTones].map(({ share }) => share.chance)).toEqual(
      [0.25, 0.5, 0.75].map((chance) => expect.closeTo(chance, 12) as number),
    );
  });

  it('leave out chords that have no such tone', () => {
    const { thirds, guideTones } = shares('| C7sus4 | F7 |', [
      [0, 1, 65],
      [4, 1, 69],
    ]);
    expect([thirds.share.of, guideTones.share.of]).toEqual([1, 2]);
  });
});
