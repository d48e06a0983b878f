/** What a recording says of its tempo: made of tempi that are known, with the jitter of hands, and of none at all. */
import { describe, expect, it } from 'vitest';
import { chance } from '../../../src/core/base/random.ts';
import { tempoOfOnsets, tempoOfSound } from '../../../src/core/beats/recording-tempo.ts';

/** Eighths and quarters with rests, 16 ms of jitter: the spread of the Weimar Jazz Database's on-beat notes. */
function played(bpm: number, firstBeat: number, seed: number, swing = 0.5, eighths = 64): readonly number[] {
  const luck = chance(seed);
  const jitter = () => 0.016 * (luck.next() + luck.next() + luck.next() + luck.next() - 2) * Math.sqrt(3);
  const onsets: number[] = [];
  for (let eighth = 0; eighth < eighths; eighth++)
    if (eighth === 0 || luck.next() < (eighth % 2 === 0 ? 0.85 : 0.4))
      onsets.push(firstBeat + ((eighth >> 1) + (eighth % 2) * swing) * (60 / bpm) + jitter());
  return onsets;
}

describe('the tempo of a line alone', () => {
  it('is that which it was played at, straight or swung, where one up to a fifth away was expected', () => {
    let right = 0;
    let runs = 0;
    for (let bpm = 60; bpm <= 200; bpm += 7)
      for (const swing of [0.5, 0.6, 2 / 3]) {
        const expected = bpm * (bpm % 2 === 0 ? 1.2 : 0.83);
        const found = tempoOfOnsets(played(bpm, 1.3, bpm, swing), expected);
        expect(found, `${bpm} ${swing}`).not.toBeNull();
        if (Math.abs(found!.bpm / bpm - 1) < 0.01 && Math.abs(found!.firstBeatSeconds - 1.3) < 0.04) right++;
        runs++;
      }
    expect(right / runs).toBeGreaterThan(0.95);
  });

  it('is not found in onsets that fall anywhere, but for one run in twenty', () => {
    const luck = chance(77);
    let found = 0;
    for (let run = 0; run < 100; run++) {
      const onsets = Array.from({ length: 40 }, () => 20 * luck.next()).toSorted((a, b) => a - b);
      if (tempoOfOnsets(onsets, 110) !== null) found++;
    }
    expect(found).toBeLessThanOrEqual(5);
    expect(tempoOfOnsets([1, 2, 3], 110)).toBeNull();
  });
});

describe('the tempo of a sound', () => {
  const RATE = 22_050;
  function clicks(bpm: number, firstBeat: number, seconds: number): Float32Array {
    const sound = new Float32Array(seconds * RATE);
    for (let beat = firstBeat; beat < seconds - 0.1; beat += 60 / bpm)
      for (let i = 0; i < 0.03 * RATE; i++)
        sound[Math.round(beat * RATE) + i]! +=
          0.5 * Math.exp(-i / 150) * Math.sin((2 * Math.PI * 1500 * i) / RATE);
    return sound;
  }

  it('is that of its pulse, from the first beat that sounds', () => {
    for (const [bpm, firstBeat] of [
      [97, 0.8],
      [132, 2.5],
    ] as const) {
      const found = tempoOfSound(clicks(bpm, firstBeat, 20), RATE)!;
      expect(found.from).toBe('beats');
      expect(Math.abs(found.bpm / bpm - 1)).toBeLessThan(0.003);
      expect(Math.abs(found.firstBeatSeconds - firstBeat)).toBeLessThan(0.03);
      expect(found.wanderSeconds).toBeLessThan(0.03);
    }
  });

  it('is not found where there is no beat', () => {
    expect(tempoOfSound(new Float32Array(10 * RATE), RATE)).toBeNull();
    expect(tempoOfSound(new Float32Array(RATE), RATE)).toBeNull();
  });
});
