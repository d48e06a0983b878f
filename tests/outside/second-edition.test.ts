/**
 * What a sceptical teacher found in the first edition of the grading, point by point, as the second edition has it.
 * The cases are worked by hand over small charts; tones and spellings are common practice.
 */
import { describe, expect, it } from 'vitest';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import { isStrongBeat } from '../../src/core/grade/assign/beats.ts';
import { roleOf } from '../../src/core/grade/assign/roles.ts';
import { palettePitchClasses } from '../../src/core/grade/assign/scales.ts';
import { findResolution } from '../../src/core/grade/teach/resolution.ts';
import { grade } from '../../src/core/grade.ts';
import { instrumentOf } from '../../src/core/music/instruments.ts';
import { parseKey, writeKey } from '../../src/core/music/keys.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';
import { degreeOver } from '../../src/core/music/pitch-names.ts';
import { liveMomentAt } from '../../src/state/live-moment.ts';
import { chartTimeline, thirdPlayer } from '../bench/made-players.ts';
import { gradeLine, line, SETTINGS, TWELVE_BARS, type Played } from '../core/grade/line.ts';

/** Points 1 and 2 have tests of their own: steady-hands.test.ts and known-players.test.ts. */

describe('3: one chorus may say something', () => {
  const timeline = chartTimeline(TWELVE_BARS);
  it('seven thirds of seven are more than luck', () => {
    const { shares } = grade(line(thirdPlayer(3, timeline, 1, 1)), timeline, SETTINGS);
    expect(shares.landings.thirds).toMatchObject({ hits: 7, of: 7, verdict: 'above chance' });
  });

  it('four landings say nothing, and how many choruses more would is told', () => {
    const { shares } = gradeLine('| C7 | F7 | C7 | G7 |', [
      [0, 1, 60],
      [4, 1, 60],
      [8, 1, 64],
      [12, 1, 62],
    ]);
    expect(shares.landings.thirds.verdict).toBe('too short to tell');
    expect(shares.landings.thirds.moreChoruses).toBeGreaterThanOrEqual(1);
  });
});

describe('4: chords without a third', () => {
  /** Two bars, each on the fourth: C over Dsus7's G? No: G over Dsus7, Bb over Fsus7. */
  const played = [0, 8, 16, 24].flatMap((at): readonly Played[] => [
    [at, 1, 67],
    [at + 4, 1, 70],
    [at + 6, 1, 60],
  ]);
  const { shares, aims } = gradeLine('| D7sus4 | F7sus4 |', played);

  it('stand outside every share of thirds', () => {
    for (const set of Object.values(shares)) expect(set.thirds.of).toBe(0);
  });

  it('have the fourth and the seventh for guide tones', () => {
    expect(shares.landings.guideTones).toMatchObject({ hits: 8, of: 8 });
  });

  it('make aims about thirds say that they do not apply', () => {
    const verdict = (id: string) => aims.find((aim) => aim.id === id)!.verdict;
    expect(verdict('third-on-arrival')).toBe('not in this chart');
    expect(verdict('flat-third-into-third')).toBe('not in this chart');
  });

  it('a power chord has no guide tone, and stands outside that share too', () => {
    expect(
      gradeLine('| C5 | F5 |', [
        [0, 1, 60],
        [4, 1, 65],
      ]).shares.landings.guideTones.of,
    ).toBe(0);
  });
});

describe('5: the clash of the key’s major third over the IV', () => {
  const clash = (four: string, played: readonly Played[]) =>
    gradeLine(`| C7 | ${four} |`, played, {}, 'C').palette.thirdOverFour.notes;
  const held: readonly Played[] = [
    [0, 1, 60],
    [4, 1, 64],
    [6, 1, 72],
  ];
  it('is told over the dominant seventh alone', () => {
    expect(clash('F7', held)).toEqual([1]);
    expect(clash('F', held)).toEqual([]);
    expect(clash('F6', held)).toEqual([]);
    expect(clash('Fmaj7', held)).toEqual([]);
  });

  it('is none where the note passes', () => {
    expect(
      clash('F7', [
        [4, 0.5, 65],
        [4.5, 0.5, 64],
        [5, 0.5, 63],
      ]),
    ).toEqual([]);
  });
});

