/**
 * Compressed audio against ffmpeg (Debian), where it is installed: what it encodes we read to the samples that
 * it reads itself, none shifted. FLAC is lossless, so there the original is the truth too.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { isInstalled, needs } from '../needs.ts';
import { readAudio } from '../core/files/collect.ts';

const folder = mkdtempSync(join(tmpdir(), 'landfall-ffmpeg-'));
afterAll(() => rmSync(folder, { recursive: true }));

const ffmpeg = (...options: readonly string[]) =>
  execFileSync('ffmpeg', ['-v', 'error', '-y', ...options], { maxBuffer: 1 << 28 });

/** A chirp over a ground tone, with a different balance on each side; `seconds` of it, encoded. */
function encode(
  name: string,
  rate: number,
  channels: number,
  seconds: number,
  options: readonly string[],
): string {
  const path = join(folder, name);
  const line = (phase: number) => `0.3*sin(2*PI*(200*t+150*t*t/${seconds})+${phase})+0.2*sin(2*PI*110*t)`;
  const sides = Array.from({ length: channels }, (_, k) => line(k)).join('|');
  ffmpeg('-f', 'lavfi', '-i', `aevalsrc='${sides}':s=${rate}:d=${seconds}`, ...options, path);
  return path;
}

/** ffmpeg's own reading as the mean of the channels. */
function ffmpegReads(path: string, channels: number): Float32Array {
  const raw = ffmpeg('-i', path, '-f', 'f32le', 'pipe:1');
  const floats = new Float32Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.length));
  const means = new Float32Array(floats.length / channels);
  for (let frame = 0; frame < means.length; frame++) {
    let mean = 0;
    for (let channel = 0; channel < channels; channel++)
      mean += floats[frame * channels + channel]! / channels;
    means[frame] = mean;
  }
  return means;
}

function largestDifference(ours: Float32Array, theirs: Float32Array): number {
  let largest = 0;
  for (let k = 0; k < Math.min(ours.length, theirs.length); k++)
    largest = Math.max(largest, Math.abs(ours[k]! - theirs[k]!));
  return largest;
}

describe(
  'compressed audio against ffmpeg',
  needs(isInstalled('ffmpeg', '-version'), 'ffmpeg is not installed.'),
  () => {
    it.each([
      ['cbr-128.mp3', 44_100, 2, ['-b:a', '128k']],
      ['cbr-320.mp3', 48_000, 2, ['-b:a', '320k']],
      ['vbr.mp3', 44_100, 1, ['-q:a', '4']],
      ['independent.mp3', 44_100, 2, ['-joint_stereo', '0']],
      ['mpeg-2.mp3', 22_050, 1, ['-b:a', '48k']],
      ['mpeg-2.5.mp3', 8000, 1, ['-b:a', '16k']],
      ['no-note.mp3', 44_100, 2, ['-write_xing', '0', '-id3v2_version', '0']],
    ] as const)('%s', async (name, rate, channels, options) => {
      const path = encode(name, rate, channels, 2, options);
      const audio = await readAudio(name, readFileSync(path));
      if (typeof audio === 'string') throw new Error(audio);
      expect(audio).toMatchObject({ kind: 'mp3', sampleRate: rate, channels, warnings: [] });
      const theirs = ffmpegReads(path, channels);
      expect(audio.samples.length).toBe(theirs.length);
      // minimp3 gives 16-bit numbers; two steps of them.
      expect(largestDifference(audio.samples, theirs)).toBeLessThan(2 / 32_768);
    });

    it.each([
      ['fast.flac', 44_100, 2, ['-compression_level', '0', '-sample_fmt', 's16']],
      ['best.flac', 48_000, 2, ['-compression_level', '12', '-sample_fmt', 's16']],
      ['24-bit.flac', 96_000, 2, ['-sample_fmt', 's32', '-bits_per_raw_sample', '24']],
      ['mono.flac', 8000, 1, ['-sample_fmt', 's16']],
      ['six.flac', 48_000, 6, ['-sample_fmt', 's16']],
      ['left-side.flac', 48_000, 2, ['-sample_fmt', 's16', '-ch_mode', 'left_side']],
      ['right-side.flac', 48_000, 2, ['-sample_fmt', 's16', '-ch_mode', 'right_side']],
      ['mid-side.flac', 48_000, 2, ['-sample_fmt', 's16', '-ch_mode', 'mid_side']],
      ['fixed.flac', 48_000, 2, ['-sample_fmt', 's16', '-lpc_type', 'fixed']],
    ] as const)('%s', async (name, rate, channels, options) => {
      const path = encode(name, rate, channels, 2, options);
      const audio = await readAudio(name, readFileSync(path));
      if (typeof audio === 'string') throw new Error(audio);
      expect(audio).toMatchObject({ kind: 'flac', sampleRate: rate, channels, warnings: [] });
      const theirs = ffmpegReads(path, channels);
      expect(audio.samples.length).toBe(theirs.length);
      // Both are exact; the mean is rounded to a float once here and there.
      expect(largestDifference(audio.samples, theirs)).toBeLessThan(2 ** -22);
    });

    it.each([
      ['low.ogg', 44_100, 2, 2, ['-c:a', 'libvorbis', '-q:a', '0']],
      ['high.ogg', 48_000, 1, 2, ['-c:a', 'libvorbis', '-q:a', '8']],
      ['telephone.ogg', 8000, 1, 2, ['-c:a', 'libvorbis']],
      // More than a megabyte, so decoded in pieces: no seam may be heard.
      ['pieces.ogg', 48_000, 2, 30, ['-c:a', 'libvorbis', '-b:a', '450k', '-minrate', '400k']],
    ] as const)('%s', async (name, rate, channels, seconds, options) => {
      const path = encode(name, rate, channels, seconds, options);
      const audio = await readAudio(name, readFileSync(path));
      if (typeof audio === 'string') throw new Error(audio);
      expect(audio).toMatchObject({ kind: 'ogg', sampleRate: rate, channels, warnings: [] });
      expect(audio.samples.length).toBe(rate * seconds);
      expect(largestDifference(audio.samples, ffmpegReads(path, channels))).toBeLessThan(1e-5);
      if (name === 'pieces.ogg') expect(readFileSync(path).length).toBeGreaterThan(1.2 * 2 ** 20);
    });
  },
);
