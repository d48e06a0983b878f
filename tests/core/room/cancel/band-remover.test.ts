import { english } from '../../../english.ts';
import { describe, expect, test } from 'vitest';
import { random } from '../../../../fixtures/lines/random.ts';
import { bandInARoom, levelDb, throughSpeaker } from '../../../../fixtures/room/band-in-a-room.ts';
import { BandRemover, roomPathOf, type RoomPath } from '../../../../src/core/room/cancel/band-remover.ts';
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

describe('devices that were opened with another delay than at the sound check', async () => {
  const { microphone, band, player, echo, path } = await bandInARoom({
    instrument: 'steel',
    sampleRate: ROOM_HZ,
    seconds: 10,
    seed: 764,
    delaySeconds: 0.06,
    bandDb: 0,
  });
  const swept = (): RoomPath => {
    const played = new Float32Array(3 * ROOM_HZ);
    const tone = sweep(sweepShape(ROOM_HZ)).map((x) => 0.1 * x);
    played.set(tone);
    const measured = measurePath(throughSpeaker(played, path), tone, ROOM_HZ);
    if (!measured.ok) throw new Error(english(measured.problem));
    return roomPathOf(measured.value);
  };
  const heardPast = (heard: Float32Array, played: Float32Array) => {
    const remover = new BandRemover(ROOM_HZ, swept());
    const pieces: number[] = [];
    for (let from = 0; from < heard.length; from += 128)
      pieces.push(...remover.push(heard.subarray(from, from + 128), played.subarray(from, from + 128)));
    pieces.push(...remover.finish());
    return { remover, out: Float32Array.from(pieces) };
  };
  /** Against the player, dB, from a second after the first window of a second on. */
  const leftDb = (out: Float32Array) => {
    const left = player.map((x, i) => x - out[i]!);
    return levelDb(left, player, ROOM_HZ, [2, 9]);
  };

  // A block of the browser's at 48 kHz is 2.7 ms; wireless speakers differ by more than a tenth of a second.
  test.each([10, 20, 40, 150, 300, 2.7, 0.7, -0.7, -2.7, -10, -20, -40])(
    'later by %s ms: found in the first second, the band goes as if it had not been',
    (ms) => {
      const moved = echo.map((_, i) => interpolated(echo, i - (ms / 1000) * ROOM_HZ));
      const { remover, out } = heardPast(
        player.map((x, i) => x + moved[i]!),
        band,
      );
      expect(1000 * remover.delayChangeSeconds!).toBeCloseTo(ms, 0);
      expect(1000 * remover.laterSeconds).toBeCloseTo(ms, 0);
      expect(leftDb(out)).toBeLessThan(-18);
      expect(remover.removedDb).toBeGreaterThan(15);
    },
  );

  test('the delay of the sound check stays where it holds, and where the clocks drift', () => {
    expect(heardPast(microphone, band).remover.delayChangeSeconds).toBe(0);
    for (const ppm of [100, -200]) {
      const drifting = echo.map((_, i) => interpolated(echo, i * (1 - ppm * 1e-6)));
      const { remover, out } = heardPast(
        player.map((x, i) => x + drifting[i]!),
        band,
      );
      expect(remover.delayChangeSeconds).toBe(0);
      expect(leftDb(out)).toBeLessThan(-18);
    }
  });

  test('clicks that are all alike: of the delays that fit, one click apart, the nearest', () => {
    const click = Float32Array.from({ length: 60 }, (_, i) => 0.3 * (1 - i / 60) * (i % 7 < 3 ? 1 : -1));
    const clicks = new Float32Array(6 * ROOM_HZ);
    // 240 in a minute: the next click comes within the longest delay that is searched for.
    for (let from = 0; from + 60 < clicks.length; from += 0.25 * ROOM_HZ) clicks.set(click, from);
    const later = throughSpeaker(clicks, path).map((_, i, comes) => comes[i - 240] ?? 0);
    expect(1000 * heardPast(later, clicks).remover.delayChangeSeconds!).toBeCloseTo(20, 0);
  });
});
