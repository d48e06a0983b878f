/** MD5 (RFC 1321), piece by piece: for check sums that files carry, not against anybody's malice. */

const BLOCK_BYTES = 64;

/** Left turns of the four rounds (section 3.4). */
const TURNS = [
  [7, 12, 17, 22],
  [5, 9, 14, 20],
  [4, 11, 16, 23],
  [6, 10, 15, 21],
] as const;
/** Which word of the block each step of a round takes: a multiple of the step, and where it begins. */
const WORDS = [
  [1, 0],
  [5, 1],
  [3, 5],
  [7, 0],
] as const;
/** What each step adds: the first 32 bits behind the point of the sine of its number. */
const SINES = Int32Array.from({ length: BLOCK_BYTES }, (_, i) =>
  Math.floor(2 ** 32 * Math.abs(Math.sin(i + 1))),
);
const TURN_OF_STEP = Uint8Array.from({ length: BLOCK_BYTES }, (_, i) => TURNS[i >> 4]![i & 3]!);
const WORD_OF_STEP = Uint8Array.from({ length: BLOCK_BYTES }, (_, i) => {
  const [times, from] = WORDS[i >> 4]!;
  return (times * i + from) & 15;
});

export interface Md5 {
  update(bytes: Uint8Array): void;
  /** The sum of all that came, in hexadecimal; ends it. */
  hex(): string;
}

export function md5(): Md5 {
  const state = Int32Array.of(0x6745_2301, 0xefcd_ab89, 0x98ba_dcfe, 0x1032_5476);
  const words = new Int32Array(16);
  /** A block that is not full yet. */
  const begun = new Uint8Array(BLOCK_BYTES);
  let total = 0;

  function block(bytes: Uint8Array, from: number): void {
    for (let k = 0, at = from; k < 16; k++, at += 4)
      words[k] = bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24);
    let a = state[0]!;
    let b = state[1]!;
    let c = state[2]!;
    let d = state[3]!;
    for (let step = 0; step < BLOCK_BYTES; step++) {
      const mixed =
        step < 16
          ? (b & c) | (~b & d)
          : step < 32
            ? (b & d) | (c & ~d)
            : step < 48
              ? b ^ c ^ d
              : c ^ (b | ~d);
      const sum = (a + mixed + words[WORD_OF_STEP[step]!]! + SINES[step]!) | 0;
      const turn = TURN_OF_STEP[step]!;
      a = d;
      d = c;
      c = b;
      b = (b + ((sum << turn) | (sum >>> (32 - turn)))) | 0;
    }
    state[0]! += a;
    state[1]! += b;
    state[2]! += c;
    state[3]! += d;
  }

  function update(bytes: Uint8Array): void {
    let at = 0;
    const held = total % BLOCK_BYTES;
    total += bytes.length;
    if (held > 0) {
      at = Math.min(BLOCK_BYTES - held, bytes.length);
      begun.set(bytes.subarray(0, at), held);
      if (held + at < BLOCK_BYTES) return;
      block(begun, 0);
    }
    for (; at + BLOCK_BYTES <= bytes.length; at += BLOCK_BYTES) block(bytes, at);
    begun.set(bytes.subarray(at));
  }

  return {
    update,
    hex() {
      const length = total;
      const blanks = ((BLOCK_BYTES * 2 - 9 - (length % BLOCK_BYTES)) % BLOCK_BYTES) + 1;
      const tail = new Uint8Array(blanks + 8);
      tail[0] = 0x80;
      const view = new DataView(tail.buffer);
      view.setUint32(blanks, (length * 8) >>> 0, true);
      view.setUint32(blanks + 4, Math.floor(length / 2 ** 29), true);
      update(tail);
      return hexOf(new Uint8Array(state.buffer));
    },
  };
}

/** Two digits a byte. The bytes of a word lie in their order on every machine that a browser or Node runs on. */
export const hexOf = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
