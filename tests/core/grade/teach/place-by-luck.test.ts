/** A move by a beat or two: told where the line follows the chords of the other place, and of no honest player. */
import { describe, expect, it } from 'vitest';
import { parseChord } from '../../../../src/core/music/parse-chord.ts';
import { followsElsewhere, type NoteInBar } from '../../../../src/core/grade/teach/place-by-luck.ts';
import { grade } from '../../../../src/core/grade.ts';
import { chartTimeline, MIXOLYDIAN, mulberry32, thirdPlayer, wanderer } from '../../../bench/made-players.ts';
import { line, SETTINGS, type Played } from '../line.ts';

/** A change every half bar: a beat's move puts every other note over another chord. */
const CHART = '| Bb G7 | Cm7 F7 | Dm7 G7 | Bb7 Eb | Ebm Bb | C7 F7 | Am7b5 D7 | Gm C7 |';
const on = chartTimeline(CHART);
const beats = 4 * on.roundBeats;

/** An eighth of four on a tone of its chord in three of four cases, else on any; begun so many beats late. */
function follower(seed: number, late: number): readonly Played[] {
  const random = mulberry32(seed);
  return Array.from({ length: 2 * beats }, (_, i): Played => {
    const beat = i / 2;
    const tones = on.chordAt(beat)!.tones;
    const tone = tones[Math.floor(random() * tones.length)]!.pitchClass;
    return [(beat + late + beats) % beats, 0.45, 60 + (random() < 0.75 ? tone : Math.floor(random() * 12))];
  }).sort((a, b) => a[0] - b[0]);
}
const suspected = (played: readonly Played[]) => grade(line(played), on, SETTINGS).suspected;
const SEEDS = [1, 2, 3, 4];

describe('a line that was moved by a beat or two', () => {
  it.each([1, 2, -1, -2])('is told of %d', (late) => {
    for (const seed of SEEDS)
      expect(suspected(follower(seed, late))).toMatchObject({ what: 'place', beats: late });
  });

  it('is not told of where it was not moved, nor of players who wander or land on thirds', () => {
    for (const seed of SEEDS) {
      expect(suspected(follower(seed, 0))).toBeNull();
      expect(suspected(wanderer(seed, MIXOLYDIAN, beats))?.what).not.toBe('place');
      expect(suspected(thirdPlayer(seed, on, 4, 0.6))?.what).not.toBe('place');
    }
  });
});

describe('the evidence of a place', () => {
  const C = parseChord('C')!;
  const F_SHARP = parseChord('F#')!;
  /** C in even beats, F# in odd ones: no tone of one is a tone of the other. */
  const chordAt = (beat: number) => (Math.floor(beat) % 2 === 0 ? C : F_SHARP);
  /** Of the two chords a stock of six tones, each as often as another. */
  const own = Array.from({ length: 12 }, (_, pitchClass) =>
    [0, 4, 7, 6, 10, 1].includes(pitchClass) ? 1 / 6 : 0,
  );
  /** A note a beat: of the other chord, but for some of a bar's four in each second bar. */
  const notes = (bars: number, figureOf: (bar: number) => number): readonly NoteInBar[] =>
    Array.from({ length: 4 * bars }, (_, beat) => {
      const bar = Math.floor(beat / 4);
      const isHere = bar % 2 === 1 && beat % 4 === 0;
      const pitchClass = (beat % 2 === 0) === isHere ? 0 : 6;
      return { note: { pitchClass, onsetBeat: beat }, bar, figure: figureOf(bar) };
    });

  it('holds for a line over the chords of a beat earlier', () => {
    expect(
      followsElsewhere(
        notes(8, (bar) => bar),
        own,
        chordAt,
      )(1),
    ).toBe(true);
    // Two beats earlier the same chords stand.
    expect(
      followsElsewhere(
        notes(8, (bar) => bar),
        own,
        chordAt,
      )(2),
    ).toBe(false);
  });

  it('takes six different bars: a bar that comes again is drawn once', () => {
    expect(
      followsElsewhere(
        notes(5, (bar) => bar),
        own,
        chordAt,
      )(1),
    ).toBe(false);
    expect(
      followsElsewhere(
        notes(8, (bar) => bar % 2),
        own,
        chordAt,
      )(1),
    ).toBe(false);
  });

  it('says nothing where no chord stands', () => {
    expect(
      followsElsewhere(
        notes(8, (bar) => bar),
        own,
        () => null,
      )(1),
    ).toBe(false);
  });
});