describe('6: the blue third', () => {
  const { thirds, advice, changes, landings } = gradeLine(
    '| C7 | F7 |',
    [0, 8, 16].flatMap((at): readonly Played[] => [
      [at, 1, 63.35],
      [at + 4, 1, 65],
    ]),
    { instrument: instrumentOf('guitar')! },
  );
  it('is told as one, never left hanging, never corrected, and no habit of missing', () => {
    expect(thirds.blueNotes).toHaveLength(3);
    expect(thirds.leftHanging).toEqual([]);
    expect(landings[0]).toMatchObject({ role: 'blue' });
    expect(changes.byBar[0]!.habit).toBe('mixed');
    expect(advice.filter(({ chord }) => chord === 'C7')).toEqual([]);
  });

  it('begins 25 cents above the tempered b3', () => {
    const blue = (cents: number) => gradeLine('| C7 |', [[0, 1, 63 + cents / 100]]).thirds.blueNotes.length;
    expect([20, 24, 26, 49].map(blue)).toEqual([0, 0, 1, 1]);
  });
});

describe('7: advice keeps the ladder', () => {
  const landOn = (midi: number, settings = {}, text = '| C7 | F7 |') =>
    gradeLine(
      text,
      [0, 8, 16].flatMap((at): readonly Played[] => [
        [at, 1, 64],
        [at + 4, 1, midi],
        [at + 6, 1, midi - 12],
      ]),
      settings,
      'C',
    ).advice.filter(({ fault }) => fault === 'landing' || fault === 'phrase end');

  it('does not correct a ninth or a thirteenth over F7', () => {
    expect(landOn(67)).toEqual([]);
    expect(landOn(62)).toEqual([]);
  });

  it('does not correct an eleventh over a minor chord, but does over a major one', () => {
    expect(landOn(70, {}, '| C7 | Fm7 |')).toEqual([]);
    expect(landOn(70)).not.toEqual([]);
  });

  it('does where the aim in hand is about thirds at that very place', () => {
    const aim = {
      ...({ id: 'thirds', events: 'landings', test: 'is one of', tones: ['third'] } as const),
      ...{ shareToReach: 0.5, leastEvents: 5, againstLuck: true },
      own: { name: 'Thirds', task: 'Land on thirds.' },
    };
    const [first] = landOn(67, { aims: [aim] });
    expect(first).toMatchObject({ fault: 'landing', chord: 'F7', played: { degree: '9' } });
  });

  it('does not correct what its own next note resolves', () => {
    expect(
      gradeLine('| C7 |', [
        [0, 1, 67],
        [1, 1, 62],
        [2, 1, 64],
        [4, 1, 62],
        [5, 1, 64],
      ]).advice,
    ).toEqual([]);
  });
});

describe('8: the palette of a minor key', () => {
  const key = parseKey('C minor')!;
  const over = (symbol: string) => {
    const chord = parseChord(symbol)!;
    const palette = palettePitchClasses('both pentatonics', key, chord);
    return (pitchClass: number) => roleOf(pitchClass, chord, palette);
  };
  it('holds 2, b6 and 6 beside the minor pentatonic, and not the major third', () => {
    const role = over('Cm7');
    expect(role(4)).toBe('outside');
    expect(role(8)).toBe('colour');
    expect(role(9)).toBe('colour');
    expect(role(2)).toBe('colour');
    expect(role(11)).toBe('outside');
  });
  it('holds the leading tone over the dominant', () => {
    expect(over('G7sus4')(11)).toBe('colour');
    expect(over('Gm7')(11)).toBe('outside');
  });
});

describe('9: earned, covered and next', () => {
  const timeline = chartTimeline(TWELVE_BARS);
  it('a tone that is never played is not kept off', () => {
    const wanders = Array.from({ length: 48 }, (_, i): Played => [
      2 * i,
      1,
      60 + [0, 3, 5, 7, 10][(i * 3) % 5]!,
    ]);
    const { aims } = gradeLine(TWELVE_BARS, wanders, {}, 'C');
    expect(aims.find(({ id }) => id === 'off-the-third-over-four')!.verdict).not.toBe('reached');
  });

  it('who lands on every third is not sent to the third over the I', () => {
    for (let seed = 1; seed <= 5; seed++) {
      const { aims, nextAim } = grade(line(thirdPlayer(seed, timeline, 3, 1)), timeline, SETTINGS);
      expect(aims.find(({ id }) => id === 'third-on-arrival')!.verdict).toBe('reached');
      expect(nextAim!.id).not.toBe('third-over-one');
      expect(nextAim!.id).not.toBe('third-on-arrival');
    }
  });
});

