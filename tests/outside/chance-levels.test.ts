/**
 * Chance levels that are exact arithmetic (the check values of the grading's definition), and scales against a
 * second library.
 */
import { headlineNumbers, headlineOf } from '../../src/core/report/sentences.ts';
import { english } from '../english.ts';
import { en } from '../../src/core/words/en.ts';
import { Scale } from 'tonal';
import { describe, expect, it } from 'vitest';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import { grade } from '../../src/core/grade.ts';
import { MAJOR_PENTATONIC, MINOR_PENTATONIC } from '../../src/core/grade/assign/scales.ts';
import { toneMask, holds } from '../../src/core/grade/assign/tone-sets.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';
import { gradeLine, line, SETTINGS, TWELVE_BARS, type Played } from '../core/grade/line.ts';

const TWELVE_NOTES = Array.from({ length: 12 }, (_, i) => i);
const MAJOR_SCALE = [0, 2, 4, 5, 7, 9, 11];

/** Every tone of a scale once in every bar, all equally long: a player as even as chance itself. */
const evenly = (scale: readonly number[], bars: number): readonly Played[] =>
  Array.from({ length: bars }, (_, bar) =>
    scale.map((step, i): Played => [4 * bar + (4 * i) / scale.length, 4 / scale.length, 60 + step]),
  ).flat();

describe('scales', () => {
  // tonal's chroma: a string of twelve 0s and 1s from the tonic up.
  it.each([
    ['C minor pentatonic', MINOR_PENTATONIC],
    ['C major pentatonic', MAJOR_PENTATONIC],
  ] as const)('%s', (name, steps) => {
    const chroma = [...Scale.get(name).chroma];
    expect(steps).toEqual(TWELVE_NOTES.filter((step) => chroma[step] === '1'));
  });
});

describe('minor pentatonic over the chords of a blues', () => {
  // Common practice; exact.
  it.each([
    ['C7', 3],
    ['F7', 3],
    ['G7', 2],
  ])('%s holds %i of its tones, and not one is the third', (symbol, shared) => {
    const chord = parseChord(symbol)!;
    const inside = (set: 'chordTones' | 'thirds') =>
      MINOR_PENTATONIC.filter((step) => holds(toneMask(chord, set), step)).length;
    expect(inside('chordTones')).toBe(shared);
    expect(inside('thirds')).toBe(0);
  });
});

describe('even players over a form', () => {
  // By hand: (7 bars of I x 3/5 + 3 of IV x 3/5 + 2 of V x 2/5) / 12 = 56.67 %, and so on.
  it.each([
    ['minor pentatonic', MINOR_PENTATONIC, 56.67, 0],
    ['major pentatonic', MAJOR_PENTATONIC, 51.67, 16.67],
    ['all twelve notes', TWELVE_NOTES, 33.33, 8.33],
  ])('%s over the 12 bars: %#', (_, scale, chordTones, thirds) => {
    const { allNotes, byLength } = gradeLine(TWELVE_BARS, evenly(scale, 12), { anticipationBeats: 0 }).shares;
    for (const shares of [allNotes, byLength]) {
      expect(100 * shares.chordTones.share!).toBeCloseTo(chordTones, 2);
      expect(100 * shares.thirds.share!).toBeCloseTo(thirds, 2);
      // Someone who plays every bar alike is chance itself: rotating the chart changes nothing.
      expect(100 * shares.chordTones.chance!).toBeCloseTo(chordTones, 2);
      expect(100 * shares.thirds.chance!).toBeCloseTo(thirds, 2);
      expect(shares.chordTones.verdict).toBe('at chance');
    }
  });

  it('major scale over ii V I I', () => {
    const { allNotes } = gradeLine('| Dm7 | G7 | Cmaj7 | Cmaj7 |', evenly(MAJOR_SCALE, 4), {
      anticipationBeats: 0,
    }).shares;
    expect(100 * allNotes.chordTones.share!).toBeCloseTo(57.14, 2);
    expect(100 * allNotes.thirds.share!).toBeCloseTo(14.29, 2);
    expect(100 * allNotes.chordTones.chance!).toBeCloseTo(57.14, 2);
    expect(100 * allNotes.thirds.chance!).toBeCloseTo(14.29, 2);
  });
});

describe('rotations of a toy chart, by hand', () => {
  // | C | F | G | with C4 in bar 1, A4 in bar 2, B4 in bar 3: all three are chord tones.
  // One bar on, | F | G | C |: C is the fifth of F, A is not in G, B is not in C: 1 of 3.
  // Two bars on, | G | C | F |: C is not in G, A not in C, B not in F: 0 of 3. Mean of 1, 1/3 and 0: 4/9.
  // Thirds: A over F and B over G are thirds (2 of 3); one bar on none; two bars on none. Mean 2/9.
  it('takes the mean over every rotation by whole bars', () => {
    const { allNotes } = gradeLine(
      '| C | F | G |',
      [
        [0, 4, 60],
        [4, 4, 69],
        [8, 4, 71],
      ],
      {
        anticipationBeats: 0,
      },
    ).shares;
    expect(allNotes.chordTones).toMatchObject({
      hits: 3,
      of: 3,
      share: 1,
      chanceBy: 'rotations',
      // All three bars are one draw each: of 27 ways two hold as many, the one played and one more.
      tail: 0.0740740741,
    });
    expect(allNotes.chordTones.chance).toBeCloseTo(4 / 9, 8);
    expect(allNotes.thirds.share).toBeCloseTo(2 / 3, 8);
    expect(allNotes.thirds.chance).toBeCloseTo(2 / 9, 8);
    expect(allNotes.thirds.verdict).toBe('too short to tell');
  });

  // By length: the same line, but the A is held for two bars, half over F, half over G. Bars: C 1, A 2, no B.
  // Played: C in C yes, A in F yes, A in G no: 2/3. One bar on (F G C): yes, no, no (A over C): 1/3.
  // Two bars on (G C F): no, no, yes: 1/3. Mean 4/9.
  it('cuts a note at the change it crosses', () => {
    const { byLength } = gradeLine(
      '| C | F | G |',
      [
        [0, 4, 60],
        [4, 8, 69],
      ],
      { anticipationBeats: 0 },
    ).shares;
    expect(byLength.chordTones.hits).toBeCloseTo(4, 8); // seconds at 120 bpm: two bars
    expect(byLength.chordTones.of).toBeCloseTo(6, 8);
    expect(byLength.chordTones.chance).toBeCloseTo(4 / 9, 8);
  });
});

