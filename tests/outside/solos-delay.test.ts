/**
 * Six transcribed solos (Weimar Jazz Database, Jazzomat project, Open Database License): as they were played no wrong
 * delay may be suspected, and moved by 80 ms it must be. The files lie beside the repository while it is developed and
 * are no part of it; without them these checks are skipped.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { needs } from '../needs.ts';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import { grade } from '../../src/core/grade.ts';
import { line, SETTINGS } from '../core/grade/line.ts';

const folder = fileURLToPath(new URL('../../../shared/solos/', import.meta.url));
const present = existsSync(`${folder}solo-1.notes.csv`);

const rowsOf = (file: string) =>
  readFileSync(folder + file, 'utf8')
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((row) => row.split(','));

function suspectedOf(solo: number, shiftSeconds: number) {
  const beats = rowsOf(`solo-${solo}.beats.csv`).map(([time, chord = '']) => ({
    timeSeconds: Number(time),
    chord,
  }));
  const timeline = timelineFromBeats(beats);
  if (!timeline.ok) throw new Error(timeline.problem.code);
  // At 60 bpm a beat is a second: the rows are the line.
  const notes = rowsOf(`solo-${solo}.notes.csv`).map((row): [number, number, number] => {
    const [onset, duration, midi] = row.map(Number) as [number, number, number];
    return [onset + shiftSeconds, duration, midi];
  });
  return grade(line(notes, 60), timeline.value, SETTINGS).suspectedDelay;
}

// Their eighths last 150 to 205 ms (146 to 197 bpm), and they play up to 60 ms behind the beat by themselves.
describe(
  'the delay of transcribed solos',
  needs(present, 'The transcribed solos are not there: ../shared/solos.'),
  () => {
    it.each([1, 2, 3, 4, 5, 6])('solo %i is not suspected as it was played', (solo) => {
      expect(suspectedOf(solo, 0)).toBeNull();
    });

    it.each([2, 3, 4, 5, 6])('solo %i is suspected when it is moved by 80 ms', (solo) => {
      expect(suspectedOf(solo, 0.08)).not.toBeNull();
    });

    it('solo 1 can not be: 60 ms late by himself and 80 ms more is 40 ms early for the next eighth', () => {
      expect(suspectedOf(1, 0.08)).toBeNull();
    });
  },
);
