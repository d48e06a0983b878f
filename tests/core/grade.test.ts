import { headlineOf, timingSentence } from '../../src/core/report/sentences.ts';
import { en } from '../../src/core/words/en.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grade } from '../../src/core/grade.ts';
import { keyOn } from '../../src/core/music/keys.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { readReport } from '../../src/core/take/schema.ts';
import { chart, line, SETTINGS, TWELVE_BARS, type Played } from './grade/line.ts';

const SHARPS = ['C', 'C#', 'D', 'D#', 'E', 'F', 'F#', 'G', 'G#', 'A', 'A#', 'B'];
const FLATS = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'Gb', 'G', 'Ab', 'A', 'Bb', 'B'];

/** A line of up to 30 notes on sixteenths over a few bars, with rests and overlaps. */
const anyLine: fc.Arbitrary<readonly Played[]> = fc
  .array(fc.tuple(fc.nat(12), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 48, max: 84 })), {
    minLength: 1,
    maxLength: 30,
  })
  .map((steps) => {
    let beat = 0;
    return steps.map(([rest, length, midi]): Played => {
      beat += rest / 4;
      return [beat, length / 4, midi];
    });
  });

const onChart = (roots: readonly string[], names: readonly string[], up = 0) =>
  `| ${roots.map((root) => `${names[(SHARPS.indexOf(root) + up) % 12]!}7`).join(' | ')} |`;
const ROOTS = ['C', 'F', 'C', 'G#', 'D#', 'G'];

const gradeOver = (text: string, played: readonly Played[], up = 0, bpm = 120): Report =>
  grade(line(played, bpm), { ...chart(text, { bpm }), key: keyOn(up % 12, 'major') }, SETTINGS);

/** Everything that must not move when names do. */
const bones = ({ notes, landings, shares, thirds, summary, changes, aims }: Report) => ({
  notes: notes.map(
    ({ degree, role, keyDegree, beat, function: does, functionNotes, phrase, strongBeat, weight }) => ({
      ...{ degree, role, keyDegree, beat, does, functionNotes, phrase, strongBeat, weight },
    }),
  ),
  landings: landings.map(({ beat, kind, note, degree, role, offsetMs, stepSemitones, guideTone }) => ({
    ...{ beat, kind, note, degree, role, offsetMs, stepSemitones, guideTone },
  })),
  shares,
  thirds,
  landed: summary.landings,
  guideTones: changes.guideTones,
  aims: aims.map(({ id, verdict, result }) => ({ id, verdict, result })),
});

