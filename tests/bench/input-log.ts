/**
 * What the browser's input and its audio clock did while a take was recorded, from beside the app: every buffer that the
 * microphone's track delivered, with the time at which it was captured and its first samples, and the audio clock against the
 * clock of the machine. Chromium alone has a MediaStreamTrackProcessor for sound.
 */
import type { Page } from '@playwright/test';

/** Samples of each buffer by which it is found again in the recording. */
const SIGN = 6;

/** One buffer of the microphone. */
export interface InputBuffer {
  /** When it was captured, by the browser's own clock, ms. */
  readonly capturedMs: number;
  readonly frames: number;
  /** Its first samples, 16-bit. */
  readonly sign: readonly number[];
}

/** The audio clock at a moment of the machine's clock. */
export interface ClockLook {
  readonly machineMs: number;
  readonly contextSeconds: number;
}

export interface InputLog {
  readonly buffers: readonly InputBuffer[];
  readonly clock: readonly ClockLook[];
}

interface Logged {
  buffers: number[][];
  clock: number[][];
}

/** To be called before the page is opened. */
export async function logInput(page: Page): Promise<void> {
  await page.addInitScript((sign) => {
    interface AudioPiece {
      readonly timestamp: number;
      readonly numberOfFrames: number;
      copyTo(to: Float32Array, how: object): void;
      close(): void;
    }
    type Processor = new (from: object) => { readonly readable: ReadableStream<AudioPiece> };
    const scope = globalThis as unknown as { logged: Logged; MediaStreamTrackProcessor: Processor };
    scope.logged = { buffers: [], clock: [] };
    const Made = globalThis.AudioContext;
    globalThis.AudioContext = class extends Made {
      constructor(options?: AudioContextOptions) {
        super(options);
        setInterval(() => scope.logged.clock.push([performance.now(), this.currentTime]), 250);
      }
    };
    const devices = navigator.mediaDevices;
    const ask = devices.getUserMedia.bind(devices);
    devices.getUserMedia = async (wanted) => {
      const stream = await ask(wanted);
      const track = stream.getAudioTracks()[0]!.clone();
      const reader = new scope.MediaStreamTrackProcessor({ track, maxBufferSize: 500 }).readable.getReader();
      // Without a name: the tool that runs this file would mark a named function with one of its own, which the page lacks.
      void (async () => {
        for (;;) {
          const { value: piece } = await reader.read();
          if (piece === undefined) return;
          const samples = new Float32Array(piece.numberOfFrames);
          piece.copyTo(samples, { planeIndex: 0, format: 'f32-planar' });
          const first = Array.from(samples.subarray(0, sign), (x) => Math.round(x * 32_768));
          scope.logged.buffers.push([piece.timestamp / 1000, piece.numberOfFrames, ...first]);
          piece.close();
        }
      })();
      return stream;
    };
  }, SIGN);
}

/** What was logged since the last time. */
export async function takeLog(page: Page): Promise<InputLog> {
  const { buffers, clock } = await page.evaluate(() => {
    const scope = globalThis as unknown as { logged: Logged };
    const taken = scope.logged;
    scope.logged = { buffers: [], clock: [] };
    return taken;
  });
  return {
    buffers: buffers.map(([capturedMs, frames, ...sign]) => ({
      capturedMs: capturedMs!,
      frames: frames!,
      sign,
    })),
    clock: clock.map(([machineMs, contextSeconds]) => ({
      machineMs: machineMs!,
      contextSeconds: contextSeconds!,
    })),
  };
}

export const joined = (logs: readonly InputLog[]): InputLog => ({
  buffers: logs.flatMap(({ buffers }) => buffers),
  clock: logs.flatMap(({ clock }) => clock),
});
