/** Corrections one by one on a line of three notes, and what is said of those that do not fit. */
import { describe, expect, it } from 'vitest';
import { correctNotes } from '../../../src/core/correct/correct-notes.ts';
import {
  correctionsSchema,
  countCorrections,
  MOST_CORRECTIONS,
  type Correction,
} from '../../../src/core/take/correction.ts';
import * as v from 'valibot';
import { listedNote } from '../../../src/core/take/listed-note.ts';

const [c, e, g] = [listedNote(1, 0.5, 60.1), listedNote(2, 0.5, 64), listedNote(3, 0.5, 67)];
const line = [c, e, g];

/** Onset, end and pitch of each note, how it differs, and how many notes it comes from. */
const after = (...corrections: readonly Correction[]) =>
  correctNotes(line, corrections).notes.map(({ note, changes, was }) => [
    note.onsetSeconds,
    note.offsetSeconds,
    note.midi,
    changes.join(' '),
    was.length,
  ]);
const whyNot = (...corrections: readonly Correction[]) =>
  correctNotes(line, corrections).leftOut.map(({ why }) => why);

const [C, E, G] = [
  [1, 1.5, 60.1, '', 1],
  [2, 2.5, 64, '', 1],
  [3, 3.5, 67, '', 1],
];

describe('each correction', () => {
  it('deletes a note', () => {
    expect(after({ kind: 'delete', of: e })).toEqual([C, G]);
    expect(correctNotes(line, [{ kind: 'delete', of: e }]).deleted).toEqual([e]);
  });

  it('moves a note, past others too, and lengthens it', () => {
    const move = (onsetSeconds: number, offsetSeconds: number): Correction => ({
      kind: 'move',
      of: e,
      onsetSeconds,
      offsetSeconds,
    });
    expect(after(move(1.75, 3))).toEqual([C, [1.75, 3, 64, 'time', 1], G]);
    expect(after(move(3.6, 4))).toEqual([C, G, [3.6, 4, 64, 'time', 1]]);
  });

  it('splits a note: the second part is struck anew', () => {
    expect(after({ kind: 'split', of: e, atSeconds: 2.2 })).toEqual([
      C,
      [2, 2.2, 64, 'split', 1],
      [2.2, 2.5, 64, 'split', 1],
      G,
    ]);
  });

  it('joins a note with the next, over the rest between them and at its own pitch', () => {
    expect(after({ kind: 'join', of: c })).toEqual([[1, 2.5, 60.1, 'joined', 2], G]);
  });

  it('adds a note that is sure', () => {
    const add: Correction = { kind: 'add', onsetSeconds: 1.6, offsetSeconds: 1.9, midi: 62 };
    expect(after(add)).toEqual([C, [1.6, 1.9, 62, 'added', 0], E, G]);
    expect(correctNotes(line, [add]).notes[1]?.note.confidence).toBe(1);
  });

  it('sets a pitch: the cents of the note stay when it goes up by a half step', () => {
    expect(after({ kind: 'pitch', of: c, midi: c.midi + 1 })[0]).toEqual([1, 1.5, 61.1, 'pitch', 1]);
  });

  it('says of a note that it counts, that it does not, or nothing any more', () => {
    const said = (...counts: readonly (boolean | null)[]) =>
      correctNotes(
        line,
        counts.map((one) => ({ kind: 'count', of: e, counts: one })),
      ).notes[1];
    expect(said(false)).toEqual({ note: e, counts: false, changes: [], was: [e] });
    expect(said(false, true)?.counts).toBe(true);
    expect(said(false, null)).toEqual({ note: e, counts: null, changes: [], was: [e] });
  });
});

