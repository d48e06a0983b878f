/** A take that is played slower, in a loop, or as one stretch: what is scheduled on the audio clock, and where it is. */
import { PitchDetector } from 'pitchy';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Along } from '../../../src/audio/playback/along.ts';
import { wholeOf, type SlowLine } from '../../../src/audio/playback/slow-line.ts';
import type { SlowAnswer } from '../../../src/audio/playback/slow-messages.ts';
import { SlowJob } from '../../../src/audio/playback/slow-job.ts';
import { createTakePlayer } from '../../../src/audio/playback/take-player.ts';
import { bad, good } from '../../../src/core/base/outcome.ts';
import { fakeContext } from '../fake-context.ts';

const RATE = 48_000;

/** Slower by repeating nothing: silence of the right length, in pieces of a second. */
function silentSlowLine(): SlowLine & { readonly asked: number[] } {
  const asked: number[] = [];
  return {
    asked,
    pieces: (from, to, speed) => {
      asked.push(from);
      let left = Math.round(((to - from) / speed) * RATE);
      return () => {
        const frames = Math.min(left, RATE);
        left -= frames;
        return Promise.resolve(good(frames === 0 ? null : new Float32Array(frames)));
      };
    },
    dispose: () => undefined,
  };
}

function open({ band = true } = {}) {
  const fake = fakeContext(RATE);
  const prepared: [number, number][] = [];
  const along: Along = {
    output: fake.context.destination,
    prepare: (from, speed) => {
      prepared.push([from, speed]);
      return Promise.resolve(good(undefined));
    },
    start: () => undefined,
    stop: () => undefined,
    passage: ({ fromSeconds, toSeconds }, speed) => {
      const frames = Math.round(((toSeconds - fromSeconds) / speed) * RATE);
      const channels = [new Float32Array(frames), new Float32Array(frames)] as const;
      return Promise.resolve(
        band ? good({ channels, sampleRate: RATE }) : bad('band.failed', { reason: 'gone' }),
      );
    },
  };
  const slow = silentSlowLine();
  const player = createTakePlayer(fake.context, new Float32Array(20 * RATE), RATE, along, slow);
  return { fake, player, slow, prepared };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a stretch', () => {
  const passage = { fromSeconds: 4, toSeconds: 6, loops: true };

  it('is gone round by line and band together, and the place goes round with it', async () => {
    const { fake, player } = open();
    await player.play({ fromSeconds: 5, speed: 1, passage });
    const [line, band] = fake.scheduled;
    expect(line).toMatchObject({ loop: true, offset: 1, seconds: 2 });
    expect(band).toMatchObject({ loop: true, offset: 1, seconds: 2, when: line!.when });
    fake.moveTo(line!.when + 0.5);
    expect(player.positionSeconds()).toBeCloseTo(5.5, 6);
    fake.moveTo(line!.when + 2.5);
    expect(player.positionSeconds()).toBeCloseTo(5.5, 6);
  });

  it('lasts twice as long at half speed', async () => {
    const { fake, player } = open();
    await player.play({ fromSeconds: 5, speed: 0.5, passage });
    const [line, band] = fake.scheduled;
    expect(line).toMatchObject({ offset: 2, seconds: 4 });
    expect(band).toMatchObject({ offset: 2, seconds: 4 });
    fake.moveTo(line!.when + 1);
    expect(player.positionSeconds()).toBeCloseTo(5.5, 6);
  });

  it('ends where it ends, once, and rests at its beginning', async () => {
    const { fake, player } = open();
    let ended = 0;
    player.onEnded(() => ended++);
    await player.play({ fromSeconds: 4, speed: 1, passage: { ...passage, loops: false } });
    expect(fake.scheduled[0]).toMatchObject({ loop: false, seconds: 2 });
    fake.moveTo(fake.scheduled[0]!.when + 5);
    expect(player.positionSeconds()).toBe(6);
    for (const source of fake.sources) source.onended?.();
    expect(ended).toBe(1);
    expect(player.playing).toBe(false);
    expect(player.positionSeconds()).toBe(4);
  });

  it('that was made is not made again', async () => {
    const { player, slow } = open();
    await player.play({ fromSeconds: 4, speed: 0.5, passage });
    player.pause();
    await player.play({ fromSeconds: 4, speed: 0.5, passage });
    expect(slow.asked).toHaveLength(1);
  });

  it('whose band fails is told, and nothing sounds', async () => {
    const { fake, player } = open({ band: false });
    expect((await player.play({ fromSeconds: 4, speed: 1, passage })).ok).toBe(false);
    expect(fake.scheduled).toHaveLength(0);
  });
});

it('half speed to the end: pieces back to back, as long as the rest twice over', async () => {
  const { fake, player, prepared } = open();
  await player.play({ fromSeconds: 12, speed: 0.5, passage: null });
  expect(prepared).toEqual([[12, 0.5]]);
  for (let at = 0; at < 16; at += 0.25) {
    fake.moveTo(at);
    await vi.advanceTimersByTimeAsync(250);
  }
  const pieces = fake.scheduled;
  for (const [i, piece] of pieces.entries())
    if (i > 0) expect(piece.when).toBeCloseTo(pieces[i - 1]!.when + pieces[i - 1]!.seconds, 9);
  expect(pieces.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(16, 9);
});

describe('the slowing worker', () => {
  const tone = Float32Array.from(
    { length: 6 * RATE },
    (_, i) => 0.5 * Math.sin((2 * Math.PI * 220 * i) / RATE),
  );

  /** The room behind the same requests, without a thread. */
  function room() {
    let answered: (answer: SlowAnswer) => void = () => undefined;
    const slowJob = new SlowJob((message) => answered(message));
    const ask = (request: Parameters<SlowJob['handle']>[0]) =>
      new Promise<SlowAnswer>((resolve) => {
        answered = resolve;
        void slowJob.handle(request);
      });
    return {
      ask,
      open: () => ask({ id: 0, kind: 'open', samples: tone, sampleRate: RATE, wantedRate: RATE }),
    };
  }

  it('gives pieces that are together exactly as long as they should be, at the pitch that was played', async () => {
    vi.useRealTimers();
    const { ask, open } = room();
    await open();
    const run = { number: 1, fromSeconds: 1, toSeconds: 5, speed: 0.5 };
    const whole = await wholeOf(async () => (await ask({ id: 1, kind: 'next', run })).outcome);
    if (!whole.ok) throw new Error('it was slowed');
    expect(whole.value).toHaveLength(8 * RATE);
    const window = whole.value.subarray(3 * RATE, 3 * RATE + 4096);
    // Pitch by pitchy's McLeod method, which the project did not write.
    const [hz] = PitchDetector.forFloat32Array(4096).findPitch(window, RATE);
    expect(Math.abs(1200 * Math.log2(hz / 220))).toBeLessThan(1);
  });

  it('ends a run that another one has followed', async () => {
    vi.useRealTimers();
    const { ask, open } = room();
    await open();
    const run = { fromSeconds: 0, toSeconds: 6, speed: 0.5 };
    await ask({ id: 1, kind: 'next', run: { ...run, number: 1 } });
    await ask({ id: 2, kind: 'next', run: { ...run, number: 2 } });
    const late = await ask({ id: 3, kind: 'next', run: { ...run, number: 1 } });
    expect(late.outcome).toEqual(good(null));
  });
});
