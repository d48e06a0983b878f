import { describe, expect, test } from 'vitest';
import { Path } from '../../../../src/core/listen/path/path.ts';
import { PATH_LAG } from '../../../../src/core/listen/tuning/path.ts';
import { emptyFrame } from '../../../../src/core/listen/frames/frame.ts';

type Candidate = readonly [midi: number, clarity: number];

/** What the path settles on for each of the frames. */
function settledOf(frames: readonly (readonly Candidate[])[]): number[] {
  const path = new Path();
  const settled: number[] = [];
  const padded = [...frames, ...Array<readonly Candidate[]>(PATH_LAG).fill(frames.at(-1) ?? [])];
  padded.forEach((candidates, index) => {
    const frame = emptyFrame();
    frame.index = index;
    frame.seconds = index * 0.008;
    frame.levelDb = -20;
    frame.count = candidates.length;
    candidates.forEach(([midi, clarity], i) => {
      frame.midi[i] = midi;
      frame.clarity[i] = clarity;
    });
    const answer = path.step(frame, false);
    if (answer) settled.push(answer.midi);
  });
  return settled;
}

describe('the cheapest path through the candidates', () => {
  test('of a period and its double, nearly as good, the shorter', () => {
    const frame: Candidate[] = [
      [64, 0.95],
      [52, 0.98],
    ];
    expect(settledOf(Array<Candidate[]>(12).fill(frame))).toEqual(Array(12).fill(64));
  });

  test('a harmonic that is clearly less good does not win', () => {
    const frame: Candidate[] = [
      [64, 0.78],
      [52, 0.99],
    ];
    expect(settledOf(Array<Candidate[]>(12).fill(frame))).toEqual(Array(12).fill(52));
  });

  test('high up the octave must be all but as good', () => {
    const frame: Candidate[] = [
      [87, 0.9],
      [75, 0.99],
    ];
    expect(settledOf(Array<Candidate[]>(12).fill(frame))).toEqual(Array(12).fill(75));
  });

  test('one frame of another pitch is passed over, and no pitch is an answer', () => {
    const steady: Candidate[] = [[60, 0.98]];
    const frames = [
      ...Array<Candidate[]>(6).fill(steady),
      [
        [60, 0.8],
        [47, 0.9],
      ] as Candidate[],
      ...Array<Candidate[]>(6).fill(steady),
    ];
    expect(settledOf(frames).filter((midi) => midi === 47)).toEqual([]);
    expect(settledOf(Array<Candidate[]>(12).fill([[60, 0.2]])).every(Number.isNaN)).toBe(true);
  });
});
