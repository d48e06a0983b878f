/**
 * What the headers of a Vorbis stream say of its time (Vorbis I, sections 4.2.2 and 4.2.4): rate, channels, the lengths
 * of short and long blocks, and which modes are long. With these, how long a packet sounds is known without decoding it.
 */
import { hasMark, viewOf } from '../bytes/bytes.ts';

export interface VorbisIdentification {
  readonly sampleRate: number;
  readonly channels: number;
  /** Frames of a short and of a long block. */
  readonly blockFrames: readonly [short: number, long: number];
}

const IDENTIFICATION_BYTES = 30;
const LEAST_BLOCK_BITS = 6;
const MOST_BLOCK_BITS = 13;

/** The first packet of a stream; null where it is none, or says what no stream can. */
export function vorbisIdentification(packet: Uint8Array): VorbisIdentification | null {
  if (packet.length < IDENTIFICATION_BYTES || !hasMark(packet, '\x01vorbis')) return null;
  const [short, long] = [packet[28]! & 15, packet[28]! >> 4];
  if (short < LEAST_BLOCK_BITS || long > MOST_BLOCK_BITS || short > long) return null;
  return {
    channels: packet[11]!,
    sampleRate: viewOf(packet).getUint32(12, true),
    blockFrames: [2 ** short, 2 ** long],
  };
}

const MOST_MODES = 64;
/** Block flag, window type, transform type, mapping. */
const MODE_BITS = 41;
const COUNT_BITS = 6;

/**
 * Whether each mode is of long blocks. The modes end the setup header, behind parts that are long to read, so they are
 * read from its end: the framing bit, then modes (whose two types are always 0) back to the number that counts them.
 * @returns null where no such list stands there
 */
export function longModes(setup: Uint8Array): readonly boolean[] | null {
  if (!hasMark(setup, '\x05vorbis')) return null;
  const bitAt = (place: number) => (setup[place >> 3]! >> (place & 7)) & 1;
  const numberAt = (place: number, bits: number) => {
    let value = 0;
    for (let bit = bits - 1; bit >= 0; bit--) value = value * 2 + bitAt(place + bit);
    return value;
  };
  let end = setup.length * 8 - 1;
  while (end > 0 && bitAt(end) === 0) end--;
  let found: readonly boolean[] | null = null;
  const flags: boolean[] = [];
  for (let at = end - MODE_BITS; at >= 7 * 8 + COUNT_BITS && flags.length < MOST_MODES; at -= MODE_BITS) {
    if (numberAt(at + 1, 32) !== 0 || numberAt(at + 33, 8) >= MOST_MODES) break;
    flags.unshift(bitAt(at) === 1);
    if (numberAt(at - COUNT_BITS, COUNT_BITS) + 1 === flags.length) found = [...flags];
  }
  return found;
}

export interface VorbisBlock {
  readonly frames: number;
  /** A decoder that begins with it leaves out nothing of the block behind it. */
  readonly mayBegin: boolean;
  /** From its middle to where it begins to fade into a shorter block. */
  readonly framesPastMiddle: number;
}

/** Reads the beginning of sound packets: how long each block is. null for a packet that is no sound. */
export function blockReader(
  { blockFrames: [short, long] }: VorbisIdentification,
  modes: readonly boolean[],
): (packet: Uint8Array) => VorbisBlock | null {
  const modeBits = Math.ceil(Math.log2(modes.length));
  return (packet) => {
    if (packet.length === 0 || (packet[0]! & 1) !== 0) return null;
    const bits = packet[0]! | ((packet[1] ?? 0) << 8);
    const isLong = modes[(bits >> 1) & (2 ** modeBits - 1)];
    if (isLong === undefined) return null;
    // A long block says whether the blocks before and behind it are long.
    const nextIsLong = ((bits >> (modeBits + 2)) & 1) === 1;
    const mayBegin = !isLong || nextIsLong;
    return { frames: isLong ? long : short, mayBegin, framesPastMiddle: mayBegin ? 0 : (long - short) / 4 };
  };
}
