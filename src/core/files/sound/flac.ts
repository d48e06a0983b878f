/** FLAC files (RFC 9639): the stream's own description, then frame after frame. */
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { notice } from '../../words/problem.ts';
import { MOST_BLOCKS_BEFORE_SOUND } from '../../base/limits.ts';
import { hexOf, md5 } from '../../base/md5.ts';
import { OutOfBits } from '../bytes/bit-reader.ts';
import { hasMark, viewOf, windowOver, type ByteSource, type ByteWindow } from '../bytes/bytes.ts';
import {
  DamagedFrame,
  flacFrame,
  flacFrameHeader,
  type FlacFrame,
  type FlacStreamInfo,
} from './flac-frame.ts';
import { id3Length } from './id3.ts';
import { unusable, type ChannelBlock, type PcmStream, type Warn } from './pcm.ts';

const STREAMINFO_BYTES = 34;
/** The check sum is the last part of it. */
const SUM_OFFSET = 18;
const LAST_BLOCK = 0x80;

/** Frames of ordinary encoders fit in here; where one does not, the window is doubled up to the limit. */
const FRAME_WINDOW_BYTES = 1 << 16;
const LARGEST_FRAME_BYTES = 1 << 24;

/**
 * A gap in the stream is filled with silence, so that later notes keep their time. A longer gap than this is a damaged
 * number.
 */
const LONGEST_HOLE_SECONDS = 60;

/** The sound begins right behind its description; where it doesn't so soon, it never does. */
const FIRST_FRAME_WITHIN_BYTES = 1 << 21;

/** So many heads of frames that are none, one after the other: what follows is no sound. */
const MOST_FALSE_HEADS = 20_000;
/** So many damaged frames, one after the other: likewise. */
const MOST_DAMAGED_IN_A_ROW = 2000;

/** Section 8.2. */
function streamInfo(body: Uint8Array): FlacStreamInfo {
  const view = viewOf(body);
  const packed = view.getUint32(10);
  const total = (view.getUint8(13) & 15) * 2 ** 32 + view.getUint32(14);
  return {
    sampleRate: packed >>> 12,
    channels: ((packed >>> 9) & 7) + 1,
    bitsPerSample: ((packed >>> 4) & 31) + 1,
    maxBlockFrames: view.getUint16(2),
    maxFrameBytes: (view.getUint8(7) << 16) | view.getUint16(8),
    totalFrames: total === 0 ? null : total,
    soundSum: sumIn(body.subarray(SUM_OFFSET, STREAMINFO_BYTES)),
  };
}

/** Null where all of it is 0: the encoder did not know it. */
const sumIn = (bytes: Uint8Array): string | null => (bytes.every((byte) => byte === 0) ? null : hexOf(bytes));

/**
 * The check sum of the sound (section 8.2): MD5 of the samples, channel by channel within each, as signed numbers of whole
 * bytes, the lowest byte first.
 */
function soundSum(info: FlacStreamInfo): { add(frame: FlacFrame): void; hex(): string } {
  const width = Math.ceil(info.bitsPerSample / 8);
  const sum = md5();
  let bytes = new Uint8Array(0);
  return {
    add({ samples }) {
      const length = samples.length * samples[0]!.length * width;
      if (bytes.length < length) bytes = new Uint8Array(length);
      samples.forEach((line, channel) => {
        const stride = samples.length * width;
        for (let k = 0, at = channel * width; k < line.length; k++, at += stride) {
          const value = line[k]! | 0;
          for (let byte = 0; byte < width; byte++) bytes[at + byte] = value >> (8 * byte);
        }
      });
      sum.update(bytes.subarray(0, length));
    },
    hex: () => sum.hex(),
  };
}

/** Where the next frame begins that can be decoded, looking from `from`; null at the end, or where `within` bytes have none. */
async function nextFrame(
  window: ByteWindow,
  from: number,
  info: FlacStreamInfo,
  within = Infinity,
): Promise<number | null> {
  let tried = 0;
  for (let at = from; at - from < within;) {
    const bytes = await window.ensure(at, FRAME_WINDOW_BYTES);
    if (bytes.length < 16) return null;
    for (let k = 0; k + 16 <= bytes.length; k++) {
      if (bytes[k] !== 0xff || (bytes[k + 1]! & 0xfe) !== 0xf8) continue;
      if (++tried > MOST_FALSE_HEADS) return null;
      try {
        const header = flacFrameHeader(bytes.subarray(k), info);
        if (header.channels === info.channels) return at + k;
      } catch (error) {
        if (!(error instanceof DamagedFrame || error instanceof OutOfBits)) throw error;
      }
    }
    at += bytes.length - 15;
  }
  return null;
}

