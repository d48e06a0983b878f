/** Slower at the same pitch, shifted at the same tempo: places by the clock, pitch by a count of periods. */
import { PitchDetector } from 'pitchy';
import { describe, expect, test } from 'vitest';
import { bakeRound, LEAD_SECONDS } from '../../../src/audio/backing/bake-round.ts';
import { CalledOff, stretch } from '../../../src/audio/backing/stretch.ts';

const RATE = 44_100;

/** A short burst of noise at each of these times. */
function clicks(seconds: number, times: readonly number[]): Float32Array<ArrayBuffer> {
  const sound = new Float32Array(seconds * RATE);
  for (const time of times)
    for (let i = 0; i < 300; i++)
      sound[Math.round(time * RATE) + i] = 0.8 * Math.exp(-i / 60) * (((i * 7919) % 211) / 105 - 1);
  return sound;
}

/** Where a burst's energy stands, in seconds: its centre in the 60 ms around a place. */
function burstAt(sound: Float32Array, near: number): number {
  const from = Math.round((near - 0.06) * RATE);
  let energy = 0;
  let moment = 0;
  for (let i = from; i < from + 0.12 * RATE; i++) {
    const square = (sound[i] ?? 0) ** 2;
    energy += square;
    moment += square * i;
  }
  return moment / energy / RATE;
}

describe('stretching', () => {
  const times = [0.5, 1.25, 2, 2.9, 3.7, 4.6];
  const sound = clicks(5.5, times);
  // The burst's own centre lies behind its beginning.
  const own = burstAt(sound, times[0]!) - times[0]!;

  test.each([
    { speed: 0.5, cents: 0 },
    { speed: 0.75, cents: 0 },
    { speed: 0.9, cents: 40 },
    { speed: 1, cents: -100 },
  ])('$speed of the speed, $cents cents: every attack lies where it should, within 6 ms', async (asked) => {
    const [slow] = await stretch([sound], RATE, asked);
    expect(slow).toHaveLength(Math.round(sound.length / asked.speed));
    for (const time of times) {
      const place = time / asked.speed;
      expect(Math.abs(burstAt(slow!, place) - own - place)).toBeLessThan(0.006);
    }
  });

  test.each([
    { speed: 0.6, cents: 0 },
    { speed: 0.8, cents: 35 },
    { speed: 1, cents: -70 },
  ])(
    '$speed of the speed, $cents cents: the pitch is what was asked for, within half a cent',
    async (asked) => {
      for (const low of [82.4, 220, 659.3]) {
        const tone = Float32Array.from({ length: 3 * RATE }, (_, i) => {
          const phase = (2 * Math.PI * low * i) / RATE;
          return 0.3 * Math.sin(phase) + 0.15 * Math.sin(2 * phase) + 0.1 * Math.sin(3 * phase);
        });
        const [out] = await stretch([tone], RATE, asked);
        const [hz] = PitchDetector.forFloat32Array(8192).findPitch(out!.slice(RATE, RATE + 8192), RATE);
        expect(Math.abs(1200 * Math.log2(hz / low) - asked.cents)).toBeLessThan(0.5);
      }
    },
  );

  test('what is called off stops, and the next is not disturbed by it', async () => {
    const long = clicks(12, times);
    const first = stretch([long], RATE, { speed: 0.5, cents: 0 }, () => false);
    await expect(first).rejects.toBeInstanceOf(CalledOff);
    let others = true;
    const early = expect(
      stretch([long], RATE, { speed: 0.5, cents: 0 }, () => others),
    ).rejects.toBeInstanceOf(CalledOff);
    others = false;
    const late = await stretch([sound], RATE, { speed: 0.75, cents: 0 });
    await early;
    for (const time of times)
      expect(Math.abs(burstAt(late[0]!, time / 0.75) - own - time / 0.75)).toBeLessThan(0.006);
  });

  test('as recorded, nothing is touched', async () => {
    const [same] = await stretch([sound], RATE, { speed: 1, cents: 0 });
    expect(same).toBe(sound);
  });
});

describe('a round', () => {
  /** A tone that is in mid-swing at both ends: looped bluntly it clicks. */
  const tone = Float32Array.from(
    { length: 6 * RATE },
    (_, i) => 0.5 * Math.sin((2 * Math.PI * 151.3 * i) / RATE),
  );
  const order = { fromSeconds: 1, toSeconds: 3.0037, speed: 1, cents: 0 };
  const largestStep = (samples: readonly number[]) =>
    Math.max(...samples.map((sample, i) => (i === 0 ? 0 : Math.abs(sample - samples[i - 1]!))));

  test('has no step at its seam that the tone itself does not have', async () => {
    const baked = await bakeRound([tone], RATE, order, (channels) => Promise.resolve(channels));
    const [round] = baked.channels;
    const twice = [...round!.subarray(-2000), ...round!.subarray(0, 2000)];
    const blunt = [
      ...tone.subarray(Math.round(3.0037 * RATE) - 2000, Math.round(3.0037 * RATE)),
      ...tone.subarray(RATE, RATE + 2000),
    ];
    const plain = largestStep([...tone.subarray(0, 4000)]);
    expect(largestStep(blunt)).toBeGreaterThan(5 * plain);
    // −60 dBFS more than the tone's own steepest step.
    expect(largestStep(twice)).toBeLessThan(plain * 1.5 + 0.001);
  });

  test('is as long as its bars, and its downbeat lies behind the lead, at any speed', async () => {
    const sound = clicks(6, [1, 3]);
    for (const speed of [1, 0.8]) {
      const asked = { fromSeconds: 1, toSeconds: 3, speed, cents: 0 };
      const baked = await bakeRound([sound], RATE, asked, (channels) => stretch(channels, RATE, asked));
      expect(baked.channels[0]).toHaveLength(Math.round((2 / speed) * RATE));
      expect(baked.leadSeconds).toBeCloseTo(LEAD_SECONDS, 4);
      const shifted = new Float32Array(RATE);
      shifted.set(baked.channels[0]!.subarray(0, RATE / 2), RATE / 4);
      expect(Math.abs(burstAt(shifted, 0.25 + LEAD_SECONDS + 0.002) - 0.2514 - LEAD_SECONDS)).toBeLessThan(
        0.006,
      );
    }
  });

  test('a round at the recording’s first sample begins with silence', async () => {
    const baked = await bakeRound([tone], RATE, { ...order, fromSeconds: 0 }, (channels) =>
      Promise.resolve(channels),
    );
    expect(baked.channels[0]!.subarray(0, 1000).every((sample) => sample === 0)).toBe(true);
  });
});
