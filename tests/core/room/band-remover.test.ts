import { expect, test } from 'vitest';
import { bandInARoom, levelDb, throughSpeaker } from '../../../fixtures/room/band-in-a-room.ts';
import { BandRemover, roomPathOf } from '../../../src/core/room/band-remover.ts';
import { measurePath } from '../../../src/core/room/measure-path.ts';
import { ROOM_HZ, toRoomRate } from '../../../src/core/room/room-rate.ts';
import { sweep, sweepShape } from '../../../src/core/room/sweep.ts';

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
    if (!measured.ok) throw new Error(measured.sentence);

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
