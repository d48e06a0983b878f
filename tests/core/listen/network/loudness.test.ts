/** A take is heard alike at any level of the recording: what counts is how far the notes stand out, not how loud the file is. */
import { expect, it } from 'vitest';
import { listen } from '../../../../src/core/listen.ts';
import { pluckLine } from '../../../analysis/pluck.ts';

const RATE = 16_000;
const plucks = [55, 59, 62].map((midi, i) => ({ atSeconds: 0.5 + i / 2, midi }));

it.each([0.1, 1, 3])('a clean line is heard, and surely, at %f of its level', (gain) => {
  const notes = listen(
    pluckLine(plucks, RATE, 2.5).map((x) => x * gain),
    RATE,
  );
  expect(notes.map(({ midi }) => Math.round(midi))).toEqual([55, 59, 62]);
  for (const { confidence } of notes) expect(confidence).toBeGreaterThan(0.75);
});
