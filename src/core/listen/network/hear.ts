import { Resampler } from '../../base/resample.ts';
import { SoundMemory } from '../frames/memory.ts';
import { NewestFrame } from '../live/newest.ts';
import { DC_POLE, INNER_RATE, PASS_HZ, STOP_HZ } from '../tuning/frames.ts';
import { Decoder } from './decoder.ts';
import { Features } from './features.ts';
import { Network } from './network.ts';

/** Room for what the resampler writes at once. */
const BUFFER = 8192;

/** Sound at any rate → notes, streaming: the inner rate, features, network, decoder. All buffers are made here. */
export class Hearing {
  readonly #memory = new SoundMemory();
  readonly decoder = new Decoder((from, length) => this.#memory.partialsAt(from, length));
  readonly newest = new NewestFrame();
  readonly #resampler: Resampler;
  readonly #features = new Features();
  readonly #network = new Network();
  readonly #buffer = new Float32Array(BUFFER);
  readonly #onFrame = (): void => {
    this.#network.step(this.#features.bins, this.#features.globals);
    this.decoder.levels.push(this.#features.levelDb, this.#features.brightDb);
    this.decoder.push(this.#network.onset, this.#network.sounding, this.#features.correlation);
  };
  #lastIn = 0;
  #lastOut = 0;

  /** Samples come at `sampleRate` Hz. */
  constructor(sampleRate: number) {
    this.#resampler = new Resampler(sampleRate, INNER_RATE, PASS_HZ, STOP_HZ);
  }

  push(samples: Float32Array): void {
    const largest = this.#resampler.largestInput;
    for (let from = 0; from < samples.length; from += largest) {
      const to = Math.min(samples.length, from + largest);
      const written = this.#resampler.process(samples, from, to, this.#buffer, 0);
      this.#removeOffset(written);
      const fresh = this.#buffer.subarray(0, written);
      this.newest.push(fresh);
      this.#memory.push(fresh);
      this.#features.push(this.#buffer, written, this.#onFrame);
    }
  }

  /** A constant offset out, by one pole at 20 Hz. */
  #removeOffset(count: number): void {
    let lastIn = this.#lastIn;
    let lastOut = this.#lastOut;
    for (let i = 0; i < count; i++) {
      const x = this.#buffer[i]!;
      lastOut = x - lastIn + DC_POLE * lastOut;
      lastIn = x;
      this.#buffer[i] = lastOut;
    }
    this.#lastIn = lastIn;
    this.#lastOut = lastOut;
  }
}
