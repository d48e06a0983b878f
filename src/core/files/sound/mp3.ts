/** MP3 files: frames found here, decoded by minimp3, the encoder's own samples left out at both ends. */
import { bad, failure, good, type Outcome } from '../../base/outcome.ts';
import { notice } from '../../words/problem.ts';
import { windowOver, type ByteSource } from '../bytes/bytes.ts';
import { id3Length } from './id3.ts';
import { startMinimp3 } from './minimp3.ts';
import { findFrame, frameHeader, streamInfo, type FrameHeader, type StreamInfo } from './mp3-frames.ts';
import { unusable, type ChannelBlock, type PcmStream, type Warn } from './pcm.ts';

/** Bytes for the longest possible frame (320 kbit/s at 32 kHz) and the three that must agree after a loss. */
const LOOK_AHEAD_BYTES = 8192;

/** 8 kbit/s at 24 kHz in layer III of MPEG-2, and less is not written: 72 · 8000 / 24000. */
const LEAST_FRAME_BYTES = 24;

interface Stream {
  readonly firstByte: number;
  readonly header: FrameHeader;
  readonly info: StreamInfo;
}

/** Whole frames from `from` on; skips what is none, and counts how often it had to. */
async function* frames(source: ByteSource, from: number, first: FrameHeader, lost: (bytes: number) => void) {
  const window = windowOver(source);
  let at = from;
  for (;;) {
    const bytes = await window.ensure(at, LOOK_AHEAD_BYTES);
    if (bytes.length < 4) return;
    const header = frameHeader(bytes, 0);
    if (header?.sampleRate === first.sampleRate && header.samples === first.samples) {
      if (header.bytes > bytes.length) return lost(bytes.length);
      yield { bytes: bytes.subarray(0, header.bytes), header };
      at += header.bytes;
      continue;
    }
    const found = findFrame(bytes.subarray(0, LOOK_AHEAD_BYTES), 1);
    // Tags at the end (ID3v1, APE) are no loss; neither is a hole that no frame follows.
    const skipped = found?.at ?? Math.max(1, Math.min(bytes.length, LOOK_AHEAD_BYTES) - 3);
    if (found) lost(skipped);
    at += skipped;
  }
}

async function* readBlocks(source: ByteSource, stream: Stream, warn: Warn): AsyncGenerator<ChannelBlock> {
  const decode = await startMinimp3();
  const { header, info } = stream;
  const promised = info.frames ?? Infinity;
  let total = promised * header.samples - info.paddingSamples;
  /** The end of the last promised frame, which is the codec's own: sound after all where more frames follow. */
  let beyond: ChannelBlock = [];
  let skip = info.skipSamples;
  let position = 0;
  let losses = 0;
  let count = 0;
  for await (const frame of frames(source, stream.firstByte, header, () => losses++)) {
    const channels = decode(frame.bytes);
    count++;
    if (count > promised && total < Infinity) {
      // More frames than promised: a count that was written before the end, or two files in one.
      total = Infinity;
      const left = Math.min(skip, beyond[0]?.length ?? 0);
      skip -= left;
      if ((beyond[0]?.length ?? 0) > left) yield beyond.map((channel) => channel.subarray(left));
    }
    const length = Math.min(channels[0]?.length ?? 0, Math.max(0, total - position));
    position += channels[0]?.length ?? 0;
    const from = Math.min(skip, length);
    skip -= from;
    // A stream may turn from stereo to mono and back; the first frame says how many channels come out.
    const piece = (start: number, end?: number): ChannelBlock =>
      Array.from({ length: header.channels }, (_, channel) =>
        channels[Math.min(channel, channels.length - 1)]!.subarray(start, end),
      );
    if (count === promised && length < (channels[0]?.length ?? 0))
      beyond = piece(Math.max(from, length)).map((channel) => channel.slice());
    if (length > from) yield piece(from, length);
  }
  const seconds = (frameCount: number) => (frameCount * header.samples) / header.sampleRate;
  if (info.frames !== null && count < info.frames)
    warn(
      notice('sound.cut', {
        name: source.name,
        promisedSeconds: seconds(info.frames),
        heldSeconds: seconds(count),
      }),
    );
  else if (losses > 0) warn(notice('sound.damaged', { name: source.name, places: losses, silence: false }));
}

/** Opens an MP3 file (MPEG-1, 2 and 2.5, layer III). */
export async function openMp3(source: ByteSource): Promise<Outcome<PcmStream>> {
  const { name } = source;
  const start = id3Length(await source.read(0, 10));
  const head = await source.read(start, 1 << 16);
  const found = findFrame(head, 0);
  if (!found) return bad('mp3.empty', { name });
  const { header } = found;
  const unfit = unusable(name, header.sampleRate, header.channels);
  if (unfit !== null) return failure(unfit);
  const frame = head.subarray(found.at, found.at + header.bytes);
  const said = streamInfo(frame, header);
  // A count of 0 was never filled in; one that the file has no room for is wrong.
  const isPlausible =
    said !== null &&
    said.frames !== null &&
    said.frames > 0 &&
    said.frames * LEAST_FRAME_BYTES <= source.size;
  const info = said && (isPlausible ? said : { ...said, frames: null, paddingSamples: 0 });
  const stream: Stream = {
    firstByte: start + found.at + (info ? header.bytes : 0),
    header,
    info: info ?? { frames: null, skipSamples: 0, paddingSamples: 0 },
  };
  const expected =
    stream.info.frames === null
      ? null
      : stream.info.frames * header.samples - stream.info.skipSamples - stream.info.paddingSamples;
  return good({
    sampleRate: header.sampleRate,
    channels: header.channels,
    expectedFrames: expected === null ? null : Math.max(0, expected),
    blocks: (warn) => readBlocks(source, stream, warn),
  });
}
