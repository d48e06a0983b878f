import { expect, it } from 'vitest';
import { fromPcm16, toPcm16 } from '../../../../src/core/base/pcm16.ts';
import { ROOM_HZ, ToRoomRate, toRoomRate } from '../../../../src/core/room/align/room-rate.ts';

/** Seven seconds that hold more than one of the pieces that are read at once, with an end inside a piece. */
const long = (rate: number) =>
  toPcm16(
    Float32Array.from(
      { length: 7 * rate + 123 },
      (_, n) => 0.4 * Math.sin((2 * Math.PI * 220 * n) / rate) + 0.3 * Math.sin(n ** 1.3),
    ),
  );

/** The whole at once, as floating point. */
function atOnce(samples: Float32Array, rate: number): Float32Array {
  const stream = new ToRoomRate(rate);
  const [most, rest] = [stream.push(samples), stream.finish()];
  const out = new Float32Array(Math.round((samples.length * ROOM_HZ) / rate));
  out.set([...most, ...rest].slice(0, out.length));
  return out;
}

const bytes = ({ buffer, byteOffset, byteLength }: Float32Array) =>
  Buffer.from(buffer, byteOffset, byteLength);

it.each([44_100, 48_000, 96_000, 16_000])(
  'at %i Hz a take that is read in pieces of 16 bit is the whole to the digit',
  (rate) => {
    const take = long(rate);
    const want = atOnce(fromPcm16(take), rate);
    expect(bytes(toRoomRate(take, rate)).equals(bytes(want))).toBe(true);
    expect(bytes(toRoomRate(fromPcm16(take), rate)).equals(bytes(want))).toBe(true);
  },
);
