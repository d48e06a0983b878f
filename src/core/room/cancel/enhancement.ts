/** −80 dB of full scale. */
const SILENT_POWER = 1e-8;
const STRETCH_SECONDS = 0.25;
const TINY = 1e-20;

/**
 * Echo return loss enhancement (ITU-T G.168): the level before the canceller over the level behind it, in dB. It says
 * something only where the near end, the player, rests: told is what nineteen in twenty stretches of a quarter
 * second stay below.
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

  /** The same samples before and behind the canceller. */
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

  /** 0 before there is anything to tell. */
  get db(): number {
    const sorted = this.#falls.toSorted((a, b) => a - b);
    return sorted[Math.floor(0.95 * sorted.length)] ?? 0;
  }
}
