/** A round on the audio clock: counted in, on whole frames, looped by the buffer itself, from any beat. */
import { expect, test } from 'vitest';
import { roundAlong } from '../../../src/audio/playback/along.ts';
import { createRoundPlayer } from '../../../src/audio/backing/round-player.ts';
import { bad, good } from '../../../src/core/base/outcome.ts';
import { fakeContext } from '../fake-context.ts';

const beatSeconds = [0, 0.52, 1.01, 1.55, 2.04];
const baked = {
  channels: [new Float32Array(Math.round(2.04 * 48_000))],
  sampleRate: 48_000,
  leadSeconds: 0.03,
};
const open = (fake = fakeContext()) => ({
  fake,
  player: createRoundPlayer(fake.context, fake.context.destination, baked, beatSeconds, 4),
});

test('is counted in at its own pace, and its first downbeat falls where the clock says', () => {
  const { fake, player } = open();
  const clock = player.start({ fromBeat: -4 });
  const clicks = fake.scheduled.slice(0, 4).map(({ when }) => when);
  clicks.forEach((when, i) => expect(when).toBeCloseTo(clock.contextSecondsAt(i - 4), 9));
  const sound = fake.scheduled.at(-1)!;
  expect(fake.scheduled).toHaveLength(5);
  expect(sound.when + baked.leadSeconds).toBeCloseTo(clock.firstBeatContextSeconds, 9);
  expect((clock.firstBeatContextSeconds * 48_000) % 1).toBeCloseTo(0, 6);
  // Chorus 20, to the sample: the buffer loops, the clock knows.
  expect(clock.contextSecondsAt(19 * 4) - clock.contextSecondsAt(0)).toBeCloseTo(19 * 2.04, 9);
  player.stop();
  expect(sound.stoppedAt).not.toBeNull();
});

test('begins in the middle of a later round', () => {
  const { fake, player } = open();
  const clock = player.start({ fromBeat: 4 + 4 + 2 });
  const sound = fake.scheduled.at(-1)!;
  expect(clock.beatAt(sound.when)).toBeCloseTo(10, 4);
  expect(sound.offset).toBeCloseTo(1.01 + baked.leadSeconds, 4);
});

test('plays along with a take: silent before its first downbeat, at its place after it', async () => {
  const { fake, player } = open();
  const along = roundAlong(() => Promise.resolve(good(player)), beatSeconds, 3);
  await along.prepare(0, 1);
  along.start(0.5, 1);
  expect(fake.scheduled).toHaveLength(1);
  expect(fake.scheduled[0]!.when).toBeCloseTo(0.5 + 2 - baked.leadSeconds, 4);
  along.start(0.5, 3 + 2.04 + 0.52);
  expect(fake.scheduled.at(-1)!.offset).toBeCloseTo(0.52 + baked.leadSeconds, 4);
});

test('a recording that no longer exists is reported once, and the take is played without it', async () => {
  const along = roundAlong(() => Promise.resolve(bad('backing.gone')), beatSeconds, 3);
  expect(await along.prepare(0, 1)).toMatchObject({
    ok: false,
    problem: { code: 'backing.takeAlone', facts: { cause: { code: 'backing.gone' } } },
  });
  expect((await along.prepare(0, 1)).ok).toBe(true);
  along.start(0.5, 1);
  along.stop();
});

test('whenever it is started, no place before the first sample is asked for', () => {
  const { fake, player } = open();
  for (let i = 0; i < 500; i++) {
    fake.moveTo(i * 0.137_31 + 0.000_007 * i * i);
    player.start({ fromBeat: -4 });
  }
  const starts = fake.scheduled.filter((_, i) => i % 5 === 4);
  expect(starts).toHaveLength(500);
  expect(Math.min(...starts.map(({ offset }) => offset))).toBeGreaterThanOrEqual(0);
});
