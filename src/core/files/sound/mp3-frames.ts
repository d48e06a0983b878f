/**
 * The frames of an MPEG audio stream, layer III (ISO/IEC 11172-3 and 13818-3): where each begins, how long it
 * is, and what the first one says about samples to leave out. The decoding itself is minimp3's.
 */
import { fourCharacters, hasMark, viewOf } from '../bytes/bytes.ts';

export interface FrameHeader {
  readonly bytes: number;
  readonly sampleRate: number;
  readonly channels: 1 | 2;
  readonly samples: number;
  /** Bytes between the header and the main data. */
  readonly sideBytes: number;
}

const KBPS_MPEG1 = [0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320];
const KBPS_MPEG2 = [0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160];
const HZ_MPEG1 = [44_100, 48_000, 32_000];
const LAYER_III = 1;
const HEADER_BYTES = 4;

/** The header at `at`, or null where there is none that can be decoded (free bit rates are left out). */
export function frameHeader(bytes: Uint8Array, at: number): FrameHeader | null {
  if (at + HEADER_BYTES > bytes.length) return null;
  // Bytes one by one: in a file with megabytes of 0xFF behind its sound every byte is asked.
  const second = bytes[at + 1];
  if (bytes[at] !== 0xff || (second! & 0xe0) !== 0xe0) return null;
  const third = bytes[at + 2];
  const fourth = bytes[at + 3];
  const version = (second! >> 3) & 3;
  const layer = (second! >> 1) & 3;
  const rateIndex = (third! >> 2) & 3;
  const bitIndex = third! >> 4;
  if (version === 1 || layer !== LAYER_III || rateIndex === 3 || bitIndex === 0 || bitIndex === 15)
    return null;
  const mpeg1 = version === 3;
  // MPEG-2 halves the rates, MPEG-2.5 (version 0, an extension in common use) quarters them.
  const sampleRate = HZ_MPEG1[rateIndex]! / (mpeg1 ? 1 : version === 2 ? 2 : 4);
  const kbps = (mpeg1 ? KBPS_MPEG1 : KBPS_MPEG2)[bitIndex]!;
  const samples = mpeg1 ? 1152 : 576;
  const padding = (third! >> 1) & 1;
  const channels = fourth! >> 6 === 3 ? 1 : 2;
  return {
    bytes: Math.floor((samples * 125 * kbps) / sampleRate) + padding,
    sampleRate,
    channels,
    samples,
    sideBytes: (mpeg1 ? (channels === 1 ? 17 : 32) : channels === 1 ? 9 : 17) + (second! & 1 ? 0 : 2),
  };
}

/** So many frames in a row must agree before a sync word counts: two bytes alone occur by chance. */
const FRAMES_TO_AGREE = 3;

/**
 * The first frame at or after `from` that is followed by frames like it (or by the end of the bytes).
 * @returns its offset and header, or null.
 */
export function findFrame(
  bytes: Uint8Array,
  from: number,
): { readonly at: number; readonly header: FrameHeader } | null {
  for (let at = from; at + HEADER_BYTES <= bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const header = frameHeader(bytes, at);
    if (!header) continue;
    let next = at + header.bytes;
    let agreed = 1;
    while (agreed < FRAMES_TO_AGREE && next + HEADER_BYTES <= bytes.length) {
      const follower = frameHeader(bytes, next);
      if (follower?.sampleRate !== header.sampleRate || follower.samples !== header.samples) break;
      next += follower.bytes;
      agreed++;
    }
    if (agreed === FRAMES_TO_AGREE || (agreed > 1 && next + HEADER_BYTES > bytes.length))
      return { at, header };
    if (agreed === 1 && next === bytes.length) return { at, header };
  }
  return null;
}

export interface StreamInfo {
  /** Frames that the encoder counted, or null. */
  readonly frames: number | null;
  /** Samples at the start and the end that are the codec's own and no part of the recording. */
  readonly skipSamples: number;
  readonly paddingSamples: number;
}

/** Delay of the layer III synthesis itself: every decoder puts out so many samples first. */
const DECODER_DELAY = 528 + 1;

/**
 * What the first frame says, where it is no sound but a "Xing", "Info" or "VBRI" note from the encoder.
 * Its fields are described by the encoders' authors; the delay is trimmed as other decoders do, so that the
 * onsets agree with what an editor shows.
 * @returns null where the frame is sound.
 */
export function streamInfo(frame: Uint8Array, header: FrameHeader): StreamInfo | null {
  if (hasMark(frame, 'VBRI', HEADER_BYTES + 32)) return { frames: null, skipSamples: 0, paddingSamples: 0 };
  const at = HEADER_BYTES + header.sideBytes;
  const mark = fourCharacters(frame, at);
  if ((mark !== 'Xing' && mark !== 'Info') || at + 8 > frame.length) return null;
  const flags = frame[at + 7]!;
  let field = at + 8;
  let frames: number | null = null;
  if (flags & 1) {
    if (field + 4 <= frame.length) frames = viewOf(frame).getUint32(field);
    field += 4;
  }
  if (flags & 2) field += 4;
  if (flags & 4) field += 100;
  if (flags & 8) field += 4;
  const delays = field + 21;
  if (delays + 3 > frame.length || frame[field] === 0) return { frames, skipSamples: 0, paddingSamples: 0 };
  const delay = (frame[delays]! << 4) | (frame[delays + 1]! >> 4);
  const padding = ((frame[delays + 1]! & 15) << 8) | frame[delays + 2]!;
  return {
    frames,
    skipSamples: delay + DECODER_DELAY,
    paddingSamples: Math.max(0, padding - DECODER_DELAY),
  };
}