/** The frame at `at`, null where it is damaged, 'end' where the file ends within it. */
async function frameAt(
  window: ByteWindow,
  at: number,
  info: FlacStreamInfo,
): Promise<FlacFrame | null | 'end'> {
  let length = Math.max(FRAME_WINDOW_BYTES, info.maxFrameBytes);
  const most = (info.maxBlockFrames * info.channels * (info.bitsPerSample + 1)) / 8 + FRAME_WINDOW_BYTES;
  for (;;) {
    const bytes = await window.ensure(at, length);
    try {
      const frame = flacFrame(bytes, info);
      return frame.header.channels === info.channels ? frame : null;
    } catch (error) {
      if (error instanceof DamagedFrame) return null;
      if (!(error instanceof OutOfBits)) throw error;
      if (bytes.length < length) return 'end';
      if (length >= LARGEST_FRAME_BYTES) return null;
      // No frame is longer than its samples written out as they are.
      if (length > most) return null;
      length *= 2;
    }
  }
}

function scaled(samples: Float64Array, by: number): Float32Array {
  const line = new Float32Array(samples.length);
  for (let k = 0; k < line.length; k++) line[k] = samples[k]! * by;
  return line;
}

async function* readBlocks(
  source: ByteSource,
  firstByte: number,
  info: FlacStreamInfo,
  warn: Warn,
): AsyncGenerator<ChannelBlock> {
  const window = windowOver(source);
  const longestHole = LONGEST_HOLE_SECONDS * info.sampleRate;
  let at: number | null = firstByte;
  let frames = 0;
  let damaged = 0;
  let damagedBeforeSound = 0;
  let inARow = 0;
  const sum = info.soundSum === null ? null : soundSum(info);
  while (at !== null && at < source.size) {
    const frame: FlacFrame | null | 'end' = await frameAt(window, at, info);
    if (frame === 'end') break;
    if (frame === null) {
      damaged++;
      if (++inARow > MOST_DAMAGED_IN_A_ROW) break;
      at = await nextFrame(window, at + 1, info);
      continue;
    }
    inARow = 0;
    damagedBeforeSound = damaged;
    sum?.add(frame);
    const hole = frame.header.firstFrame - frames;
    if (damaged > 0 && hole > 0 && hole <= longestHole) {
      yield Array.from({ length: info.channels }, () => new Float32Array(hole));
      frames += hole;
    }
    const scale = 2 ** (frame.header.bitsPerSample - 1);
    yield frame.samples.map((samples) => scaled(samples, 1 / scale));
    frames += frame.header.blockFrames;
    at += frame.bytes;
  }
  const total = info.totalFrames ?? frames;
  // What stands behind the last promised sample is a tag or what a broken disk left there.
  const places = info.totalFrames !== null && frames >= total ? damagedBeforeSound : damaged;
  if (places > 0 && frames >= total)
    warn(notice('sound.damaged', { name: source.name, places, silence: true }));
  else if (frames < total)
    warn(
      notice('sound.cut', {
        name: source.name,
        promisedSeconds: total / info.sampleRate,
        heldSeconds: frames / info.sampleRate,
      }),
    );
  else if (sum !== null && sum.hex() !== info.soundSum) warn(notice('flac.checkSum', { name: source.name }));
}

/** Opens a FLAC file of up to eight channels and 32 bits. */
export async function openFlac(source: ByteSource): Promise<Outcome<PcmStream>> {
  const { name } = source;
  const broken = bad('flac.header', { name });
  let at = id3Length(await source.read(0, 10));
  if (!hasMark(await source.read(at, 4), 'fLaC')) return broken;
  at += 4;
  let info: FlacStreamInfo | null = null;
  for (let last = false, block = 0; !last; block++) {
    if (block === MOST_BLOCKS_BEFORE_SOUND) return bad('sound.manyBlocks', { name, most: block });
    const header = await source.read(at, 4);
    if (header.length < 4) return broken;
    last = (header[0]! & LAST_BLOCK) !== 0;
    const length = viewOf(header).getUint32(0) & 0xff_ffff;
    if ((header[0]! & 0x7f) === 0) {
      const body = await source.read(at + 4, STREAMINFO_BYTES);
      if (body.length === STREAMINFO_BYTES) info = streamInfo(body);
    }
    at += 4 + length;
  }
  if (!info || info.maxBlockFrames === 0) return broken;
  const unfit = unusable(name, info.sampleRate, info.channels);
  if (unfit !== null) return failure(unfit);
  const found = info;
  const firstByte = at;
  const first = await nextFrame(windowOver(source), firstByte, found, FIRST_FRAME_WITHIN_BYTES);
  if (first === null) return bad('flac.empty', { name });
  return good({
    sampleRate: found.sampleRate,
    channels: found.channels,
    expectedFrames: found.totalFrames,
    blocks: (warn) => readBlocks(source, first, found, warn),
  });
}
