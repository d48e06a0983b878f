/** Where the line breathes. Gaps are counted from the end of what sounds to the next onset. */
import { describe, expect, it } from 'vitest';
import { findPhrases, phraseOfNotes } from '../../../../src/core/grade/assign/phrases.ts';

const notes = (...played: readonly (readonly [from: number, to: number])[]) =>
  played.map(([onsetBeat, offsetBeat]) => ({ onsetBeat, offsetBeat }));

describe('phrases', () => {
  it('are parted by a gap of the asked length, and by no shorter one', () => {
    expect(findPhrases(notes([0, 1], [2, 3]), 1)).toEqual([
      { firstNote: 0, lastNote: 0 },
      { firstNote: 1, lastNote: 1 },
    ]);
    expect(findPhrases(notes([0, 1], [1.9, 3]), 1)).toEqual([{ firstNote: 0, lastNote: 1 }]);
    expect(findPhrases(notes([0, 1], [2, 3]), 1.5)).toEqual([{ firstNote: 0, lastNote: 1 }]);
  });

  it('are not parted while an earlier, longer note still sounds', () => {
    expect(findPhrases(notes([0, 4], [1, 2], [4, 5]), 1)).toEqual([{ firstNote: 0, lastNote: 2 }]);
  });

  it('hold every note, the last phrase ending with the last note', () => {
    expect(findPhrases(notes([0, 1], [1, 2], [4, 5], [5, 6], [9, 10]), 1)).toEqual([
      { firstNote: 0, lastNote: 1 },
      { firstNote: 2, lastNote: 3 },
      { firstNote: 4, lastNote: 4 },
    ]);
  });

  it('are none without notes', () => {
    expect(findPhrases([], 1)).toEqual([]);
  });

  it('are known for each note', () => {
    const phrases = [
      { firstNote: 0, lastNote: 1 },
      { firstNote: 2, lastNote: 2 },
    ];
    expect(phraseOfNotes(phrases, 3)).toEqual([0, 0, 1]);
  });
});
