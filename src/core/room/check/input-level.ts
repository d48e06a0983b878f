/** Is the microphone turned up right: peak, floor and clipping, in a player's words. */

export type LevelVerdict = 'silent' | 'turn up' | 'good' | 'too hot';

export interface LevelReading {
  /** Loudest sample of the last seconds, dBFS. */
  readonly peakDb: number;
  /** What the room makes while nobody plays, dBFS (root mean square). */
  readonly floorDb: number;
  /** Samples at full scale in the last seconds. */
  readonly clipped: number;
  readonly verdict: LevelVerdict;
}

/** So much is looked back on: a phrase. */
const MEMORY_SECONDS = 4;
const BLOCK_SECONDS = 0.05;
const FULL_SCALE = 0.99;
/** A few samples at full scale are no clipping that anybody hears. */
const CLIPPED_SAMPLES = 4;
/** Quieter than this is nobody playing. */
const SILENT_DB = -55;
/** A peak below this leaves less than 24 dB over a noisy room at −50 once a note has decayed. */
const QUIET_DB = -26;

interface Block {
  readonly peak: number;
  readonly power: number;
  readonly clipped: number;
}

/** Samples in pieces of any length; what they say about the level. */
export class InputLevel {
  readonly #frames: number;
  #blocks: readonly Block[] = [];
  #peak = 0;
  #sum = 0;
  #clipped = 0;
  #filled = 0;

  constructor(sampleRate: number) {
    this.#frames = Math.round(BLOCK_SECONDS * sampleRate);
  }

  push(samples: Float32Array): void {
    for (const x of samples) {
      const size = Math.abs(x);
      if (size > this.#peak) this.#peak = size;
      if (size >= FULL_SCALE) this.#clipped++;
      this.#sum += x * x;
      if (++this.#filled < this.#frames) continue;
      const block = { peak: this.#peak, power: this.#sum / this.#frames, clipped: this.#clipped };
      this.#blocks = [...this.#blocks.slice(1 - MEMORY_SECONDS / BLOCK_SECONDS), block];
      this.#peak = this.#sum = this.#clipped = this.#filled = 0;
    }
  }

  get reading(): LevelReading {
    const peakDb = 20 * Math.log10(Math.max(1e-6, ...this.#blocks.map(({ peak }) => peak)));
    // The quietest tenth: between two notes the room is alone.
    const powers = this.#blocks.map(({ power }) => power).sort((a, b) => a - b);
    const floorDb = 10 * Math.log10(Math.max(1e-12, powers[Math.floor(powers.length / 10)] ?? 0));
    const clipped = this.#blocks.reduce((sum, block) => sum + block.clipped, 0);
    return { peakDb, floorDb, clipped, verdict: verdictOf(peakDb, clipped) };
  }
}

function verdictOf(peakDb: number, clipped: number): LevelVerdict {
  if (clipped > CLIPPED_SAMPLES) return 'too hot';
  if (peakDb < SILENT_DB) return 'silent';
  return peakDb < QUIET_DB ? 'turn up' : 'good';
}