describe('grade', () => {
  it('changes nothing but names when line and chart are transposed together', () => {
    fc.assert(
      fc.property(anyLine, fc.integer({ min: 1, max: 11 }), (played, up) => {
        const moved = played.map(([beat, beats, midi]): Played => [beat, beats, midi + up]);
        expect(bones(gradeOver(onChart(ROOTS, FLATS, up), moved, up))).toEqual(
          bones(gradeOver(onChart(ROOTS, FLATS), played)),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('changes nothing counted in beats when the tempo doubles', () => {
    const inBeats = (report: Report) => ({
      notes: report.notes.map(({ beat, endBeat, chord, degree, role, function: does, phrase }) => ({
        ...{ beat, endBeat, chord, degree, role, does, phrase },
      })),
      landings: report.landings.map(({ beat, kind, note, role, stepSemitones }) => ({
        ...{ beat, kind, note, role, stepSemitones },
      })),
      landingShares: report.shares.landings,
      allNotes: report.shares.allNotes,
      aims: report.aims.map(({ id, verdict, result }) => ({ id, verdict, result })),
    });
    fc.assert(
      fc.property(anyLine, (played) => {
        expect(inBeats(gradeOver(TWELVE_BARS, played, 0, 240))).toEqual(
          inBeats(gradeOver(TWELVE_BARS, played, 0, 120)),
        );
      }),
      { numRuns: 30 },
    );
  });

  it('gives a note no other role when the chart is spelled otherwise', () => {
    fc.assert(
      fc.property(anyLine, (played) => {
        const roles = (names: readonly string[]) =>
          gradeOver(onChart(ROOTS, names), played).notes.map(({ role, degree }) => ({ role, degree }));
        expect(roles(SHARPS)).toEqual(roles(FLATS));
      }),
      { numRuns: 30 },
    );
  });

  it('shares out the palette to one, and each share lies in its interval', () => {
    fc.assert(
      fc.property(anyLine, (played) => {
        const { palette, shares } = gradeOver(TWELVE_BARS, played);
        for (const mixture of [palette.overall, ...palette.byChord.map((chord) => chord.mixture)]) {
          const { minorOnly, majorOnly, both, neither } = mixture;
          expect(minorOnly! + majorOnly! + both! + neither!).toBeCloseTo(1, 6);
        }
        for (const set of Object.values(shares)) {
          expect(set.thirds.hits).toBeLessThanOrEqual(set.guideTones.hits);
          expect(set.guideTones.hits).toBeLessThanOrEqual(set.chordTones.hits);
          const { share, low, high } = set.chordTones;
          if (share !== null) {
            expect(low!).toBeLessThanOrEqual(share);
            expect(high!).toBeGreaterThanOrEqual(share);
          }
        }
      }),
      { numRuns: 30 },
    );
  });

  it('is deterministic, plain JSON, and what its own reader takes, whatever the order of the notes', () => {
    fc.assert(
      fc.property(anyLine, (played) => {
        const report = gradeOver(TWELVE_BARS, played);
        const text = JSON.stringify(report);
        expect(JSON.stringify(gradeOver(TWELVE_BARS, played))).toBe(text);
        expect(JSON.parse(text)).toEqual(report);
        expect(readReport(JSON.parse(text))).toEqual({ ok: true, value: report });
      }),
      { numRuns: 20 },
    );
    const played: readonly Played[] = [
      [0, 1, 64],
      [1, 1, 65],
      [2, 1, 67],
    ];
    expect(gradeOver(TWELVE_BARS, [...played].reverse())).toEqual(gradeOver(TWELVE_BARS, played));
  });

  it('grades an empty take, and every number of the report is finite', () => {
    const report = gradeOver(TWELVE_BARS, []);
    expect(report.summary).toMatchObject({
      notes: 0,
      chordToneShare: null,
      thirdShare: null,
      landings: { count: 0, open: 0, chordTones: 0, thirds: 0 },
    });
    expect(headlineOf(report, en)).toBe('No note was heard over a chord: there is nothing to grade yet.');
    expect(readReport(JSON.parse(JSON.stringify(report))).ok).toBe(true);
  });

  it('keeps notes without a chord out of every share', () => {
    const report = gradeOver('| C7 | N.C. |', [
      [-2, 1, 60],
      [0, 1, 64],
      [4, 1, 61],
    ]);
    expect(report.notes.map(({ chord, degree, role }) => [chord, degree, role])).toEqual([
      [null, null, null],
      ['C7', '3', 'third'],
      [null, null, null],
    ]);
    expect(report.summary).toMatchObject({ notes: 1, chordToneShare: 1, thirdShare: 1 });
    expect(report.shares.byLength.chordTones.of).toBeCloseTo(0.5, 8);
    expect(report.palette.overall.seconds).toBeCloseTo(0.5, 8);
  });

  it('tells a player 60 ms behind the beat once, and grades the notes the same', () => {
    const played = Array.from({ length: 16 }, (_, beat): Played => [beat, 0.8, 64 - (beat % 3)]);
    const late = played.map(([beat, beats, midi]): Played => [beat + 0.12, beats, midi]);
    const onTime = gradeOver('| C7 | F7 |', played);
    const behind = gradeOver('| C7 | F7 |', late);
    expect(onTime.timing.verdict).toBe('on the beat');
    expect(timingSentence(onTime, en)).toBeNull();
    expect(behind.timing.medianMs).toBeCloseTo(60, 4);
    expect(behind.timing.verdict).toBe('behind');
    expect(timingSentence(behind, en)).toBe(
      'You play about 60 ms behind the beat; the notes are graded as if they were on it.',
    );
    expect(behind.notes.map((note) => note.role)).toEqual(onTime.notes.map((note) => note.role));
    expect(behind.summary.landings).toEqual(onTime.summary.landings);
  });

  it('names at the reference and keeps the sounding pitch', () => {
    const flat = grade(line([[0, 1, 69 - 0.3177]]), chart('| A7 |'), { ...SETTINGS, referenceHz: 432 });
    expect(flat.notes[0]).toMatchObject({ name: 'A4', midi: 68.6823, degree: '1' });
    expect(flat.notes[0]!.cents).toBeCloseTo(0, 0);
  });

  it('spells by the chord', () => {
    const [note] = gradeOver('| Eb7 |', [[0, 1, 61]]).notes;
    expect(note).toMatchObject({ name: 'Db4', spelling: 'Db4', degree: 'b7' });
  });

  it('grades on the swung eighth where the feel is swung', () => {
    const swung = { ...chart('| C7 | F7 |', { swing: 2 / 3 }), key: keyOn(0, 'major') };
    const { settings, landings } = grade(
      line([
        [0, 1, 60],
        [3 + 2 / 3, 1, 57],
      ]),
      swung,
      SETTINGS,
    );
    expect(settings.anticipationBeats).toBeCloseTo(1 / 3, 8);
    expect(landings[1]).toMatchObject({ kind: 'landing', role: 'third' });
    const tooEarly = grade(
      line([
        [0, 1, 60],
        [3.5, 1, 57],
      ]),
      swung,
      SETTINGS,
    );
    expect(tooEarly.landings[1]!.kind).toBe('held');
  });
});
