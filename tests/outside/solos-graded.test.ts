/**
 * Six transcribed solos with their changes (Weimar Jazz Database, Jazzomat project, Open Database License) through the
 * whole grading, against counts made independently of this code. The files lie beside the repository while it is
 * developed and are no part of it; without them these checks are skipped.
 */
import { english } from '../english.ts';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { needs } from '../needs.ts';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import { grade } from '../../src/core/grade.ts';
import { line, SETTINGS } from '../core/grade/line.ts';

const folder = fileURLToPath(new URL('../../../shared/solos/', import.meta.url));
const present = existsSync(`${folder}expected.json`);

type Counts = Record<
  string,
  { readonly notes: number; readonly chordTones: number; readonly thirds: number }
>;

const rowsOf = (file: string) =>
  readFileSync(folder + file, 'utf8')
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((row) => row.split(','));

function gradeSolo(name: string, anticipationBeats: number) {
  const beats = rowsOf(`${name}.beats.csv`).map(([time, chord = '']) => ({
    timeSeconds: Number(time),
    chord,
  }));
  const timeline = timelineFromBeats(beats);
  if (!timeline.ok) throw new Error(english(timeline.problem));
  // At 60 bpm a beat is a second: the rows are the line.
  const notes = line(
    rowsOf(`${name}.notes.csv`).map((row) => row.map(Number) as [number, number, number]),
    60,
  );
  return grade(notes, timeline.value, { ...SETTINGS, anticipationBeats });
}

describe(
  'transcribed solos through the whole grading',
  needs(present, 'The transcribed solos are not there: ../shared/solos.'),
  () => {
    const expected = present
      ? (JSON.parse(readFileSync(`${folder}expected.json`, 'utf8')) as Record<string, Counts>)
      : {};
    // So that what is skipped is listed.
    if (!present) it('every solo', () => undefined);
    const cases = Object.entries(expected).flatMap(([name, counts]) =>
      Object.entries(counts).map(([setting, count]) => [name, setting, count] as const),
    );
    it.each(cases)('%s, %s', (name, setting, { notes, chordTones, thirds }) => {
      const { summary, shares } = gradeSolo(name, Number(setting.replace('anticipation ', '')));
      expect(summary.notes).toBe(notes);
      expect(shares.allNotes.chordTones.hits).toBe(chordTones);
      expect(shares.allNotes.thirds.hits).toBe(thirds);
      expect(summary.chordToneShare).toBeCloseTo(chordTones / notes, 8);
      expect(summary.thirdShare).toBeCloseTo(thirds / notes, 8);
    });
  },
);
