/**
 * What a tone outside the chord does, with the notes that make it so. The terms are those of any harmony textbook ("from
 * memory"). Unless said the chord is C7 (C E G Bb) and every note is half a beat or a beat long.
 */
import { describe, expect, it } from 'vitest';
import { findPhrases } from '../../../../src/core/grade/assign/phrases.ts';
import { findFunctions, isOnTheWay } from '../../../../src/core/grade/landings/functions.ts';
import { midiOfName } from '../../../../src/core/music/reading.ts';
import type { NoteFunction } from '../../../../src/core/take/schema.ts';
import { gradedOver } from '../graded.ts';
import type { Played } from '../line.ts';

/** "0 1 C4, 1.5 1 D4": beat, length, name. @returns a word a note, "-" for a chord tone, with the notes that it names. */
function functionsOf(written: string, text = '| C7 |'): readonly string[] {
  const played = written.split(', ').map((note): Played => {
    const [beat, beats, name] = note.split(' ');
    return [Number(beat), Number(beats), midiOfName(name!)];
  });
  const notes = gradedOver(text, played, 'C');
  return findFunctions(notes, findPhrases(notes, 1)).map((found) =>
    found === null ? '-' : [found.function, ...found.notes].join(' '),
  );
}

describe('a passing tone', () => {
  it('is on a run of steps in one direction, from chord tone to chord tone', () => {
    expect(functionsOf('0 1 C4, 1 1 D4, 2 1 E4')).toEqual(['-', 'passing 0 2', '-']);
    expect(functionsOf('0 1 G4, 1 1 F4, 2 1 E4')).toEqual(['-', 'passing 0 2', '-']);
    expect(functionsOf('0 1 E4, 1 1 F4, 2 1 F#4, 3 1 G4')).toEqual(['-', 'passing 0 3', 'passing 0 3', '-']);
  });

  it('may be struck twice', () => {
    expect(functionsOf('0 1 C4, 1 0.5 D4, 1.5 0.5 D4, 2 1 E4')).toEqual([
      '-',
      'passing 0 3',
      'passing 0 3',
      '-',
    ]);
  });

  it('goes on by step to another tone outside the chord, too', () => {
    expect(functionsOf('0 1 E4, 1 1 F4, 2 1 F#4, 3 1 C5')).toEqual(['-', 'passing 2', 'free', '-']);
    expect(functionsOf('0 1 D4, 1 1 D#4, 2 1 C5')).toEqual(['passing 1', 'free', '-']);
  });
});

describe('a neighbour', () => {
  it('steps away from a chord tone and back', () => {
    expect(functionsOf('0 1 E4, 1 1 F4, 2 1 E4')).toEqual(['-', 'neighbour 0 2', '-']);
    expect(functionsOf('0 1 E4, 1 1 D4, 2 1 E4')).toEqual(['-', 'neighbour 0 2', '-']);
  });

  it('turns back to another tone outside the chord, too', () => {
    expect(functionsOf('0 1 E4, 1 1 F4, 2 1 D#4, 3 1 A4')).toEqual(['-', 'neighbour 2', 'free', 'free']);
  });
});

describe('an enclosure', () => {
  it('has a tone outside the chord on either side of the chord tone that follows', () => {
    expect(functionsOf('0 1 G4, 1 0.5 F4, 1.5 0.5 D#4, 2 1 E4')).toEqual([
      '-',
      'enclosure 2 3',
      'enclosure 1 3',
      '-',
    ]);
    expect(functionsOf('0 1 G4, 1 0.5 D4, 1.5 0.5 F4, 2 1 E4').slice(1, 3)).toEqual([
      'enclosure 2 3',
      'enclosure 1 3',
    ]);
  });

  it('is none where one of the two is a chord tone', () => {
    // C and A lie on either side of Bb, but C is a tone of C7: A is leapt to and goes up a half step.
    expect(functionsOf('0 1 E4, 1 0.5 C5, 1.5 0.5 A4, 2 1 Bb4')).toEqual(['-', '-', 'approach 3', '-']);
  });

  it('is none round a tone outside the chord', () => {
    expect(functionsOf('0 1 G4, 1 0.5 C#4, 1.5 0.5 Eb4, 2 1 D4')[1]).toBe('passing 2');
  });

  it('is none where one of the two is a leap away', () => {
    expect(functionsOf('0 1 C4, 1 0.5 A4, 1.5 0.5 D#4, 2 1 E4')[1]).toBe('free');
  });
});

