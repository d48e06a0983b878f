/**
 * Six transcribed solos (Weimar Jazz Database, Jazzomat project, Open Database License) written down, against their own
 * bars and beats: the annotated beat times say in which beat of which bar every note was played. The files lie beside the
 * repository while it is developed and are no part of it; without them these checks are skipped. The costs of the
 * quantiser were set on made lines; the first two solos and the openings of the others were looked at while it was written.
 */
import { english } from '../english.ts';
import { needs } from '../needs.ts';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import { quantise } from '../../src/core/notation/quantise.ts';

const folder = fileURLToPath(new URL('../../../shared/solos/', import.meta.url));
const present = existsSync(`${folder}expected.json`);

const rowsOf = (file: string) =>
  readFileSync(folder + file, 'utf8')
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','));

function writeSolo(name: string) {
  const timeline = timelineFromBeats(
    rowsOf(`${name}.beats.csv`).map(([time, chord = '']) => ({ timeSeconds: Number(time), chord })),
  );
  if (!timeline.ok) throw new Error(english(timeline.problem));
  const { beatMap } = timeline.value;
  const notes = rowsOf(`${name}.notes.csv`).map(([onset, duration]) => ({
    beat: beatMap.beatAt(Number(onset)),
    endBeat: beatMap.beatAt(Number(onset) + Number(duration)),
  }));
  return { notes, line: quantise(notes, timeline.value) };
}

/** A note so near to the next beat may be meant for it; so far behind one it may be meant for the one before. */
const NEAR_BEATS = 0.25;

/** Shares of the notes that are written in the beat and in the bar that they were played in. */
function inTheirOwn(name: string) {
  const { notes, line } = writeSolo(name);
  const at = line.onsetTicks.map((ticks) => ticks / line.beatTicks);
  const within = (beats: number) =>
    notes.filter(
      ({ beat }, i) =>
        Math.floor((beat + NEAR_BEATS) / beats) === Math.floor(at[i]! / beats) ||
        Math.floor((beat - NEAR_BEATS) / beats) === Math.floor(at[i]! / beats),
    ).length / notes.length;
  const signs = line.measures.flatMap((measure) => measure.signs);
  return { beat: within(1), bar: within(4), signs: signs.length / notes.length };
}

describe(
  'transcribed solos, written down',
  needs(present, 'The transcribed solos are not there: ../shared/solos.'),
  () => {
    it.each([1, 2, 3, 4, 5, 6].map((n) => `solo-${n}`))('%s stands in its own beats and bars', (name) => {
      const { beat, bar, signs } = inTheirOwn(name);
      expect(beat).toBeGreaterThan(0.995);
      expect(bar).toBeGreaterThan(0.995);
      // A page that hides the line under ties and rests is no use: handbooks' eighths take one sign a note.
      expect(signs).toBeLessThan(1.6);
    });
  },
);
