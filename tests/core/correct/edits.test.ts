/** The verbs of the editor: how far each goes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correctNotes } from '../../../src/core/correct/correct-notes.ts';
import {
  draggedNote,
  editOf,
  EDIT_VERBS,
  STEP_SECONDS,
  type EditVerb,
} from '../../../src/core/correct/edits.ts';
import { listedNote } from '../../../src/core/take/listed-note.ts';
import { centsAboveStandard } from '../../../src/core/music/temperament.ts';

const heard = [listedNote(1, 0.5, 60.1), listedNote(1.5, 0.2, 64), listedNote(3, 0.5, 67)];
const PLACE = { atSeconds: 0, beatSeconds: 0.5, durationSeconds: 4, referenceHz: 440 };

const after = (verb: EditVerb, index: number, place = PLACE) => {
  const edit = editOf(verb, correctNotes(heard, []).notes, index, place);
  if (edit === null) return null;
  const { notes, leftOut } = correctNotes(heard, [edit.correction]);
  return { notes: notes.map(({ note }) => note), why: leftOut[0]?.why ?? null, follow: edit.follow };
};

describe('a verb', () => {
  it('goes by a half step, and the cents of the note stay', () => {
    expect(after('up', 0)?.notes[0]?.midi).toBeCloseTo(61.1);
    expect(after('down', 0)?.follow).toEqual({ onsetSeconds: 1, midi: 59.1 });
  });

  it('moves as far as there is room', () => {
    expect(after('earlier', 0)?.notes[0]).toMatchObject({ onsetSeconds: 1 - STEP_SECONDS });
    // The next note begins where this one ends: it stays where it is.
    expect(after('later', 0)?.notes[0]).toMatchObject({ onsetSeconds: 1, offsetSeconds: 1.5 });
    expect(after('longer', 0)?.notes[0]?.offsetSeconds).toBe(1.5);
    expect(after('shorter', 0)?.notes[0]?.offsetSeconds).toBeCloseTo(1.48);
    expect(after('longer', 1)?.notes[1]?.offsetSeconds).toBeCloseTo(1.72);
  });

  it('splits where the playback stands, or in the middle', () => {
    expect(after('split', 0, { ...PLACE, atSeconds: 1.1 })?.notes[1]?.onsetSeconds).toBe(1.1);
    expect(after('split', 0, { ...PLACE, atSeconds: 2 })?.notes[1]?.onsetSeconds).toBe(1.25);
  });

  it('adds a note where the playback stands in a rest, or after the chosen note, in tune with the take', () => {
    const flat = { ...PLACE, referenceHz: 432 };
    expect(after('add', 0, { ...flat, atSeconds: 2 })?.notes[2]).toMatchObject({
      onsetSeconds: 2,
      offsetSeconds: 2.25,
      midi: 60 + centsAboveStandard(432) / 100,
    });
    expect(after('add', 1)?.notes[2]).toMatchObject({ onsetSeconds: 1.7, offsetSeconds: 1.95, midi: 64 });
    // Before another note it is shorter; where there is no rest it is refused.
    expect(after('add', 1, { ...PLACE, atSeconds: 2.9 })?.notes[2]).toMatchObject({ offsetSeconds: 3 });
    expect(after('add', 0)?.why).toBe('too short');
  });

  it('deletes, and the next note is looked at', () => {
    expect(after('delete', 0)?.follow).toEqual({ onsetSeconds: 1.5, midi: 64 });
    expect(after('delete', 2)?.follow).toEqual({ onsetSeconds: 1.5, midi: 64 });
  });

  it('without a note does nothing but add', () => {
    expect(EDIT_VERBS.filter((verb) => after(verb, -1) !== null)).toEqual(['add']);
  });
});

it('a drag of any width fits', () => {
  const { notes } = correctNotes(heard, []);
  const part = fc.double({ min: -5, max: 5, noNaN: true });
  fc.assert(
    fc.property(
      fc.nat(2),
      part,
      fc.boolean(),
      fc.integer({ min: -12, max: 12 }),
      (index, by, isEnd, semitones) => {
        const drag = { onsetSeconds: isEnd ? 0 : by, offsetSeconds: by, semitones };
        const { onsetSeconds, offsetSeconds, midi } = draggedNote(notes, index, drag, 4);
        const { leftOut } = correctNotes(heard, [
          { kind: 'move', of: heard[index]!, onsetSeconds, offsetSeconds },
        ]);
        expect(leftOut).toEqual([]);
        expect(midi).toBe(heard[index]!.midi + semitones);
      },
    ),
  );
});
