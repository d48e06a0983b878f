/** Bits of a byte array, most significant first, as FLAC writes them. Reading past the end throws `OutOfBits`. */

/** The bytes at hand end within the frame: there may be more of them in the file. */
export class OutOfBits extends Error {}

export interface BitReader {
  /** Position in whole bytes; only meaningful after `align`. */
  byteAt(): number;
  /** Goes on to the next whole byte. */
  align(): void;
  /** An unsigned number of 0 to 33 bits. */
  unsigned(bits: number): number;
  /** A number in two's complement, of 0 to 33 bits. */
  signed(bits: number): number;
  /** The number of zeros before the next one. */
  unary(): number;
}

export function bitReader(bytes: Uint8Array, startByte = 0): BitReader {
  // `cache` holds the next `cached` bits (at most 32 of them, so that it stays a small integer for the engine).
  let next = startByte;
  let cache = 0;
  let cached = 0;

  function unsigned(bits: number): number {
    if (bits > 24) {
      const high = unsigned(bits - 16);
      return high * 65_536 + unsigned(16);
    }
    while (cached < bits) {
      if (next >= bytes.length) throw new OutOfBits();
      cache = ((cache << 8) | bytes[next++]!) >>> 0;
      cached += 8;
    }
    cached -= bits;
    const value = (cache >>> cached) & ((1 << bits) - 1);
    cache &= (1 << cached) - 1;
    return value;
  }

  return {
    byteAt: () => next - (cached >> 3),
    align() {
      cached -= cached % 8;
      cache &= (1 << cached) - 1;
    },
    unsigned,
    signed(bits) {
      if (bits === 0) return 0;
      const value = unsigned(bits);
      return value >= 2 ** (bits - 1) ? value - 2 ** bits : value;
    },
    unary() {
      let zeros = 0;
      for (;;) {
        if (cached === 0) {
          if (next >= bytes.length) throw new OutOfBits();
          cache = bytes[next++]!;
          cached = 8;
        }
        if (cache === 0) {
          zeros += cached;
          cached = 0;
          continue;
        }
        const leading = Math.clz32(cache) - (32 - cached);
        zeros += leading;
        cached -= leading + 1;
        cache &= (1 << cached) - 1;
        return zeros;
      }
    },
  };
}
