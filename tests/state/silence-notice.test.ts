import { expect, it } from 'vitest';
import { world } from './world.ts';

const SENTENCE = 'Nothing but silence comes.';

it('a silent microphone is told, taken back when sound is back, and told anew', async () => {
  const w = await world();
  await w.session.start();
  const before = w.session.notices;
  w.silence(SENTENCE);
  expect(w.session.notices).toEqual([...before, SENTENCE]);
  w.soundBack(SENTENCE);
  expect(w.session.notices).toEqual(before);
  w.silence(SENTENCE);
  expect(w.session.notices).toContain(SENTENCE);
  w.session.close();
  // What an older take tells is nobody's.
  w.soundBack(SENTENCE);
  expect(w.session.notices).toEqual([]);
});