describe('rotations of a list of beats whose last bar is short, by hand', () => {
  // Six beats, C C C C F F, a note on each: C C C C F F, all chord tones. Four beats on the list reads F F C C C C:
  // C C are fifths of F, C C roots, F F are not in C: 4 of 6. Mean of 1 and 2/3: 5/6.
  it('closes on the last beat, not on the bar line', () => {
    const rows = ['C', '', '', '', 'F', ''].map((chord, i) => ({ timeSeconds: i / 2, chord }));
    const timeline = timelineFromBeats(rows);
    if (!timeline.ok) throw new Error(english(timeline.problem));
    const notes = line([60, 60, 60, 60, 65, 65].map((midi, beat) => [beat, 0.9, midi]));
    const { allNotes } = grade(notes, timeline.value, { ...SETTINGS, anticipationBeats: 0 }).shares;
    expect(allNotes.chordTones.share).toBe(1);
    expect(allNotes.chordTones.chance).toBeCloseTo(5 / 6, 8);
  });
});

describe('landings against the player’s own notes, by hand', () => {
  // | C | G | with C4 a bar and B4 a bar: half the length is C, half is B. Over C (C E G) luck hits 1/2, over G (G B D)
  // 1/2, so P(both) = 1/4. Thirds: over C nothing is E, over G B is 1/2; one third played: tail 1/2.
  it('has the exact tail', () => {
    const { landings } = gradeLine('| C | G |', [
      [0, 4, 60],
      [4, 4, 71],
    ]).shares;
    expect(landings.chordTones).toMatchObject({ hits: 2, of: 2, expected: 1, chance: 0.5, tail: 0.25 });
    expect(landings.thirds).toMatchObject({ hits: 1, of: 2, expected: 0.5, chance: 0.25, tail: 0.5 });
  });

  // C4 to beat 3.5, B4 from there to beat 5 and so early for G, C4 for three beats: B has 1.5 beats of 8. On the third of
  // G luck has two goes, the early note if it fits and, where it does not, the first note after.
  it('counts the second go of the anticipation in what luck would give, as the verdict does', () => {
    const { landings } = gradeLine('| C | G |', [
      [0, 3.5, 60],
      [3.5, 1.5, 71],
      [5, 3, 60],
    ]).shares;
    const own = 1.5 / 8;
    expect(landings.thirds.expected).toBeCloseTo(own + (1 - own) * own, 7);
    expect(landings.thirds.fairExpected).toBe(landings.thirds.expected);
  });

  // B4 is let go as the chord arrives, and C4 is struck on it: C4 is the landing, whatever the early note was.
  it('gives no second go where the early note leads into another on the change', () => {
    const { landings } = gradeLine('| C | G |', [
      [0, 3.5, 60],
      [3.5, 0.5, 71],
      [4, 4, 60],
    ]).shares;
    expect(landings.thirds).toMatchObject({ hits: 0, of: 2, expected: 0.5 / 8 });
  });
});

describe('the sentence', () => {
  it('names as many by luck as its p value allows for, and no statistics', () => {
    const { summary, shares } = gradeLine(TWELVE_BARS, [[0, 1, 64]]);
    const told = { hits: 9, of: 20, share: 0.45, expected: 4.6, tail: 0.02, low: 0.26, high: 0.66 };
    const thirds = {
      ...shares.landings.thirds,
      ...told,
      verdict: 'above chance' as const,
      moreChoruses: null,
    };
    const report = { summary, shares: { ...shares, landings: { ...shares.landings, thirds } } };
    expect(headlineOf(report, en)).toBe(
      '9 of 20 landings are on the third; luck gives about 5: more than luck.',
    );
    expect(headlineNumbers(report, en)).toBe('95 % interval 26 to 66 %, p = 0.02.');
  });

  it('says how much more would tell, and counts out no more than a player may play', () => {
    const { summary, shares } = gradeLine(TWELVE_BARS, [[0, 1, 64]]);
    const short = (moreChoruses: number) => {
      const thirds = { ...shares.landings.thirds, verdict: 'too short to tell' as const, moreChoruses };
      return headlineOf({ summary, shares: { ...shares, landings: { ...shares.landings, thirds } } }, en);
    };
    expect(short(1)).toMatch(/One more chorus will tell\.$/);
    expect(short(3)).toMatch(/3 more choruses will tell\.$/);
    expect(short(24)).toMatch(/A longer take will tell\.$/);
  });
});
