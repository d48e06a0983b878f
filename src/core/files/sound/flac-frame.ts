/**
 * One frame of FLAC (RFC 9639, section 9). Written from the standard, because the decoders on the registry
 * carry LGPL parts. All sums stay below 2^53, so plain numbers are exact.
 */
import { bitReader, type BitReader } from '../bytes/bit-reader.ts';

export interface FlacStreamInfo {
  readonly sampleRate: number;
  readonly channels: number;
  readonly bitsPerSample: number;
  readonly maxBlockFrames: number;
  /** Length of the longest frame in bytes, 0 where the encoder did not say. */
  readonly maxFrameBytes: number;
  /** Null where the encoder did not know. */
  readonly totalFrames: number | null;
  /** The check sum of all samples, MD5 in hexadecimal; null where the encoder did not know it. */
  readonly soundSum: string | null;
}

export interface FlacFrameHeader {
  readonly blockFrames: number;
  /** Position of the block's first frame in the recording. */
  readonly firstFrame: number;
  readonly sampleRate: number;
  readonly channels: number;
  readonly stereo: 'independent' | 'left-side' | 'side-right' | 'mid-side';
  readonly bitsPerSample: number;
  readonly headerBytes: number;
}

export interface FlacFrame {
  readonly header: FlacFrameHeader;
  /** Whole numbers as recorded, a channel an array. */
  readonly samples: readonly Float64Array[];
  readonly bytes: number;
}

/** The frame does not follow the format, or its check sum is wrong. */
export class DamagedFrame extends Error {}

/** Table of the cyclic check sums the format uses: polynomials 0x07 over 8 bits and 0x8005 over 16. */
function checkTable(bits: 8 | 16, polynomial: number): Uint16Array {
  const top = 1 << (bits - 1);
  const mask = bits === 8 ? 0xff : 0xffff;
  return Uint16Array.from({ length: 256 }, (_, byte) => {
    let sum = byte << (bits - 8);
    for (let k = 0; k < 8; k++) sum = ((sum << 1) ^ (sum & top ? polynomial : 0)) & mask;
    return sum;
  });
}
const CHECK_8 = checkTable(8, 0x07);
const CHECK_16 = checkTable(16, 0x8005);

const check8 = (bytes: Uint8Array) => bytes.reduce((sum, byte) => CHECK_8[sum ^ byte]!, 0);
function check16(bytes: Uint8Array): number {
  let sum = 0;
  for (const byte of bytes) sum = ((sum << 8) & 0xffff) ^ CHECK_16[(sum >> 8) ^ byte]!;
  return sum;
}

const RATES = [88_200, 176_400, 192_000, 8000, 16_000, 22_050, 24_000, 32_000, 44_100, 48_000, 96_000];
const SAMPLE_BITS = [null, 8, 12, null, 16, 20, 24, 32] as const;
const STEREO = ['left-side', 'side-right', 'mid-side'] as const;

/** The coded number at the head of a frame: like UTF-8, stretched to 36 bits. */
function codedNumber(bits: BitReader): number {
  const lead = bits.unsigned(8);
  if (lead < 0x80) return lead;
  const extra = Math.clz32(~(lead << 24)) - 1;
  if (extra < 1 || extra > 6) throw new DamagedFrame();
  let value = lead & (0x3f >> extra);
  for (let k = 0; k < extra; k++) {
    const next = bits.unsigned(8);
    if (next >> 6 !== 2) throw new DamagedFrame();
    value = value * 64 + (next & 0x3f);
  }
  return value;
}

/** Reads a frame's header at the beginning of `bytes`. */
export function flacFrameHeader(bytes: Uint8Array, info: FlacStreamInfo): FlacFrameHeader {
  const bits = bitReader(bytes);
  if (bits.unsigned(15) !== 0x7ffc) throw new DamagedFrame();
  const variable = bits.unsigned(1) === 1;
  const sizeCode = bits.unsigned(4);
  const rateCode = bits.unsigned(4);
  const channelCode = bits.unsigned(4);
  const bitsCode = bits.unsigned(3);
  if (sizeCode === 0 || rateCode === 15 || channelCode > 10 || bitsCode === 3 || bits.unsigned(1) !== 0)
    throw new DamagedFrame();
  const number = codedNumber(bits);
  const blockFrames =
    sizeCode === 1
      ? 192
      : sizeCode < 6
        ? 576 << (sizeCode - 2)
        : sizeCode < 8
          ? bits.unsigned(sizeCode === 6 ? 8 : 16) + 1
          : 256 << (sizeCode - 8);
  const sampleRate =
    rateCode === 0
      ? info.sampleRate
      : rateCode < 12
        ? RATES[rateCode - 1]!
        : rateCode === 12
          ? bits.unsigned(8) * 1000
          : bits.unsigned(16) * (rateCode === 14 ? 10 : 1);
  const checked = bytes.subarray(0, bits.byteAt());
  if (bits.unsigned(8) !== check8(checked)) throw new DamagedFrame();
  return {
    blockFrames,
    // With a fixed block size every block but the last has the size that the stream info names.
    firstFrame: variable ? number : number * info.maxBlockFrames,
    sampleRate,
    channels: channelCode < 8 ? channelCode + 1 : 2,
    stereo: channelCode < 8 ? 'independent' : STEREO[channelCode - 8]!,
    bitsPerSample: SAMPLE_BITS[bitsCode] ?? info.bitsPerSample,
    headerBytes: bits.byteAt(),
  };
}

