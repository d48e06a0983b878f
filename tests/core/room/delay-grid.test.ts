import { english } from '../../english.ts';
import { describe, expect, test } from 'vitest';
import { random } from '../../../fixtures/lines/random.ts';
import { LIVING_ROOM, roomPath, throughSpeaker } from '../../../fixtures/room/rooms.ts';
import { measurePath } from '../../../src/core/room/path/measure-path.ts';
import { sweep, sweepShape } from '../../../src/core/room/path/sweep.ts';

const rate = 16_000;
const played = sweep({ ...sweepShape(rate), seconds: 0.8 }).map((x) => 0.08 * x);

/** Of a sweep through a room, noise against the echo while it sounds. */
function delayOf(path: Float32Array, snrDb: number, bend: number, seed: number): number {
  const dice = random(seed);
  const padded = new Float32Array(played.length + Math.round(1.1 * rate));
  padded.set(played);
  const echo = throughSpeaker(padded, path, bend);
  const loudness = Math.sqrt(echo.reduce((sum, x) => sum + x * x, 0) / played.length);
  const found = measurePath(
    echo.map((x) => x + loudness * 10 ** (-snrDb / 20) * dice.normal()),
    played,
    rate,
  );
  if (!found.ok) throw new Error(english(found.problem));
  return found.value.delaySeconds;
}

const ROOMS = [
  ['a living room', LIVING_ROOM],
  ['first reflections stronger than the direct sound', { rt60Seconds: 0.5, wetDb: 4, directDb: -10 }],
  ['a laptop, bent', { ...LIVING_ROOM, highPassHz: 250, bend: 3 }],
  ['a dry corner', { rt60Seconds: 0.2, wetDb: -8 }],
] as const;

describe.each(ROOMS)('the delay through %s', (_, room) => {
  // Reflections twice as strong as the first sound and noise at 10 dB together: that is off by up to 4 ms.
  test.each('directDb' in room ? [40, 20] : [40, 20, 10])(
    'at %s dB of noise, 5 to 300 ms within a millisecond',
    (snrDb) => {
      for (const ms of [5, 37, 121.5, 300]) {
        const truth = Math.round((ms / 1000) * rate) / rate;
        const path = roomPath(room, rate, truth, 800 + ms);
        const found = delayOf(path, snrDb, 'bend' in room ? room.bend : 1, ms + snrDb);
        expect(Math.abs(found - truth), `${ms} ms`).toBeLessThan(0.001);
      }
    },
  );
});
