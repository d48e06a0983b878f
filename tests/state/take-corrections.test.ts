/** What a player corrects of the take in review: it is graded again in place, and kept with the take. */
import { expect, test } from 'vitest';
import { good } from '../../src/core/base/outcome.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { RATE, world } from './world.ts';

type World = Awaited<ReturnType<typeof world>>;
const COUNT_IN = 2;
const melody = [73, 69, 64, 69, 66, 69, 74, 69];
const line = () => pluckLine(onTheBeat(melody, 120, COUNT_IN), RATE, COUNT_IN + 4.5);

const reviewOf = ({ session }: World) => {
  if (session.phase.kind !== 'review') throw new Error('no review');
  return session.phase.review;
};

async function played() {
  const w = await world();
  await w.session.start();
  await w.play(line());
  await w.session.stop();
  await w.until('review');
  await w.settle();
  return w;
}

/** Says of the note at a place in the list that it counts or not. */
const say = (w: World, list: 'notes' | 'doubtful', index: number, counts: boolean | null) =>
  w.session.chooseNote({ counts: list === 'notes', index }, counts);

test('a note that is taken out counts no more, at once and after the take is opened again', async () => {
  const w = await played();
  const before = reviewOf(w);
  expect(before.report.landings).toMatchObject([{ role: 'third' }, { role: 'third' }]);
  const { playback } = w.session;
  await say(w, 'notes', 4, false);
  const { id, report, details } = reviewOf(w);
  expect(report.notes).toHaveLength(melody.length - 1);
  expect(report.doubtful).toMatchObject([{ name: 'F#4', takenOut: true }]);
  expect(report.landings[1]).not.toMatchObject({ role: 'third', kind: 'landing' });
  expect(details.corrections).toMatchObject([{ kind: 'count', counts: false }]);
  // The take goes on being heard while it is graded again.
  expect(w.session.playback).toBe(playback);

  await w.settle();
  w.session.close();
  await w.session.openTake(id!);
  await w.until('review');
  expect(reviewOf(w).report).toEqual(report);
  expect(reviewOf(w).details.corrections).toEqual(details.corrections);
  // What was said is taken back: the report is what it was.
  await say(w, 'doubtful', 0, null);
  expect(reviewOf(w).report).toEqual(before.report);
});

test('choices that follow each other fast are all kept', async () => {
  const w = await played();
  const saying = [say(w, 'notes', 0, false), say(w, 'notes', 1, false), say(w, 'notes', 2, false)];
  await Promise.all(saying);
  expect(reviewOf(w).report.notes).toHaveLength(melody.length - 3);
  expect(reviewOf(w).details.corrections).toHaveLength(3);
});

test('a take of before the notes were kept is heard again, once', async () => {
  const w = await played();
  const { id, report } = reviewOf(w);
  w.session.close();
  const { open } = w.takes;
  w.takes.open = async (wanted) => {
    const stored = await open.call(w.takes, wanted);
    return stored.ok ? good({ ...stored.value, report }) : stored;
  };
  await w.session.openTake(id!);
  await w.until('review');
  expect(reviewOf(w).heard).toBeNull();
  await say(w, 'notes', 0, false);
  expect(reviewOf(w).report.notes).toHaveLength(melody.length - 1);
  expect(reviewOf(w).heard).toHaveLength(melody.length);
});

test('a note that the listener doubts counts when the player lets it', async () => {
  const w = await played();
  const { id } = reviewOf(w);
  w.session.close();
  // The take as it would lie there had the listener doubted its fifth note.
  const { open } = w.takes;
  w.takes.open = async (wanted) => {
    const stored = await open.call(w.takes, wanted);
    if (!stored.ok) return stored;
    const kept = stored.value.report as { readonly heard: readonly { readonly confidence: number }[] };
    const heard = kept.heard.map((note, i) => (i === 4 ? { ...note, confidence: 0.3 } : note));
    return good({ ...stored.value, report: { ...kept, heard } });
  };
  await w.session.openTake(id!);
  await w.until('review');
  // Any choice grades all of its notes again.
  await say(w, 'notes', 0, false);
  expect(reviewOf(w).report.doubtful).toMatchObject([
    { takenOut: true, confidence: expect.any(Number) as number },
    { takenOut: false, confidence: 0.3 },
  ]);
  await say(w, 'doubtful', 1, true);
  const { report } = reviewOf(w);
  expect(report.notes.filter(({ chosen }) => chosen)).toMatchObject([{ name: 'F#4', confidence: 0.3 }]);
  expect(report.landings[1]).toMatchObject({ role: 'third' });
});

