import { expect, test } from 'vitest';
import { random } from '../../../../fixtures/lines/random.ts';
import { levelDb } from '../../../../fixtures/room/band-in-a-room.ts';
import { Postfilter } from '../../../../src/core/room/cancel/postfilter.ts';
import { BLOCK_SIZE, ROOM_HZ } from '../../../../src/core/room/align/room-rate.ts';

const length = 8 * ROOM_HZ - ((8 * ROOM_HZ) % BLOCK_SIZE);
const dice = random(41);
/** Five strokes of a drum a second. */
const drums = Float32Array.from(
  { length },
  (_, i) => 0.2 * dice.normal() * Math.exp(-(i % (ROOM_HZ / 5)) / 400),
);
/** What the canceller left of them, 26 dB down. */
const rest = drums.map((x) => 0.05 * x);
const note = Float32Array.from({ length }, (_, i) =>
  [1, 2, 3, 4].reduce((sum, n) => sum + (0.1 / n) * Math.sin((2 * Math.PI * 196 * n * i) / ROOM_HZ), 0),
);
const sum = (a: Float32Array, b: Float32Array) => a.map((x, i) => x + b[i]!);

/** The output, put back by the block that it is late. */
function filtered(left: Float32Array, foretold: Float32Array): Float32Array {
  const filter = new Postfilter(BLOCK_SIZE);
  const out = new Float32Array(length);
  for (let from = 0; from < length; from += BLOCK_SIZE) {
    const to = from + BLOCK_SIZE;
    filter.process(left.subarray(from, to), foretold.subarray(from, to), out.subarray(from, to));
  }
  return Float32Array.from({ length }, (_, i) => out[i + BLOCK_SIZE] ?? 0);
}
const errorDb = (out: Float32Array, meant: Float32Array) =>
  levelDb(
    out.map((x, i) => x - meant[i]!),
    meant,
    ROOM_HZ,
    [2, 7],
  );

test('where no band plays not a sample is changed, and a block later it is there', () => {
  expect(errorDb(filtered(note, new Float32Array(length)), note)).toBeLessThan(-120);
});

test('strokes that the canceller left are held down, in silence and under a note that rings', () => {
  expect(levelDb(filtered(rest, drums), rest, ROOM_HZ, [2, 7])).toBeLessThan(-3);
  const before = errorDb(sum(note, rest), note);
  expect(errorDb(filtered(sum(note, rest), drums), note)).toBeLessThan(before - 3);
});

test('a player whose band is out already keeps his notes', () => {
  expect(errorDb(filtered(note, drums), note)).toBeLessThan(-25);
});
