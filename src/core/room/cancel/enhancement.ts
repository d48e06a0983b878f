/** Power below which a stretch counts as silent: −80 dB of full scale. */
const SILENT_POWER = 1e-8;
const STRETCH_SECONDS = 0.25;
const TINY = 1e-20;

/**
 * Echo return loss enhancement (ITU-T G.168): the level before the canceller minus the level after it, in dB. It is
 * meaningful only where the near end, the player, rests: the value reported is the 95th percentile over stretches of a
 * quarter second.
 */
export class Enhancement {
  readonly #stretch: number;
  readonly #falls: number[] = [];
  #before = TINY;
  #after = TINY;
  #filled = 0;

  constructor(sampleRate: number) {
    this.#stretch = Math.round(STRETCH_SECONDS * sampleRate);
  }

  /** The same samples before and after the canceller. */
  add(before: Float32Array, after: Float32Array): void {
    for (let i = 0; i < before.length; i++) {
      this.#before += before[i]! * before[i]!;
      this.#after += after[i]! * after[i]!;
      if (++this.#filled < this.#stretch) continue;
      if (this.#before > SILENT_POWER * this.#stretch) {
        this.#falls.push(10 * Math.log10(this.#before / this.#after));
      }
      this.#before = this.#after = TINY;
      this.#filled = 0;
    }
  }

  /** 0 until there is a stretch to measure. */
  get db(): number {
    const sorted = this.#falls.toSorted((a, b) => a - b);
    return sorted[Math.floor(0.95 * sorted.length)] ?? 0;
  }
}
