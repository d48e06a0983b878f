import { hopFrames } from './hop.ts';

/**
 * Runs on the audio thread: gathers the microphone (input 0, channel 0) and, where it is connected, the band
 * (input 1, mixed to mono) into hops, and hands each over with the frame at which it began. A transfer gives the
 * buffer away, so each hop takes one new buffer; nothing else is allocated and nothing is logged.
 */
/** Frames the audio thread renders at once (Web Audio API). */
const renderQuantum = 128;

class CaptureProcessor extends AudioWorkletProcessor {
  #samples = new Float32Array(hopFrames);
  #band: Float32Array<ArrayBuffer> | null = null;
  #filled = 0;
  #startFrame = 0;
  /** Frame after the last quantum; null before the first. */
  #nextFrame: number | null = null;
  #lost = 0;
  #closed = false;

  constructor() {
    super();
    this.port.onmessage = () => {
      this.#closed = true;
    };
  }

  process(inputs: Float32Array[][]): boolean {
    if (this.#closed) return false;
    const frame = this.#frameOfQuantum();
    const microphone = inputs[0]?.[0];
    // No channel: the stream has no data. A hop that was begun is filled with silence, so that its frames stay
    // consecutive; no new hop is begun, which the check on the page notices.
    if (!microphone && this.#filled === 0) return true;
    this.#skipMissed(frame);
    if (this.#filled === 0) this.#startFrame = frame;
    if (microphone) this.#samples.set(microphone, this.#filled);
    const frames = microphone?.length ?? Math.min(renderQuantum, hopFrames - this.#filled);
    this.#mixBand(inputs[1], frames);
    this.#filled += frames;
    if (this.#filled >= hopFrames) this.#handOver();
    return true;
  }

  /**
   * Chromium leaves `currentFrame` as it was for one quantum where the page is just then changing the audio graph: the
   * next one stands two quanta on, and no sound is missing between them. The clock of rendered frames never goes back, so
   * that a quantum begins where the one before it ended, or later.
   */
  #frameOfQuantum(): number {
    const frame = Math.max(currentFrame, this.#nextFrame ?? 0);
    this.#nextFrame = frame + renderQuantum;
    return frame;
  }

  /** Frames for which the audio thread was not called become silence, so that later frames keep their place. */
  #skipMissed(frame: number): void {
    if (this.#filled === 0) return;
    const missed = Math.max(0, frame - this.#startFrame - this.#filled);
    this.#lost += Math.min(missed, hopFrames - this.#filled);
    this.#filled += missed;
    if (this.#filled >= hopFrames) this.#handOver();
  }

  #mixBand(channels: Float32Array[] | undefined, frames: number): void {
    if (!channels || channels.length === 0) return;
    this.#band ??= new Float32Array(hopFrames);
    for (const channel of channels) {
      for (let i = 0; i < frames; i++) this.#band[this.#filled + i]! += channel[i]! / channels.length;
    }
  }

  #handOver(): void {
    const [samples, band] = [this.#samples, this.#band];
    const transfer = band ? [samples.buffer, band.buffer] : [samples.buffer];
    const lost = this.#lost > 0 ? { lostFrames: this.#lost } : {};
    this.port.postMessage({ startFrame: this.#startFrame, samples, band, ...lost }, transfer);
    this.#lost = 0;
    this.#samples = new Float32Array(hopFrames);
    this.#band = null;
    this.#filled = 0;
  }
}

registerProcessor('landfall-capture', CaptureProcessor);
