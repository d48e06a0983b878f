import type { Outcome } from '../core/outcome.ts';

/** A stretch of samples with its place on the audio clock. */
export interface Hop {
  /** Frame of the context at which `samples[0]` was captured (AudioWorklet currentFrame). */
  readonly startFrame: number;
  /** Microphone, channel 0, `hopFrames` long. Yours: it was transferred. */
  readonly samples: Float32Array;
  /** The band's bus on the same frames, mono, where it was connected; else null. */
  readonly band: Float32Array | null;
}

export const hopFrames = 2048;

export interface MicrophoneOptions {
  readonly deviceId?: string;
  /** The band's bus, to be recorded beside the microphone sample by sample. */
  readonly bandBus?: AudioNode;
  /** Called on the main thread for every hop. */
  readonly onHop: (hop: Hop) => void;
  /** Called once when the microphone is gone (pulled out, taken away, silent data stream). */
  readonly onLost: (sentence: string) => void;
}

export interface Microphone {
  readonly label: string;
  readonly sampleRate: number;
  /** Sentences for the player: processing that stayed on, a telephone codec. Empty when all is well. */
  readonly warnings: readonly string[];
  dispose(): void;
}

export interface MicrophoneChoice {
  readonly deviceId: string;
  readonly label: string;
}

export type OpenMicrophone = (
  context: AudioContext,
  options: MicrophoneOptions,
) => Promise<Outcome<Microphone>>;
export type ListMicrophones = () => Promise<readonly MicrophoneChoice[]>;
