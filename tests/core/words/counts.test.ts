/** Sentences with counts, read as a sentence of the language: one, none, twice. The sentences are written by hand. */
import { describe, expect, it } from 'vitest';
import { wordsOf } from '../../../src/core/words/catalogues.ts';

const inEnglish = wordsOf('en');
const inGerman = wordsOf('de');

describe('a count in a sentence', () => {
  it('has one landing in the singular in the list of takes', () => {
    const one = { thirds: 0, landings: 1 };
    expect(inEnglish.ready.takes.thirds(one)).toBe('thirds on 0 of 1 landing');
    expect(inGerman.ready.takes.thirds(one)).toBe('Terz bei 0 von 1 Landung');
    expect(inEnglish.ready.takes.thirds({ thirds: 1, landings: 4 })).toBe('thirds on 1 of 4 landings');
  });

  it('says that neither third was played without "never … never"', () => {
    const neither = { thirds: 0, flatThirds: 0 };
    expect(inEnglish.review.thirds(neither)).toBe(
      'Over chords with a major third you play neither that third nor the minor third, the ♭3.',
    );
    expect(inGerman.review.thirds(neither)).toBe(
      'Über Akkorden mit großer Terz spielst du weder diese Terz noch die kleine, die ♭3.',
    );
    expect(inEnglish.review.thirds({ thirds: 0, flatThirds: 2 })).toContain('never');
  });

  it('says how often a b3 was not resolved, and not that it was resolved once', () => {
    expect(inEnglish.review.leftHanging({ count: 2 })).toBe('Twice a ♭3 was not resolved.');
    expect(inGerman.review.leftHanging({ count: 1 })).toBe('Einmal wurde eine ♭3 nicht aufgelöst.');
    const told = {
      ...{ bars: 'Bar 3', chord: 'A7', played: 'C', playedDegree: 'b3', from: 'C', held: false },
      ...{ semitones: 1, resolve: 'C#', resolveDegree: '3', where: null },
    };
    const advice = inEnglish.report.advice['hanging b3'];
    expect(advice({ ...told, count: 1 })).toMatch(/^Bar 3: over A7 the b3, C, is not resolved\. /);
    expect(advice({ ...told, count: 2 })).toMatch(/^Bar 3: over A7 the b3, C, is twice not resolved\. /);
    const adviceInGerman = inGerman.report.advice['hanging b3'];
    expect(adviceInGerman({ ...told, bars: 'Takt 3', count: 2 })).toMatch(
      /^Takt 3: Über A7 wird die b3, C, zweimal nicht aufgelöst\. /,
    );
  });

  it('tells the number of tries and the try of the row apart', () => {
    expect(inEnglish.lesson.tries({ takes: 3, tryNumber: 2 })).toBe('3; here try 2');
    expect(inGerman.lesson.tries({ takes: 3, tryNumber: 2 })).toBe('3; hier Versuch 2');
    expect(inEnglish.lesson.tries({ takes: 1, tryNumber: null })).toBe('1');
  });
});
