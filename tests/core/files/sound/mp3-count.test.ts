/**
 * The count of frames that an MP3 file gives in its first frame ("Xing", written by the encoder when it is done) is only
 * believed where the file agrees: encoders that write to a pipe leave 0 there.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAudio } from '../collect.ts';

const GOOD = new Uint8Array(readFileSync(new URL('../../../../fixtures/audio/pluck.mp3', import.meta.url)));

function withCount(count: number): Uint8Array {
  const bytes = GOOD.slice();
  const text = Buffer.from(bytes).toString('latin1');
  const mark = Math.max(text.indexOf('Xing'), text.indexOf('Info'));
  expect(mark).toBeGreaterThan(0);
  // Mark, flags, number of frames: four bytes each, the highest first.
  expect(bytes[mark + 7]! & 1).toBe(1);
  new DataView(bytes.buffer).setUint32(mark + 8, count);
  return bytes;
}

async function samplesOf(bytes: Uint8Array): Promise<Float32Array> {
  const read = await readAudio('line.mp3', bytes);
  if (typeof read === 'string') throw new Error(read);
  return read.samples;
}

describe('an MP3 file', () => {
  it.each([0, 0xffffffff])('whose count of frames is %i is heard whole', async (count) => {
    const whole = await samplesOf(GOOD);
    const heard = await samplesOf(withCount(count));
    // Without a count the encoder's own samples at the end, less than three frames of 1152, stay.
    expect(heard.length).toBeGreaterThanOrEqual(whole.length);
    expect(heard.length - whole.length).toBeLessThan(3 * 1152);
    expect(heard.subarray(0, whole.length)).toEqual(whole);
  });

  it('that has more frames than it counts is heard to its end, without a hole', async () => {
    const whole = await samplesOf(GOOD);
    // One frame is shorter than what the encoder and the decoder put before the sound.
    for (const count of [1, 2, 3]) {
      const heard = await samplesOf(withCount(count));
      expect(heard.length).toBeGreaterThanOrEqual(whole.length);
      expect(heard.subarray(0, whole.length)).toEqual(whole);
    }
  });
});
