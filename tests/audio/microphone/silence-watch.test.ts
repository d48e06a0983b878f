import { describe, expect, it } from 'vitest';
import { silenceWatch } from '../../../src/audio/microphone/silence-watch.ts';

const RATE = 8000;
const zeros = (seconds: number) => new Float32Array(seconds * RATE);
const hiss = (seconds: number) => new Float32Array(seconds * RATE).fill(1e-4);

function told(...pieces: readonly Float32Array[]): readonly string[] {
  const events: string[] = [];
  const watch = silenceWatch(RATE, {
    silent: () => events.push('silent'),
    soundBack: () => events.push('sound back'),
  });
  for (const piece of pieces)
    for (let from = 0; from < piece.length; from += 512) watch(piece.subarray(from, from + 512));
  return events;
}

describe('a watch for silence', () => {
  it('reports an input that sends the last of sixteen bits to and fro, within three seconds', () => {
    const lastBit = Float32Array.from({ length: 3 * RATE }, (_, i) => ((i * 7) % 3) / 32_768 - 1 / 32_768);
    expect(new Set(lastBit).size).toBe(3);
    expect(told(lastBit)).toEqual(['silent']);
    expect(told(lastBit.map((sample) => 3 * sample))).toEqual([]);
  });

  it('reports silence once, after two and a half seconds of zeros', () => {
    expect(told(zeros(2.4))).toEqual([]);
    expect(told(zeros(10))).toEqual(['silent']);
  });

  it('does not report the noise of a real microphone as silence', () => {
    expect(told(hiss(10))).toEqual([]);
    expect(told(zeros(2), hiss(0.1), zeros(2))).toEqual([]);
  });

  it('reports that sound is back, and reports the next silence again', () => {
    expect(told(zeros(4), hiss(1), zeros(4), hiss(1))).toEqual([
      'silent',
      'sound back',
      'silent',
      'sound back',
    ]);
  });
});
