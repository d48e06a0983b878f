/** Removes the band from the microphone while somebody plays, by a path that a sweep has measured. */
import { DelayWatch } from './delay-watch.ts';
import { Enhancement } from './enhancement.ts';
import { BandFollower, LEAST_HELD_BACK } from './follow.ts';
import type { MeasuredPath } from '../path/measure-path.ts';
import { Postfilter } from './postfilter.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ, toRoomRate, ToRoomRate } from '../align/room-rate.ts';

/** A measured path as it is stored: at ROOM_HZ, without its pure delay. */
export interface RoomPath {
  readonly heldBackSamples: number;
  /** PARTITIONS × BLOCK_SIZE taps from there on. */
  readonly taps: Float32Array<ArrayBuffer>;
}

/** 4 ms in samples: less than a slip by a browser's buffer, more than the distance of two strong reflections. */
const JUMP_SAMPLES = 48;
/** Samples by which the delay of a real loop changed between sweep and take. */
const START_DOUBT = 1;
/** Seconds of the path that are kept before its first arrival: the ringing of filters, and a reserve for drift. */
const LEAD_SECONDS = 0.003;

/** The part of a measurement that the remover needs. */
export function roomPathOf({ taps, sampleRate, delaySeconds }: MeasuredPath): RoomPath {
  const heldBackSamples = Math.max(LEAST_HELD_BACK, Math.floor((delaySeconds - LEAD_SECONDS) * ROOM_HZ));
  const slow = toRoomRate(taps, sampleRate);
  // At the lower sample rate there are fewer taps, and each must be larger for the same gain.
  const gain = sampleRate / ROOM_HZ;
  const kept = Float32Array.from(
    { length: PARTITIONS * BLOCK_SIZE },
    (_, i) => gain * (slow[heldBackSamples + i] ?? 0),
  );
  return { heldBackSamples, taps: kept };
}

/**
 * Takes microphone and band at any sample rate; gives the microphone without the band at ROOM_HZ, at most 22 ms later.
 */
export class BandRemover {
  readonly #microphone: ToRoomRate;
  readonly #band: ToRoomRate;
  readonly #follower: BandFollower;
  readonly #watch = new DelayWatch();
  /** Delay of the strongest tap of the path, for comparison with the delay watch. */
  readonly #expected: number;
  #delayChange: number | null = null;
  readonly #enhancement = new Enhancement(ROOM_HZ);
  readonly #postfilter = new Postfilter(BLOCK_SIZE);
  #early = BLOCK_SIZE;
  #waiting = new Float32Array(0);
  #waitingBand = new Float32Array(0);

  constructor(sampleRate: number, path: RoomPath) {
    this.#microphone = new ToRoomRate(sampleRate);
    this.#band = new ToRoomRate(sampleRate);
    const strongest = path.taps.reduce(
      (best, x, i) => (Math.abs(x) > Math.abs(path.taps[best]!) ? i : best),
      0,
    );
    this.#expected = path.heldBackSamples + strongest;
    this.#follower = new BandFollower({
      blockSize: BLOCK_SIZE,
      partitions: PARTITIONS,
      path: [path.taps],
      heldBackSamples: path.heldBackSamples,
      delayDoubt: START_DOUBT,
    });
  }

  /** Echo return loss enhancement so far, dB. */
  get removedDb(): number {
    return this.#enhancement.db;
  }

  get driftPpm(): number {
    return this.#follower.driftPpm;
  }

  /** Seconds by which the band now comes later than when the path was measured. */
  get laterSeconds(): number {
    return this.#follower.shiftSamples / ROOM_HZ;
  }

  /** The last measured delay minus the delay of the path, seconds; null until the band was heard clearly. */
  get delayChangeSeconds(): number | null {
    return this.#delayChange === null ? null : this.#delayChange / ROOM_HZ;
  }

  /**
   * @param microphone samples @param band of the same frames, or null where it was silent
   * @returns whole blocks; the rest follows with the next call
   */
  push(microphone: Float32Array, band: Float32Array | null): Float32Array<ArrayBuffer> {
    return this.#clear(
      this.#microphone.push(microphone),
      this.#band.push(band ?? new Float32Array(microphone.length)),
    );
  }

  /** The rest of the output. */
  finish(): Float32Array<ArrayBuffer> {
    const rest = this.#microphone.finish();
    // One more block, because the postfilter is one block behind.
    const whole = 2 * BLOCK_SIZE - ((this.#waiting.length + rest.length) % BLOCK_SIZE);
    return this.#clear(
      joined(rest, new Float32Array(whole)),
      joined(this.#band.finish(), new Float32Array(whole)),
    );
  }

  #clear(microphone: Float32Array, band: Float32Array): Float32Array<ArrayBuffer> {
    const heard = joined(this.#waiting, microphone);
    const played = joined(this.#waitingBand, band);
    const whole = heard.length - (heard.length % BLOCK_SIZE);
    const out = new Float32Array(whole);
    for (let from = 0; from < whole; from += BLOCK_SIZE) {
      const to = from + BLOCK_SIZE;
      const block = out.subarray(from, to);
      this.#follower.process(heard.subarray(from, to), [played.subarray(from, to)], block);
      this.#enhancement.add(heard.subarray(from, to), block);
      this.#postfilter.process(block, this.#follower.foretold, block);
    }
    this.#checkDelay(heard.subarray(0, whole), played.subarray(0, whole));
    this.#waiting = heard.slice(whole);
    this.#waitingBand = played.slice(whole);
    // The postfilter is a block behind: its first block lies before the take.
    const late = Math.min(whole, this.#early);
    this.#early -= late;
    return out.subarray(late);
  }

  #checkDelay(microphone: Float32Array, band: Float32Array): void {
    const delay = this.#watch.push(microphone, band);
    if (delay === null) return;
    const before = this.#delayChange;
    this.#delayChange = delay - this.#expected;
    const off = this.#delayChange - this.#follower.shiftSamples;
    // More than a reflection: the browser has slipped between input and output. The first window is the count-in, when
    // nobody plays, and counts at once; later ones count when two agree.
    const lasts = before === null || Math.abs(this.#delayChange - before) < JUMP_SAMPLES / 2;
    if (lasts && Math.abs(off) > JUMP_SAMPLES) this.#follower.jumped(off);
  }
}

function joined(a: Float32Array, b: Float32Array): Float32Array<ArrayBuffer> {
  const both = new Float32Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
