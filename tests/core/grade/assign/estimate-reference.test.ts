import { describe, expect, it } from 'vitest';
import { estimateReference, type TuningNote } from '../../../../src/core/grade/assign/estimate-reference.ts';

/** Numbers from 0 to 1 that repeat by seed (mulberry32, public domain). */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const note = (midi: number, change: Partial<TuningNote> = {}): TuningNote => ({
  onsetSeconds: 0,
  offsetSeconds: 0.3,
  midi,
  confidence: 1,
  bendSemitones: 0,
  vibrato: null,
  ...change,
});

/** A line off the standard by `cents`, each note within `spread` of its place. */
function line(cents: number, count: number, spread: number, seed: number): readonly TuningNote[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () =>
    note(45 + Math.floor(random() * 30) + (cents + (random() * 2 - 1) * spread) / 100),
  );
}

/** Cents apart on the circle of a semitone. */
const apart = (a: number, b: number) => Math.abs(((((a - b + 50) % 100) + 100) % 100) - 50);

describe('the reference of a line', () => {
  it.each([-50, -32, -7, 0, 8, 25, 49])('finds a player who is %i cents off', (cents) => {
    for (let seed = 1; seed <= 20; seed++) {
      const estimate = estimateReference(line(cents, 60, 10, seed));
      expect(apart(estimate.medianCents, cents)).toBeLessThan(5);
      expect(estimate.evidence).toBe('enough');
      expect(estimate.events).toBe(60);
    }
  });

  it('is not drawn aside by bends, vibrato, blue notes and clicks', () => {
    const steady = line(-32, 30, 4, 3);
    const bent = Array.from({ length: 40 }, (_, k) => note(60 + 0.2 + (k % 5) / 10, { bendSemitones: 1.5 }));
    const shaken = Array.from({ length: 40 }, () => note(64.1, { vibrato: { rateHz: 5, depthCents: 40 } }));
    const clicks = Array.from({ length: 40 }, () => note(64.3, { offsetSeconds: 0.03 }));
    const blue = Array.from({ length: 8 }, () => note(63.1));
    const estimate = estimateReference([...steady, ...bent, ...shaken, ...clicks, ...blue]);
    expect(apart(estimate.medianCents, -32)).toBeLessThan(2);
    expect(estimate.events).toBe(38);
    expect(estimate.referenceHz).toBeCloseTo(431.94, 0);
  });

  it('calls a few notes, and notes that agree on nothing, thin', () => {
    expect(estimateReference([])).toEqual({ referenceHz: 440, medianCents: 0, evidence: 'thin', events: 0 });
    expect(estimateReference(line(-32, 5, 2, 1)).evidence).toBe('thin');
    const strewn = Array.from({ length: 40 }, (_, k) => note(60 + k * 1.025));
    expect(estimateReference(strewn).evidence).toBe('thin');
  });

  it('can be centred elsewhere: early music round 415', () => {
    const estimate = estimateReference(line(-101.27 + 6, 40, 4, 9), 415);
    expect(estimate.referenceHz).toBeCloseTo(415 * 2 ** (6 / 1200), 0);
    expect(Math.abs(estimate.medianCents - 6)).toBeLessThan(2);
  });

  it('asks steady notes alone: from a tenth of a second on, hardly bent, hardly shaken, and heard', () => {
    const asked = (change: Partial<TuningNote>) => estimateReference([note(60, change)]).events;
    expect(asked({ onsetSeconds: 0, offsetSeconds: 0.1 })).toBe(1);
    expect(asked({ onsetSeconds: 5, offsetSeconds: 5.09 })).toBe(0);
    expect(asked({ bendSemitones: 0.25 })).toBe(1);
    expect(asked({ bendSemitones: -0.3 })).toBe(0);
    expect(asked({ vibrato: { rateHz: 5, depthCents: 15 } })).toBe(1);
    expect(asked({ vibrato: { rateHz: 5, depthCents: 16 } })).toBe(0);
    expect(asked({ confidence: 0 })).toBe(0);
    expect(asked({ midi: Number.NaN })).toBe(0);
  });

  const many = (count: number, cents: number, change: Partial<TuningNote> = {}) =>
    Array.from({ length: count }, () => note(60 + cents / 100, change));
  const half = { offsetSeconds: 0.5 };

  it('weighs notes by their length and by how sure they are', () => {
    const long = many(6, 0, half);
    const medianOf = (others: readonly TuningNote[]) => estimateReference([...others, ...long]).medianCents;
    expect(medianOf(many(20, 30, { offsetSeconds: 0.1 }))).toBeCloseTo(0, 9);
    expect(medianOf(many(20, 30, { ...half, confidence: 0.1 }))).toBeCloseTo(0, 9);
    expect(medianOf(many(20, 30, half))).toBeCloseTo(30, 9);
    // A held note weighs no more than half a second, wherever in the take it lies.
    expect(medianOf(many(5, 30, { onsetSeconds: 9, offsetSeconds: 39 }))).toBeCloseTo(0, 9);
  });

  it('is the middle of the crowd, not its peak; of two middle notes the lower', () => {
    expect(estimateReference([...many(7, -4, half), ...many(6, 8, half)]).medianCents).toBeCloseTo(-4, 9);
    expect(estimateReference([...many(6, 8, half), ...many(6, -4, half)]).medianCents).toBeCloseTo(-4, 9);
    // However little the notes weigh together.
    expect(estimateReference(many(12, 30, { offsetSeconds: 0.1, confidence: 0.5 })).medianCents).toBeCloseTo(
      30,
      9,
    );
  });

  it('takes twelve notes to speak', () => {
    expect(estimateReference(many(12, 5)).evidence).toBe('enough');
    expect(estimateReference(many(11, 5)).evidence).toBe('thin');
  });

  it('is counted from where the search was centred', () => {
    expect(estimateReference([], 415)).toEqual({
      referenceHz: 415,
      medianCents: 0,
      evidence: 'thin',
      events: 0,
    });
    // 431 Hz lies 35.76 cents under 440: a player there is 0 cents from that centre.
    const there = estimateReference(many(20, -35.76), 431);
    expect(there.medianCents).toBeCloseTo(0, 1);
    expect(there.referenceHz).toBeCloseTo(431, 1);
  });
});
