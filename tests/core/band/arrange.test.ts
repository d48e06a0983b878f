import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange, arrangeChorus, eventsBetween } from '../../../src/core/band/arrange.ts';
import { chorusBeats } from '../../../src/core/band/form.ts';
import { bandInstruments, programsOf } from '../../../src/core/band/instruments.ts';
import { swungBeat, swingShare } from '../../../src/core/chart/swing.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { chartTexts, formOf, settingsOf } from './forms.ts';
import kitPlan from '../../../src/audio/kit/kit-plan.json' with { type: 'json' };

const anyFeel = fc.constantFrom(...feelNames);
const anyForm = fc.constantFrom(...chartTexts).map(formOf);
const anySeed = fc.integer({ min: 0, max: 1e6 });

describe('arrange', () => {
  it('plays the same notes for the same seed, and others for another', () => {
    const form = formOf('form:12-bar blues in D');
    for (const feel of feelNames) {
      const play = (seed: number) => arrange(form, settingsOf({ feel, seed }), 2, true).events;
      expect(play(7)).toEqual(play(7));
      expect(play(7)).not.toEqual(play(8));
    }
  });

  it('leaves out the chords, and nothing else, in every second chorus', () => {
    const form = formOf('form:jazz blues in F');
    const settings = settingsOf({ feel: 'swing' });
    for (const chorus of [0, 1, 2, 3]) {
      const usual = arrangeChorus(form, settings, chorus);
      const wanted = chorus % 2 === 0 ? usual : usual.filter(({ part }) => part !== 'chords');
      expect(arrangeChorus(form, { ...settings, chordsRest: true }, chorus)).toEqual(wanted);
    }
  });

  it('clicks on two and four', () => {
    const settings = settingsOf({ feel: 'swing', backbeatClick: true });
    const clicks = (text: string) =>
      arrangeChorus(formOf(text), settings, 1).flatMap(({ part, beat }) => (part === 'click' ? [beat] : []));
    expect(clicks('| C7 | F7 |')).toEqual([1, 3, 5, 7]);
    expect(clicks('meter: 3/4\n| C7 | F7 |')).toEqual([1, 4]);
  });

  it('varies from chorus to chorus', () => {
    const form = formOf('form:12-bar blues in D');
    for (const feel of feelNames) {
      const settings = settingsOf({ feel });
      expect(arrangeChorus(form, settings, 0)).not.toEqual(arrangeChorus(form, settings, 1));
    }
  });

  it('puts every event on the grid of the feel, inside its chorus', () => {
    fc.assert(
      fc.property(anyForm, anyFeel, anySeed, fc.integer({ min: 40, max: 280 }), (form, feel, seed, bpm) => {
        const settings = settingsOf({ feel, seed, bpm });
        const share = swingShare(feel, bpm);
        const places = [...[0, 0.25, 0.5, 0.75].map((place) => swungBeat(place, share)), 1 / 3, 2 / 3];
        for (const event of arrangeChorus(form, settings, 0)) {
          const place = event.beat - Math.floor(event.beat + 1e-9);
          expect(Math.min(...places.map((grid) => Math.abs(grid - place)))).toBeLessThan(1e-9);
          expect(event.beat).toBeGreaterThanOrEqual(0);
          expect(event.beat).toBeLessThan(chorusBeats(form));
          expect(event.durationBeats).toBeGreaterThan(0);
          expect(event.velocity).toBeGreaterThanOrEqual(1);
          expect(event.velocity).toBeLessThanOrEqual(127);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('uses only sounds that the kit holds', () => {
    const holds = (drums: boolean, program: number, midi: number) =>
      kitPlan.some(
        (preset) =>
          preset.drums === drums &&
          preset.program === program &&
          preset.keys.some(([from, to]) => midi >= from! && midi <= to!),
      );
    fc.assert(
      fc.property(anyForm, anyFeel, anySeed, (form, feel, seed) => {
        const programOf = programsOf(bandInstruments({ feel }));
        for (const { part, midi } of arrange(form, settingsOf({ feel, seed }), 1, true).events) {
          const drums = part === 'drums' || part === 'click';
          if (!holds(drums, programOf[part], midi)) throw new Error(`${feel}: ${part} plays ${midi}`);
        }
      }),
      { numRuns: 80 },
    );
  });

  it('leaves N.C. to the drums', () => {
    const form = formOf('| C7 | N.C. | C7 | F7 |');
    for (const feel of feelNames) {
      const events = arrangeChorus(form, settingsOf({ feel }), 0).filter((e) => e.beat >= 4 && e.beat < 8);
      expect(new Set(events.map((e) => e.part))).toEqual(new Set(['drums']));
    }
  });

  it('lets every chord be heard: a root in the bass as it arrives, a stroke of chords before it leaves', () => {
    for (const feel of feelNames) {
      const form = formOf('| Dm7 G7 | Cmaj7 | F7 Bb7 Eb7 | Am7 D7 |');
      const events = arrangeChorus(form, settingsOf({ feel }), 0);
      for (const span of form.spans) {
        const at = (part: string, from: number, to: number) =>
          events.filter((e) => e.part === part && e.beat > from - 1e-6 && e.beat < to - 1e-6);
        const root = at('bass', span.startBeat, span.startBeat + 0.01)[0];
        expect(root && root.midi % 12, `${feel}, ${span.chord?.symbol}`).toBe(span.chord?.rootPitchClass);
        // An early stroke may stand for the chord, an eighth before it.
        expect(
          at('chords', span.startBeat - 1, span.endBeat).length,
          `${feel}, ${span.chord?.symbol}`,
        ).toBeGreaterThan(0);
      }
    }
  });

  it('counts in: a click a beat in one bar, half notes first in two', () => {
    const form = formOf('| C7 | F7 |');
    const clicks = (countInBars: number) =>
      arrange(form, settingsOf({ countInBars }), 1)
        .events.filter((e) => e.part === 'click')
        .map((e) => e.beat);
    expect(clicks(0)).toEqual([]);
    expect(clicks(1)).toEqual([-4, -3, -2, -1]);
    expect(clicks(2)).toEqual([-8, -6, -4, -3, -2, -1]);
  });

  it('cuts into stretches without losing or doubling a note', () => {
    const form = formOf('form:12-bar blues in D');
    const settings = settingsOf({ feel: 'shuffle' });
    const whole = eventsBetween(form, settings, -4, 144);
    const cuts = [-4, 0, 8, 24, 48, 64, 96, 144];
    const pieces = cuts.slice(1).flatMap((to, i) => eventsBetween(form, settings, cuts[i]!, to));
    expect(pieces).toEqual(whole);
    expect(whole.filter((e) => e.beat >= 0)).toEqual(
      arrange(form, { ...settings, countInBars: 0 }, 3).events,
    );
  });

  it('plays every meter, and ends on the tonic', () => {
    for (const meter of ['2/4', '3/4', '4/4', '5/4', '6/8', '7/4', '12/8']) {
      const form = formOf(`Meter: ${meter}\n| Dm7 | G7 | C6 | C6 |`);
      for (const feel of feelNames) {
        const events = arrangeChorus(form, settingsOf({ feel }), 0);
        for (let bar = 0; bar < 4; bar++) {
          const inBar = events.filter((e) => Math.floor(e.beat / form.beatsPerBar + 1e-9) === bar);
          expect(new Set(inBar.map((e) => e.part)).size, `${meter} ${feel} bar ${bar}`).toBe(3);
        }
        const { events: all, endBeat } = arrange(form, settingsOf({ feel }), 1, true);
        const last = all.filter((e) => e.part === 'bass').at(-1)!;
        expect(last.beat).toBe(endBeat - form.beatsPerBar);
        expect(last.midi % 12).toBe(0);
      }
    }
  });

  it('refuses settings outside their range, naming it', () => {
    const form = formOf('| C7 |');
    expect(() => arrangeChorus(form, settingsOf({ bpm: 30 }), 0)).toThrow('40 to 280');
    expect(() => arrangeChorus(form, settingsOf({ swing: 0.9 }), 0)).toThrow('0.5 to 0.8');
    expect(() => arrangeChorus(form, settingsOf({ seed: 0.5 }), 0)).toThrow('whole number');
    expect(() => arrange(form, settingsOf(), 0)).toThrow('1 or more');
  });
});
