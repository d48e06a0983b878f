import { describe, expect, it } from 'vitest';
import { pluckLine } from '../analysis/pluck.ts';
import { RATE, world } from './world.ts';

const COUNT_IN = 2;
/** Two bars over | A7 | D7 | at 120, a rest, then the open low string three times, half a second apart. */
const line = [
  ...[73, 69, 64, 69].map((midi, i) => ({ atSeconds: COUNT_IN + i * 0.5, midi, seconds: 0.4 })),
  ...[40, 40, 40].map((midi, i) => ({ atSeconds: COUNT_IN + 4 + i * 0.5, midi, seconds: 0.35 })),
];
const sound = pluckLine(line, RATE, COUNT_IN + 6.5);

describe('without hands', () => {
  it('three low notes after a rest stop the take, where the player asked for that', async () => {
    const w = await world({ settings: { playedSignal: true, instrument: 'guitar' } });
    await w.session.start();
    await w.play(sound);
    await w.until('review');
    expect(w.session.endedByItself).toBe(false);
  });

  it('and are notes like any other where not', async () => {
    const w = await world({ settings: { playedSignal: false } });
    await w.session.start();
    await w.play(sound);
    expect(w.session.phase.kind).toBe('playing');
    w.session.close();
  });

  it('in the count-in they do nothing: a player tries the string', async () => {
    const w = await world({ settings: { playedSignal: true, bpm: 60 } });
    await w.session.start();
    await w.play(
      pluckLine(
        line.slice(4).map((note) => ({ ...note, atSeconds: note.atSeconds - 5 })),
        RATE,
        3.5,
      ),
    );
    expect(w.session.phase.kind).toBe('counting-in');
    w.session.close();
  });

  it('a take that comes to its end says so, so that it may go on by itself', async () => {
    const w = await world({ settings: { choruses: 1 } });
    await w.session.start();
    await w.play(sound);
    await w.until('review');
    expect(w.session.endedByItself).toBe(true);
    w.session.close();
    expect(w.session.endedByItself).toBe(false);
  });

  it('the tones to land on follow the aim that is set', async () => {
    const w = await world({ settings: { aim: 'thirds' } });
    await w.session.start();
    await w.play(sound.subarray(0, Math.round((COUNT_IN + 1) * RATE)));
    expect(w.session.live?.targets.map(({ name }) => name)).toEqual(['F#']);
    w.session.close();
  });
});
