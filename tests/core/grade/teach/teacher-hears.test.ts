/** What else a teacher hears: space, approach, figures, range, accents, swing, and a chart that fits better elsewhere. */
import { describe, expect, it } from 'vitest';
import { repeatedRuns } from '../../../../src/core/grade/teach/came-back.ts';
import { grade } from '../../../../src/core/grade.ts';
import { findRoundBars } from '../../../../src/core/chart/find-round.ts';
import { chartTimeline, mulberry32, MIXOLYDIAN } from '../../../bench/made-players.ts';
import { gradeLine, line, SETTINGS, TWELVE_BARS, type Played } from '../line.ts';

describe('space', () => {
  // Two phrases of two beats at the start of bars 1 and 3: sounding 4 beats of 10, to the end of the last note.
  const { space } = gradeLine('| C7 |', [
    [0, 1, 60],
    [1, 1, 62],
    [8, 1, 60],
    [9, 1, 62],
  ]);
  it('counts rest, phrases and where they start', () => {
    expect(space!.restShare).toBeCloseTo(0.6, 6);
    expect(space).toMatchObject({
      phrases: 2,
      medianPhraseBars: 0.5,
      longestRunBars: 0.5,
      starts: { beatOfBar: 0, count: 2 },
    });
  });
  it('has nothing to say of no notes', () => {
    expect(gradeLine('| C7 |', []).space).toMatchObject({ restShare: null, phrases: 0, starts: null });
  });
});

describe('approach', () => {
  it('tells from where landings on chord tones are reached', () => {
    const { approach } = gradeLine('| C7 | F7 | C7 | F7 | C7 |', [
      [0, 1, 60], // nothing before it
      [3, 0.5, 68],
      [4, 1, 69], // from a half step below
      [7, 0.4, 65],
      [8, 1, 64], // from a half step above
      [10, 0.5, 70],
      [11, 0.4, 67],
      [12, 1, 69], // Bb and G over C7 are chord tones: a whole step
      [15, 0.4, 60],
      [16, 1, 67], // a leap
    ]);
    expect(approach).toEqual({
      ...{ landings: 4, halfBelow: 1, halfAbove: 1, wholeStep: 1 },
      ...{ enclosure: 0, leap: 1, sameNote: 0 },
    });
  });
});

describe('figures', () => {
  /** Every place of a run in a list, by a search through its text. */
  function naivePlaces(text: string, run: string): readonly number[] {
    const places: number[] = [];
    for (let at = text.indexOf(run); at >= 0; at = text.indexOf(run, at + 1)) places.push(at);
    return places;
  }

  it('are found where a naive search of strings finds them', () => {
    const random = mulberry32(5);
    for (let take = 0; take < 30; take++) {
      const values = Array.from({ length: 80 }, () => Math.floor(random() * 4));
      const text = values.map((value) => 'abcd'.charAt(value)).join('');
      for (const length of [3, 4, 5]) {
        const runs = new Set(Array.from({ length: 80 - length + 1 }, (_, at) => text.slice(at, at + length)));
        const naive = [...runs].map((run) => naivePlaces(text, run)).filter((places) => places.length > 1);
        expect([...repeatedRuns(values, length)].map(String).sort()).toEqual(naive.map(String).sort());
      }
    }
  });

  const lick = (at: number, end = 60, up = 0): readonly Played[] => [
    [at, 0.5, 64 + up],
    [at + 0.5, 0.5, 67 + up],
    [at + 1, 0.5, 70 + up],
    [at + 1.5, 0.5, end + up],
  ];
  it('tell where they come back and what was changed', () => {
    const { figures } = gradeLine('| C7 | F7 | C7 | F7 |', [
      ...lick(0),
      ...lick(4), // over F7
      ...lick(9), // a beat later in the bar
      ...lick(12, 60, 12), // an octave up, over F7
      ...lick(16, 61), // another last note
    ]);
    expect(figures).toEqual([
      { length: 4, starts: [0, 4, 8, 12], movedInBar: 1, otherOctave: 1, otherChord: 2, otherEnd: 1 },
    ]);
  });
  it('are none in a line that never comes back', () => {
    expect(
      gradeLine('| C7 |', [
        [0, 1, 60],
        [1, 1, 61],
        [2, 1, 62],
        [3, 1, 63],
      ]).figures,
    ).toEqual([]);
  });
});

describe('range and contour', () => {
  it('tells low and high and the shapes of phrases', () => {
    const phrase = (at: number, pitches: readonly number[]) =>
      pitches.map((midi, i): Played => [at + i / 2, 0.5, midi]);
    const { range } = gradeLine('| C7 |', [
      ...phrase(0, [60, 64, 67, 72]),
      ...phrase(4, [72, 70, 67, 64]),
      ...phrase(8, [60, 67, 67, 60]),
    ]);
    expect(range).toEqual({
      ...{ lowestNote: 0, highestNote: 3, semitones: 12 },
      ...{ rising: 1, falling: 1, arched: 1, level: 0 },
    });
  });
});

