/**
 * Slides down are two notes, bends one (common practice: a slide between two notes that each sound is two notes; a fretted
 * string bends upwards only; a bend counts as the pitch at which it arrives). A frame lasts 16 ms.
 */
import { describe, expect, it } from 'vitest';
import { slideIn } from '../../../../src/core/listen/network/slide.ts';
import { Answers } from './answers.ts';

const line = (from: number, to: number, frames: number): number[] =>
  Array.from({ length: frames }, (_, i) => from + ((to - from) * (i + 1)) / (frames + 1));
const still = (pitch: number, frames: number): number[] => new Array<number>(frames).fill(pitch);

describe('slideIn', () => {
  it('tells where a slide down left its pitch and where it arrived', () => {
    expect(slideIn([...still(40, 8), ...line(40, 38, 3), ...still(38, 6)])).toEqual({ left: 8, arrived: 11 });
    expect(slideIn([...still(40, 8), ...still(39, 6)])).toEqual({ left: 8, arrived: 8 });
  });

  it('waits until the second pitch has stood still for six frames', () => {
    expect(slideIn([...still(40, 8), ...line(40, 38, 3), ...still(38, 5)])).toBeNull();
  });

  it('needs a first pitch that stood still for six frames, too', () => {
    expect(slideIn([...still(40, 5), ...line(40, 38, 2), ...still(38, 6)])).toBeNull();
    expect(slideIn([...still(40, 6), ...line(40, 38, 2), ...still(38, 6)])).not.toBeNull();
  });

  it('takes no slower glide, no smaller one, and none upwards', () => {
    expect(slideIn([...still(40, 8), ...line(40, 38, 5), ...still(38, 6)])).not.toBeNull();
    expect(slideIn([...still(40, 8), ...line(40, 38, 7), ...still(38, 6)])).toBeNull();
    expect(slideIn([...still(40, 8), ...still(39.3, 6)])).not.toBeNull();
    expect(slideIn([...still(40, 8), ...still(39.35, 6)])).toBeNull();
    expect(slideIn([...still(38, 8), ...line(38, 40, 3), ...still(40, 6)])).toBeNull();
  });

  it('leaves a bend alone that is let down', () => {
    expect(slideIn([...still(38, 3), ...line(38, 40, 3), ...still(40, 8), ...still(38, 6)])).toBeNull();
  });
});

describe('the decoder', () => {
  const glide = (from: number, to: number) => (frame: number) =>
    frame < 36 ? from : frame < 39 ? from + ((to - from) * (frame - 35)) / 4 : to;

  it('tells two notes of a slide down, the second legato from halfway through the glide', () => {
    const [first, second, ...more] = new Answers().note(20, 60, glide(40, 38)).notes();
    expect(more).toEqual([]);
    expect([first!.semitone, second!.semitone].map(Math.round)).toEqual([40, 38]);
    expect(first!.frame).toBeCloseTo(20, 0);
    expect(second!.frame).toBeGreaterThan(35);
    expect(second!.frame).toBeLessThan(39.5);
    expect(first!.end).toBeLessThanOrEqual(second!.frame);
    expect(second!.end).toBeCloseTo(59, 0);
    expect(second!.confidence).toBeGreaterThan(0.5);
  });

  it('tells one note of the same glide upwards, at the pitch where it arrives', () => {
    const told = new Answers().note(20, 60, glide(38, 40)).notes();
    expect(told.map(({ semitone }) => Math.round(semitone))).toEqual([40]);
  });

  it('tells both notes while the sound still comes in, each once and in order', () => {
    const fresh: number[] = [];
    new Answers().note(20, 60, glide(40, 38)).decoded(undefined, (decoder) => {
      for (const { midi } of decoder.takeFresh()) fresh.push(Math.round(midi));
    });
    expect(fresh.map((midi) => midi - fresh[0]!)).toEqual([0, -2]);
  });

  it('tells a slide whose second note another stroke cuts off', () => {
    const told = new Answers().note(20, 48, glide(40, 38)).note(48, 70, 45).semitones();
    expect(told).toEqual([40, 38, 45]);
  });
});
