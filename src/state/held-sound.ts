/** A sound that grows at its end, and of which the beginning can be let go once it is safe elsewhere. */
export class HeldSound {
  /** In order, without a gap, from `#from` on. */
  readonly #pieces: Int16Array[] = [];
  #from = 0;
  #frames = 0;

  /** Its whole length, what was let go included. */
  get frames(): number {
    return this.#frames;
  }

  /** How much of it stands in memory. */
  get heldFrames(): number {
    return this.#frames - this.#from;
  }

  add(piece: Int16Array): void {
    this.#pieces.push(piece);
    this.#frames += piece.length;
  }

  /** Lets go every piece that ends within the first `frames`. */
  letGo(frames: number): void {
    let pieces = 0;
    for (const { length } of this.#pieces) {
      if (this.#from + length > frames) break;
      this.#from += length;
      pieces += 1;
    }
    this.#pieces.splice(0, pieces);
  }

  /**
   * The whole sound.
   * @param safe its beginning, at least as long as what was let go
   * Throws RangeError where that is shorter.
   */
  whole(safe: Int16Array = new Int16Array(0)): Int16Array {
    if (safe.length < this.#from)
      throw new RangeError(`${this.#from} frames were let go, and ${safe.length} are given`);
    if (safe.length >= this.#frames) return safe.subarray(0, this.#frames);
    const whole = new Int16Array(this.#frames);
    whole.set(safe.subarray(0, this.#from));
    let at = this.#from;
    for (const piece of this.#pieces) {
      whole.set(piece, at);
      at += piece.length;
    }
    return whole;
  }
}