describe('10: what is followed by a step is never free', () => {
  const functionAt = (text: string, played: readonly Played[], note: number) =>
    gradeLine(text, played, { anticipationBeats: 0 }).notes[note]!.function;
  it('D to E over C7, out of a rest, inside a line and over another chord', () => {
    expect(
      functionAt(
        '| C7 |',
        [
          [0, 1, 62],
          [1, 1, 64],
        ],
        0,
      ),
    ).toBe('appoggiatura');
    expect(
      functionAt(
        '| C7 |',
        [
          [0, 1, 60],
          [1, 1, 74],
          [2, 1, 76],
        ],
        1,
      ),
    ).toBe('appoggiatura');
    expect(
      functionAt(
        '| C7 | A7 |',
        [
          [2, 1, 67],
          [3, 1, 74],
          [4, 1, 76],
        ],
        1,
      ),
    ).not.toBe('free');
  });
  it('a step on to another tone passes', () => {
    expect(
      functionAt(
        '| C7 |',
        [
          [0, 1, 62],
          [1, 1, 63],
          [2, 1, 69],
        ],
        0,
      ),
    ).toBe('passing');
  });
  it('two approaches from either side are an enclosure, both of them', () => {
    const played: readonly Played[] = [
      [0, 1, 60],
      [1, 0.5, 65],
      [1.5, 0.5, 63],
      [2, 1, 64],
    ];
    expect(functionAt('| C7 |', played, 1)).toBe('enclosure');
    expect(functionAt('| C7 |', played, 2)).toBe('enclosure');
  });
  it('the last note of a phrase, and one left by a leap, are', () => {
    expect(
      functionAt(
        '| C7 |',
        [
          [0, 1, 67],
          [1, 1, 62],
          [2, 1, 72],
        ],
        1,
      ),
    ).toBe('free');
    expect(
      functionAt(
        '| C7 |',
        [
          [0, 1, 67],
          [1, 1, 62],
        ],
        1,
      ),
    ).toBe('free');
  });
});

describe('11: names', () => {
  it('the live stage spells by the chord: Db over Eb7', () => {
    const timeline = chartTimeline('| Eb7 | Ab7 |');
    const reading = { timeSeconds: 0, midi: 61, levelDb: -20 };
    expect(liveMomentAt(timeline, 1, reading, 440, () => []).note).toMatchObject({
      name: 'Db4',
      degree: 'b7',
    });
  });
  it('the report does too, in both of its names', () => {
    const [note] = gradeLine('| Eb7 |', [[0, 1, 61]]).notes;
    expect(note).toMatchObject({ name: 'Db4', spelling: 'Db4', degree: 'b7' });
  });
  it('an alto saxophone reads Ab over Bb7 where Cb sounds over Db7', () => {
    const { advice } = gradeLine(
      '| Ab7 | Db7 |',
      [0, 8, 16].flatMap((at): readonly Played[] => [
        [at, 1, 60],
        [at + 4, 1, 72],
        [at + 6, 1, 68],
      ]),
      { instrument: instrumentOf('alto-sax')! },
    );
    const piece = advice.find(({ chord }) => chord === 'Db7')!;
    expect(piece.resolve).toMatchObject({ name: 'Cb5', degree: 'b7' });
    expect(piece.where).toEqual({ kind: 'written', name: 'Ab5' });
  });
  it('Db minor stays Db minor', () => {
    expect(writeKey(parseKey('Db minor')!)).toBe('Db minor');
  });
});

describe('12: one number', () => {
  it('luck is told once: expectation, chance and p agree in every share', () => {
    const timeline = chartTimeline(TWELVE_BARS);
    const { shares } = grade(line(thirdPlayer(8, timeline, 2, 0.4)), timeline, SETTINGS);
    for (const set of Object.values(shares))
      for (const share of Object.values(set)) {
        expect(share.fairExpected).toBe(share.expected);
        expect(share.fairTail).toBe(share.tail);
        if (share.of > 0) expect(share.chance! * share.of).toBeCloseTo(share.expected!, 6);
      }
  });
});

