/** Two tones whose frequencies are known by construction (equal temperament, ISO 16:1975). */
import { describe, expect, it } from 'vitest';
import { listen, Listener } from '../../../../src/core/listen.ts';
import { hearPair } from '../../../../src/core/listen/measure/second.ts';
import type { HeardNote } from '../../../../src/core/take/note.ts';
import { hzOf, plucked, seededNoise, sum } from '../sounds.ts';

const rate = 48000;
const seconds = 0.8;
const keep = (gain: number, sound: Float32Array) => sound.map((x) => gain * x);

/** Plucked together half a second in; the first at full level, the others at their gains. */
function struck(first: number, ...others: readonly (readonly [midi: number, gain: number])[]): Float32Array {
  return sum(
    1.6,
    rate,
    [[first, 1] as const, ...others].map(([midi, gain]) => ({
      at: 0.5,
      sound: keep(gain, plucked(hzOf(midi), seconds, rate)),
    })),
    seededNoise(1.6, rate, 1e-4),
  );
}

/** Main note and second of the one note heard, to whole semitones. */
function pairIn(samples: Float32Array): readonly (number | null)[] {
  const notes = listen(samples, rate);
  expect(notes.length).toBe(1);
  const { midi, second } = notes[0]!;
  return [Math.round(midi), second === null ? null : Math.round(second)];
}

const intervals: readonly (readonly [string, number])[] = [
  ['minor third', 3],
  ['major third', 4],
  ['fourth', 5],
  ['fifth', 7],
  ['minor sixth', 8],
  ['major sixth', 9],
];

describe('a second note', () => {
  it.each(intervals)('is heard a %s under the louder one', (_, semitones) => {
    // Which of the two the line takes is not held here: with a major sixth the network takes the lower one at times.
    for (const upper of [57, 64, 71])
      expect(pairIn(struck(upper, [upper - semitones, 0.5]))?.toSorted()).toEqual([upper - semitones, upper]);
  });

  // A major sixth over a louder note is still heard as the note both have in common.
  it.each(intervals.slice(0, -1))('is heard a %s over the louder one', (_, semitones) => {
    expect(pairIn(struck(60, [60 + semitones, 0.35]))).toEqual([60, 60 + semitones]);
  });

  it.each(intervals)('is in tune, a %s away', (_, semitones) => {
    const [note] = listen(struck(67, [67 - semitones, 0.6]), rate);
    const [lower, upper] = [note!.midi, note!.second!].toSorted((a, b) => a - b);
    expect(Math.abs(lower! - (67 - semitones))).toBeLessThan(0.05);
    expect(Math.abs(upper! - 67)).toBeLessThan(0.05);
  });

  it.each([12, 19, 24])(
    'is never told %i semitones away: the main note has all its harmonics',
    (semitones) => {
      for (const upper of [64, 72])
        expect(listen(struck(upper, [upper - semitones, 0.4]), rate)[0]!.second).toBeNull();
      expect(listen(struck(52, [52 + semitones, 0.4]), rate)[0]!.second).toBeNull();
    },
  );

  it('is none in a single note, anywhere on the neck', () => {
    for (let midi = 40; midi <= 86; midi++)
      for (const note of listen(struck(midi), rate)) expect(note.second).toBeNull();
  });

  it('is none when it is 20 dB down, or one of a chord of four', () => {
    expect(listen(struck(64, [60, 0.1]), rate)[0]!.second).toBeNull();
    const chord = listen(struck(64, [60, 0.9], [55, 0.9], [46, 0.9], [51, 0.9]), rate);
    for (const note of chord) expect(note.second).toBeNull();
  });

  it('may be the note before, ringing on', () => {
    const samples = sum(
      2,
      rate,
      [
        { at: 0.5, sound: plucked(hzOf(52), 1.2, rate) },
        { at: 0.9, sound: plucked(hzOf(62), 0.5, rate) },
      ],
      seededNoise(2, rate, 1e-4),
    );
    const notes = listen(samples, rate);
    const ringing = notes.find(({ onsetSeconds }) => Math.abs(onsetSeconds - 0.9) < 0.02);
    expect(Math.round(ringing!.midi)).toBe(62);
    expect(Math.round(ringing!.second!)).toBe(52);
    expect(notes[0]!.second).toBeNull();
  });

  it.each([1, 128, 4097])('is the same in pieces of %i frames', (piece) => {
    const samples = struck(64, [60, 0.5]);
    const listener = new Listener({ sampleRate: rate });
    for (let i = 0; i < samples.length; i += piece) listener.push(samples.subarray(i, i + piece));
    expect(listener.finish()).toEqual(listen(samples, rate));
  });
});

describe('where a second note is looked for', () => {
  const note: HeardNote = {
    onsetSeconds: 1,
    offsetSeconds: 1.5,
    midi: 60,
    confidence: 1,
    levelDb: -20,
    attack: 'struck',
    bendSemitones: 0,
    vibrato: null,
    second: null,
  };
  const stretchOf = (change: Partial<HeardNote>, restsFrom = 1) => {
    let asked: { from: number; length: number } | null = null;
    hearPair(
      (from, length) => {
        asked = { from, length };
        return null;
      },
      { ...note, ...change },
      restsFrom,
    );
    return asked as { from: number; length: number } | null;
  };

  it('is the steady part: after the attack, before the end, no longer than 171 ms', () => {
    expect(stretchOf({})).toEqual({ from: 1.045, length: 2048 });
    expect(stretchOf({}, 1.2)!.from).toBeCloseTo(1.245, 9);
    expect(stretchOf({ offsetSeconds: 1.155 })!.length).toBeCloseTo(1320, -1);
  });

  it('is nowhere in notes that are short, bent or shaken', () => {
    expect(stretchOf({ offsetSeconds: 1.12 })).toBeNull();
    expect(stretchOf({ bendSemitones: 1 })).toBeNull();
    expect(stretchOf({ vibrato: { rateHz: 5, depthCents: 40 } })).toBeNull();
  });
});