describe('corrections that follow each other', () => {
  it('name a note as it stands after those before', () => {
    const moved = { onsetSeconds: 2.7, midi: 64 };
    expect(
      after(
        { kind: 'move', of: e, onsetSeconds: 2.7, offsetSeconds: 2.9 },
        { kind: 'pitch', of: moved, midi: 63 },
        { kind: 'split', of: { ...moved, midi: 63 }, atSeconds: 2.8 },
      ),
    ).toEqual([C, [2.7, 2.8, 63, 'split pitch', 1], [2.8, 2.9, 63, 'split pitch', 1], G]);
  });

  it('leave the very note that was heard where they take each other back', () => {
    const { notes } = correctNotes(line, [
      { kind: 'split', of: e, atSeconds: 2.2 },
      { kind: 'join', of: e },
      { kind: 'pitch', of: e, midi: 65 },
      { kind: 'pitch', of: { ...e, midi: 65 }, midi: 64 },
    ]);
    expect(notes[1]).toEqual({ note: e, counts: null, changes: [], was: [e] });
    expect(notes[1]?.note).toBe(e);
  });

  it('find the closest of two notes that a name may mean', () => {
    const close = [listedNote(1, 0.012, 60), listedNote(1.015, 0.2, 60)];
    const { deleted } = correctNotes(close, [{ kind: 'delete', of: { onsetSeconds: 1.014, midi: 60 } }]);
    expect(deleted).toEqual([close[1]]);
  });

  it('find a note again that was heard anew a hair elsewhere', () => {
    const anew = [{ ...e, onsetSeconds: 2.02, midi: 64.4 }];
    expect(correctNotes(anew, [{ kind: 'delete', of: e }]).notes).toEqual([]);
    const another = [{ ...e, onsetSeconds: 2.03 }];
    expect(correctNotes(another, [{ kind: 'delete', of: e }]).notes).toHaveLength(1);
  });
});

describe('a correction that does not fit is left out, and the others hold', () => {
  it('where its note is not there', () => {
    const gone: Correction = { kind: 'delete', of: { onsetSeconds: 2, midi: 65 } };
    expect(whyNot(gone)).toEqual(['no note']);
    expect(after(gone, { kind: 'delete', of: e })).toEqual([C, G]);
    expect(whyNot({ kind: 'delete', of: e }, { kind: 'count', of: e, counts: true })).toEqual(['no note']);
  });

  it('where no note follows', () => expect(whyNot({ kind: 'join', of: g })).toEqual(['no next note']));

  it('where a note would be too short', () => {
    expect(whyNot({ kind: 'split', of: e, atSeconds: 2.04 })).toEqual(['too short']);
    expect(whyNot({ kind: 'split', of: e, atSeconds: 2.9 })).toEqual(['too short']);
    expect(whyNot({ kind: 'add', onsetSeconds: 1.6, offsetSeconds: 1.64, midi: 60 })).toEqual(['too short']);
    expect(whyNot({ kind: 'move', of: e, onsetSeconds: 2.4, offsetSeconds: 2.3 })).toEqual(['too short']);
  });

  it('where two notes would sound together', () => {
    expect(whyNot({ kind: 'move', of: e, onsetSeconds: 2, offsetSeconds: 3.1 })).toEqual(['together']);
    expect(whyNot({ kind: 'add', onsetSeconds: 1.4, offsetSeconds: 1.6, midi: 72 })).toEqual(['together']);
    // Notes that were heard together may stay so.
    const legato = [listedNote(1, 0.6, 60), listedNote(1.5, 0.5, 62)];
    const { leftOut } = correctNotes(legato, [
      { kind: 'pitch', of: legato[0]!, midi: 61 },
      { kind: 'move', of: legato[1]!, onsetSeconds: 1.55, offsetSeconds: 2 },
      { kind: 'move', of: { onsetSeconds: 1.55, midi: 62 }, onsetSeconds: 1.5, offsetSeconds: 2 },
    ]);
    expect(leftOut.map(({ why }) => why)).toEqual(['together']);
  });

  it('where there are too many', () => {
    const many = Array.from({ length: MOST_CORRECTIONS + 1 }, (_, i): Correction => ({
      kind: 'pitch',
      of: { ...e, midi: 64 + (i % 2) },
      midi: 64 + ((i + 1) % 2),
    }));
    expect(whyNot(...many)).toEqual(['too many']);
    expect(v.is(correctionsSchema, many)).toBe(false);
    expect(v.is(correctionsSchema, many.slice(1))).toBe(true);
  });
});

it('the choices of an earlier take are read as corrections', () => {
  expect(countCorrections([{ onsetSeconds: 2, midi: 64, counts: false }])).toEqual([
    { kind: 'count', of: { onsetSeconds: 2, midi: 64 }, counts: false },
  ]);
});
