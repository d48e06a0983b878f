/** Where a pitch comes to rest, and whether it stands, swings or glides. A frame lasts 16 ms; pitches in semitones. */
import { describe, expect, it } from 'vitest';
import { restOf, settledPart } from '../../../../src/core/listen/network/rest.ts';
import { standsFor, Talk, talkOf } from '../../../../src/core/listen/network/talk.ts';
import { vibratoOf } from '../../../../src/core/listen/network/vibrato.ts';

const still = (semitone: number, frames: number) => new Array<number>(frames).fill(semitone);
/** From one pitch to another in so many equal steps, both included. */
const glide = (from: number, to: number, steps: number) =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

describe('where a pitch comes to rest', () => {
  it('is its onset’s, where it was followed for fewer than three frames', () => {
    expect(restOf([31, 31], 30)).toBe(30);
    expect(restOf([31, 31, 31], 30)).toBe(31);
  });

  it('is the middle of its last two thirds; the attack and the last two frames aside', () => {
    expect(restOf([...still(31, 4), ...still(30, 8)], 30)).toBe(30);
    expect(restOf([...still(30, 10), 33, 33], 30)).toBe(30);
    // Of six frames, none is left out at the end; the first stays aside.
    expect(restOf([29, 30, 30, 31, 31, 31], 30)).toBe(31);
  });

  it('is where a bend arrives and stays', () => {
    const bend = [...still(30, 6), ...glide(30, 32, 8), ...still(32, 8)];
    expect(restOf(bend, 30)).toBe(32);
    expect(
      restOf(
        bend.map((pitch) => 60 - pitch),
        30,
      ),
    ).toBe(28);
  });

  it('is not where a bend hardly arrives', () => {
    // Four frames at the top: of thirty, the middle still lies below.
    const brief = [...still(30, 20), ...glide(30, 32, 8), ...still(32, 3)];
    expect(restOf(brief, 30)).toBeCloseTo(30, 1);
    // Six frames at the top of forty: less than a quarter of the note.
    expect(restOf([...still(30, 25), ...glide(30, 32, 8), ...still(32, 6)], 30)).toBeLessThan(31);
  });

  it('is not where a pitch leaps, or goes there and back', () => {
    // Twelve frames below, eight above: a leap is no bend, the middle of the later part counts.
    expect(restOf([...still(30, 14), ...still(33, 7)], 30)).toBe(30);
    const thereAndBack = [...glide(30, 31, 5), ...glide(31, 29.2, 9), ...glide(29.2, 31, 9), ...still(31, 6)];
    expect(restOf(thereAndBack, 30)).toBeLessThan(31);
  });

  it('is where a bend arrives that gives way by a little, not where it goes back by more than a third of the way', () => {
    const bend = (dip: number) => [
      ...still(30, 12),
      ...glide(30, 31.4, 5),
      ...glide(31.4, 31.4 - dip, 4),
      ...glide(31.4 - dip, 31.4, 4),
      ...still(31.4, 10),
    ];
    expect(restOf(bend(0.4), 30)).toBe(31.4);
    expect(restOf(bend(0.5), 30)).toBeLessThan(31.3);
  });

  it('is not a drift of half a semitone', () => {
    const drift = [...still(30, 12), ...glide(30, 30.5, 4), ...still(30.5, 6)];
    expect(restOf(drift, 30)).toBeLessThan(30.5);
  });

  it('leaves out the last two frames of a note longer than six', () => {
    expect(settledPart([1, 2, 3, 4, 5, 6])).toEqual([1, 2, 3, 4, 5, 6]);
    expect(settledPart([1, 2, 3, 4, 5, 6, 7])).toEqual([1, 2, 3, 4, 5]);
  });
});

describe('how long a pitch stands still', () => {
  it('is the longest stretch within 0.4 of a semitone', () => {
    expect(standsFor([30, 30.1, 30.3, 30.8, 31.4], 6)).toBe(3);
    expect(standsFor([30, 31, 31.1, 31.2, 31.3, 33], 6)).toBe(4);
    expect(standsFor([30, 31, 32], 6)).toBe(1);
    expect(standsFor([], 6)).toBe(0);
    expect(standsFor([30.3, 30, 29.8], 6)).toBe(2);
  });

  it('is not counted further than asked', () => {
    expect(standsFor(still(30, 20), 6)).toBe(6);
  });
});

describe('a syllable', () => {
  it('glides, and never stands for 96 ms', () => {
    expect(talkOf(glide(30, 33, 9), false)).toBe(1);
    expect(talkOf([...glide(30, 32, 4), ...still(32, 6)], false)).toBe(0);
    expect(talkOf([30, 31, 32], false)).toBe(1);
  });

  it('may be a short note that ended by itself; one that another cut off says nothing', () => {
    expect(talkOf(still(30, 4), false)).toBe(0.4);
    expect(talkOf([30, 31], false)).toBe(0.4);
    expect(talkOf(glide(30, 33, 9), true)).toBe(0);
  });
});

describe('talk', () => {
  it('is heard from the first syllable, or from the second after a note', () => {
    expect(new Talk().hears(1, 0.9)).toBe(true);
    const talk = new Talk();
    expect([talk.hears(0, 0.5), talk.hears(1, 0.9), talk.hears(1, 0.9)]).toEqual([false, false, true]);
  });

  it('lets a sure note that stands still count, and an unsure one only after other notes', () => {
    const among = (confidence: number, notesBefore: number) => {
      const talk = new Talk();
      for (let k = 0; k < 3; k++) talk.hears(1, 0.9);
      for (let k = 0; k < notesBefore; k++) talk.hears(0, 0.9);
      return talk.hears(0, confidence);
    };
    expect([among(0.84, 0), among(0.85, 0), among(0.5, 3)]).toEqual([true, false, false]);
  });
});

describe('vibrato', () => {
  /** A sine of so many hertz and so many cents to each side, over so many frames (62.5 a second). */
  const swing = (hz: number, cents: number, frames = 50) =>
    Array.from({ length: frames }, (_, i) => 30 + (cents / 100) * Math.sin((2 * Math.PI * hz * i) / 62.5));

  it('has its rate and its width', () => {
    const found = vibratoOf(swing(5.5, 30))!;
    expect(found.rateHz).toBeCloseTo(5.5, 0);
    // Nine tenths of the swing lie within 0.95 of its width.
    expect(found.depthCents).toBeGreaterThan(27);
    expect(found.depthCents).toBeLessThanOrEqual(30);
  });

  it('is from 12 to 150 cents wide, and from 3 to 10 a second', () => {
    expect(vibratoOf(swing(5.5, 10))).toBeNull();
    expect(vibratoOf(swing(5.5, 14))).not.toBeNull();
    expect(vibratoOf(swing(5.5, 145))).not.toBeNull();
    expect(vibratoOf(swing(5.5, 170))).toBeNull();
    expect(vibratoOf(swing(2.6, 30, 100))).toBeNull();
    expect(vibratoOf(swing(3.4, 30, 100))).not.toBeNull();
    expect(vibratoOf(swing(9.5, 30))).not.toBeNull();
    expect(vibratoOf(swing(11.5, 30))).toBeNull();
  });

  it('takes sixteen frames and four turns', () => {
    expect(vibratoOf(swing(9, 30, 16))).not.toBeNull();
    expect(vibratoOf(swing(9, 30, 15))).toBeNull();
    expect(vibratoOf(swing(5.5, 30, 20))).toBeNull();
    expect(vibratoOf(still(30, 30))).toBeNull();
  });
});
