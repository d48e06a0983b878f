/** Three low notes on the open page: heard only where that was asked for and the browser asks nothing. */
import { describe, expect, it, vi } from 'vitest';
import { bad } from '../../src/core/base/outcome.ts';
import { StartSignal } from '../../src/state/start-signal.svelte.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { RATE, world } from './world.ts';

const knocks = (midi: number) =>
  pluckLine(
    [0, 1, 2].map((i) => ({ atSeconds: 0.5 + i * 0.5, midi, seconds: 0.35 })),
    RATE,
    2.5,
  );
const guitar = { instrument: 'guitar', input: 'microphone' } as const;

describe('three low notes', () => {
  it('start a take: the microphone that listened is let go, and the take has its own', async () => {
    const w = await world();
    const started = vi.fn(() => void w.session.start());
    await w.startSignal.listen(guitar, started);
    expect(w.startSignal.status).toBe('listening');
    expect(w.open.microphone).toBe(1);
    await w.play(knocks(40));
    expect(started).toHaveBeenCalledTimes(1);
    expect(w.startSignal.status).toBe('off');
    await w.until('counting-in');
    expect(w.open.microphone).toBe(1);
    w.session.close();
    expect(w.open.microphone).toBe(0);
  });

  it('higher up they are notes like any others', async () => {
    const w = await world();
    const started = vi.fn();
    await w.startSignal.listen(guitar, started);
    await w.play(knocks(64));
    expect(started).not.toHaveBeenCalled();
    expect(w.startSignal.status).toBe('listening');
    w.startSignal.halt();
    expect(w.open.microphone).toBe(0);
  });

  it('on a MIDI instrument need no microphone', async () => {
    const w = await world();
    const started = vi.fn();
    await w.startSignal.listen({ ...guitar, input: 'midi' }, started);
    expect(w.startSignal.status).toBe('listening');
    for (let i = 0; i < 3; i++) {
      w.send(0x90, 41, 90);
      await w.play(new Float32Array(0.4 * RATE));
      w.send(0x80, 41, 0);
      await w.play(new Float32Array(0.1 * RATE));
    }
    expect(started).toHaveBeenCalledTimes(1);
    expect(w.open.microphone).toBe(0);
  });
});

describe('without surprises', () => {
  it.each(['closed', 'asleep'] as const)('%s: nothing is opened, and it says so', async (answer) => {
    const w = await world({ mayOpen: () => answer });
    await w.startSignal.listen(guitar, () => undefined);
    expect(w.startSignal.status).toBe(answer);
    expect(w.open.microphone).toBe(0);
  });

  it('a microphone that opens after the page was left is closed again', async () => {
    let grant: () => void = () => undefined;
    const w = await world({
      microphone: () => new Promise((resolve) => (grant = () => resolve({ ok: true, value: undefined }))),
    });
    const listening = w.startSignal.listen(guitar, () => undefined);
    await w.settle();
    w.startSignal.halt();
    grant();
    await listening;
    expect(w.open.microphone).toBe(0);
    expect(w.startSignal.status).toBe('off');
  });

  it('a microphone that is gone, or can’t be opened, is a sentence', async () => {
    const w = await world();
    await w.startSignal.listen(guitar, () => undefined);
    await w.pullOut();
    expect(w.startSignal).toMatchObject({ status: 'failed', problem: { code: 'microphone.lost' } });
    const refused = await world({
      microphone: () => Promise.resolve(bad('microphone.notFound')),
    });
    await refused.startSignal.listen(guitar, () => undefined);
    expect(refused.startSignal).toMatchObject({ status: 'failed', problem: { code: 'microphone.notFound' } });
  });

  it('stops listening when nothing has been played for long', async () => {
    const w = await world();
    const { audio, analysis, midi, rooms } = w;
    const signal = new StartSignal({
      audio,
      analysis,
      midi,
      rooms,
      nowSeconds: () => 0,
      longestSeconds: 3,
    });
    await signal.listen(guitar, () => undefined);
    await w.play(new Float32Array(2.9 * RATE));
    expect(signal.status).toBe('listening');
    await w.play(new Float32Array(0.2 * RATE));
    expect(signal.status).toBe('asleep');
    expect(w.open.microphone).toBe(0);
  });
});
