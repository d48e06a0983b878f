/** Files from outside, damaged at random: none makes its reader throw or stop for longer than a second. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { writeMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { readChartFile } from '../../src/core/files/charts/read-chart-file.ts';
import { readMidi } from '../../src/core/files/notes/midi.ts';
import { readTakeFile } from '../../src/core/take-file/read-take-file.ts';
import { readAudio } from '../core/files/collect.ts';
import { fileOf, madeTake } from '../core/take-file/made-take.ts';
import { damagedBytes, expectSentences, fuzz, fuzzAsync } from './fuzz.ts';

const fixture = (name: string, most: number) =>
  new Uint8Array(readFileSync(new URL(`../../fixtures/audio/${name}`, import.meta.url)).subarray(0, most));

const MIDI = Uint8Array.from(
  writeMidi({
    header: { format: 1, numTracks: 2, ticksPerBeat: 96 },
    tracks: [
      [
        { deltaTime: 0, type: 'setTempo', microsecondsPerBeat: 500_000 },
        {
          deltaTime: 0,
          type: 'timeSignature',
          numerator: 4,
          denominator: 4,
          metronome: 24,
          thirtyseconds: 8,
        },
        { deltaTime: 0, type: 'keySignature', key: -3, scale: 1 },
        { deltaTime: 0, type: 'marker', text: 'C7' },
        { deltaTime: 384, type: 'marker', text: 'F7' },
        { deltaTime: 384, type: 'endOfTrack' },
      ],
      [
        { deltaTime: 0, type: 'trackName', text: 'Line' },
        { deltaTime: 0, type: 'noteOn', channel: 0, noteNumber: 60, velocity: 80 },
        { deltaTime: 24, type: 'pitchBend', channel: 0, value: 4096 },
        { deltaTime: 24, type: 'noteOff', channel: 0, noteNumber: 60, velocity: 0 },
        { deltaTime: 0, type: 'noteOn', channel: 0, noteNumber: 64, velocity: 80 },
        { deltaTime: 48, type: 'noteOff', channel: 0, noteNumber: 64, velocity: 0 },
        { deltaTime: 0, type: 'endOfTrack' },
      ],
    ],
  }),
);

describe('files from outside', { timeout: 300_000 }, () => {
  it('MIDI, as a line and as a chart', () => {
    fuzz(damagedBytes(MIDI), (bytes) => {
      const line = readMidi(bytes, 'line.mid');
      expectSentences(line);
      if (line.ok)
        for (const { onsetSeconds, offsetSeconds, midi } of line.value.notes) {
          expect(offsetSeconds).toBeGreaterThanOrEqual(onsetSeconds);
          expect(Number.isFinite(midi)).toBe(true);
        }
      expectSentences(readChartFile(bytes, 'chart.mid'));
    });
  });

  it('compressed MusicXML', () => {
    const score =
      '<score-partwise><part id="P"><measure number="1"><harmony><root><root-step>C</root-step></root><kind>major</kind></harmony></measure></part></score-partwise>';
    const archive = zipSync({
      'META-INF/container.xml': strToU8(
        '<container><rootfiles><rootfile full-path="a.xml"/></rootfiles></container>',
      ),
      'a.xml': strToU8(score),
    });
    fuzz(damagedBytes(archive), (bytes) => {
      expectSentences(readChartFile(bytes, 'chart.mxl'));
    });
  });

  it.each([
    ['wav', 's24-stereo-extensible.wav', 1500, 10_000],
    ['wav of floats', 'f32.wav', 1500, 5000],
    // A case takes a millisecond and more: the decoders work on whole frames.
    ['flac', 'pluck.flac', 3000, 3000],
    ['ogg', 'pluck.ogg', 4200, 2000],
    ['mp3', 'pluck.mp3', 1500, 2000],
  ])('recordings: %s', async (_, name, length, runs) => {
    await fuzzAsync(
      fc.oneof(
        { weight: 9, arbitrary: damagedBytes(fixture(name, length)) },
        { weight: 1, arbitrary: fc.uint8Array({ maxLength: 300 }) },
      ),
      async (bytes) => {
        const read = await readAudio('take', bytes);
        if (typeof read === 'string') expect(read).toMatch(/^take.*\.$/s);
        else expect(read.samples.every((sample) => Number.isFinite(sample))).toBe(true);
      },
      runs,
    );
  });

  it('takes', async () => {
    const file = fileOf(madeTake());
    await fuzzAsync(
      damagedBytes(file),
      async (bytes) => {
        expectSentences(await readTakeFile(bytesInMemory('take.landfall', bytes)));
      },
      // A case takes five milliseconds where the sound is unpacked; two hundred more are made by hand in hostile.test.ts.
      400,
    );
  });
});
