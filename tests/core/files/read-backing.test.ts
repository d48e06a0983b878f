import { english } from '../../english.ts';
import { expect, test } from 'vitest';
import { bytesInMemory } from '../../../src/core/files/bytes/bytes.ts';
import { readBacking } from '../../../src/core/files/read-backing.ts';

/** A WAV of 16-bit channels side by side (the canonical header, Microsoft and IBM 1991). */
function wav(channels: readonly (readonly number[])[]): Uint8Array<ArrayBuffer> {
  const frames = channels[0]!.length;
  const bytes = new Uint8Array(44 + 2 * frames * channels.length);
  const view = new DataView(bytes.buffer);
  const word = (at: number, text: string) => [...text].forEach((c, i) => (bytes[at + i] = c.charCodeAt(0)));
  word(0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, channels.length, true);
  view.setUint32(24, 8000, true);
  view.setUint32(28, 8000 * 2 * channels.length, true);
  view.setUint16(32, 2 * channels.length, true);
  view.setUint16(34, 16, true);
  word(36, 'data');
  view.setUint32(40, bytes.length - 44, true);
  for (let n = 0; n < frames; n++)
    for (const [c, line] of channels.entries())
      view.setInt16(44 + 2 * (n * channels.length + c), Math.round(32_768 * line[n]!), true);
  return bytes;
}
const tone = (gain: number, hz: number) =>
  Array.from({ length: 4000 }, (_, i) => gain * Math.sin((2 * Math.PI * hz * i) / 8000));
const read = async (...channels: readonly (readonly number[])[]) => {
  const found = await readBacking(bytesInMemory('backing.wav', wav(channels)));
  if (!found.ok) throw new Error(english(found.problem));
  return found.value;
};

test('in stereo: the mean, and half of left less right', async () => {
  const [left, right] = [tone(0.3, 300), tone(0.2, 470)];
  const { samples, side } = await read(left, right);
  for (const i of [17, 500, 3999]) {
    expect(samples[i]).toBeCloseTo((left[i]! + right[i]!) / 2, 4);
    expect(side![i]).toBeCloseTo((left[i]! - right[i]!) / 2, 4);
  }
});

test('mono, and two channels that hardly differ, have no side', async () => {
  expect((await read(tone(0.3, 300))).side).toBeNull();
  expect((await read(tone(0.3, 300), tone(0.3, 300))).side).toBeNull();
  expect((await read(tone(0.3, 300), tone(0.295, 300))).side).toBeNull();
});

test('one channel alone has as much side as middle', async () => {
  const { samples, side } = await read(tone(0.3, 300), tone(0, 300));
  expect(side![123]).toBeCloseTo(samples[123]!, 5);
});
