import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { BandRenderer } from '../../../src/audio/band/render-client.ts';
import { bandAlong } from '../../../src/audio/playback/along.ts';
import { createBandPlayer, quietStartDb } from '../../../src/audio/band/band-player.ts';
import { createTakePlayer } from '../../../src/audio/playback/take-player.ts';
import { bad, good } from '../../../src/core/base/outcome.ts';
import { formOf, settingsOf } from '../../core/band/forms.ts';
import type { Problem } from '../../../src/core/words/problem.ts';
import { fakeContext } from '../fake-context.ts';

const LEVELS = { drums: 0, bass: 0, chords: 0, line: 0, click: 0 };
const form = formOf('form:12-bar blues in D');
const settings = settingsOf({ bpm: 137 });
const beatSeconds = 60 / 137;

/** Answers at once with a sound of the right place and a little ring. */
function fakeRenderer(): BandRenderer & { readonly asked: number[] } {
  const asked: number[] = [];
  return {
    asked,
    ready: () => Promise.resolve(good(undefined)),
    band: ({ startBeat, endBeat, settings: { bpm } }) => {
      asked.push(startBeat);
      const frames = Math.ceil(((endBeat - startBeat) * 60 * 48_000) / bpm) + 48_000;
      const stem = [new Float32Array(frames), new Float32Array(frames)] as const;
      return Promise.resolve(good({ sampleRate: 48_000, bpm, startBeat, endBeat, stems: { bass: stem } }));
    },
    line: () => Promise.resolve(bad('band.failed', { reason: 'not here' })),
    notes: () => Promise.resolve(bad('band.failed', { reason: 'not here' })),
    dispose: () => undefined,
  };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Lets the audio clock and the timers run together. */
async function play(fake: ReturnType<typeof fakeContext>, toSeconds: number) {
  for (let at = fake.context.currentTime; at < toSeconds; at += 0.25) {
    fake.moveTo(at);
    await vi.advanceTimersByTimeAsync(250);
  }
}

describe('BandPlayer', () => {
  it('starts each stretch on its beat: the downbeat of chorus 20 within a frame, nothing late in ten minutes', async () => {
    const fake = fakeContext();
    const renderer = fakeRenderer();
    const player = createBandPlayer(fake.context, renderer);
    expect((await player.prepare(form, settings)).ok).toBe(true);
    const clock = player.start();
    await play(fake, 600);
    const due = clock.contextSecondsAt(20 * 48);
    expect(due).toBeLessThan(600);
    const nearest = Math.min(...fake.scheduled.map(({ when }) => Math.abs(when - due)));
    expect(nearest).toBeLessThan(1 / 48_000);
    // Stretches follow one another without a hole, and each one starts as it was rendered.
    expect(renderer.asked).toEqual([...new Set(renderer.asked)].toSorted((a, b) => a - b));
    expect(fake.scheduled.every(({ offset }) => offset === 0)).toBe(true);
    player.dispose();
  });

  it('counts in before the first downbeat', async () => {
    const fake = fakeContext();
    const player = createBandPlayer(fake.context, fakeRenderer());
    await player.prepare(form, settings);
    const clock = player.start({ atContextSeconds: 2 });
    expect(fake.scheduled[0]!.when).toBeCloseTo(2, 4);
    expect(clock.firstBeatContextSeconds).toBeCloseTo(2 + 4 * beatSeconds, 9);
    expect(clock.beatAt(clock.contextSecondsAt(17.5))).toBeCloseTo(17.5, 9);
    player.dispose();
  });

  it('begins anywhere, inside a stretch if need be', async () => {
    const fake = fakeContext();
    const player = createBandPlayer(fake.context, fakeRenderer());
    await player.prepare(form, settings, 21.5);
    const clock = player.start({ atContextSeconds: 1, fromBeat: 21.5 });
    expect(clock.beatAt(1)).toBeCloseTo(21.5, 9);
    expect(fake.scheduled[0]!.when).toBeCloseTo(1, 6);
    expect(fake.scheduled[0]!.offset).toBeCloseTo(1.5 * beatSeconds, 4);
    player.dispose();
  });

  it('starts quiet, and stops everything', async () => {
    const fake = fakeContext();
    const player = createBandPlayer(fake.context, fakeRenderer());
    expect(20 * Math.log10(fake.gains[0]!.gain.value)).toBeCloseTo(quietStartDb, 6);
    await player.prepare(form, settings);
    player.start();
    await play(fake, 5);
    player.stop(0.2);
    expect(player.clock).toBeNull();
    const running = fake.scheduled.filter(({ stoppedAt }) => stoppedAt !== null);
    expect(running).toHaveLength(fake.scheduled.length);
    const scheduled = fake.scheduled.length;
    await play(fake, 30);
    expect(fake.scheduled).toHaveLength(scheduled);
  });

  it('says why it fell silent when the renderer fails', async () => {
    const fake = fakeContext();
    const renderer = fakeRenderer();
    const player = createBandPlayer(fake.context, renderer);
    await player.prepare(form, settings);
    renderer.band = () => Promise.resolve(bad('band.failed', { reason: 'the worker is gone' }));
    const said: Problem[] = [];
    player.onFailed((problem) => said.push(problem));
    player.start();
    await play(fake, 1);
    expect(said).toEqual([{ code: 'band.failed', facts: { reason: 'the worker is gone' } }]);
    expect(player.clock).toBeNull();
  });

  it('can only start what was prepared', () => {
    const player = createBandPlayer(fakeContext().context, fakeRenderer());
    expect(() => player.start()).toThrow('prepare');
  });
});

describe('TakePlayer', () => {
  it('plays the take and its band from the same moment', async () => {
    const fake = fakeContext();
    const renderer = fakeRenderer();
    const band = createBandPlayer(fake.context, renderer);
    const take = createTakePlayer(
      fake.context,
      new Float32Array(48_000 * 60),
      48_000,
      bandAlong(band, renderer, 48_000, { form, settings, firstBeatSeconds: 2, levels: () => LEVELS }),
    );
    await take.play({ fromSeconds: 10, speed: 1, passage: null });
    const clock = band.clock!;
    const source = fake.scheduled.find(({ offset }) => offset === 10)!;
    expect(clock.contextSecondsAt(0) - source.when).toBeCloseTo(2 - 10, 6);
    fake.moveTo(source.when + 3);
    expect(take.positionSeconds()).toBeCloseTo(13, 6);
    take.pause();
    expect(take.playing).toBe(false);
    expect(take.positionSeconds()).toBeCloseTo(13, 6);
    await take.play({ fromSeconds: 99, speed: 1, passage: null });
    expect(take.positionSeconds()).toBe(60);
  });
});
