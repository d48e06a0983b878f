/** The one transport of the review: places, loops, speeds, what is heard, and what sounds in place of the line. */
import { describe, expect, it } from 'vitest';
import { Playback, type Mix } from '../../src/state/playback.svelte.ts';
import { failure, good } from '../../src/core/base/outcome.ts';
import { problem } from '../../src/core/words/problem.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { FakePlayer } from './world.ts';
import { line } from '../core/grade/line.ts';

function open(mix: Mix = 'both') {
  const player = new FakePlayer(10);
  const draws = new Set<() => void>();
  const rendered: { notes: readonly HeardNote[]; seconds: number }[] = [];
  let refusal = false;
  const playback = new Playback({
    player,
    frames: {
      each: (draw) => {
        draws.add(draw);
        return () => draws.delete(draw);
      },
    },
    levels: { all: -12, drums: 0, bass: 0, chords: 0, line: 0, click: 0 },
    mix,
    render: (notes, seconds) => {
      rendered.push({ notes, seconds });
      if (refusal) return Promise.resolve(failure(problem('band.failed', { reason: 'no kit' })));
      return Promise.resolve(good({ samples: new Float32Array(8), sampleRate: 8 }));
    },
  });
  return {
    player,
    playback,
    rendered,
    refuse: () => (refusal = true),
    draws,
    draw: (seconds: number) => {
      player.position = seconds;
      for (const one of draws) one();
    },
  };
}

describe('places', () => {
  it('plays, follows, pauses where it is, and starts anew at the end', async () => {
    const { player, playback, draws, draw } = open();
    await playback.play(2);
    expect(playback.playing).toBe(true);
    draw(3.5);
    expect(playback.seconds).toBe(3.5);
    await playback.toggle();
    expect(draws.size).toBe(0);
    expect(playback).toMatchObject({ playing: false, seconds: 3.5 });
    await playback.toggle();
    expect(player.orders.at(-1)).toEqual({ fromSeconds: 3.5, speed: 1, passage: null });
    await playback.seek(99);
    expect(playback.seconds).toBe(10);
    player.end();
    expect(playback).toMatchObject({ playing: false, seconds: 0 });
    playback.dispose();
    expect(player.disposed).toBe(true);
  });

  it('says why it does not sound', async () => {
    const { player, playback } = open();
    player.refusal = problem('output.asleep');
    await playback.play();
    expect(playback).toMatchObject({ playing: false, problem: { code: 'output.asleep' } });
    player.refusal = null;
    await playback.play();
    expect(playback.problem).toBeNull();
  });

  it('does not sound any more where it was paused while it got ready', async () => {
    const { player, playback } = open();
    const hearing = playback.hear({ id: 'a', fromSeconds: 1, toSeconds: 2, notes: line([[2, 1, 60]]) });
    playback.pause();
    await hearing;
    expect(player.orders).toEqual([]);
    expect(playback).toMatchObject({ playing: false, hearing: null });
  });
});

describe('what is heard', () => {
  it('is line and band, or one of them', () => {
    const { player, playback } = open('line');
    expect(player).toMatchObject({ bandLevelDb: -60, takeLevelDb: 0 });
    playback.setMix('band');
    expect(player).toMatchObject({ bandLevelDb: -12, takeLevelDb: -60 });
    playback.setMix('both');
    expect(player).toMatchObject({ bandLevelDb: -12, takeLevelDb: 0 });
  });

  it('goes on at another speed from where it is', async () => {
    const { player, playback, draw } = open();
    await playback.setSpeed(0.5);
    expect(player.orders).toEqual([]);
    await playback.play(4);
    draw(4.5);
    await playback.setSpeed(0.75);
    expect(player.orders.map(({ fromSeconds, speed }) => [fromSeconds, speed])).toEqual([
      [4, 0.5],
      [4.5, 0.75],
    ]);
  });
});

describe('a stretch', () => {
  it('is gone round from where it is, or from its beginning', async () => {
    const { player, playback } = open();
    await playback.setLoop({ fromSeconds: 2, toSeconds: 4 });
    expect(playback.seconds).toBe(2);
    await playback.play(3);
    await playback.play(7);
    expect(player.orders).toEqual([
      { fromSeconds: 3, speed: 1, passage: { fromSeconds: 2, toSeconds: 4, loops: true } },
      { fromSeconds: 2, speed: 1, passage: { fromSeconds: 2, toSeconds: 4, loops: true } },
    ]);
    await playback.setLoop(null);
    expect(player.orders.at(-1)?.passage).toBeNull();
  });

  it('lies inside the take', async () => {
    const { playback } = open();
    await playback.setLoop({ fromSeconds: 8, toSeconds: 40 });
    expect(playback.loop).toEqual({ fromSeconds: 8, toSeconds: 10 });
  });

  it('is heard once and ends where it ends, whatever is looped', async () => {
    const { player, playback } = open();
    await playback.setLoop({ fromSeconds: 2, toSeconds: 4 });
    await playback.hear({ id: 'note', fromSeconds: 6, toSeconds: 6.5 });
    expect(player.orders.at(-1)).toEqual({
      fromSeconds: 6,
      speed: 1,
      passage: { fromSeconds: 6, toSeconds: 6.5, loops: false },
    });
    expect(playback.hearing).toBe('note');
    player.end();
    expect(playback).toMatchObject({ hearing: null, playing: false, seconds: 6 });
  });

  it('stops where the same button is pressed again', async () => {
    const { player, playback } = open();
    const note = { id: 'note', fromSeconds: 6, toSeconds: 6.5 };
    await playback.hear(note);
    await playback.hear(note);
    expect(playback).toMatchObject({ hearing: null, playing: false });
    expect(player.orders).toHaveLength(1);
  });
});

describe('other notes in place of the line', () => {
  // At 120 beats a minute: from second 2 on, half a second long.
  const notes = line([[4, 1, 64]]);

  it('are rendered at the speed, and once', async () => {
    const { player, playback, rendered } = open();
    const hearing = { id: 'resolved', fromSeconds: 1, toSeconds: 3, notes };
    await playback.setSpeed(0.5);
    await playback.hear(hearing);
    expect(rendered[0]).toMatchObject({
      seconds: 4,
      notes: [{ onsetSeconds: 2, offsetSeconds: 3, midi: 64 }],
    });
    expect(player.orders[0]?.passage?.line?.samples).toHaveLength(8);
    player.end();
    await playback.hear(hearing);
    expect(rendered).toHaveLength(1);
  });

  it('that can not be rendered are told', async () => {
    const { playback, refuse } = open();
    refuse();
    await playback.hear({ id: 'resolved', fromSeconds: 1, toSeconds: 3, notes });
    expect(playback).toMatchObject({ playing: false, problem: { code: 'band.failed' } });
  });
});