describe('an appoggiatura', () => {
  it('is leapt to and steps into a chord tone: by a half step on the beat, by a whole step anywhere', () => {
    expect(functionsOf('0 1 C4, 1 1 F4, 2 1 E4')).toEqual(['-', 'appoggiatura 0 2', '-']);
    expect(functionsOf('0 1 G3, 1.5 0.5 D4, 2 1 C4')).toEqual(['-', 'appoggiatura 0 2', '-']);
  });

  it('may begin its phrase, and leans by a whole step then', () => {
    expect(functionsOf('0 1 D4, 1 1 C4')).toEqual(['appoggiatura 1', '-']);
  });
});

describe('an approach', () => {
  it('is leapt to off the beat and goes on by a half step', () => {
    expect(functionsOf('0 1 C4, 1.5 0.5 F4, 2 1 E4')).toEqual(['-', 'approach 2', '-']);
  });

  it('begins a phrase by a half step, on the beat too', () => {
    expect(functionsOf('0 1 C#4, 1 1 C4')).toEqual(['approach 1', '-']);
  });

  it('comes by step from another tone outside the chord and turns to a chord tone a half step away', () => {
    expect(functionsOf('0 1 A4, 1 1 G#4, 2 1 A4, 3 1 Bb4').slice(2)).toEqual(['approach 3', '-']);
  });
});

describe('an escape tone', () => {
  it('steps from a chord tone and leaps the other way', () => {
    expect(functionsOf('0 1 E4, 1 1 F4, 2 1 C4')).toEqual(['-', 'escape 0 2', '-']);
    expect(functionsOf('0 1 E4, 1 1 D4, 2 1 G4')).toEqual(['-', 'escape 0 2', '-']);
  });

  it('is none where the leap goes on the same way, or begins at a tone outside the chord', () => {
    expect(functionsOf('0 1 E4, 1 1 F4, 2 1 C5')).toEqual(['-', 'free', '-']);
    expect(functionsOf('0 1 D4, 1 1 D#4, 2 1 C4')[1]).toBe('free');
  });

  it('is none where it was leapt to', () => {
    expect(functionsOf('0 1 C4, 1 1 F4, 2 1 C4')).toEqual(['-', 'free', '-']);
  });
});

describe('a suspension', () => {
  const OVER = '| C7 | G7 |';
  it('is kept from the chord where it was a tone, and steps into a tone of the new one', () => {
    expect(functionsOf('2 2 C4, 4 1 C4, 5 1 B3', OVER)).toEqual(['-', 'suspension 0 2', '-']);
    expect(functionsOf('2 2 C4, 4 0.5 C4, 4.5 0.5 C4, 5 1 B3', OVER)).toEqual([
      '-',
      'suspension 0 3',
      'suspension 0 3',
      '-',
    ]);
  });

  it('is none where it leaps away, or was no tone of the old chord', () => {
    expect(functionsOf('2 2 C4, 4 1 C4, 5 1 G4', OVER)[1]).toBe('free');
    // A is outside C7 as it is outside G7: out of the rest it leans on G.
    expect(functionsOf('2 2 A4, 4 1 A4, 5 1 G4', OVER)[1]).toBe('appoggiatura 2');
  });
});

describe('an anticipation', () => {
  const OVER = '| C7 | G7 |';
  it('is struck again where it is a tone of the chord', () => {
    expect(functionsOf('3 1 B3, 4 1 B3', OVER)).toEqual(['anticipation 1', '-']);
  });

  it('is held into the chord that it is a tone of', () => {
    expect(functionsOf('2 3 D4, 5 1 G4', OVER)).toEqual(['anticipation', '-']);
  });

  it('is none where the next chord does not hold it', () => {
    expect(functionsOf('2 3 C#4, 5 1 G4', OVER)[0]).toBe('free');
  });
});

describe('functions', () => {
  it('look for neighbours inside the phrase alone', () => {
    expect(functionsOf('0 1 E4, 2.5 0.5 D4, 4 1 C4')).toEqual(['-', 'free', '-']);
  });

  it('are none over no chord', () => {
    expect(functionsOf('0 1 D4, 1 1 C4', '| N.C. |')).toEqual(['-', '-']);
  });

  it('are on the way, or a stay', () => {
    const onTheWay = (name: NoteFunction) => isOnTheWay({ function: name, notes: [] });
    expect((['passing', 'neighbour', 'approach', 'enclosure'] as const).map(onTheWay)).not.toContain(false);
    const stays = ['suspension', 'anticipation', 'appoggiatura', 'escape', 'free'] as const;
    expect(stays.map(onTheWay)).not.toContain(true);
    expect([isOnTheWay(null), isOnTheWay(undefined)]).toEqual([false, false]);
  });
});
