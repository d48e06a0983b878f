/**
 * RFC 9639, section 8.2: the stream carries the MD5 of its unencoded samples, put there by the encoder. The
 * fixture comes from another encoder (ffmpeg's), so the sum is an outside witness to every sample.
 */
import { english } from '../english.ts';
import { createHash } from 'node:crypto';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { md5 } from '../../src/core/base/md5.ts';
import { readAudio } from '../core/files/collect.ts';
import { isInstalled, needs } from '../needs.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { openFlac } from '../../src/core/files/sound/flac.ts';

it('the decoded samples have the check sum that the encoder wrote', async () => {
  const bytes = readFileSync(new URL('../../fixtures/audio/pluck.flac', import.meta.url));
  const written = bytes.subarray(26, 42).toString('hex');
  expect(written).not.toBe('0'.repeat(32));
  const stream = await openFlac(bytesInMemory('pluck.flac', bytes));
  if (!stream.ok) throw new Error(english(stream.problem));
  const sum = createHash('md5');
  let frames = 0;
  for await (const block of stream.value.blocks(() => undefined)) {
    const length = block[0]!.length;
    const interleaved = new Int16Array(length * block.length);
    block.forEach((samples, channel) =>
      samples.forEach((sample, k) => (interleaved[k * block.length + channel] = sample * 32_768)),
    );
    sum.update(Buffer.from(interleaved.buffer));
    frames += length;
  }
  expect(frames).toBe(11_025);
  expect(sum.digest('hex')).toBe(written);
});

describe('a FLAC file', () => {
  const original = () =>
    new Uint8Array(readFileSync(new URL('../../fixtures/audio/pluck.flac', import.meta.url)));
  const warningsOf = async (bytes: Uint8Array) => {
    const read = await readAudio('pluck.flac', bytes);
    if (typeof read === 'string') throw new Error(read);
    return read.warnings;
  };

  it('whose check sum is that of its sound, or is not known, is taken without a word', async () => {
    expect(await warningsOf(original())).toEqual([]);
    // Section 8.2: a sum of nought means that it is not known.
    expect(await warningsOf(original().fill(0, 26, 42))).toEqual([]);
  });

  it('whose check sum is another is taken, and said to be changed', async () => {
    const bytes = original();
    bytes[30]! ^= 1;
    expect(await warningsOf(bytes)).toEqual([
      expect.stringMatching(/^The sound in pluck\.flac is not the one/),
    ]);
  });

  it(
    'has the sum that the reference encoder wrote, whatever its bits and channels',
    needs(isInstalled('sox') && isInstalled('flac'), 'SoX or flac is not installed.'),
    async () => {
      const folder = mkdtempSync(join(tmpdir(), 'landfall-flac-'));
      const [wav, flac] = ['take.wav', 'take.flac'].map((name) => join(folder, name)) as [string, string];
      try {
        for (const [bits, channels] of [
          [8, 1],
          [16, 2],
          [24, 1],
          [24, 6],
        ]) {
          const made = `-n -r 44100 -b ${bits} -c ${channels} ${wav} synth 0.4 pluck 220`.split(' ');
          expect(spawnSync('sox', made).status).toBe(0);
          expect(spawnSync('flac', ['-s', '-f', '-o', flac, wav]).status).toBe(0);
          const bytes = new Uint8Array(readFileSync(flac));
          expect(bytes.subarray(26, 42).some((byte) => byte !== 0)).toBe(true);
          expect(await warningsOf(bytes)).toEqual([]);
        }
      } finally {
        rmSync(folder, { recursive: true });
      }
    },
  );

  it('with other bytes behind its sound is whole', async () => {
    const bytes = original();
    const tagged = new Uint8Array(bytes.length + 5000).fill(0x41);
    tagged.set(bytes);
    expect(await warningsOf(tagged)).toEqual([]);
  });
});

it('the sum is MD5 as the system reckons it, whatever the pieces', () => {
  // RFC 1321, appendix A.5.
  expect(md5().hex()).toBe('d41d8cd98f00b204e9800998ecf8427e');
  const bytes = Uint8Array.from({ length: 1000 }, (_, k) => (k * k) % 251);
  for (const length of [1, 55, 56, 63, 64, 65, 119, 120, 128, 1000])
    for (const piece of [1, 7, 64, 1000]) {
      const sum = md5();
      for (let at = 0; at < length; at += piece) sum.update(bytes.subarray(at, Math.min(length, at + piece)));
      expect(sum.hex()).toBe(createHash('md5').update(bytes.subarray(0, length)).digest('hex'));
    }
});