/** Rice-coded differences (section 9.2.7) into `samples` from `order` on. */
function readResidual(bits: BitReader, samples: Float64Array, order: number): void {
  const method = bits.unsigned(2);
  if (method > 1) throw new DamagedFrame();
  const parameterBits = method === 0 ? 4 : 5;
  const escape = (1 << parameterBits) - 1;
  const partitions = 1 << bits.unsigned(4);
  const length = samples.length / partitions;
  if (!Number.isInteger(length) || length < order) throw new DamagedFrame();
  let at = order;
  for (let partition = 1; partition <= partitions; partition++) {
    const parameter = bits.unsigned(parameterBits);
    const end = partition * length;
    if (parameter === escape) {
      const width = bits.unsigned(5);
      while (at < end) samples[at++] = bits.signed(width);
    } else {
      const scale = 2 ** parameter;
      while (at < end) {
        const folded = bits.unary() * scale + bits.unsigned(parameter);
        samples[at++] = folded % 2 === 0 ? folded / 2 : -(folded + 1) / 2;
      }
    }
  }
}

/** Fixed predictors (section 9.2.5): differences of order 0 to 4, undone. */
const FIXED = [[], [1], [2, -1], [3, -3, 1], [4, -6, 4, -1]] as const;

function predict(samples: Float64Array, coefficients: readonly number[], shift: number): void {
  const order = coefficients.length;
  const scale = 2 ** shift;
  for (let k = order; k < samples.length; k++) {
    let sum = 0;
    for (let j = 0; j < order; j++) sum += coefficients[j]! * samples[k - 1 - j]!;
    samples[k]! += Math.floor(sum / scale);
  }
}

function readSubframe(bits: BitReader, frames: number, sampleBits: number): Float64Array {
  if (bits.unsigned(1) !== 0) throw new DamagedFrame();
  const type = bits.unsigned(6);
  const wasted = bits.unsigned(1) === 1 ? bits.unary() + 1 : 0;
  const width = sampleBits - wasted;
  if (width < 1) throw new DamagedFrame();
  const samples = new Float64Array(frames);
  if (type === 0) samples.fill(bits.signed(width));
  else if (type === 1) for (let k = 0; k < frames; k++) samples[k] = bits.signed(width);
  else {
    const linear = type >= 32;
    const order = linear ? type - 31 : type - 8;
    if ((!linear && (order < 0 || order > 4)) || order > frames) throw new DamagedFrame();
    for (let k = 0; k < order; k++) samples[k] = bits.signed(width);
    let coefficients: readonly number[] = FIXED[order] ?? [];
    let shift = 0;
    if (linear) {
      const precision = bits.unsigned(4) + 1;
      shift = bits.signed(5);
      if (precision === 16 || shift < 0) throw new DamagedFrame();
      coefficients = Array.from({ length: order }, () => bits.signed(precision));
    }
    readResidual(bits, samples, order);
    predict(samples, coefficients, shift);
  }
  if (wasted > 0) for (let k = 0; k < frames; k++) samples[k]! *= 2 ** wasted;
  return samples;
}

/** Undoes the stereo coding (section 4.2), in place. */
function unpair(stereo: FlacFrameHeader['stereo'], [first, second]: readonly Float64Array[]): void {
  if (stereo === 'independent' || !first || !second) return;
  for (let k = 0; k < first.length; k++) {
    const a = first[k]!;
    const b = second[k]!;
    if (stereo === 'left-side') second[k] = a - b;
    else if (stereo === 'side-right') first[k] = a + b;
    else {
      const sum = 2 * a + (Math.abs(b) % 2);
      first[k] = (sum + b) / 2;
      second[k] = (sum - b) / 2;
    }
  }
}

/**
 * Decodes the frame at the beginning of `bytes`.
 * Throws `DamagedFrame` where it breaks the format, `OutOfBits` where the bytes end before it does.
 */
export function flacFrame(bytes: Uint8Array, info: FlacStreamInfo): FlacFrame {
  const header = flacFrameHeader(bytes, info);
  const bits = bitReader(bytes, header.headerBytes);
  const sideChannel = { independent: -1, 'left-side': 1, 'side-right': 0, 'mid-side': 1 }[header.stereo];
  const samples = Array.from({ length: header.channels }, (_, channel) =>
    readSubframe(bits, header.blockFrames, header.bitsPerSample + (channel === sideChannel ? 1 : 0)),
  );
  bits.align();
  const end = bits.byteAt();
  if (bits.unsigned(16) !== check16(bytes.subarray(0, end))) throw new DamagedFrame();
  unpair(header.stereo, samples);
  return { header, samples, bytes: end + 2 };
}
