import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAudio } from './collect.ts';

interface Expected {
  readonly sampleRate: number;
  readonly channels: number;
  readonly samples: readonly number[];
  readonly warnings?: number;
  /** Of the compressed files only every so many samples are kept, and the length. */
  readonly every?: number;
  readonly frames?: number;
}

const FOLDER = new URL('../../../fixtures/audio/', import.meta.url);
const expected = JSON.parse(readFileSync(new URL('expected.json', FOLDER), 'utf8')) as Record<
  string,
  Expected
>;
const wavs = Object.entries(expected).filter(([, one]) => one.every === undefined);
const compressed = Object.entries(expected).filter(([, one]) => one.every !== undefined);

describe('the audio fixtures', () => {
  it('all have their expected samples', () => {
    const files = readdirSync(FOLDER).filter((name) => /\.(wav|mp3|flac|ogg)$/.test(name));
    expect(files.sort()).toEqual(Object.keys(expected).sort());
    expect(wavs.length).toBeGreaterThan(20);
  });

  it.each(wavs)('%s reads as written', async (name, { sampleRate, channels, samples, warnings }) => {
    const audio = await readAudio(name, readFileSync(new URL(name, FOLDER)));
    if (typeof audio === 'string') throw new Error(audio);
    expect(audio).toMatchObject({ kind: 'wav', sampleRate, channels });
    expect(audio.warnings).toHaveLength(warnings ?? 0);
    expect([...audio.samples]).toHaveLength(samples.length);
    samples.forEach((sample, k) => expect(audio.samples[k]).toBeCloseTo(sample, 6));
  });

  it('reads behind a tag that a program put before the sound (id3.org, ID3v2 header)', async () => {
    const [name, { samples }] = wavs[0]!;
    const tag = [0x49, 0x44, 0x33, 3, 0, 0, 0, 0, 1, 0, ...new Array<number>(128).fill(0)];
    const audio = await readAudio(name, Buffer.from([...tag, ...readFileSync(new URL(name, FOLDER))]));
    if (typeof audio === 'string') throw new Error(audio);
    expect([...audio.samples]).toHaveLength(samples.length);
    expect(audio.samples[0]).toBeCloseTo(samples[0]!, 6);
  });

  // What ffmpeg reads out of the same file. It gives floats, minimp3 16-bit numbers: one step of difference.
  it.each(compressed)(
    '%s reads as ffmpeg reads it',
    async (name, { sampleRate, channels, samples, every, frames }) => {
      const audio = await readAudio(name, readFileSync(new URL(name, FOLDER)));
      if (typeof audio === 'string') throw new Error(audio);
      expect(audio).toMatchObject({ sampleRate, channels });
      expect(audio.warnings).toEqual([]);
      expect(audio.samples).toHaveLength(frames!);
      samples.forEach((sample, k) =>
        expect(Math.abs(audio.samples[k * every!]! - sample)).toBeLessThan(2 / 32_768),
      );
    },
  );
});
