/**
 * Collects what is played and appends it every half second; stops, and calls back once with the problem, when it can't.
 */
import type { TakeDetails } from '../core/take/details-schema.ts';
import type { SoundWriter } from './sounds.ts';
import type { Problem } from '../core/words/problem.ts';
import { DetailChanges } from './take-details.ts';

/**
 * At most this much is lost when the page is closed: each append flushes the file, so that not every hop is appended
 * alone.
 */
export const SECONDS_BETWEEN_APPENDS = 0.5;

export class TakeWriter {
  readonly id: string;
  readonly #sound: SoundWriter;
  readonly #band: SoundWriter | null;
  readonly #pending: Int16Array;
  /** What the band played on the pending frames. */
  readonly #pendingBand: Int16Array;
  readonly #release: () => void;
  readonly #onFull: (problem: Problem) => void;
  readonly #onFinish: (frames: number) => Promise<void>;
  readonly #changes: DetailChanges;
  #filled = 0;
  #frames = 0;
  #stopped: Problem | null = null;
  /** Resolves when the last append is done: appends follow one another. */
  #tail: Promise<void> = Promise.resolve();

  constructor(ports: {
    readonly id: string;
    readonly sound: SoundWriter;
    /** Where the band goes that is taken out of the sound; null where none is. */
    readonly band: SoundWriter | null;
    readonly sampleRate: number;
    /** Called once when nothing more can be written. */
    readonly onFull: (problem: Problem) => void;
    readonly onChange: (change: Partial<TakeDetails>) => Promise<void>;
    readonly onFinish: (frames: number) => Promise<void>;
    /** Lets other pages see the take. */
    readonly release: () => void;
  }) {
    this.id = ports.id;
    this.#sound = ports.sound;
    this.#band = ports.band;
    this.#pending = new Int16Array(Math.ceil(ports.sampleRate * SECONDS_BETWEEN_APPENDS));
    this.#pendingBand = new Int16Array(ports.band ? this.#pending.length : 0);
    this.#release = ports.release;
    this.#onFull = ports.onFull;
    this.#onFinish = ports.onFinish;
    this.#changes = new DetailChanges(ports.onChange);
  }

  /** Samples safe on the disk. */
  get frames(): number {
    return this.#frames;
  }

  /** @param band of the same frames, where the band is kept; null where it was silent */
  append(samples: Int16Array, band: Int16Array | null = null): void {
    for (let from = 0; from < samples.length;) {
      const count = Math.min(samples.length - from, this.#pending.length - this.#filled);
      this.#pending.set(samples.subarray(from, from + count), this.#filled);
      if (this.#band) {
        if (band) this.#pendingBand.set(band.subarray(from, from + count), this.#filled);
        else this.#pendingBand.fill(0, this.#filled, this.#filled + count);
      }
      this.#filled += count;
      from += count;
      if (this.#filled === this.#pending.length) this.#flush();
    }
  }

  /** What has become known about the take. */
  change(details: Partial<TakeDetails>): void {
    const write = this.#changes.add(details);
    if (write) this.#tail = this.#tail.then(write);
  }

  /**
   * Writes the rest and closes. Answers with the first problem, or null when the whole take is
   * safe. After a failure what reached the disk stays there, to be offered as a take that was cut off.
   */
  async finish(): Promise<Problem | null> {
    this.#flush();
    await this.#tail;
    await this.#sound.close();
    await this.#band?.close();
    if (this.#stopped === null) await this.#onFinish(this.#frames).catch(() => undefined);
    this.#release();
    return this.#stopped;
  }

  #flush(): void {
    const samples = this.#pending.slice(0, this.#filled);
    const band = this.#pendingBand.slice(0, this.#filled);
    this.#filled = 0;
    if (samples.length === 0) return;
    this.#tail = this.#tail.then(async () => {
      if (this.#stopped !== null) return;
      // The band first: a take whose last half second has a band but no sound is complete, the other way round it is
      // not.
      const kept = (await this.#band?.append(band)) ?? { ok: true };
      const written = kept.ok ? await this.#sound.append(samples) : kept;
      if (written.ok) this.#frames += samples.length;
      else {
        this.#stopped = written.problem;
        this.#onFull(written.problem);
      }
    });
  }
}
