/** Notes rendered while they play: the pieces together are what the whole would be, whatever the borders. */
import { describe, expect, it } from 'vitest';
import { createNotesLine } from '../../../src/audio/playback/notes-line.ts';
import { wholeOf } from '../../../src/audio/playback/slow-line.ts';
import { bad, good } from '../../../src/core/base/outcome.ts';
import { listedNote } from '../../../src/core/take/listed-note.ts';
import type { HeardNote } from '../../../src/core/take/note.ts';

const RATE = 1000;

/** A kit whose notes are ones from onset to offset, so that a sum can be told. */
function fakeKit() {
  const asked: { notes: number; seconds: number; instrument: string | undefined }[] = [];
  const render = (notes: readonly HeardNote[], seconds: number, instrument: string | undefined) => {
    asked.push({ notes: notes.length, seconds, instrument });
    const sound = new Float32Array(Math.round(seconds * RATE));
    for (const { onsetSeconds, offsetSeconds } of notes)
      for (let i = Math.round(onsetSeconds * RATE); i < Math.round(offsetSeconds * RATE); i++)
        sound[i]! += 0.25;
    return Promise.resolve(good(sound));
  };
  return { asked, render };
}

const whole = async (line: ReturnType<typeof createNotesLine>, from: number, to: number, speed: number) => {
  const sound = await wholeOf(line.pieces(from, to, speed));
  if (!sound.ok) throw new Error('not rendered');
  return sound.value;
};
/** Which of the milliseconds sound, at how many notes. */
const levels = (sound: Float32Array) => Array.from(sound, (x) => Math.round(x / 0.25));

describe('a line of notes', () => {
  // Notes over the borders of the pieces at 1, 5 and 9 s, one of them through a whole piece.
  const notes = [
    listedNote(0.5, 0.8, 60),
    listedNote(0.9, 5, 62),
    listedNote(4.9, 0.2, 64),
    listedNote(8, 2, 65),
    listedNote(9.5, 0.5, 67),
  ];
  const expected = levels(
    Float32Array.from({ length: 10_000 }, (_, i) =>
      notes.reduce(
        (sum, { onsetSeconds, offsetSeconds }) =>
          sum + (i >= Math.round(onsetSeconds * 1000) && i < Math.round(offsetSeconds * 1000) ? 0.25 : 0),
        0,
      ),
    ),
  );

  it('is the same in pieces as whole, from any place, notes that sound there already included', async () => {
    const { render } = fakeKit();
    const line = createNotesLine({ notes, durationSeconds: 10 }, render, RATE);
    expect(levels(await whole(line, 0, 10, 1))).toEqual(expected);
    expect(levels(await whole(line, 3.25, 10, 1))).toEqual(expected.slice(3250));
    expect(levels(await whole(line, 2, 5.05, 1))).toEqual(expected.slice(2000, 5050));
  });

  it('slower, it is rendered slower', async () => {
    const { render } = fakeKit();
    const line = createNotesLine({ notes, durationSeconds: 10 }, render, RATE);
    const slow = levels(await whole(line, 0, 10, 0.5));
    expect(slow).toHaveLength(20_000);
    expect(slow.filter((_, i) => i % 2 === 0)).toEqual(expected);
  });

  it('needs for its first second only the notes of that second, however long the take is', async () => {
    const many = Array.from({ length: 3000 }, (_, i) => listedNote(i / 5, 0.17, 60 + (i % 12)));
    const { asked, render } = fakeKit();
    const line = createNotesLine({ notes: many, durationSeconds: 600 }, render, RATE);
    const first = await line.pieces(300, 600, 1)();
    expect(first.ok && first.value?.length).toBe(RATE);
    expect(asked).toHaveLength(1);
    expect(asked[0]!.notes).toBeLessThanOrEqual(6);
    expect(asked[0]!.seconds).toBeLessThan(4);
  });

  it('has one sound for all pieces: the guitar, where the instrument’s own has not every note', async () => {
    const { asked, render } = fakeKit();
    const low = [listedNote(0, 0.5, 60), listedNote(3, 0.5, 30)];
    await whole(
      createNotesLine({ notes: low, durationSeconds: 4, instrument: 'flute' }, render, RATE),
      0,
      4,
      1,
    );
    await whole(createNotesLine({ notes, durationSeconds: 10, instrument: 'flute' }, render, RATE), 0, 2, 1);
    expect(asked.map(({ instrument }) => instrument)).toEqual(['guitar', 'guitar', 'flute']);
  });

  it('an earlier run ends when another begins; a failure is told', async () => {
    const { render } = fakeKit();
    const line = createNotesLine({ notes, durationSeconds: 10 }, render, RATE);
    const one = line.pieces(0, 10, 1);
    await one();
    line.pieces(5, 10, 1);
    expect(await one()).toEqual(good(null));
    const broken = createNotesLine(
      { notes, durationSeconds: 10 },
      () => Promise.resolve(bad('band.failed', { reason: 'gone' })),
      RATE,
    );
    expect(await broken.pieces(0, 10, 1)()).toMatchObject({ ok: false });
  });
});
