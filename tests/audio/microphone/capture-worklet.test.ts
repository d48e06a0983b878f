import { beforeEach, describe, expect, it, vi } from 'vitest';
import { hopFrames, type Hop } from '../../../src/audio/microphone/hop.ts';

vi.mock('../../../src/audio/microphone/capture.worklet.ts?worker&url', () => ({ default: 'capture.js' }));

/** The audio thread's globals, as far as the worklet uses them. */
interface Processor {
  port: { onmessage: (() => void) | null };
  process(inputs: Float32Array[][]): boolean;
}
/** By name only: its types are those of the audio thread, which has a tsconfig of its own. */
const WORKLET: string = new URL('../../../src/audio/microphone/capture.worklet.ts', import.meta.url).href;
let hops: Hop[] = [];
let made: new () => Processor;
const thread = globalThis as unknown as Record<string, unknown>;

class FakeProcessor {
  port = { onmessage: null, postMessage: (hop: Hop) => void hops.push(hop) };
}

beforeEach(async () => {
  hops = [];
  thread.currentFrame = 0;
  thread.AudioWorkletProcessor = FakeProcessor;
  thread.registerProcessor = (_: string, processor: new () => Processor) => (made = processor);
  vi.resetModules();
  await import(WORKLET);
});

const quantum = (from: number) => Float32Array.from({ length: 128 }, (_, i) => from + i);

/** Runs the processor over quanta; a sample says which frame it is. `null` is a quantum without a channel. */
function run(processor: Processor, frames: readonly (number | null)[], band: Float32Array[] = []) {
  let at = 0;
  for (const frame of frames) {
    at = frame ?? at + 128;
    thread.currentFrame = at;
    processor.process([frame === null ? [] : [quantum(frame)], band]);
  }
}
const frames = (count: number, from = 0) => Array.from({ length: count }, (_, i) => from + i * 128);

describe('capture worklet', () => {
  it('transfers consecutive hops with every sample at its place', () => {
    run(new made(), frames(64, 640));
    const whole = Math.floor((64 * 128) / hopFrames);
    expect(hops.map((hop) => hop.startFrame)).toEqual(
      Array.from({ length: whole }, (_, i) => 640 + i * hopFrames),
    );
    for (const { startFrame, samples, band } of hops) {
      expect(samples).toHaveLength(hopFrames);
      expect(samples.every((sample, i) => sample === startFrame + i)).toBe(true);
      expect(band).toBeNull();
    }
  });

  it('fills frames that the audio thread left out with silence, so that later samples keep their place', () => {
    // 256 frames, a gap of one quantum, and on.
    run(new made(), [...frames(2), ...frames(40, 384)]);
    const [first] = hops;
    expect(first!.samples[255]).toBe(255);
    expect(first!.samples.slice(256, 384).every((sample) => sample === 0)).toBe(true);
    expect(first!.samples[384]).toBe(384);
    run(new made(), [...frames(3), ...frames(40, 100_096)]);
    for (const { startFrame, samples } of hops) {
      samples.forEach((sample, i) => {
        if (sample !== 0) expect(sample).toBe(startFrame + i);
      });
    }
  });

  it.each([0, 1, 2, 3, 4, 5])(
    'keeps every sample where the clock was not set on for quantum %i, as Chromium does while the graph is changed',
    (late) => {
      const processor = new made();
      frames(16, 640).forEach((frame, i) => {
        // Measured in Chromium 150: the clock of one quantum is that of the quantum before, and the next is right again.
        thread.currentFrame = i === late + 4 ? frame - 128 : frame;
        processor.process([[quantum(frame)]]);
      });
      expect(hops.map(({ startFrame }) => startFrame)).toEqual([640, 1152, 1664, 2176]);
      for (const { startFrame, samples, lostFrames } of hops) {
        expect([...samples]).toEqual(Array.from({ length: hopFrames }, (_, i) => startFrame + i));
        expect(lostFrames).toBeUndefined();
      }
    },
  );

  it('mixes the band to mono beside the microphone', () => {
    run(new made(), frames(16), [new Float32Array(128).fill(0.5), new Float32Array(128).fill(-0.25)]);
    expect(hops[0]!.band!.every((sample) => sample === 0.125)).toBe(true);
  });

  it('begins no hop without a channel, and finishes one that was begun', () => {
    const processor = new made();
    run(
      processor,
      Array.from({ length: 40 }, () => null),
    );
    expect(hops).toHaveLength(0);
    run(processor, [...frames(4, 12_800), ...Array.from({ length: 40 }, () => null)]);
    expect(hops).toHaveLength(1);
    expect(hops[0]!.samples[511]).toBe(12_800 + 511);
    expect(hops[0]!.samples.slice(512).every((sample) => sample === 0)).toBe(true);
  });

  it('ends when it is told to', () => {
    const processor = new made();
    expect(processor.process([[quantum(0)]])).toBe(true);
    processor.port.onmessage?.();
    expect(processor.process([[quantum(128)]])).toBe(false);
  });
});