describe('accents', () => {
  it('compares the loudness on strong beats and off them', () => {
    const { accents } = gradeLine(
      '| C7 |',
      Array.from({ length: 16 }, (_, i): Played => [i, 0.9, 60, { levelDb: i % 2 === 0 ? -12 : -18 }]),
    );
    expect(accents).toEqual({ strongNotes: 8, otherNotes: 8, differenceDb: 6 });
  });
  it('has no levels for a list of notes', () => {
    expect(gradeLine('| C7 |', [[0, 1, 60]]).accents).toMatchObject({ differenceDb: null });
  });
});

describe('the swing that was played', () => {
  it('is where the second eighth falls, whatever the player’s place behind the beat', () => {
    const played = Array.from({ length: 16 }, (_, beat): Played[] => [
      [beat + 0.05, 0.5, 60],
      [beat + 0.05 + 0.62, 0.3, 62],
    ]).flat();
    const { swingPlayed } = gradeLine('| C7 |', played);
    expect(swingPlayed!.pairs).toBe(16);
    expect(swingPlayed!.share).toBeCloseTo(0.62, 6);
  });
});

/** Eighths, most of them tones of the chord that stands under a place some beats away, moved by some semitones. */
function follower(seed: number, choruses: number, beatsLate: number, semitones: number): readonly Played[] {
  const timeline = chartTimeline(TWELVE_BARS);
  const random = mulberry32(seed);
  const played: Played[] = [];
  for (let beat = 0; beat < choruses * 48; beat += 0.5) {
    if (random() < 0.25) continue;
    const chord = timeline.chordAt((beat - beatsLate + 48) % 48)!;
    const tones = random() < 0.8 ? chord.tones.slice(0, 4).map(({ pitchClass }) => pitchClass) : MIXOLYDIAN;
    played.push([beat, 0.45, 60 + tones[Math.floor(random() * tones.length)]! + semitones]);
  }
  return played;
}

describe('a wrong chart', () => {
  const suspected = (played: readonly Played[]) =>
    grade(line(played), chartTimeline(TWELVE_BARS), SETTINGS).suspected;
  it('is suspected where the take follows the chords of another key', () => {
    for (let seed = 1; seed <= 10; seed++)
      expect(suspected(follower(seed, 1, 0, 2))).toMatchObject({ what: 'key', semitones: 2, tonic: 'D' });
  });
  it('is suspected where it follows the chords a bar late', () => {
    const found = Array.from({ length: 10 }, (_, seed) => suspected(follower(seed + 1, 4, 4, 0)));
    expect(found.filter((one) => one?.what === 'place' && one.beats === 4).length).toBeGreaterThanOrEqual(9);
  });
  // The other notes are the chords' own: leaning on the third from above is a habit of the style.
  it('is not where each third is struck a half step above and stepped down to', () => {
    const timeline = chartTimeline(TWELVE_BARS);
    const played = Array.from({ length: 24 }, (_, bar): Played[] => {
      const { rootPitchClass: root, tones } = timeline.chordAt(4 * bar)!;
      const third = tones.find(({ role }) => role === 'third')!.pitchClass;
      return [
        [4 * bar, 0.5, 61 + third],
        [4 * bar + 0.5, 1.5, 60 + third],
        [4 * bar + 2.5, 1, 60 + root],
      ];
    }).flat();
    expect(suspected(played)).toBeNull();
  });
  // The root of C7 is the third of Ab7 too: landing on roots is no line in Ab.
  it('is not where each root is landed on', () => {
    const timeline = chartTimeline(TWELVE_BARS);
    for (let seed = 1; seed <= 10; seed++) {
      const random = mulberry32(seed);
      const played = Array.from({ length: 24 }, (_, bar): Played[] => [
        [4 * bar, 0.9, 60 + timeline.chordAt(4 * bar)!.rootPitchClass],
        [4 * bar + 2, 0.9, 60 + MIXOLYDIAN[Math.floor(7 * random())]!],
        [4 * bar + 3, 0.9, 60 + MIXOLYDIAN[Math.floor(7 * random())]!],
      ]).flat();
      expect(suspected(played)).toBeNull();
    }
  });
  it('is not where the take fits', () => {
    for (let seed = 1; seed <= 10; seed++) expect(suspected(follower(seed, 2, 0, 0))).toBeNull();
  });
});

describe('the round of a list of chords', () => {
  const beats = (bars: readonly string[]) => bars.flatMap((chord) => [chord, chord, chord, chord]);
  const FORM = ['C', 'F', 'C', 'C', 'F', 'F', 'C', 'C', 'G', 'F', 'C', 'G'];
  it('is the shortest that fits best', () => {
    expect(findRoundBars(beats([...FORM, ...FORM, ...FORM]), 4)).toBe(12);
    const aaba = [...'AAAAAAAA', ...'AAAAAAAA', ...'BCBCBCBC', ...'AAAADAAA'];
    expect(findRoundBars(beats([...aaba, ...aaba]), 4)).toBe(32);
  });
  it('bears a turnaround written otherwise', () => {
    expect(findRoundBars(beats([...FORM, ...FORM.slice(0, 11), 'D', ...FORM]), 4)).toBe(12);
  });
  it('is not found where the chords do not come again, or never change', () => {
    expect(findRoundBars(beats([...FORM]), 4)).toBeNull();
    expect(findRoundBars(beats(new Array<string>(32).fill('C')), 4)).toBeNull();
  });
});
