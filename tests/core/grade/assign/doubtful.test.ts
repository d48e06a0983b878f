import { describe, expect, it } from 'vitest';
import { correctNotes } from '../../../../src/core/correct/correct-notes.ts';
import { countCorrections } from '../../../../src/core/take/correction.ts';
import { countedNotes } from '../../../../src/core/grade/assign/doubtful.ts';
import type { HeardNote } from '../../../../src/core/take/note.ts';

const note = (onsetSeconds: number, midi: number, confidence: number): HeardNote => ({
  onsetSeconds,
  offsetSeconds: onsetSeconds + 0.3,
  midi,
  confidence,
  levelDb: null,
  attack: 'struck',
  bendSemitones: 0,
  vibrato: null,
  second: null,
});

describe('notes that count', () => {
  it('are those that are more likely right than wrong', () => {
    const heard = [note(1, 60, 0.9), note(2, 62, 0.5), note(3, 64, 0.49)];
    expect(countedNotes(correctNotes(heard, []).notes)).toEqual({
      counted: heard.slice(0, 2),
      doubtful: heard.slice(2),
    });
  });

  it('are those that the player says were played, and none that the player takes out', () => {
    const [sure, doubted] = [note(1, 60, 0.9), note(3, 64, 0.2)];
    const choices = countCorrections([
      { onsetSeconds: 1, midi: 60, counts: false },
      // As far off as the same note may lie: 20 ms, half a semitone.
      { onsetSeconds: 3.02, midi: 64.5, counts: true },
    ]);
    expect(countedNotes(correctNotes([sure, doubted], choices).notes)).toEqual({
      counted: [doubted],
      doubtful: [sure],
    });
  });

  it('are those, too, that the player has corrected', () => {
    const doubted = note(3, 64, 0.2);
    const { notes } = correctNotes([doubted], [{ kind: 'pitch', of: doubted, midi: 65 }]);
    expect(countedNotes(notes).counted).toMatchObject([{ midi: 65 }]);
  });
});
