/** A recording in which no note is heard: why, and what to do. */
import { describe, expect, it } from 'vitest';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { wavHeader } from '../../src/core/files/sound/write-wav.ts';
import { hearFile } from '../../src/core/hear-file.ts';
import { random } from '../../fixtures/lines/random.ts';

const RATE = 16_000;
async function notices(sampleAt: (k: number) => number): Promise<readonly string[]> {
  const samples = toPcm16(Float32Array.from({ length: 2 * RATE }, (_, k) => sampleAt(k)));
  const header = wavHeader({ sampleRate: RATE, channels: 1, frames: samples.length });
  const bytes = Buffer.concat([header, Buffer.from(samples.buffer)]);
  const heard = await hearFile(bytesInMemory('take.wav', bytes), () => undefined);
  if (!heard.ok) throw new Error(heard.problem.code);
  expect(heard.value.notes).toEqual([]);
  return heard.value.warnings.map(({ code }) => code);
}

describe('a recording without a note', () => {
  it('is told to be silent', async () => {
    expect(await notices(() => 0)).toEqual(['sound.silent']);
  });

  it('is told apart from one in which something else sounds', async () => {
    const noise = random(1);
    expect(await notices(() => noise.between(-0.2, 0.2))).toEqual(['sound.noNote']);
  });
});
