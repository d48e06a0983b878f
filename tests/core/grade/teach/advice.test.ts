import { adviceSentence } from '../../../../src/core/report/advice-sentence.ts';
import { de } from '../../../../src/core/words/de.ts';
import { en } from '../../../../src/core/words/en.ts';
import { describe, expect, it } from 'vitest';
import { findResolution } from '../../../../src/core/grade/teach/resolution.ts';
import { whereItLies } from '../../../../src/core/grade/teach/where.ts';
import { instrumentOf } from '../../../../src/core/music/instruments.ts';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';
import { gradeLine, type Played } from '../line.ts';

const guitar = instrumentOf('guitar')!;

describe('findResolution', () => {
  it('takes the nearest tone, and of two equally near the one that tells more of the chord', () => {
    const f7 = parseChord('F7')!;
    expect(findResolution(64, f7, null)).toEqual({ midi: 63, role: 'seventh' }); // E: Eb before F
    expect(findResolution(70, f7, null)).toEqual({ midi: 69, role: 'third' }); // Bb: A
    expect(findResolution(67, f7, null)).toEqual({ midi: 69, role: 'third' }); // G: A before F
  });

  it('finds a tone a step away from every note that is not in a seventh chord', () => {
    for (const symbol of ['C7', 'Cm7', 'Cmaj7', 'Cm7b5', 'C6', 'C']) {
      const chord = parseChord(symbol)!;
      for (let pitch = 60; pitch < 72; pitch++) {
        if (chord.tones.some((tone) => tone.pitchClass === pitch % 12)) continue;
        expect(findResolution(pitch, chord, null), `${symbol} ${pitch}`).not.toBeNull();
      }
    }
  });
});

describe('whereItLies', () => {
  const c7 = parseChord('C7')!;
  // Check values of the guitar in standard tuning: C3 on the fifth string at fret 3, the open first string is E4.
  it('names string and fret near the hand', () => {
    expect(whereItLies(48, 47, c7, guitar)).toEqual({ kind: 'neck', string: 5, fret: 3, open: false });
    expect(whereItLies(64, 65, c7, guitar)).toEqual({ kind: 'neck', string: 1, fret: 0, open: true });
    expect(whereItLies(30, 31, c7, guitar)).toBeNull();
  });

  it('gives the written note of a transposing instrument, and nothing where there is nothing to add', () => {
    expect(whereItLies(60, 62, c7, instrumentOf('trumpet')!)).toEqual({ kind: 'written', name: 'D4' });
    expect(whereItLies(60, 62, c7, instrumentOf('piano')!)).toBeNull();
  });
});

describe('advice', () => {
  const advice = (text: string, played: readonly Played[]) =>
    gradeLine(text, played, { instrument: guitar }, 'C').advice;

  it('names bar, what was played, and the nearest tone with its place', () => {
    const [first] = advice('| C7 | F7 |', [
      [0, 1, 64],
      [4, 2, 71],
      [7, 1, 60],
    ]);
    expect(first).toMatchObject({
      bars: [1],
      notes: [1],
      fault: 'landing',
      chord: 'F7',
      played: { name: 'Cb5', degree: 'b5' },
      resolve: { name: 'C5', degree: '5', semitones: 1, midi: 72 },
      where: { kind: 'neck', string: 1, fret: 8, open: false },
    });
    expect(adviceSentence(first!, en)).toBe(
      'Bar 2: as F7 arrives you land on Cb (its b5). A half step up lies C, its 5 (first string, fret 8).',
    );
  });

  it('says it in German, with German names', () => {
    const [first] = advice('| G7 | Bb7 |', [
      [0, 1, 67],
      [4, 2, 71],
      [7, 1, 65],
    ]);
    expect(adviceSentence(first!, de)).toBe(
      'Takt 2: Wenn B7 kommt, landest du auf Ces (seine b9). Einen Halbton tiefer liegt B, seine 1 (1. Saite, 6. Bund).',
    );
    expect(
      adviceSentence({ ...first!, where: { kind: 'neck', string: 1, fret: 0, open: true } }, en),
    ).toContain('(open first string)');
    expect(adviceSentence({ ...first!, where: { kind: 'written', name: 'D4' } }, en)).toContain(
      '(written D4)',
    );
  });

  it('gathers the same fault over the choruses', () => {
    const chorus = (at: number): Played[] => [
      [at, 1, 64],
      [at + 4, 2, 70],
      [at + 7, 1, 57],
    ];
    const [first] = advice('| C7 | F7 |', [0, 8, 16].flatMap(chorus));
    expect(adviceSentence(first!, en)).toContain('Bar 2: as F7 arrives you land on Bb (its 11), 3 times.');
  });

  it('lets be what resolves: a lean, a suspension, an appoggiatura', () => {
    expect(
      advice('| C7 |', [
        [0, 0.25, 63],
        [0.25, 2, 64],
      ]),
    ).toEqual([]);
    expect(
      advice('| C7 | F7 |', [
        [0, 2, 60],
        [2, 3, 70],
        [5, 2, 69],
      ]),
    ).toEqual([]);
    expect(
      advice('| C7 |', [
        [0, 1, 60],
        [1, 1, 65],
        [2, 2, 64],
      ]),
    ).toEqual([]);
  });

  it('has three pieces at most, and none for a line with nothing to mend', () => {
    const wild = Array.from({ length: 32 }, (_, i): Played => [2 * i, 0.5, 60 + ((i * 5) % 12)]);
    expect(advice('| C7 | F7 | G7 | Bb7 |', wild)).toHaveLength(3);
    expect(
      advice('| C7 |', [
        [0, 1, 64],
        [1, 1, 67],
      ]),
    ).toEqual([]);
  });

  it('shows the third that was a step away', () => {
    const [first] = advice('| C7 | F7 |', [
      [0, 1, 64],
      [3, 1, 67],
      [4, 3, 65],
    ]);
    expect(adviceSentence(first!, en)).toBe(
      'Bar 2: into F7 you go from G to F (its 1). A whole step up from G lies A, its 3 (first string, fret 5).',
    );
  });
});
