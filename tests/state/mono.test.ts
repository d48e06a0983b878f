import { describe, expect, test } from 'vitest';
import { mixToMono } from '../../src/audio/base/level.ts';
import { world } from './world.ts';

const room = {
  input: 'fake',
  output: 'speakers',
  measuredAt: '2026-03-01T09:00:00.000Z',
  delaySeconds: 0.06,
  spreadSeconds: 0,
  leakDb: -10,
  removedDb: 20,
  delayFrom: 'sweep' as const,
  strokes: 0,
  isSwept: true,
  setSeconds: null,
};
const path = { heldBackSamples: 600, taps: new Float32Array(5120) };

describe('a sweep measures one path, so both speakers play the same', () => {
  test.each([
    ['through speakers', { ...room, path }, true],
    ['through headphones the band stays in stereo', { ...room, path: null }, false],
    ['where nobody knows it may come back', undefined, true],
  ])('%s', async (_, known, mono) => {
    const w = await world(known ? { known } : {});
    await w.session.start();
    expect(w.inMono).toEqual([mono]);
    w.session.close();
  });

  test('a node is mixed down, and back again (channelCount and its mode, Web Audio API)', () => {
    const node = { channelCount: 2, channelCountMode: 'max' } as AudioNode;
    mixToMono(node, true);
    expect(node).toMatchObject({ channelCount: 1, channelCountMode: 'explicit' });
    mixToMono(node, false);
    expect(node).toMatchObject({ channelCount: 2, channelCountMode: 'max' });
  });
});
