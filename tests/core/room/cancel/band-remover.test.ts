import { english } from '../../../english.ts';
import { expect, test } from 'vitest';
import { random } from '../../../../fixtures/lines/random.ts';
import { bandInARoom, levelDb, throughSpeaker } from '../../../../fixtures/room/band-in-a-room.ts';
import { BandRemover, roomPathOf } from '../../../../src/core/room/cancel/band-remover.ts';
import { interpolated } from '../../../../src/core/base/interpolate.ts';
import { measurePath } from '../../../../src/core/room/path/measure-path.ts';
import { BLOCK_SIZE, PARTITIONS, ROOM_HZ, toRoomRate } from '../../../../src/core/room/align/room-rate.ts';
import { sweep, sweepShape } from '../../../../src/core/room/path/sweep.ts';

/** Context rates, and delays from a wired interface to a slow laptop. */
test.each([
  [48_000, 0.147],
  [44_100, 0.012],
])(
  'from sweep to take at %s Hz, %s s of delay: the band goes, nothing is moved in time',
  async (rate, delay) => {
    const { microphone, band, player, path } = await bandInARoom({
      instrument: 'steel',
      sampleRate: rate,
      seconds: 15,
      seed: 760,
      delaySeconds: delay,
      bandDb: 0,
    });
    const played = new Float32Array(3 * rate);
    const tone = sweep(sweepShape(rate)).map((x) => 0.1 * x);
    played.set(tone);
    const measured = measurePath(throughSpeaker(played, path), tone, rate);
    if (!measured.ok) throw new Error(english(measured.problem));

    const remover = new BandRemover(rate, roomPathOf(measured.value));
    const pieces: Float32Array[] = [];
    const hop = 2048;
    let heldBack = 0;
    for (let from = 0; from < microphone.length; from += hop) {
      pieces.push(remover.push(microphone.subarray(from, from + hop), band.subarray(from, from + hop)));
      const said = pieces.reduce((sum, { length }) => sum + length, 0) / ROOM_HZ;
      heldBack = Math.max(heldBack, Math.min(microphone.length, from + hop) / rate - said);
    }
    pieces.push(remover.finish());
    const out = Float32Array.from(pieces.flatMap((piece) => [...piece]));
    const want = toRoomRate(player, rate);
    const error = want.map((x, i) => x - out[i]!);
    expect(levelDb(error, want, ROOM_HZ, [1, 14])).toBeLessThan(-18);
    expect(remover.removedDb).toBeGreaterThan(10);
    // A block, the postfilter's, and the resampler's own 2 ms.
    expect(heldBack).toBeLessThan(0.025);
  },
);

test('a take that starts some milliseconds off the sweep: what is no whole sample is not taken for drift', async () => {
  const { band: trio } = await bandInARoom({
    instrument: 'steel',
    sampleRate: ROOM_HZ,
    seconds: 12,
    seed: 761,
    delaySeconds: 0,
    bandDb: 0,
  });
  // A bar of clicks, then the band.
  const dice = random(5);
  const band = trio.map((x, i) => (i < 2.5 * ROOM_HZ ? 0 : x));
  for (const beat of [0.2, 0.825, 1.45, 2.075])
    for (let i = 0; i < 60; i++) band[Math.round(beat * ROOM_HZ) + i] = 0.3 * dice.normal();
  // A loop as from a socket to a socket: nothing but delay.
  const taps = new Float32Array(PARTITIONS * BLOCK_SIZE);
  taps[36] = 1;
  const heldBackSamples = 939;
  for (const slip of [139.3, -60.4, 1.7]) {
    const remover = new BandRemover(ROOM_HZ, { heldBackSamples, taps });
    const microphone = band.map((_, i) => interpolated(band, i - heldBackSamples - 36 - slip));
    for (let from = 0; from < band.length; from += 128)
      remover.push(microphone.subarray(from, from + 128), band.subarray(from, from + 128));
    expect(Math.abs(remover.driftPpm)).toBeLessThan(10);
    expect(remover.removedDb).toBeGreaterThan(30);
  }
});
