import kernel from './kernel.json' with { type: 'json' };
import { GLOBALS, PITCHES, ROW } from './settings.ts';
import { instanceOf } from './wasm.ts';
import weights from './weights.json' with { type: 'json' };

interface Kernel {
  readonly memory: { readonly buffer: ArrayBuffer };
  weightsAt(): number;
  weightsLength(): number;
  inputAt(): number;
  globalAt(): number;
  outputAt(): number;
  reset(): void;
  step(): void;
}

/**
 * The trained network, frame after frame. It looks alike at every semitone (a note's harmonics lie in the same places above
 * it) and only back in time; its arithmetic is a WebAssembly module built from fixtures/network/kernel.as.
 */
export class Network {
  /** Of the newest frame, by semitone: how likely it is that a note begins in it, and that one sounds. 0 to 1. */
  readonly onset = new Float32Array(PITCHES);
  readonly sounding = new Float32Array(PITCHES);
  readonly #kernel: Kernel;
  readonly #input: Float32Array;
  readonly #globals: Float32Array;
  readonly #output: Float32Array;

  constructor() {
    this.#kernel = instanceOf<Kernel>(kernel);
    const { buffer } = this.#kernel.memory;
    if (weights.length !== this.#kernel.weightsLength())
      throw new Error(`the kernel takes ${this.#kernel.weightsLength()} weights, not ${weights.length}`);
    new Float32Array(buffer, this.#kernel.weightsAt(), weights.length).set(weights);
    this.#kernel.reset();
    this.#input = new Float32Array(buffer, this.#kernel.inputAt(), 4 * ROW);
    this.#globals = new Float32Array(buffer, this.#kernel.globalAt(), 3 * GLOBALS);
    this.#output = new Float32Array(buffer, this.#kernel.outputAt(), 2 * PITCHES);
  }

  /** Takes one frame; `bins` are four padded rows, `globals` the numbers beside them (see Features). */
  step(bins: Float32Array, globals: Float32Array): void {
    this.#input.set(bins);
    this.#globals.copyWithin(GLOBALS, 0, 2 * GLOBALS);
    this.#globals.set(globals);
    this.#kernel.step();
    for (let p = 0; p < PITCHES; p++) {
      this.onset[p] = 1 / (1 + Math.exp(-this.#output[p]!));
      this.sounding[p] = 1 / (1 + Math.exp(-this.#output[PITCHES + p]!));
    }
  }
}
