import { english } from '../../../english.ts';
import { describe, expect, test } from 'vitest';
import { random } from '../../../../fixtures/lines/random.ts';
import { bandInARoom, speakerPath, throughSpeaker } from '../../../../fixtures/room/band-in-a-room.ts';
import { BandRemover } from '../../../../src/core/room/cancel/band-remover.ts';
import { heardPlaying } from '../../../../src/core/room/check/heard-playing.ts';
import { pluckLine } from '../../../analysis/pluck.ts';
import { InputLevel } from '../../../../src/core/room/check/input-level.ts';
import { checkSweeps, judgeSweeps, SWEEP_GAP_SECONDS } from '../../../../src/core/room/check/sound-check.ts';

const rate = 48_000;
const played = checkSweeps(rate);

function recorded(delays: readonly number[], gain: number, noise: number): Float32Array[] {
  const dice = random(8);
  return played.map((sound, i) => {
    const padded = new Float32Array(sound.length + SWEEP_GAP_SECONDS * rate);
    padded.set(sound);
    const path = speakerPath(rate, delays[i]!, 6);
    return throughSpeaker(padded, path).map((x) => gain * x + noise * dice.normal());
  });
}

describe('three sweeps', () => {
  test('speakers: delay, spread, leak, and what is taken out', () => {
    const room = judgeSweeps(recorded([0.08, 0.081, 0.08], 0.5, 1e-4), played, rate);
    if (!room.ok) throw new Error(english(room.problem));
    const { delaySeconds, spreadSeconds, leakDb, through, removedDb, path } = room.value;
    expect(delaySeconds).toBeCloseTo(0.08, 4);
    expect(spreadSeconds).toBeCloseTo(0.001, 4);
    expect(through).toBe('speakers');
    expect(leakDb).toBeGreaterThan(-8);
    // The second sweep came a millisecond later; the room is the same.
    expect(removedDb).toBeGreaterThan(20);
    const steady = judgeSweeps(recorded([0.08, 0.08, 0.08], 0.5, 1e-4), played, rate);
    expect(steady.ok && steady.value.removedDb).toBeGreaterThan(20);
    expect(Math.abs((path?.heldBackSamples ?? 0) - 0.077 * 12_000)).toBeLessThan(2);
  });

  test('headphones: nothing to take out', () => {
    const room = judgeSweeps(recorded([0.08, 0.08, 0.08], 0, 3e-4), played, rate);
    expect(room).toMatchObject({
      ok: true,
      value: { through: 'headphones', delaySeconds: null, path: null },
    });
  });

  test('a delay that wanders, silence, a clipped input: a sentence', () => {
    for (const sounds of [
      recorded([0.08, 0.09, 0.12], 0.5, 1e-4),
      played.map((sound) => new Float32Array(sound.length + rate)),
      recorded([0.08, 0.08, 0.08], 90, 0).map((sound) => sound.map((x) => Math.max(-1, Math.min(1, x)))),
    ]) {
      const room = judgeSweeps(sounds, played, rate);
      expect(room.ok).toBe(false);
      expect(!room.ok && english(room.problem)).toMatch(/\.$/);
    }
  });
});

describe('somebody plays during the sweeps', () => {
  /** The sweeps through a room, and a line that goes on from one to the next. */
  const over = (line: (seconds: number) => number) =>
    recorded([0.08, 0.08, 0.08], 0.5, 1e-4).map((sound, i) =>
      sound.map((x, at) => x + line(i * 1.9 + at / rate)),
    );

  test('is said, whatever is played, and nothing is kept of it', () => {
    const plucks = [
      { atSeconds: 0.2, midi: 40, seconds: 3 },
      { atSeconds: 1, midi: 57, seconds: 1.2 },
      { atSeconds: 2.4, midi: 64, seconds: 1.6 },
      { atSeconds: 4.2, midi: 52, seconds: 1.5 },
    ];
    const line = pluckLine(plucks, rate, 5);
    expect(
      judgeSweeps(
        over((seconds) => line[Math.round(seconds * rate)] ?? 0),
        played,
        rate,
      ),
    ).toMatchObject({
      ok: false,
      problem: { code: 'sweep.playing' },
    });
    // One string that was left ringing: four partials that die away.
    const ringing = (seconds: number) =>
      [1, 2, 3, 4].reduce(
        (sum, n) =>
          sum + (0.15 / n) * Math.exp((-seconds * n) / 3) * Math.sin(2 * Math.PI * 110 * n * seconds),
        0,
      );
    expect(heardPlaying(over(ringing), rate)).toBe(true);
  });

  test('is not taken for it: a quiet room, noise, hum of the mains and of its rectifier', () => {
    const dice = random(4);
    expect(heardPlaying(recorded([0.08, 0.08, 0.08], 0.5, 1e-4), rate)).toBe(false);
    expect(
      heardPlaying(
        over(() => 0.02 * dice.normal()),
        rate,
      ),
    ).toBe(false);
    for (const hz of [50, 60, 100, 120])
      expect(
        heardPlaying(
          over((seconds) => 0.05 * Math.sin(2 * Math.PI * hz * seconds)),
          rate,
        ),
      ).toBe(false);
  });
});

describe('the input', () => {
  const tone = (gain: number) =>
    Float32Array.from({ length: 2 * rate }, (_, i) =>
      i < rate ? gain * Math.sin((2 * Math.PI * 220 * i) / rate) : 1e-4 * Math.sin(i),
    );
  test.each([
    [1e-4, 'silent'],
    [0.02, 'turn up'],
    [0.3, 'good'],
    [1.5, 'too hot'],
  ] as const)('a peak of %s is %s', (gain, verdict) => {
    const level = new InputLevel(rate);
    level.push(tone(gain).map((x) => Math.max(-1, Math.min(1, x))));
    expect(level.reading.verdict).toBe(verdict);
    expect(level.reading.floorDb).toBeLessThan(-75);
  });
});

test('a browser that slips by 30 ms in mid-take is noticed, and the band still goes', async () => {
  const { player, band, echo, path } = await bandInARoom({
    instrument: 'jazz',
    sampleRate: 12_000,
    seconds: 24,
    seed: 770,
    delaySeconds: 0.05,
    bandDb: 0,
  });
  const taps = new Float32Array(5120);
  taps.set(path.subarray(500, 5620));
  const slip = 360;
  const late = echo.map((x, i) => (i < 8 * 12_000 ? x : echo[i - slip]!));
  const remover = new BandRemover(12_000, { heldBackSamples: 500, taps });
  const changes: (number | null)[] = [];
  let [left, all] = [0, 0];
  for (let from = 0; from + 600 <= player.length; from += 600) {
    const piece = player.slice(from, from + 600).map((x, i) => x + late[from + i]!);
    const out = remover.push(piece, band.slice(from, from + 600));
    changes.push(remover.delayChangeSeconds);
    if (from > 16 * 12_000) for (const x of out) left += x * x;
    if (from > 16 * 12_000) for (const x of player.slice(from, from + 600)) all += x * x;
  }
  expect(changes[100]).toBeCloseTo(0, 2);
  expect(changes.at(-1)).toBeCloseTo(slip / 12_000, 2);
  expect(10 * Math.log10(left / all)).toBeLessThan(1);
});
