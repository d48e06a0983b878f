import { describe, expect, it } from 'vitest';
import { choiceOf, countedNotes, withChoice } from '../../../../src/core/grade/assign/doubtful.ts';
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
    const [sure, even, doubted] = [note(1, 60, 0.9), note(2, 62, 0.5), note(3, 64, 0.49)];
    expect(countedNotes([sure, even, doubted], [])).toEqual({
      counted: [sure, even],
      doubtful: [{ heard: doubted, chosen: null }],
    });
  });

  it('are those that the player says were played, and none that the player takes out', () => {
    const [sure, doubted] = [note(1, 60, 0.9), note(3, 64, 0.2)];
    const choices = [
      { onsetSeconds: 1, midi: 60, counts: false },
      { onsetSeconds: 3.004, midi: 64.1, counts: true },
    ];
    expect(countedNotes([sure, doubted], choices)).toEqual({
      counted: [doubted],
      doubtful: [{ heard: sure, chosen: false }],
    });
  });

  it('are found by onset and pitch, the last word counting', () => {
    const said = (onsetSeconds: number, midi: number, counts: boolean) => ({ onsetSeconds, midi, counts });
    expect(choiceOf(note(1, 60, 1), [said(1.03, 60, false), said(1, 60.6, false)])).toBeNull();
    expect(choiceOf(note(1, 60, 1), [said(1, 60, false), said(1, 60, true)])).toBe(true);
    // As far off as the same note may lie: 20 ms, half a semitone.
    expect(choiceOf(note(0, 60, 1), [said(0.02, 60.5, false)])).toBe(false);
  });

  it('are said anew or taken back, note by note', () => {
    const [first, second] = [
      { onsetSeconds: 1, midi: 60 },
      { onsetSeconds: 3, midi: 64 },
    ];
    const both = withChoice(withChoice([], first, false), second, true);
    expect(both).toEqual([
      { ...first, counts: false },
      { ...second, counts: true },
    ]);
    expect(withChoice(both, { onsetSeconds: 1.01, midi: 60.2 }, null)).toEqual([{ ...second, counts: true }]);
    expect(withChoice(both, second, false).at(-1)).toEqual({ ...second, counts: false });
  });
});
