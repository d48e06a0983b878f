/** The band out of the microphone while somebody plays, by a path that a sweep has measured. */
import { DelayWatch } from './delay-watch.ts';
import { Enhancement } from './enhancement.ts';
import { BandFollower, LEAST_HELD_BACK } from './follow.ts';
import type { MeasuredPath } from '../path/measure-path.ts';
import { Postfilter } from './postfilter.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ, toRoomRate, ToRoomRate } from '../align/room-rate.ts';

/** A measured path as it is kept: at ROOM_HZ, its pure delay taken off. */
export interface RoomPath {
  readonly heldBackSamples: number;
  /** PARTITIONS × BLOCK_SIZE taps from there on. */
  readonly taps: Float32Array<ArrayBuffer>;
}

/** 4 ms: less than a jump of a browser's buffer, more than two strong reflections lie apart. */
const JUMP_SAMPLES = 48;
/** From the sweep to the take a true loop moved by up to two samples. */
const START_DOUBT = 1;
/** So much of the path before its first arrival is kept: a filter's ringing, and room for the clock to move. */
const LEAD_SECONDS = 0.003;

/** What of a measurement the remover needs. */
export function roomPathOf({ taps, sampleRate, delaySeconds }: MeasuredPath): RoomPath {
  const heldBackSamples = Math.max(LEAST_HELD_BACK, Math.floor((delaySeconds - LEAD_SECONDS) * ROOM_HZ));
  const slow = toRoomRate(taps, sampleRate);
  // Fewer taps must each weigh more for the same gain.
  const gain = sampleRate / ROOM_HZ;
  const kept = Float32Array.from(
    { length: PARTITIONS * BLOCK_SIZE },
    (_, i) => gain * (slow[heldBackSamples + i] ?? 0),
  );
  return { heldBackSamples, taps: kept };
}

/** Microphone and band at any rate in, the microphone without the band at ROOM_HZ out, at most 22 ms later. */
export class BandRemover {
  readonly #microphone: ToRoomRate;
  readonly #band: ToRoomRate;
  readonly #follower: BandFollower;
  readonly #watch = new DelayWatch();
  /** Where the path is strongest, as the watch sees it. */
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

  /** The delay as last measured against the path's, seconds; null until the band was heard clearly. */
  get delayChangeSeconds(): number | null {
    return this.#delayChange === null ? null : this.#delayChange / ROOM_HZ;
  }

  /**
   * @param microphone samples @param band of the same frames, or null where it was silent
   * @returns whole blocks; the rest waits for the next call
   */
  push(microphone: Float32Array, band: Float32Array | null): Float32Array<ArrayBuffer> {
    return this.#clear(
      this.#microphone.push(microphone),
      this.#band.push(band ?? new Float32Array(microphone.length)),
    );
  }

  /** What still waited. */
  finish(): Float32Array<ArrayBuffer> {
    const rest = this.#microphone.finish();
    // One block more, for what the postfilter still holds.
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
    // No reflection of a few samples: the browser has slipped between input and output. The first window is the
    // count-in, when nobody plays, and counts at once; later ones count when two agree.
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
