/** A played line as a standard MIDI file: read back by midi-file, an outside reader, and by our own. */
import { english } from '../../../english.ts';
import { parseMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { readMidi } from '../../../../src/core/files/notes/midi.ts';
import { writeLineMidi } from '../../../../src/core/files/notes/write-line-midi.ts';
import { notesPlayed, type PlayedMessage } from '../../../../src/core/midi/played-notes.ts';

const at = (seconds: number, ...bytes: number[]): PlayedMessage => ({ seconds, bytes });
const line = [
  at(0.5, 0xb0, 64, 127),
  at(1.00013, 0x90, 60, 99),
  at(1.25, 0xe0, 0, 0x60),
  at(1.5, 0x90, 60, 0),
  at(61.2345, 0x91, 64, 30),
  at(62, 0x81, 64, 5),
  at(62, 0xf8),
];

describe('a played line as a MIDI file', () => {
  it('is of format 0 and holds every message of a channel at its moment', () => {
    for (const bpm of [40, 97, 280]) {
      const { header, tracks } = parseMidi(writeLineMidi(line, bpm));
      expect(header).toMatchObject({ format: 0, numTracks: 1 });
      const [track] = tracks;
      const tempo = track!.find((event) => event.type === 'setTempo')!;
      const perTick =
        tempo.type === 'setTempo' ? tempo.microsecondsPerBeat / 1e6 / header.ticksPerBeat! : NaN;
      let tick = 0;
      const told = track!.map((event) => {
        tick += event.deltaTime;
        return { type: event.type, seconds: tick * perTick };
      });
      const kinds = ['controller', 'noteOn', 'pitchBend', 'noteOff', 'noteOn', 'noteOff'];
      expect(told.map(({ type }) => type)).toEqual(['setTempo', ...kinds, 'endOfTrack']);
      // Within a tenth of a millisecond after a minute, whatever the tempo.
      line.slice(0, 6).forEach(({ seconds }, i) => {
        expect(Math.abs(told[i + 1]!.seconds - seconds)).toBeLessThan(1e-4);
      });
    }
  });

  it('comes back as the notes that were played', () => {
    const read = readMidi(writeLineMidi(line, 120), 'line.mid');
    const played = notesPlayed(line, 63);
    expect(read.ok && read.value.notes.map(({ midi }) => midi)).toEqual(played.map(({ midi }) => midi));
    if (!read.ok) throw new Error(english(read.problem));
    read.value.notes.forEach(({ onsetSeconds, offsetSeconds }, i) => {
      expect(onsetSeconds).toBeCloseTo(played[i]!.onsetSeconds, 4);
      expect(offsetSeconds).toBeCloseTo(played[i]!.offsetSeconds, 4);
    });
  });
});
