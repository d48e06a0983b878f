/** Removes the band from the microphone while somebody plays, by a path that a sweep has measured. */
import { DelayWatch, REACH, type WatchedDelay } from './delay-watch.ts';
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

/** A quarter of a millisecond in samples: what is less, the follower finds by itself, as it does the drift of the clocks. */
const LEAST_JUMP = 3;
/** Two windows agree on a delay within this, and within half of the jump. */
const AGREEMENT = 24;
/**
 * A jump of less than this, 4 ms in samples, may be a laptop that was moved by a metre: another path, which is learned by the
 * one before. Then its peak is lower, 0.5 to 0.65 of what it was, and 0.8 to 0.9 where the same path comes later.
 */
const SMALL_JUMP = 48;
const SAME_PATH = 0.75;
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

/** The same path behind a delay that is longer by so many seconds, to the nearest sample. */
export const laterPath = ({ heldBackSamples, taps }: RoomPath, seconds: number): RoomPath => ({
  heldBackSamples: Math.max(LEAST_HELD_BACK, heldBackSamples + Math.round(seconds * ROOM_HZ)),
  taps,
});

/**
 * Takes microphone and band at any sample rate; gives the microphone without the band at ROOM_HZ, at most 22 ms later.
 */
export class BandRemover {
  readonly #microphone: ToRoomRate;
  readonly #band: ToRoomRate;
  readonly #follower: BandFollower;
  readonly #watch: DelayWatch;
  /** The last window in which the band was heard clearly. */
  #watched: WatchedDelay | null = null;
  /** The usual height of its peak. */
  #height = 0;
  /** All jumps so far, samples; null until the band was heard clearly. */
  #jumped: number | null = null;
  readonly #enhancement = new Enhancement(ROOM_HZ);
  readonly #postfilter = new Postfilter(BLOCK_SIZE);
  #early = BLOCK_SIZE;
  #waiting = new Float32Array(0);
  #waitingBand = new Float32Array(0);

  constructor(sampleRate: number, path: RoomPath) {
    this.#microphone = new ToRoomRate(sampleRate);
    this.#band = new ToRoomRate(sampleRate);
    this.#watch = new DelayWatch(path);
    this.#follower = new BandFollower({
      blockSize: BLOCK_SIZE,
      partitions: PARTITIONS,
      path: [path.taps],
      heldBackSamples: path.heldBackSamples,
      delayDoubt: START_DOUBT,
      mostJumpSamples: REACH,
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

  /**
   * By how much the delay of now differs from that of the path, seconds, slow drift left out; null until the band was
   * heard clearly.
   */
  get delayChangeSeconds(): number | null {
    return this.#jumped === null ? null : this.#jumped / ROOM_HZ;
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
    const found = this.#watch.push(microphone, band, this.#follower.shiftSamples);
    if (found === null) return;
    const before = this.#watched;
    this.#watched = found;
    const off = found.laterSamples - this.#follower.shiftSamples;
    const jumps = found.isElsewhere && Math.abs(off) > LEAST_JUMP && this.#lasts(found, before, off);
    if (jumps) this.#follower.jumped(off);
    this.#jumped = (this.#jumped ?? 0) + (jumps ? off : 0);
    if (jumps || !found.isElsewhere) this.#height = 0.5 * (this.#height || found.height) + 0.5 * found.height;
  }

  /**
   * Whether the band is to be expected there from now on: the browser opened its devices with another delay, or has slipped
   * since. The first window is the count-in, when nobody plays, and counts at once; later ones count when two agree.
   */
  #lasts(found: WatchedDelay, before: WatchedDelay | null, off: number): boolean {
    if (before === null) return true;
    const apart = Math.abs(found.laterSamples - before.laterSamples);
    const isSamePath = (found.height + before.height) / 2 > SAME_PATH * this.#height;
    return apart < Math.min(AGREEMENT, Math.abs(off) / 2) && (isSamePath || Math.abs(off) > SMALL_JUMP);
  }
}

function joined(a: Float32Array, b: Float32Array): Float32Array<ArrayBuffer> {
  const both = new Float32Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
