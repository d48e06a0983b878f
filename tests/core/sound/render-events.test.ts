import { beforeAll, describe, expect, it } from 'vitest';
import type { BandEvent } from '../../../src/core/band/events.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { feels } from '../../../src/core/band/feels/table.ts';
import { renderEvents } from '../../../src/core/sound/render-events.ts';
import type { Stereo } from '../../../src/core/sound/stereo.ts';
import { renderBand } from '../../../src/core/sound/render-job.ts';
import type { Synth } from '../../../src/core/sound/synth.ts';
import { formOf, settingsOf } from '../band/forms.ts';
import { kitSynth } from './kit-file.ts';
import { mixDown } from './mix-down.ts';

const sampleRate = 48_000;
const { instruments } = feels.swing;
let synth: Synth;
beforeAll(async () => {
  synth = await kitSynth(sampleRate);
});

/** First frame at or after `from` where the sound passes a tenth of the peak that follows within 20 ms. */
function onsetFrame([left]: Stereo, around: number): number {
  const from = Math.max(0, around);
  const span = Math.round(0.02 * sampleRate);
  const peak = left.subarray(from, from + span).reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  return left.findIndex((sample, i) => i >= from && Math.abs(sample) >= peak / 10);
}

const hit = (beat: number, part: BandEvent['part'], midi: number): BandEvent => ({
  beat,
  durationBeats: 0.2,
  part,
  midi,
  velocity: 100,
});

describe('renderEvents', () => {
  it('puts every event within a tenth of a millisecond of the grid', () => {
    const bpm = 137.3;
    const framesPerBeat = (60 / bpm) * sampleRate;
    // A side stick rings for less than a beat, so each onset starts out of silence.
    for (const [part, midi] of [
      ['drums', 37],
      ['click', 76],
      ['bass', 40],
    ] as const) {
      const beats = [0, 1.5, 3 + 1 / 3, 5.25, 8, 31.75, 63];
      const sound = renderEvents(
        synth,
        beats.map((beat) => hit(beat, part, midi)),
        instruments,
        { bpm, startBeat: 0, endBeat: 64 },
      );
      const stem = sound.stems[part]!;
      const attack = onsetFrame(stem, 0);
      for (const beat of beats) {
        const due = beat * framesPerBeat;
        const errorMs = ((onsetFrame(stem, Math.round(due) - 40) - attack - due) / sampleRate) * 1000;
        expect(Math.abs(errorMs), `${part} at ${beat}`).toBeLessThan(0.1);
      }
    }
  });

  it('renders the same samples each time', () => {
    const job = {
      form: formOf('form:12-bar blues in D'),
      settings: settingsOf({ feel: 'shuffle' }),
      startBeat: 0,
      endBeat: 8,
    };
    const [once, twice] = [renderBand(synth, job), renderBand(synth, job)];
    for (const [part, stem] of Object.entries(once.stems)) {
      const other = twice.stems[part as 'bass']!;
      stem.forEach((side, i) => expect(side.every((sample, n) => sample === other[i]![n])).toBe(true));
    }
  });

  it('sounds in stretches like in one piece: no step over -60 dBFS at a seam', () => {
    for (const feel of feelNames) {
      const form = formOf('form:12-bar blues in D');
      const settings = settingsOf({ feel, bpm: 120 });
      const render = (startBeat: number, endBeat: number) =>
        renderBand(synth, { form, settings, startBeat, endBeat });
      const cuts = [-4, 0, 8, 12];
      const whole = mixDown([render(-4, 12)], -4);
      const pieces = mixDown(
        cuts.slice(1).map((to, i) => render(cuts[i]!, to)),
        -4,
      );
      for (const beat of [0, 8]) {
        const seam = Math.round((beat + 4) * 0.5 * sampleRate);
        let step = 0;
        for (let frame = seam - 64; frame < seam + 64; frame++) {
          for (const side of [0, 1] as const) {
            const difference = (at: number) => pieces[side][at]! - whole[side][at]!;
            step = Math.max(step, Math.abs(difference(frame) - difference(frame - 1)));
          }
        }
        expect(20 * Math.log10(step + 1e-12), `${feel} at beat ${beat}`).toBeLessThan(-60);
      }
    }
  });

  it('ends every stem in silence, and clips nowhere', () => {
    for (const feel of feelNames) {
      const sound = renderBand(synth, {
        form: formOf('form:jazz blues in Bb'),
        settings: settingsOf({ feel, bpm: 132 }),
        startBeat: 0,
        endBeat: 16,
      });
      for (const [left, right] of Object.values(sound.stems)) {
        expect(Math.abs(left.at(-1)!)).toBeLessThan(1e-3);
        expect(Math.abs(right.at(-1)!)).toBeLessThan(1e-3);
      }
      const peak = Math.max(
        ...mixDown([sound], 0).map((side) => side.reduce((most, v) => Math.max(most, Math.abs(v)), 0)),
      );
      expect(peak, feel).toBeGreaterThan(0.1);
      expect(peak, feel).toBeLessThan(0.99);
    }
  });
});