describe('13: the same event is named the same', () => {
  it('advice names the bar of the change that its note is played on, a hair early', () => {
    const { advice, landings, notes } = gradeLine(
      '| C7 | F7 |',
      [0, 8, 16].flatMap((at): readonly Played[] => [
        [at, 1, 64],
        [at + 3.95, 2, 66],
        [at + 7, 0.9, 72],
      ]),
    );
    const piece = advice.find(({ fault }) => fault === 'landing')!;
    const landing = landings.find(({ note }) => note === piece.notes[0])!;
    expect(piece.bars).toEqual([1]);
    expect(landing).toMatchObject({ bar: 1, beatOfBar: 0, chord: piece.chord, degree: piece.played.degree });
    expect(notes[piece.notes[0]!]).toMatchObject({ bar: 1, chord: piece.chord, degree: piece.played.degree });
  });
});

describe('14: small things', () => {
  it('rests are no misses of a guide tone', () => {
    const { changes } = gradeLine('| C7 | F7 | C7 | G7 |', [
      [0, 1, 64],
      [12, 1, 59],
    ]);
    expect(changes.guideTones.changes).toBe(1);
  });
  it('Bb over G7b9 is the #9, and no b3 left hanging', () => {
    const chord = parseChord('G7b9')!;
    expect(degreeOver(10, chord)).toBe('#9');
    expect(roleOf(10, chord, new Set())).toBe('colour');
    expect(
      gradeLine('| G7b9 |', [
        [0, 1, 70],
        [1, 1, 65],
      ]).thirds,
    ).toMatchObject({ flatThirds: 0, leftHanging: [] });
  });
  it('B over Cm7 goes up to C', () => {
    expect(findResolution(71, parseChord('Cm7')!, null)).toMatchObject({ midi: 72, role: 'root' });
  });
  it('C to C/E is no change', () => {
    expect(
      gradeLine('| C | C/E | F |', [
        [0, 1, 60],
        [8, 1, 65],
      ]).landings.map(({ chord }) => chord),
    ).toEqual(['C', 'F']);
  });
  it('strong beats of five are 1 and 4, of seven 1, 3 and 5, of 12/8 1 and 3 of its four', () => {
    const strong = (beats: number) =>
      Array.from({ length: beats }, (_, beat) => beat + 1).filter((beat) => isStrongBeat(beat - 1, beats));
    expect(strong(5)).toEqual([1, 4]);
    expect(strong(7)).toEqual([1, 3, 5]);
    expect(strong(4)).toEqual([1, 3]);
    expect(strong(3)).toEqual([1]);
  });
  it('a list of beats whose chords come again has choruses', () => {
    const form = ['C7', 'F7', 'C7', 'C7', 'F7', 'F7', 'C7', 'C7', 'G7', 'G7', 'C7', 'C7'];
    const rows = [...form, ...form, ...form].flatMap((chord, bar) =>
      [0, 1, 2, 3].map((beat) => ({ timeSeconds: 2 * bar + 0.5 * beat, chord })),
    );
    const timeline = timelineFromBeats(rows);
    if (!timeline.ok) throw new Error('the beats can’t be read');
    expect(timeline.value.bars).toBe(12);
    const { landings } = grade(
      line([
        [0, 1, 64],
        [52, 1, 57],
        [140, 1, 60],
      ]),
      timeline.value,
      SETTINGS,
    );
    expect(landings.at(-1)).toMatchObject({ bar: 10, chorus: 2 });
    // Chords that never come again are one long chorus.
    const through = timelineFromBeats(rows.slice(0, 48));
    expect(through.ok && through.value.bars).toBe(12);
  });
  it('a landing on no chord tone is put right where a step leads on within the chord', () => {
    const [, second] = gradeLine('| C7 | F7 |', [
      [0, 1, 64],
      [4, 1, 70],
      [5, 1, 69],
      [7, 1, 60],
    ]).landings;
    expect(second).toMatchObject({ degree: '11', putRight: { note: 2, beats: 1 } });
  });
});
