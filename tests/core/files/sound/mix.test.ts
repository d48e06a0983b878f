import { english } from '../../../english.ts';
import { describe, expect, it } from 'vitest';
import { chooseMixdown, mixed } from '../../../../src/core/files/sound/mix.ts';
import type { ChannelBlock, PcmStream } from '../../../../src/core/files/sound/pcm.ts';

const RATE = 8000;
const sine = (hz: number, level: number, length = RATE) =>
  Float32Array.from({ length }, (_, k) => level * Math.sin((2 * Math.PI * hz * k) / RATE));
const scaled = (samples: Float32Array, factor: number) => samples.map((sample) => sample * factor);

const streamOf = (...blocks: ChannelBlock[]): PcmStream => ({
  sampleRate: RATE,
  channels: blocks[0]!.length,
  expectedFrames: null,
  async *blocks() {
    yield* blocks.map((block) => block.map((samples) => samples.slice()));
  },
});

describe('the mixdown', () => {
  it('is the mean of channels that are alike, of channels that are unrelated, and of one silent channel', async () => {
    const a = sine(220, 0.5);
    for (const other of [a, sine(331, 0.4), scaled(a, 0.2), scaled(a, -0.2), new Float32Array(RATE)])
      expect(await chooseMixdown(streamOf([a, other]))).toEqual({ take: 'mean' });
  });

  it('is the loudest channel where they cancel', async () => {
    const a = sine(220, 0.5);
    expect(await chooseMixdown(streamOf([scaled(a, -0.9), a]))).toEqual({ take: 'channel', channel: 1 });
    expect(await chooseMixdown(streamOf([a, scaled(a, -1)]))).toEqual({ take: 'channel', channel: 0 });
  });

  it('waits for sound before it decides', async () => {
    const silence = new Float32Array(RATE);
    const a = sine(220, 0.5);
    const stream = streamOf([silence, silence], [silence, silence], [a, scaled(a, -1)]);
    expect(await chooseMixdown(stream)).toEqual({ take: 'channel', channel: 0 });
  });

  it('puts silence for what is no number and counts it', async () => {
    const warnings: string[] = [];
    const line: number[] = [];
    const stream = streamOf([Float32Array.of(0.5, NaN, -0.5, Infinity, 1e30, 0.25)]);
    for await (const block of mixed(stream, { take: 'mean' }, 'take.wav', (warning) =>
      warnings.push(english(warning)),
    ))
      line.push(...block);
    expect(line).toEqual([0.5, 0, -0.5, 0, 0, 0.25]);
    expect(warnings).toEqual([expect.stringMatching(/take\.wav has 3 samples/)]);
  });
});
