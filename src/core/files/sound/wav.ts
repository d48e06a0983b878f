/** The samples of a WAV file, block by block. */
import { notice } from '../../words/problem.ts';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { viewOf, type ByteSource } from '../bytes/bytes.ts';
import { BLOCK_FRAMES, type ChannelBlock, type PcmStream, type Warn } from './pcm.ts';
import { readWavHeader, type SampleFormat, type WavHeader } from './wav-header.ts';

/** Takes every `stride` bytes a sample from `at` on into `out`, full scale ±1: integers by 2^(bits − 1). */
type Take = (bytes: Uint8Array, at: number, stride: number, out: Float32Array) => void;

const float =
  (read: (view: DataView, at: number) => number): Take =>
  (bytes, at, stride, out) => {
    const view = viewOf(bytes);
    for (let k = 0; k < out.length; k++, at += stride) out[k] = read(view, at);
  };

/** Plain loops over bytes for the integers: two hours are 700 million of them. */
const TAKES: Readonly<Record<SampleFormat, Take>> = {
  unsigned8(bytes, at, stride, out) {
    for (let k = 0; k < out.length; k++, at += stride) out[k] = (bytes[at]! - 128) / 128;
  },
  signed16(bytes, at, stride, out) {
    for (let k = 0; k < out.length; k++, at += stride)
      out[k] = ((bytes[at]! << 16) | (bytes[at + 1]! << 24)) / 2_147_483_648;
  },
  signed24(bytes, at, stride, out) {
    for (let k = 0; k < out.length; k++, at += stride)
      out[k] = ((bytes[at]! << 8) | (bytes[at + 1]! << 16) | (bytes[at + 2]! << 24)) / 2_147_483_648;
  },
  signed32(bytes, at, stride, out) {
    for (let k = 0; k < out.length; k++, at += stride)
      out[k] =
        (bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24)) /
        2_147_483_648;
  },
  float32: float((view, at) => view.getFloat32(at, true)),
  float64: float((view, at) => view.getFloat64(at, true)),
};

async function* readBlocks(source: ByteSource, header: WavHeader, warn: Warn): AsyncGenerator<ChannelBlock> {
  const { channels, bytesPerSample, sampleRate } = header;
  const frameBytes = channels * bytesPerSample;
  const take = TAKES[header.format];
  if (header.writtenFrameBytes !== frameBytes)
    warn(notice('wav.blockAlign', { name: source.name, frameBytes, written: header.writtenFrameBytes }));
  let frames = 0;
  while (frames < header.frames) {
    const wanted = Math.min(BLOCK_FRAMES, header.frames - frames);
    const bytes = await source.read(header.dataOffset + frames * frameBytes, wanted * frameBytes);
    const got = Math.floor(bytes.length / frameBytes);
    if (got === 0) break;
    yield Array.from({ length: channels }, (_, channel) => {
      const samples = new Float32Array(got);
      take(bytes, channel * bytesPerSample, frameBytes, samples);
      return samples;
    });
    frames += got;
  }
  const promised = header.promisedFrames ?? frames;
  if (frames < promised)
    warn(
      notice('sound.cut', {
        name: source.name,
        promisedSeconds: promised / sampleRate,
        heldSeconds: frames / sampleRate,
      }),
    );
}

/**
 * Opens a WAV file: 8, 16, 24 and 32-bit integers, 32 and 64-bit floats, plain or extensible header, RF64.
 * A file that is cut short gives what is there, and says so.
 */
export async function openWav(source: ByteSource): Promise<Outcome<PcmStream>> {
  const header = await readWavHeader(source);
  if (!header.ok) return header;
  if (header.value.frames === 0) return bad('wav.empty', { name: source.name });
  return good({
    sampleRate: header.value.sampleRate,
    channels: header.value.channels,
    expectedFrames: header.value.frames,
    blocks: (warn) => readBlocks(source, header.value, warn),
  });
}
