/**
 * Six transcribed solos with their changes (Weimar Jazz Database, Jazzomat project, Open Database License), whose
 * chord tones and thirds were counted independently of this code. The files lie beside the repository while it is
 * developed and are no part of it; without them these checks are skipped.
 */
import { english } from '../english.ts';
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { needs } from '../needs.ts';
import { chordOfNote } from '../../src/core/grade/assign/attribute.ts';
import { timelineFromBeats } from '../../src/core/chart/build-timeline.ts';
import { wrapPitchClass } from '../../src/core/music/spelling.ts';

const folder = fileURLToPath(new URL('../../../shared/solos/', import.meta.url));
const present = existsSync(`${folder}expected.json`);

interface Count {
  readonly notes: number;
  readonly chordTones: number;
  readonly thirds: number;
}

const rowsOf = (file: string) =>
  readFileSync(folder + file, 'utf8')
    .trim()
    .split(/\r?\n/)
    .slice(1)
    .map((line) => line.split(','));

function countSolo(name: string, anticipationBeats: number): Count {
  const beats = rowsOf(`${name}.beats.csv`).map(([time, chord = '']) => ({
    timeSeconds: Number(time),
    chord,
  }));
  const timeline = timelineFromBeats(beats);
  if (!timeline.ok) throw new Error(english(timeline.problem));
  const count = { notes: 0, chordTones: 0, thirds: 0 };
  for (const [onset, duration, pitch] of rowsOf(`${name}.notes.csv`)) {
    const onsetSeconds = Number(onset);
    const note = { onsetSeconds, offsetSeconds: onsetSeconds + Number(duration), midi: Number(pitch) };
    const { chord } = chordOfNote(note, timeline.value, anticipationBeats);
    if (!chord) continue;
    count.notes++;
    const tone = chord.tones.find((held) => held.pitchClass === wrapPitchClass(note.midi));
    if (tone) count.chordTones++;
    if (tone?.role === 'third') count.thirds++;
  }
  return count;
}

describe(
  'transcribed solos, counted independently',
  needs(present, 'The transcribed solos are not there: ../shared/solos.'),
  () => {
    const expected = present
      ? (JSON.parse(readFileSync(`${folder}expected.json`, 'utf8')) as Record<string, Record<string, Count>>)
      : {};
    // So that what is skipped is listed.
    if (!present) it('every solo', () => undefined);
    for (const [name, counts] of Object.entries(expected)) {
      for (const [setting, count] of Object.entries(counts)) {
        it(`${name}, ${setting}`, () => {
          expect(countSolo(name, Number(setting.replace('anticipation ', '')))).toEqual(count);
        });
      }
    }
  },
);
