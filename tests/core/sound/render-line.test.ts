/** The pitch of rendered lines, measured with pitchfinder's YIN (de Cheveigné & Kawahara 2002), which this project does not ship. */
import { YIN } from 'pitchfinder';
import { beforeAll, describe, expect, it } from 'vitest';
import { demoProgram, demoSettings, demoStrokes } from '../../../src/core/band/demo-line.ts';
import type { Stroke } from '../../../src/core/band/line.ts';
import { renderLine } from '../../../src/core/sound/render-line.ts';
import type { Synth } from '../../../src/core/sound/synth.ts';
import { kitSynth } from './kit-file.ts';

/** A note of the line as a listener should name it. */
interface LineNote {
  readonly beat: number;
  readonly durationBeats: number;
  readonly midi: number;
}

/**
 * The notes of a line by the trade's own count: a bend is the pitch it arrives at; a slide, a hammer-on and a
 * pull-off end one note and begin another; a release goes back to a note that is heard again.
 */
function lineNotes(strokes: readonly Stroke[]): readonly LineNote[] {
  return strokes.flatMap((stroke) => {
    const notes: { beat: number; midi: number }[] = [{ beat: stroke.beat, midi: stroke.midi }];
    for (const move of stroke.moves ?? []) {
      if (move.kind === 'bend') notes.at(-1)!.midi = move.midi;
      else notes.push({ beat: stroke.beat + move.afterBeats, midi: move.midi });
    }
    const end = stroke.beat + stroke.durationBeats;
    return notes.map((note, i) => ({ ...note, durationBeats: (notes[i + 1]?.beat ?? end) - note.beat }));
  });
}

const sampleRate = 48_000;
const detect = YIN({ sampleRate, threshold: 0.1 });
let synth: Synth;
beforeAll(async () => {
  synth = await kitSynth(sampleRate);
});

/** MIDI number heard at a moment, or NaN. */
function heardMidi(sound: Float32Array, seconds: number): number {
  const window = sound.slice(Math.round(seconds * sampleRate), Math.round(seconds * sampleRate) + 2400);
  // pitchfinder's YIN goes astray on quiet sound, so the window is brought to full scale.
  const peak = window.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  const hz = detect(window.map((sample) => sample / peak));
  return hz === null ? NaN : 69 + 12 * Math.log2(hz / 440);
}

const stroke = (changes: Partial<Stroke>): Stroke => ({
  beat: 0,
  durationBeats: 2,
  midi: 64,
  velocity: 100,
  ...changes,
});
const render = (...strokes: Stroke[]) => renderLine(synth, strokes, demoProgram, { bpm: 60, startBeat: 0 });

describe('renderLine', () => {
  it('starts at the struck pitch and arrives where each move goes', () => {
    for (const [kind, midi] of [
      ['bend', 66],
      ['slide', 69],
      ['hammer', 67],
      ['pull', 62],
    ] as const) {
      const sound = render(stroke({ moves: [{ afterBeats: 0.5, kind, midi }] }));
      expect(Math.abs(heardMidi(sound, 0.3) - 64), `${kind} before`).toBeLessThan(0.15);
      expect(Math.abs(heardMidi(sound, 0.9) - midi), `${kind} after`).toBeLessThan(0.15);
    }
  });

  it('bends smoothly and slides by frets', () => {
    const bent = render(stroke({ moves: [{ afterBeats: 0.5, kind: 'bend', midi: 66 }] }));
    const halfway = heardMidi(bent, 0.54);
    expect(halfway).toBeGreaterThan(64.2);
    expect(halfway).toBeLessThan(65.8);
  });

  it('refuses a move past the wheel', () => {
    expect(() => render(stroke({ moves: [{ afterBeats: 0.5, kind: 'slide', midi: 80 }] }))).toThrow(
      'at most 12',
    );
  });

  it('plays the demo line: in nearly every note that has time to be measured, the pitch the line says', () => {
    const beatSeconds = 60 / demoSettings.bpm;
    const sound = renderLine(synth, demoStrokes, demoProgram, { bpm: demoSettings.bpm, startBeat: 0 });
    const long = lineNotes(demoStrokes).filter((note) => note.durationBeats * beatSeconds > 0.3);
    expect(long.length).toBeGreaterThan(40);
    const right = long.filter((note) => {
      const middle = (note.beat + note.durationBeats) * beatSeconds - 0.1;
      return Math.abs(heardMidi(sound, middle) - note.midi) < 0.5;
    });
    expect(right.length / long.length).toBeGreaterThan(0.9);
  });
});
