import { describe, expect, test } from 'vitest';
import { rises, wasRising } from '../../../../src/core/listen/measure/octave.ts';
import { Track } from '../../../../src/core/listen/path/track.ts';

const FRAME = 0.008;

/** Frames of one pitch, each with the share of the octave above. */
function trackOf(midi: number, above: readonly number[], below = 1): Track {
  const track = new Track();
  above.forEach((share, index) => {
    track.add({
      index,
      seconds: index * FRAME,
      midi,
      clarity: 0.98,
      above: share,
      below,
      levelDb: -20,
    });
  });
  return track;
}

const note = (pitch: number, frames: number) => ({ onsetSeconds: 0, pitch, from: 0, last: frames - 1 });

describe('a reed that speaks an octave down', () => {
  const late = [0, 0, 0, 0, 0, 0, 0, 0, 0, 0.78, 0.82, 0.86];

  test('a short note whose octave comes in at its end was rising', () => {
    expect(wasRising(trackOf(52, late), note(52, late.length))).toBe(true);
  });

  test('a note without the octave, or with it all along, was not', () => {
    expect(wasRising(trackOf(52, Array<number>(12).fill(0)), note(52, 12))).toBe(false);
    expect(wasRising(trackOf(52, Array<number>(12).fill(0.8)), note(52, 12))).toBe(false);
  });

  test('nor a long one, in whose decay the octave is left over', () => {
    const long = [...Array<number>(40).fill(0), ...Array<number>(20).fill(0.8)];
    expect(wasRising(trackOf(52, long), note(52, long.length))).toBe(false);
  });

  test('an octave that stands soon after the attack was there from the start; later it is decay', () => {
    const track = trackOf(64, Array<number>(60).fill(0));
    expect(rises(track, note(52, 15), 15, 64, 4)).toBe(true);
    expect(rises(track, note(52, 15), 15, 64, 3)).toBe(false);
    expect(rises(track, note(52, 40), 40, 64, 4)).toBe(false);
    expect(rises(track, note(57, 15), 15, 64, 4)).toBe(false);
  });

  test('of a high note only if the longer period is no better', () => {
    expect(rises(trackOf(84, Array<number>(20).fill(0), 1.05), note(72, 15), 15, 84, 4)).toBe(false);
    expect(rises(trackOf(84, Array<number>(20).fill(0), 0.99), note(72, 15), 15, 84, 4)).toBe(true);
  });
});
