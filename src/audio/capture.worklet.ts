/**
 * Runs on the audio thread: gathers the microphone (input 0, channel 0) and, where it is connected, the band
 * (input 1, mixed to mono) into hops, and hands each over with the frame at which it began. A transfer gives the
 * buffer away, so each hop takes one new buffer; nothing else is allocated and nothing is logged.
 */
const hopFrames = 2048;

class CaptureProcessor extends AudioWorkletProcessor {
  #samples = new Float32Array(hopFrames);
  #band: Float32Array<ArrayBuffer> | null = null;
  #filled = 0;
  #startFrame = 0;
  #closed = false;

  constructor() {
    super();
    this.port.onmessage = () => {
      this.#closed = true;
    };
  }

  process(inputs: Float32Array[][]): boolean {
    if (this.#closed) return false;
    const microphone = inputs[0]?.[0];
    // No channel: the microphone's stream has nothing to say, and silence would be a lie.
    if (!microphone) return true;
    if (this.#filled === 0) this.#startFrame = currentFrame;
    this.#samples.set(microphone, this.#filled);
    this.#mixBand(inputs[1], microphone.length);
    this.#filled += microphone.length;
    if (this.#filled >= hopFrames) this.#handOver();
    return true;
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
    this.port.postMessage({ startFrame: this.#startFrame, samples, band }, transfer);
    this.#samples = new Float32Array(hopFrames);
    this.#band = null;
    this.#filled = 0;
  }
}

registerProcessor('landfall-capture', CaptureProcessor);
