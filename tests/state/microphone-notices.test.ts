import { expect, it } from 'vitest';
import { world } from './world.ts';

const SILENT = { code: 'microphone.silent' };

it('a silent microphone is told, taken back when sound is back, and told anew', async () => {
  const w = await world();
  await w.session.start();
  const before = w.session.notices;
  w.silence();
  expect(w.session.notices).toEqual([...before, SILENT]);
  w.soundBack();
  expect(w.session.notices).toEqual(before);
  w.silence();
  expect(w.session.notices).toContainEqual(SILENT);
  w.session.close();
  // What an older take tells is nobody's.
  w.soundBack();
  expect(w.session.notices).toEqual([]);
});

it('a browser that throws away sound is told once in a take, from the first downbeat on', async () => {
  const w = await world();
  await w.session.start();
  w.behind();
  const before = w.session.notices;
  expect(before).not.toContainEqual({ code: 'take.soundLost' });
  await w.play(new Float32Array(10 * 48_000).fill(0.01));
  w.behind();
  w.behind();
  expect(w.session.notices).toEqual([...before, { code: 'take.soundLost' }]);
});