test('notes are corrected with undo: kept at once, and there when the take is opened again', async () => {
  const w = await played();
  const { corrections } = w.session;
  const before = reviewOf(w).report;
  const fSharp = before.notes[4]!;
  expect(corrections.edit({ kind: 'pitch', of: fSharp, midi: fSharp.midi + 1 })).toBeNull();
  const raised = { onsetSeconds: fSharp.onsetSeconds, midi: fSharp.midi + 1 };
  // Not graded yet, and known: the next one names the note as it stands now.
  expect(corrections.notes[4]?.changes).toEqual(['pitch']);
  expect(corrections.edit({ kind: 'pitch', of: raised, midi: fSharp.midi + 2 })).toBeNull();
  expect(corrections.edit({ kind: 'delete', of: before.notes[0]! })).toBeNull();
  await corrections.settled();
  const { report, id } = reviewOf(w);
  expect(report.notes.map(({ name }) => name)[3]).toBe('Ab4');
  expect(report.corrections).toMatchObject({ notes: 2, deleted: [{ midi: before.notes[0]!.midi }] });

  w.session.close();
  await w.session.openTake(id!);
  await w.until('review');
  expect(reviewOf(w).report).toEqual(report);
  expect(reviewOf(w).heard).toHaveLength(melody.length);
  // What an earlier visit corrected is undone, too.
  corrections.undo();
  corrections.undo();
  await corrections.settled();
  expect(reviewOf(w).report.notes.map(({ name }) => name)[4]).toBe('G4');
  corrections.redo();
  corrections.undoAll();
  expect(corrections.canUndo).toBe(false);
  await corrections.settled();
  expect(reviewOf(w).report).toEqual(before);
  corrections.redo();
  await corrections.settled();
  expect(reviewOf(w).report.notes.map(({ name }) => name)[4]).toBe('G4');
});

test('a correction that does not fit is refused, and nothing changes', async () => {
  const w = await played();
  const { corrections } = w.session;
  const [first] = reviewOf(w).report.notes;
  const { report } = reviewOf(w);
  const over = { onsetSeconds: first!.onsetSeconds, offsetSeconds: first!.offsetSeconds + 0.4 };
  expect(corrections.edit({ kind: 'move', of: first!, ...over })).toBe('together');
  expect(corrections.canUndo).toBe(false);
  await corrections.settled();
  expect(reviewOf(w).report).toBe(report);
});

test('what was said of the notes of an earlier take still holds, and can be undone', async () => {
  const w = await played();
  const { id, report } = reviewOf(w);
  const { onsetSeconds, midi } = report.notes[0]!;
  w.session.close();
  const { open } = w.takes;
  w.takes.open = async (wanted) => {
    const stored = await open.call(w.takes, wanted);
    if (!stored.ok) return stored;
    const noteChoices = [{ onsetSeconds, midi, counts: false }];
    return good({ ...stored.value, details: { ...stored.value.details, noteChoices } });
  };
  await w.session.openTake(id!);
  await w.until('review');
  const { corrections } = w.session;
  expect(corrections.canUndo).toBe(true);
  expect(corrections.edit({ kind: 'delete', of: report.notes[1]! })).toBeNull();
  await corrections.settled();
  expect(reviewOf(w).report.notes).toHaveLength(melody.length - 2);
  corrections.undo();
  corrections.undo();
  await corrections.settled();
  expect(reviewOf(w).report).toEqual(report);
  expect(reviewOf(w).details.corrections).toEqual([]);
});
