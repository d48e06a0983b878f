/** Section feels, pickups and compound time in what the band plays. */
import { parseMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import kitPlan from '../../../src/audio/kit/kit-plan.json' with { type: 'json' };
import { arrange, arrangeChorus, eventsBetween } from '../../../src/core/band/arrange.ts';
import { feelOf } from '../../../src/core/chart/feel-words.ts';
import { drumKeys } from '../../../src/core/band/feels/feel.ts';
import { feels } from '../../../src/core/band/feels/table.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { ticksPerQuarter, writeBandMidi } from '../../../src/core/band/write-midi.ts';
import { formOf, settingsOf } from './forms.ts';

const A = '| Dm7 | G7 | Cmaj7 | Cmaj7 |';
const B = '| Fm7 | Bb7 | Ebmaj7 | G7 |';

describe('a section with a feel of its own', () => {
  const form = formOf(`[A]\n${A}\n[B]\nfeel: bossa\n${B}\n[A2]\n${A}`);
  const plain = formOf(`[A]\n${A}\n[B]\n${B}\n[A2]\n${A}`);

  it('is read out of the chart', () => {
    expect(form.feelChanges).toEqual([
      { bar: 4, feel: 'bossa' },
      { bar: 8, feel: null },
    ]);
    expect(form.sectionBars).toEqual([0, 4, 8]);
    expect(plain.feelChanges).toEqual([]);
  });

  it('is played in it, and the bars around it as before', () => {
    const settings = settingsOf({ feel: 'swing' });
    const drumsIn = (from: number, to: number) =>
      new Set(
        Array.from({ length: 6 }, (_, chorus) => arrangeChorus(form, settings, chorus)).flatMap((events) =>
          events
            .filter((event) => event.part === 'drums' && event.beat >= from && event.beat < to)
            .map(({ midi }) => midi),
        ),
      );
    expect(drumsIn(16, 32)).toContain(drumKeys.shaker);
    expect(drumsIn(0, 16)).not.toContain(drumKeys.shaker);
    expect(drumsIn(32, 48)).not.toContain(drumKeys.shaker);
    const before = (beat: number) => (event: { beat: number }) => event.beat < beat;
    // Up to the last bar before the change, where an early chord is held back.
    expect(arrangeChorus(form, settings, 1).filter(before(12))).toEqual(
      arrangeChorus(plain, settings, 1).filter(before(12)),
    );
  });

  it('has every chord of it struck and every root played, across the change too', () => {
    for (const feel of feelNames) {
      for (const inside of feelNames) {
        const mixed = formOf(`[A]\n${A}\n[B]\nfeel: ${inside}\n${B}`);
        const events = arrangeChorus(mixed, settingsOf({ feel }), 2);
        for (const [i, span] of mixed.spans.entries()) {
          // A chord written again need not begin on its root.
          if (mixed.spans[i - 1]?.chord?.symbol === span.chord!.symbol) continue;
          const under = events.filter(
            (event) => event.beat >= span.startBeat - 0.51 && event.beat < span.endBeat,
          );
          expect(under.some(({ part }) => part === 'chords')).toBe(true);
          const root = under.find((event) => event.part === 'bass' && event.beat > span.startBeat - 1e-6);
          expect(root!.midi % 12).toBe(span.chord!.rootPitchClass);
        }
      }
    }
  });

  it('needs no sound that the kit of the main feel lacks', () => {
    for (const feel of feelNames) {
      const kit = kitPlan.find(({ drums, program }) => drums && program === feels[feel].instruments.drumKit)!;
      for (const inside of feelNames) {
        const mixed = formOf(`[A]\n${A}\n[B]\nfeel: ${inside}\n${B}`);
        for (let chorus = 0; chorus < 4; chorus++) {
          for (const event of arrangeChorus(mixed, settingsOf({ feel }), chorus)) {
            if (event.part !== 'drums') continue;
            expect(kit.keys.some(([from, to]) => event.midi >= from! && event.midi <= to!)).toBe(true);
          }
        }
      }
    }
  });
});

describe('feelOf', () => {
  // Words as lead sheets write them: common practice.
  it('knows the words of lead sheets', () => {
    const known = {
      'Medium Swing': 'swing',
      'Bossa Nova': 'bossa',
      'Slow Blues': 'slow-blues',
      'Straight 8ths': 'straight',
      'Texas shuffle': 'shuffle',
      Ballad: 'ballad',
      'Funk 16ths': 'funk',
      Rock: 'rock',
    };
    for (const [words, feel] of Object.entries(known)) expect(feelOf(words), words).toBe(feel);
    for (const name of feelNames) expect(feelOf(name)).toBe(name);
    expect(feelOf('with feeling')).toBeNull();
  });
});

describe('a pickup', () => {
  const form = formOf('pickup: 1\n| G7 |\n| C6 | Am7 | Dm7 | G7 |');
  const settings = settingsOf();

  it('is played once, on its beat, and the clicks end before it', () => {
    const { events, startBeat } = arrange(form, settings, 2);
    const early = events.filter((event) => event.beat < 0);
    expect(startBeat).toBe(-4);
    expect(early.filter(({ part }) => part === 'click').map(({ beat }) => beat)).toEqual([-4, -3, -2]);
    const played = early.filter(({ part }) => part !== 'click');
    expect(new Set(played.map(({ beat }) => beat))).toEqual(new Set([-1]));
    expect(played.find(({ part }) => part === 'bass')!.midi % 12).toBe(7);
    const tones = played.filter(({ part }) => part === 'chords').map(({ midi }) => midi % 12);
    // Guide tones of G7.
    expect(tones).toEqual(expect.arrayContaining([11, 5]));
    expect(eventsBetween(form, settings, -4, 0).filter((event) => event.beat < 0)).toEqual(early);
  });

  it('is played without a count-in too', () => {
    expect(arrange(form, { ...settings, countInBars: 0 }, 1).startBeat).toBe(-1);
  });
});

describe('compound time', () => {
  // MIDI 1.0: the tempo counts quarters, and 24 clocks are a quarter, so that a dotted one has 36.
  it('stands in the MIDI file as written, at the tempo of its dotted quarters', () => {
    for (const [meter, beats] of [
      ['6/8', 2],
      ['12/8', 4],
    ] as const) {
      const form = formOf(`meter: ${meter}\n| C7 | F7 | C7 | G7 |`);
      const settings = settingsOf({ feel: 'slow-blues', bpm: 60 });
      const arrangement = arrange(form, settings, 2);
      const { header, tracks } = parseMidi(writeBandMidi(arrangement, form, settings));
      const signature = tracks[0]!.find((event) => event.type === 'timeSignature')!;
      expect([signature.numerator, signature.denominator, signature.metronome]).toEqual([beats * 3, 8, 36]);
      const tempo = tracks[0]!.find((event) => event.type === 'setTempo')!;
      expect(tempo.microsecondsPerBeat * 1.5).toBeCloseTo(1e6, -1);
      let tick = 0;
      const markers = tracks[0]!.flatMap((event) => {
        tick += event.deltaTime;
        return event.type === 'marker' && event.text !== 'end' ? [tick] : [];
      });
      const seconds = markers.map((at) => ((at / header.ticksPerBeat!) * tempo.microsecondsPerBeat) / 1e6);
      expect(seconds).toHaveLength(8);
      seconds.forEach((at, bar) => expect(at).toBeCloseTo((bar + 1) * beats, 3));
      expect(header.ticksPerBeat).toBe(ticksPerQuarter);
    }
  });

  it('keeps every feel on its thirds and their halves', () => {
    const form = formOf('meter: 12/8\n| C7 | F7 | C7 | G7 |');
    for (const feel of feelNames) {
      for (const { beat } of arrangeChorus(form, settingsOf({ feel }), 0)) {
        expect(Math.abs(beat * 6 - Math.round(beat * 6)), feel).toBeLessThan(1e-6);
      }
    }
  });
});
