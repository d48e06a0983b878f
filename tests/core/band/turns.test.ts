/**
 * Trading: whose bars are whose, and whether the example does what the aim asks for. The rules of the line (a landing on
 * each change, reached by step) are common practice of jazz teaching; from memory.
 */
import { english } from '../../english.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange, arrangeChorus } from '../../../src/core/band/arrange.ts';
import { lineRange } from '../../../src/core/band/example-line.ts';
import { bandForm } from '../../../src/core/band/form.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { chordKeys } from '../../../src/core/chart/keys-through.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { practiceChart } from '../../../src/core/chart/practice-chart.ts';
import { bandTurns } from '../../../src/core/chart/turns.ts';
import { AIM_CHOICES, aimChoiceOf } from '../../../src/core/grade/aims/aim-choices.ts';
import { targetsOf } from '../../../src/core/grade/aims/targets.ts';
import { sameChord } from '../../../src/core/music/same-chord.ts';
import { chartTexts, formOf, settingsOf } from './forms.ts';

describe('turns', () => {
  it('alternate from the first downbeat on, through the choruses', () => {
    const bars = (turnBars: number, from: number, to: number) =>
      bandTurns(turnBars, from, to).map((turn) => [turn.fromBar, turn.toBar]);
    // Twelve bars in fours: the band has 5 to 8, and in the second chorus 1 to 4 and 9 to 12.
    expect(bars(4, 0, 12)).toEqual([[4, 8]]);
    expect(bars(4, 12, 24)).toEqual([
      [12, 16],
      [20, 24],
    ]);
    // Eights over twelve bars: a turn goes on into the next chorus.
    expect(bars(8, 0, 12)).toEqual([[8, 12]]);
    expect(bars(8, 12, 24)).toEqual([[12, 16]]);
    expect(bars(1, 0, 4)).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it('the band plays its line in its own bars only', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...chartTexts, 'meter: 6/8\n| Am | D7 | Gmaj7 | % |'),
        fc.constantFrom(...feelNames),
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 1, max: 999 }),
        (text, feel, bars, seed) => {
          const form = formOf(text);
          const settings = settingsOf({ feel, seed, trade: { bars, aim: 'thirds' } });
          const { events } = arrange(form, settings, 3);
          for (const { beat, durationBeats, midi } of events.filter(({ part }) => part === 'line')) {
            const turn = Math.floor((beat + 1e-6) / form.beatsPerBar / bars);
            expect(turn % 2, `${text} ${bars} at ${beat}`).toBe(1);
            expect(beat + durationBeats).toBeLessThan((turn + 1) * bars * form.beatsPerBar + 1e-6);
            expect(midi).toBeGreaterThanOrEqual(lineRange.lowest);
            expect(midi).toBeLessThanOrEqual(lineRange.highest);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the example line', () => {
  it('lands on a tone of the aim on every change in its turn, nearly always by step, and ends on one', () => {
    let landings = 0;
    let byStep = 0;
    for (const { id } of AIM_CHOICES)
      for (const text of chartTexts)
        for (const seed of [1, 2, 3]) {
          const form = formOf(text);
          const settings = settingsOf({ seed, swing: 0.5, trade: { bars: 4, aim: id } });
          for (const chorus of [0, 1, 2]) {
            const line = arrangeChorus(form, settings, chorus).filter(({ part }) => part === 'line');
            for (const span of form.spans) {
              const at = line.findIndex(({ beat }) => Math.abs(beat - span.startBeat) < 1e-6);
              const before = form.spans[form.spans.indexOf(span) - 1];
              if (!span.chord || at < 0 || (before?.chord && sameChord(before.chord, span.chord))) continue;
              const targets = targetsOf(aimChoiceOf(id), span.chord, form.key).map((tone) => tone.pitchClass);
              expect(targets, `${id} over ${span.chord.symbol} in ${text}`).toContain(line[at]!.midi % 12);
              const from = line[at - 1];
              if (!from || span.startBeat - from.beat > 1) continue;
              landings++;
              if (Math.abs(from.midi - line[at]!.midi) <= 2) byStep++;
            }
          }
        }
    expect(landings).toBeGreaterThan(500);
    expect(byStep / landings).toBeGreaterThan(0.95);
  });

  it('goes through the keys with the form: an aim over the I is one over the I of each chorus', () => {
    const chart = parseChart('key: C\n| C7 | F7 | G7 | C7 |');
    if (!chart.ok) throw new Error(english(chart.problem));
    const through = practiceChart(chart.value, { loop: null, keys: 'fourths', seed: 1 });
    const timeline = timelineFromTempo(through, { bpm: 120 });
    const form = bandForm(timeline);
    const keyOf = chordKeys(timeline);
    const aim = AIM_CHOICES.find(({ over, tones }) => over?.includes('I') && tones.includes('6'))!;
    const settings = settingsOf({ swing: 0.5, trade: { bars: 1, aim: aim.id } });
    const line = arrangeChorus(form, settings, 0).filter(({ part }) => part === 'line');
    const heard = form.spans.flatMap((span) => {
      const note = line.find(({ beat }) => Math.abs(beat - span.startBeat) < 1e-6);
      return note === undefined || span.chord === null ? [] : [{ chord: span.chord, midi: note.midi }];
    });
    expect(heard.length).toBeGreaterThan(12);
    for (const { chord, midi } of heard) {
      const targets = targetsOf(aim, chord, keyOf(chord)).map(({ pitchClass }) => pitchClass);
      expect(targets, `${chord.symbol} in ${keyOf(chord).tonic}`).toContain(midi % 12);
    }
  });

  it('has a note on every change of the turn until its last half bar', () => {
    const form = formOf('form:jazz blues in Bb');
    for (const seed of [1, 2, 3, 4, 5]) {
      const settings = settingsOf({ seed, trade: { bars: 4, aim: 'guide-tones' } });
      const line = arrangeChorus(form, settings, 0).filter(({ part }) => part === 'line');
      const changes = form.spans.filter(({ startBeat }) => startBeat >= 16 && startBeat <= 30);
      for (const { startBeat } of changes)
        expect(
          line.some(({ beat }) => Math.abs(beat - startBeat) < 1e-6),
          `beat ${startBeat}`,
        ).toBe(true);
    }
  });

  it('is the same by seed, and another one by another', () => {
    const line = (seed: number) =>
      arrangeChorus(
        formOf('form:12-bar blues in D'),
        settingsOf({ seed, trade: { bars: 4, aim: 'thirds' } }),
        0,
      )
        .filter(({ part }) => part === 'line')
        .map(({ beat, midi }) => [beat, midi]);
    expect(line(7)).toEqual(line(7));
    expect(line(7)).not.toEqual(line(8));
  });
});

describe('the drone', () => {
  it('holds root and fifth of the key all through, the bass and the chords being silent', () => {
    const form = formOf('form:12-bar blues in D');
    const events = arrangeChorus(form, settingsOf({ drone: { tones: 'root and fifth', semitones: [0] } }), 0);
    const chords = events.filter(({ part }) => part === 'chords');
    expect(events.some(({ part }) => part === 'bass')).toBe(false);
    expect(events.some(({ part }) => part === 'drums')).toBe(true);
    expect([...new Set(chords.map(({ midi }) => midi))]).toEqual([50, 57]);
    const held = chords.filter(({ midi }) => midi === 50).reduce((sum, one) => sum + one.durationBeats, 0);
    expect(held).toBe(48);
    const roots = arrangeChorus(form, settingsOf({ drone: { tones: 'root', semitones: [0] } }), 0);
    expect([...new Set(roots.filter(({ part }) => part === 'chords').map(({ midi }) => midi))]).toEqual([50]);
  });

  it('goes with the key where the chorus goes through the keys', () => {
    const form = formOf('key: C\n| C | F | Gb | Cb |');
    const drone = { tones: 'root', semitones: [0, 6] } as const;
    const chords = arrangeChorus(form, settingsOf({ drone }), 0).filter(({ part }) => part === 'chords');
    expect(chords.map(({ beat, midi }) => [beat, midi % 12])).toEqual([
      [0, 0],
      [8, 6],
    ]);
  });

  it('is bowed on through choruses of one bar', () => {
    const { events } = arrange(
      formOf('| Em7 |'),
      settingsOf({ drone: { tones: 'root', semitones: [0] } }),
      8,
    );
    const strokes = events.filter(({ part }) => part === 'chords');
    expect(strokes.map(({ beat, durationBeats }) => [beat, durationBeats])).toEqual([
      [0, 16],
      [16, 16],
    ]);
  });
});
