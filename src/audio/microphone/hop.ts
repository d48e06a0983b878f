/** What the audio thread hands to the page: the microphone's samples in hops. Imported by both sides. */

/**
 * Frames of one hop: 11 ms at 48 kHz. The lowest string of a guitar is named 35 ms after its attack at most
 * (tests/analysis/latency.test.ts), and the screen must show the name within 60 ms. Hops of 256 frames would save 6 ms
 * and double the number of messages.
 */
export const hopFrames = 512;

/** A stretch of samples with its place on the audio clock. */
export interface Hop {
  /** Frame of the audio context at which `samples[0]` was captured (`currentFrame` of the AudioWorklet). */
  readonly startFrame: number;
  /** Channel 0 of the microphone, `hopFrames` long. The buffer was transferred: the receiver owns it. */
  readonly samples: Float32Array<ArrayBuffer>;
  /** The output of the band on the same frames, mixed to mono; null where no band was connected or it was silent. */
  readonly band: Float32Array<ArrayBuffer> | null;
  /** Frames of this hop that the audio thread left out and that are silence here; absent where there are none. */
  readonly lostFrames?: number;
}
