/** The samples of a WAV file, block by block. */
import { bad, good, type Outcome } from '../outcome.ts';
import { viewOf, type ByteSource } from './bytes.ts';
import { BLOCK_FRAMES, type ChannelBlock, type PcmStream, type Warn } from './pcm.ts';
import { readWavHeader, type SampleFormat, type WavHeader } from './wav-header.ts';

/** Reads one sample of each format as a number of full scale ±1; integers are divided by 2^(bits − 1). */
const READERS: Readonly<Record<SampleFormat, (view: DataView, at: number) => number>> = {
  unsigned8: (view, at) => (view.getUint8(at) - 128) / 128,
  signed16: (view, at) => view.getInt16(at, true) / 32_768,
  signed24: (view, at) => ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8_388_608,
  signed32: (view, at) => view.getInt32(at, true) / 2_147_483_648,
  float32: (view, at) => view.getFloat32(at, true),
  float64: (view, at) => view.getFloat64(at, true),
};

const inSeconds = (frames: number, sampleRate: number) => `${(frames / sampleRate).toFixed(1)} s`;

async function* readBlocks(source: ByteSource, header: WavHeader, warn: Warn): AsyncGenerator<ChannelBlock> {
  const { channels, bytesPerSample, sampleRate } = header;
  const frameBytes = channels * bytesPerSample;
  const read = READERS[header.format];
  let frames = 0;
  while (frames < header.frames) {
    const wanted = Math.min(BLOCK_FRAMES, header.frames - frames);
    const bytes = await source.read(header.dataOffset + frames * frameBytes, wanted * frameBytes);
    const got = Math.floor(bytes.length / frameBytes);
    if (got === 0) break;
    const view = viewOf(bytes);
    yield Array.from({ length: channels }, (_, channel) => {
      const samples = new Float32Array(got);
      for (let k = 0, at = channel * bytesPerSample; k < got; k++, at += frameBytes)
        samples[k] = read(view, at);
      return samples;
    });
    frames += got;
  }
  const promised = header.promisedFrames ?? frames;
  if (frames < promised)
    warn(
      `${source.name} is cut short: it promises ${inSeconds(promised, sampleRate)} and holds ` +
        `${inSeconds(frames, sampleRate)}; what is there was taken.`,
    );
}

/**
 * Opens a WAV file: 8, 16, 24 and 32-bit integers, 32 and 64-bit floats, plain or extensible header, RF64.
 * A file that is cut short gives what is there, and says so.
 */
export async function openWav(source: ByteSource): Promise<Outcome<PcmStream>> {
  const header = await readWavHeader(source);
  if (!header.ok) return header;
  if (header.value.frames === 0)
    return bad(
      `${source.name} is a WAV file with no samples in it; it may be cut short, or the recording never began.`,
    );
  return good({
    sampleRate: header.value.sampleRate,
    channels: header.value.channels,
    expectedFrames: header.value.frames,
    blocks: (warn) => readBlocks(source, header.value, warn),
  });
}
