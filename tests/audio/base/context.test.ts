/** The audio clock is started, refused, or never answered for: Firefox without any output does the last. */
import { expect, test } from 'vitest';
import { wake } from '../../../src/audio/base/context.ts';

const context = (state: AudioContextState, resume: () => Promise<void>) => ({ state, resume });
const asleep = { ok: false, problem: { code: 'output.asleep' } };

test('a context that runs is not asked', async () => {
  const running = context('running', () => Promise.reject(new Error('asked')));
  expect(await wake(running)).toEqual({ ok: true, value: undefined });
});

test('one that sleeps is started', async () => {
  expect(await wake(context('suspended', () => Promise.resolve()))).toEqual({ ok: true, value: undefined });
});

test('so is one that Safari has interrupted, for a call or a dark screen', async () => {
  expect(await wake(context('interrupted', () => Promise.resolve()))).toEqual({ ok: true, value: undefined });
});

test('a browser that refuses is told of', async () => {
  expect(await wake(context('suspended', () => Promise.reject(new Error('no'))))).toMatchObject(asleep);
});

test('so is one that never answers', async () => {
  const silent = context('suspended', () => new Promise(() => undefined));
  expect(await wake(silent, 20)).toMatchObject(asleep);
});
