/** The microphone is watched: one that is gone, and a sound output that stands still although its state says it runs. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openMicrophone } from '../../../src/audio/microphone/capture.ts';
import type { Problem } from '../../../src/core/words/problem.ts';

const RATE = 48_000;
const HOP = 2048;

/** A context with its microphone, whose clock and hops the test moves. */
async function opened() {
  const port: { onmessage: ((event: { data: unknown }) => void) | null; postMessage(): void } = {
    onmessage: null,
    postMessage: () => undefined,
  };
  vi.stubGlobal(
    'AudioWorkletNode',
    class {
      readonly port = port;
    },
  );
  vi.stubGlobal('isSecureContext', true);
  const track = {
    addEventListener: vi.fn(),
    removeEventListener: vi.fn(),
    stop: vi.fn(),
    getSettings: () => ({}),
  };
  const stream = { getAudioTracks: () => [track], getTracks: () => [track] };
  vi.stubGlobal('navigator', { mediaDevices: { getUserMedia: () => Promise.resolve(stream) } });
  const context = {
    sampleRate: RATE,
    state: 'running',
    currentTime: 0,
    audioWorklet: { addModule: () => Promise.resolve() },
    createMediaStreamSource: () => ({ connect: vi.fn(), disconnect: vi.fn() }),
    resume: () => Promise.resolve(),
  };
  const told: string[] = [];
  const say = (what: string) => (problem: Problem) => void told.push(`${what} ${problem.code}`);
  const microphone = await openMicrophone(context as unknown as AudioContext, {
    onHop: () => undefined,
    onLost: say('lost'),
    onSilent: say('begins'),
    onSoundBack: say('ends'),
  });
  expect(microphone.ok).toBe(true);
  let frame = 0;
  const run = async (seconds: number, { clock, hops }: { clock: boolean; hops: boolean }) => {
    for (let passed = 0; passed < seconds; passed += 0.05) {
      if (clock) context.currentTime += 0.05;
      if (hops)
        port.onmessage?.({
          data: { startFrame: (frame += HOP), samples: new Float32Array(HOP).fill(0.1), band: null },
        });
      await vi.advanceTimersByTimeAsync(50);
    }
  };
  return { told, run };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('an open microphone', () => {
  it('that sends no more while the sound goes on is lost', async () => {
    const { told, run } = await opened();
    await run(2, { clock: true, hops: true });
    await run(1.5, { clock: true, hops: false });
    expect(told).toEqual(['lost microphone.lost']);
  });

  it('is not lost where the output stands still: the take waits, and goes on when the sound is back', async () => {
    const { told, run } = await opened();
    await run(2, { clock: true, hops: true });
    await run(5, { clock: false, hops: false });
    expect(told).toEqual(['begins microphone.paused']);
    await run(2, { clock: true, hops: true });
    expect(told).toEqual(['begins microphone.paused', 'ends microphone.paused']);
  });

  it('is not told to have stopped while the first sound is waited for', async () => {
    const { told, run } = await opened();
    await run(3, { clock: false, hops: false });
    expect(told).toEqual([]);
    await run(2, { clock: true, hops: true });
    expect(told).toEqual([]);
    const other = await opened();
    await other.run(5, { clock: false, hops: false });
    expect(other.told).toEqual(['lost microphone.busy']);
  });
});
