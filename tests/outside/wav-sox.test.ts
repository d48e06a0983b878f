/**
 * WAV files against SoX (14.4, Debian), where it is installed: what SoX writes is read to the same numbers that
 * SoX itself reads, and SoX reads our fixtures as we do.
 */
import { english } from '../english.ts';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { isInstalled, needs } from '../needs.ts';
import { collect, readAudio } from '../core/files/collect.ts';
import { openAudio } from '../../src/core/files/audio.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';

const folder = mkdtempSync(join(tmpdir(), 'landfall-sox-'));
afterAll(() => rmSync(folder, { recursive: true }));

const LARGEST = { maxBuffer: 1 << 28 };

/** SoX's own reading, mixed to the mean of the channels, as 32-bit floats. */
function soxReads(path: string, channels: number): Float32Array {
  const mean = Array.from({ length: channels }, (_, k) => `${k + 1}v${1 / channels}`).join(',');
  const raw = execFileSync(
    'sox',
    ['-D', '-V1', path, '-t', 'raw', '-e', 'floating-point', '-b', '32', '-L', '-', 'remix', '-m', mean],
    LARGEST,
  );
  return new Float32Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.length));
}

/** SoX counts in 32-bit integers, so it agrees to one step of those, or of the format's own precision. */
function expectSame(ours: Float32Array, theirs: Float32Array) {
  expect(ours.length).toBe(theirs.length);
  let largest = 0;
  for (let k = 0; k < ours.length; k++) largest = Math.max(largest, Math.abs(ours[k]! - theirs[k]!));
  expect(largest).toBeLessThan(2 ** -23);
}

describe('WAV against SoX', needs(isInstalled('sox'), 'SoX is not installed.'), () => {
  const kinds = [
    ['unsigned-integer', 8],
    ['signed-integer', 16],
    ['signed-integer', 24],
    ['signed-integer', 32],
    ['floating-point', 32],
    ['floating-point', 64],
  ] as const;
  const cases = kinds.flatMap(([encoding, bits]) =>
    (
      [
        [8000, 1],
        [44_100, 2],
        [48_000, 1],
        [96_000, 6],
        [192_000, 2],
      ] as const
    ).flatMap(([rate, channels]) => [[encoding, bits, rate, channels, 'wav'] as const]),
  );

  it.each(cases)('%s of %i bits, %i Hz, %i channels', async (encoding, bits, rate, channels) => {
    const path = join(folder, `${encoding}-${bits}-${rate}-${channels}.wav`);
    execFileSync('sox', [
      ...['-R', '-V1', '-n', '-r', `${rate}`, '-c', `${channels}`, '-e', encoding, '-b', `${bits}`, path],
      ...['synth', '0.2', 'pinknoise', 'synth', '0.2', 'sine', 'mix', '220-880', 'gain', '-6'],
    ]);
    const audio = await readAudio(path, readFileSync(path));
    if (typeof audio === 'string') throw new Error(audio);
    expect(audio).toMatchObject({ sampleRate: rate, channels, warnings: [] });
    expectSame(audio.samples, soxReads(path, channels));
  });

  it('a stream that could not know its length', async () => {
    const bytes = execFileSync(
      'sox',
      ['-R', '-V1', '-n', '-r', '44100', '-b', '24', '-t', 'wav', '-', 'synth', '0.1', 'sine', '330'],
      { ...LARGEST, stdio: ['ignore', 'pipe', 'ignore'] },
    );
    const opened = await openAudio(bytesInMemory('streamed.wav', bytes));
    if (!opened.ok) throw new Error(english(opened.problem));
    const audio = await collect(opened.value);
    expect(audio.samples).toHaveLength(4410);
    expect(audio.warnings).toEqual([]);
  });

  const fixtures = [
    'u8',
    's16',
    's24',
    's32',
    'f32',
    'f64',
    's16-stereo',
    's24-stereo-extensible',
    'f32-extensible',
    'odd-chunk',
    'chunks-behind',
    'riff-size-wrong',
  ];
  it.each(fixtures)('our fixture %s.wav', async (name) => {
    const path = new URL(`../../fixtures/audio/${name}.wav`, import.meta.url).pathname;
    const audio = await readAudio(name, readFileSync(path));
    if (typeof audio === 'string') throw new Error(audio);
    expectSame(audio.samples, soxReads(path, audio.channels));
  });
});
