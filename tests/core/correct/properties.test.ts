/** What holds for any corrections of any line. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctNotes } from '../../../src/core/correct/correct-notes.ts';
import { LEAST_NOTE_SECONDS, type Correction } from '../../../src/core/take/correction.ts';
import { edited, redo, undo, undoAll, type EditHistory } from '../../../src/core/correct/edit-history.ts';
import { listedNote } from '../../../src/core/take/listed-note.ts';
import type { HeardNote } from '../../../src/core/take/note.ts';

const steps = fc.tuple(
  fc.integer({ min: 0, max: 40 }),
  fc.integer({ min: 1, max: 40 }),
  fc.integer({ min: 40, max: 80 }),
);
/** A line: one note after the other, rests between them, some of them shorter than any correction makes one. */
const lines = fc.array(steps, { minLength: 1, maxLength: 12 }).map((notes) => {
  let at = 0;
  return notes.map(([rest, length, midi]) => {
    const note = listedNote(at + rest / 50, length / 50, midi + rest / 100);
    at = note.offsetSeconds;
    return note;
  });
});

type Plan = readonly [which: number, kind: number, a: number, b: number];
const plans = fc.array(
  fc.tuple(
    fc.nat(30),
    fc.nat(6),
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  ),
  { maxLength: 30 },
);

/** A correction of a note that is there, most often one that fits. */
function correctionOf([which, kind, a, b]: Plan, notes: readonly HeardNote[]): Correction {
  const end = notes.at(-1)?.offsetSeconds ?? 1;
  const free = { onsetSeconds: a * end, offsetSeconds: a * end + b * 0.4 };
  const of = notes[which % Math.max(1, notes.length)];
  if (of === undefined || kind === 0) return { kind: 'add', ...free, midi: 40 + Math.round(40 * b) };
  const length = of.offsetSeconds - of.onsetSeconds;
  const onsetSeconds = Math.max(0, of.onsetSeconds + (a - 0.5) * 0.3);
  if (kind === 1) return { kind: 'delete', of };
  if (kind === 2) return { kind: 'move', of, onsetSeconds, offsetSeconds: onsetSeconds + length * (0.5 + b) };
  if (kind === 3) return { kind: 'split', of, atSeconds: of.onsetSeconds + a * length };
  if (kind === 4) return { kind: 'join', of };
  if (kind === 5) return { kind: 'pitch', of, midi: Math.round(of.midi) + (a > 0.5 ? 1 : -1) };
  return { kind: 'count', of, counts: a > 0.6 ? true : a > 0.3 ? false : null };
}

/** The plan made into corrections, each of a note as it stands by then. */
const correctionsOf = (line: readonly HeardNote[], plan: readonly Plan[]): readonly Correction[] =>
  plan.reduce<readonly Correction[]>(
    (made, one) => [
      ...made,
      correctionOf(
        one,
        correctNotes(line, made).notes.map(({ note }) => note),
      ),
    ],
    [],
  );

const together = (a: HeardNote, b: HeardNote) =>
  Math.min(a.offsetSeconds, b.offsetSeconds) - Math.max(a.onsetSeconds, b.onsetSeconds);

const forAny = (holds: (line: readonly HeardNote[], corrections: readonly Correction[]) => void) =>
  fc.assert(
    fc.property(lines, plans, (line, plan) => holds(line, correctionsOf(line, plan))),
    { numRuns: 150 },
  );

describe('any corrections of any line', () => {
  it('give notes in order of onset, none together and none too short', () =>
    forAny((line, corrections) => {
      const notes = correctNotes(line, corrections).notes.map(({ note }) => note);
      const shortest = Math.min(
        LEAST_NOTE_SECONDS,
        ...line.map((note) => note.offsetSeconds - note.onsetSeconds),
      );
      for (const [i, note] of notes.entries()) {
        expect(note.offsetSeconds - note.onsetSeconds).toBeGreaterThan(shortest - 1e-5);
        const next = notes[i + 1];
        if (next === undefined) continue;
        expect(next.onsetSeconds).toBeGreaterThanOrEqual(note.onsetSeconds);
        expect(together(note, next)).toBeLessThan(1e-4);
      }
    }));

  it('leave what was heard as it was, and lose no note of it', () =>
    forAny((line, corrections) => {
      const before = structuredClone(line);
      const { notes, deleted } = correctNotes(line, corrections);
      expect(line).toEqual(before);
      const accounted = new Set([...deleted, ...notes.flatMap(({ was }) => was)]);
      expect([...accounted].length).toBe(line.length);
      for (const { note, changes, was } of notes) if (changes.length === 0) expect(note).toBe(was[0]);
    }));

  it('leave out what does not fit: without it the notes are the same', () =>
    forAny((line, corrections) => {
      const { notes, leftOut } = correctNotes(line, corrections);
      const misfits = new Set(leftOut.map(({ correction }) => correction));
      const fitting = correctNotes(
        line,
        corrections.filter((one) => !misfits.has(one)),
      );
      expect(fitting.leftOut).toEqual([]);
      expect(fitting.notes).toEqual(notes);
    }));

  it('can be undone to the original, bit for bit, and done again', () =>
    forAny((line, corrections) => {
      let history: EditHistory = { done: [], undone: [] };
      for (const one of corrections) history = edited(history, one);
      const all = correctNotes(line, history.done);
      let undone = history;
      for (const _ of corrections) undone = undo(undone);
      expect(undo(undone)).toBe(undone);
      const { notes } = correctNotes(line, undone.done);
      expect(notes.length).toBe(line.length);
      notes.forEach(({ note }, i) => expect(note).toBe(line[i]));
      expect(undoAll(history)).toEqual(undone);
      let again = undone;
      for (const _ of corrections) again = redo(again);
      expect(redo(again)).toBe(again);
      expect(again).toEqual(history);
      expect(correctNotes(line, again.done)).toEqual(all);
    }));

  it('after an undo a new correction ends what could be done again', () => {
    const one: Correction = { kind: 'delete', of: { onsetSeconds: 0, midi: 60 } };
    const two: Correction = { kind: 'join', of: { onsetSeconds: 0, midi: 60 } };
    const history = edited(undo(edited(edited({ done: [], undone: [] }, one), two)), two);
    expect(history).toEqual({ done: [one, two], undone: [] });
  });
});
