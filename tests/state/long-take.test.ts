/** What a take holds in memory while it is played: what is not safe on the disk, and no more. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { fromPcm16 } from '../../src/core/base/pcm16.ts';
import { bad } from '../../src/core/base/outcome.ts';
import { HeldSound } from '../../src/state/held-sound.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { english } from '../english.ts';
import { ramp } from '../storage/fakes.ts';
import { makeReview } from './by-command.ts';
import { RATE, world } from './world.ts';

afterEach(() => void vi.restoreAllMocks());

/** Every sound that is held from here on. */
function heldSounds(): ReadonlySet<HeldSound> {
  const held = new Set<HeldSound>();
  const add = HeldSound.prototype.add;
  vi.spyOn(HeldSound.prototype, 'add').mockImplementation(function (this: HeldSound, piece) {
    held.add(this);
    add.call(this, piece);
  });
  return held;
}

const mostHeld = (sounds: ReadonlySet<HeldSound>) =>
  Math.max(...[...sounds].map(({ heldFrames }) => heldFrames));

/** Other numbers in every place, so that nothing can be taken from a wrong one, around a line that is heard. */
const SECONDS = 8;
const line = (() => {
  const played = new Float32Array(SECONDS * RATE);
  played.set(pluckLine(onTheBeat([69, 72, 74, 69], 120, 4), RATE, 5).subarray(0, played.length));
  return fromPcm16(Int16Array.from(played, (x, i) => Math.round(16_000 * x) + (i % 251) - ((i * 7) % 113)));
})();
const band = fromPcm16(Int16Array.from(line, (_, i) => ((i * 31) % 1009) - 500));
const written = (sound: Float32Array) => Int16Array.from(sound, (x) => Math.round(32_768 * x));

describe('a sound that is held', () => {
  it('lets go whole pieces, and is whole with what was safe', () => {
    const sound = new HeldSound();
    for (let i = 0; i < 10; i++) sound.add(ramp(10, 10 * i));
    sound.letGo(57);
    expect([sound.frames, sound.heldFrames]).toEqual([100, 50]);
    sound.letGo(57);
    expect(sound.heldFrames).toBe(50);
    // What is safe may reach further, or hold all of it.
    for (const safe of [50, 57, 100, 120]) expect(sound.whole(ramp(safe))).toEqual(ramp(100));
    expect(() => sound.whole(ramp(49))).toThrow('50 frames were let go');
  });
});

describe('a take while it is played', () => {
  it('holds no more after many seconds than after a few, and is whole at its end', async () => {
    const held = heldSounds();
    const w = await world();
    await w.session.start();
    for (let from = 0; from < line.length; from += RATE) {
      await w.play(line.slice(from, from + RATE), band.slice(from, from + RATE));
      // Half a second waits to be written, and what the disk has not answered for yet.
      expect(mostHeld(held)).toBeLessThanOrEqual(1.5 * RATE);
    }
    expect(held.size).toBe(2);
    await w.session.stop();
    const { content } = await makeReview(w);
    if (content.kind !== 'sound' || content.backing?.kind !== 'band') throw new Error(content.kind);
    expect(content.audio.samples).toEqual(written(line));
    expect(content.backing.samples).toEqual(written(band));
  });

  it('on a full disk holds what was not written, and is whole', async () => {
    const held = heldSounds();
    const w = await world({ room: 3 * RATE });
    await w.session.start();
    for (let from = 0; from < line.length; from += RATE)
      await w.play(line.slice(from, from + RATE), band.slice(from, from + RATE));
    expect(mostHeld(held)).toBe(line.length - 3 * RATE);
    await w.session.stop();
    const { id, content } = await makeReview(w);
    expect(id).toBeNull();
    if (content.kind !== 'sound' || content.backing?.kind !== 'band') throw new Error(content.kind);
    expect(content.audio.samples).toEqual(written(line));
    expect(content.backing.samples).toEqual(written(band));
  });

  it('keeps its notes where what was written can not be read again', async () => {
    const w = await world();
    await w.session.start();
    await w.play(line);
    vi.spyOn(w.takes, 'open').mockResolvedValue(bad('take.gone'));
    await w.session.stop();
    const { report, content } = await makeReview(w);
    expect(report.notes.length).toBeGreaterThan(2);
    expect(content).toMatchObject({ kind: 'notes', durationSeconds: SECONDS });
    expect(w.session.notices.map(english).join(' ')).toMatch(/no longer/);
  });
});
