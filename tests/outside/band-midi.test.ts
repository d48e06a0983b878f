/** The band's MIDI files, read back by midi-file and, where it is installed, played by fluidsynth. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { isInstalled, needs } from '../needs.ts';
import { arrange } from '../../src/core/band/arrange.ts';
import { feelNames } from '../../src/core/chart/feel-names.ts';
import { ticksPerQuarter, writeBandMidi } from '../../src/core/band/write-midi.ts';
import { formOf, settingsOf } from '../core/band/forms.ts';
import { kitPath } from '../core/sound/kit-file.ts';

const form = formOf('| Dm7 | G7 | Cmaj7 | N.C. |');

/** Notes of a file with their places in beats, by the reader's own count. */
function notesIn(bytes: Uint8Array) {
  const { tracks } = parseMidi(bytes);
  return tracks.flatMap((track) => {
    let tick = 0;
    return track.flatMap((event) => {
      tick += event.deltaTime;
      return event.type === 'noteOn'
        ? [
            {
              beat: tick / ticksPerQuarter,
              midi: event.noteNumber,
              velocity: event.velocity,
              channel: event.channel,
            },
          ]
        : [];
    });
  });
}

describe('band MIDI', () => {
  it('holds every event of the arrangement, within half a tick, and nothing else', () => {
    for (const feel of feelNames) {
      const settings = settingsOf({ feel, bpm: 90 });
      const arrangement = arrange(form, settings, 3, true);
      const sort = (notes: readonly { beat: number; midi: number; velocity: number }[]) =>
        notes.toSorted((a, b) => a.beat - b.beat || a.midi - b.midi || a.velocity - b.velocity);
      const read = sort(notesIn(writeBandMidi(arrangement, form, settings)));
      const written = sort(
        arrangement.events.map((event) => ({
          ...event,
          beat: Math.round((event.beat - arrangement.startBeat) * ticksPerQuarter) / ticksPerQuarter,
        })),
      );
      expect(read.map(({ beat, midi, velocity }) => [beat, midi, velocity])).toEqual(
        written.map(({ beat, midi, velocity }) => [beat, midi, velocity]),
      );
    }
  });

  it('says tempo, meter, and the chords of every chorus', () => {
    const settings = settingsOf({ bpm: 90 });
    const { tracks } = parseMidi(writeBandMidi(arrange(form, settings, 2), form, settings));
    const first = tracks[0]!;
    expect(first.find((event) => event.type === 'setTempo')?.microsecondsPerBeat).toBe(666_667);
    expect(first.find((event) => event.type === 'timeSignature')?.numerator).toBe(4);
    const chords = first.flatMap((event) => (event.type === 'marker' ? [event.text] : []));
    expect(chords).toEqual(['Dm7', 'G7', 'Cmaj7', 'N.C.', 'Dm7', 'G7', 'Cmaj7', 'N.C.', 'end']);
  });

  it('names the chords of each chorus once, and none for the ending, though a chorus be as short as it', () => {
    const bar = formOf('| G7 |');
    const settings = settingsOf({ bpm: 90 });
    const { tracks } = parseMidi(writeBandMidi(arrange(bar, settings, 3, true), bar, settings));
    const chords = tracks[0]!.flatMap((event) => (event.type === 'marker' ? [event.text] : []));
    expect(chords).toEqual(['G7', 'G7', 'G7', 'end']);
  });

  it('says where a rising tempo rises', () => {
    const settings = settingsOf({ bpm: 100, rise: { byBpm: 20, everyBars: 8 } });
    const { tracks } = parseMidi(writeBandMidi(arrange(form, settings, 5, true), form, settings));
    let tick = 0;
    const tempos = tracks[0]!.flatMap((event) => {
      tick += event.deltaTime;
      return event.type === 'setTempo' ? [[tick / ticksPerQuarter, event.microsecondsPerBeat]] : [];
    });
    // A bar of count-in, then eight bars of four at each tempo.
    expect(tempos).toEqual([
      [0, 600_000],
      [36, 500_000],
      [68, 428_571],
    ]);
  });

  it('releases what it strikes', () => {
    const settings = settingsOf({ feel: 'swing' });
    for (const track of parseMidi(writeBandMidi(arrange(form, settings, 4, true), form, settings)).tracks) {
      const held = new Map<number, number>();
      for (const event of track) {
        if (event.type === 'noteOn') held.set(event.noteNumber, (held.get(event.noteNumber) ?? 0) + 1);
        if (event.type === 'noteOff') held.set(event.noteNumber, (held.get(event.noteNumber) ?? 0) - 1);
      }
      expect([...held.values()].every((count) => count === 0)).toBe(true);
    }
  });

  const needsFluidsynth = needs(isInstalled('fluidsynth'), 'fluidsynth is not installed.');
  it('is played by fluidsynth for as long as it says', needsFluidsynth, () => {
    const folder = mkdtempSync(join(tmpdir(), 'band-midi-'));
    try {
      const settings = settingsOf({ feel: 'shuffle', bpm: 120 });
      const file = join(folder, 'band.mid');
      const wav = join(folder, 'band.wav');
      writeFileSync(file, writeBandMidi(arrange(form, settings, 1), form, settings));
      execFileSync('fluidsynth', ['-ni', '-q', '-r', '44100', '-F', wav, '-T', 'wav', kitPath, file], {
        stdio: 'pipe',
      });
      const seconds = (readFileSync(wav).length - 44) / 4 / 44_100;
      // Four beats of count-in and sixteen of music at two a second, and what rings on.
      expect(seconds).toBeGreaterThan(9.5);
      expect(seconds).toBeLessThan(16);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
