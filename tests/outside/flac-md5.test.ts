/**
 * RFC 9639, section 8.2: the stream carries the MD5 of its unencoded samples, put there by the encoder. The
 * fixture comes from another encoder (ffmpeg's), so the sum is an outside witness to every sample.
 */
import { english } from '../english.ts';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
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
