import { english } from '../../../english.ts';
import { writeMidi, type MidiData, type MidiEvent } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { readMidi } from '../../../../src/core/files/notes/midi.ts';

const read = (bytes: Uint8Array, part: number | null = null) => {
  const outcome = readMidi(bytes, 'line.mid', part);
  if (!outcome.ok) throw new Error(english(outcome.problem));
  return outcome.value;
};
const rows = (bytes: Uint8Array, part: number | null = null) =>
  read(bytes, part).notes.map(({ onsetSeconds, offsetSeconds, midi }) => [onsetSeconds, offsetSeconds, midi]);

const ascii = (text: string) => [...text].map((character) => character.charCodeAt(0));
const chunk = (id: string, body: readonly number[]) => [
  ...ascii(id),
  0,
  0,
  body.length >> 8,
  body.length & 255,
  ...body,
];
const END = [0, 0xff, 0x2f, 0];
const file = (format: number, ticksPerBeat: number, ...tracks: readonly (readonly number[])[]) =>
  Uint8Array.from([
    ...chunk('MThd', [0, format, 0, tracks.length, ticksPerBeat >> 8, ticksPerBeat & 255]),
    ...tracks.flatMap((track) => chunk('MTrk', [...track, ...END])),
  ]);

const written = (format: 0 | 1, ...tracks: MidiEvent[][]) =>
  Uint8Array.from(
    writeMidi({ header: { format, numTracks: tracks.length, ticksPerBeat: 480 }, tracks } satisfies MidiData),
  );
const on = (deltaTime: number, noteNumber: number, channel = 0): MidiEvent => ({
  deltaTime,
  type: 'noteOn',
  channel,
  noteNumber,
  velocity: 90,
});
const off = (deltaTime: number, noteNumber: number, channel = 0): MidiEvent => ({
  deltaTime,
  type: 'noteOff',
  channel,
  noteNumber,
  velocity: 0,
});
const bend = (deltaTime: number, value: number): MidiEvent => ({
  deltaTime,
  type: 'pitchBend',
  channel: 0,
  value,
});
const end: MidiEvent = { deltaTime: 0, type: 'endOfTrack' };

describe('a MIDI file written byte by byte', () => {
  // 96 ticks a beat; 120 a minute until the tempo says 60 at beat 2 (Standard MIDI Files 1.0, from memory).
  const conductor = [0x81, 0x40, 0xff, 0x51, 3, 0x0f, 0x42, 0x40];
  // Running status all through; the second note is ended by a note-on of velocity 0.
  const line = [0, 0x90, 60, 90, 96, 60, 0, 0, 64, 90, 0x81, 0x40, 64, 0];

  it('has its ticks turned into seconds by the tempo of another track', () => {
    expect(rows(file(1, 96, conductor, line))).toEqual([
      [0, 0.5, 60],
      // Beat 1 to 3: half a second at 120, a second at 60.
      [0.5, 2, 64],
    ]);
  });

  it('may have SMPTE time: 25 frames of 40 ticks are milliseconds', () => {
    const bytes = file(0, ((256 - 25) << 8) | 40, [0, 0x90, 60, 90, 0x87, 0x68, 60, 0]);
    expect(rows(bytes)).toEqual([[0, 1, 60]]);
  });

  it('may have chunks of others between the tracks', () => {
    const plain = file(0, 96, line);
    const bytes = Uint8Array.from([
      ...plain.subarray(0, 14),
      ...chunk('XFIH', [1, 2, 3]),
      ...plain.subarray(14),
    ]);
    expect(rows(bytes)).toEqual(rows(plain));
  });

  it('that is cut short gives what is there and says so', () => {
    const cut = read(file(0, 96, line).subarray(0, -8));
    expect(cut.notes).toHaveLength(2);
    expect(cut.warnings.map(english)).toEqual([expect.stringMatching(/cut short/)]);
  });

  it.each([
    ['no notes', file(0, 96, [0, 0xc0, 5]), /no notes/],
    ['only percussion', file(0, 96, [0, 0x99, 36, 90, 96, 36, 0]), /percussion/],
    ['format 2', file(2, 96, line), /format 2/],
    ['a division of 0', file(0, 0, line), /damaged/],
    ['a header alone', Uint8Array.from(ascii('MThd')), /damaged/],
  ])('with %s gets its sentence', (_, bytes, reason) => {
    const outcome = readMidi(bytes, 'line.mid');
    expect(outcome.ok ? 'was read' : english(outcome.problem)).toMatch(reason);
  });
});

describe("a MIDI file by midi-file's own writer", () => {
  it('keeps overlapping notes of one key and of two', () => {
    const bytes = written(0, [
      on(0, 60),
      on(240, 64),
      off(240, 60),
      on(0, 60),
      on(240, 60),
      off(240, 60),
      off(480, 60),
      off(0, 64),
      end,
    ]);
    expect(rows(bytes)).toEqual([
      [0, 0.5, 60],
      [0.25, 1.5, 64],
      [0.5, 1, 60],
      [0.75, 1.5, 60],
    ]);
  });

  it('hears a bend where it arrives, a vibrato at its centre, and a bend that was there before', () => {
    const bytes = written(0, [
      on(0, 60),
      bend(48, 4096),
      bend(48, 8191),
      off(864, 60),
      bend(0, 0),
      on(0, 60),
      ...Array.from({ length: 19 }, (_, k) => bend(48, [0, 500, 0, -500][k % 4]!)),
      off(48, 60),
      bend(0, 2048),
      on(0, 60),
      off(480, 60),
      end,
    ]);
    const { notes } = read(bytes);
    expect(notes.map(({ midi }) => Math.round(midi * 100) / 100)).toEqual([62, 60, 60.5]);
    expect(notes.map(({ bendSemitones }) => Math.round(bendSemitones))).toEqual([2, 0, 0]);
  });

  it('of notes that sound on through more bends than can be gone through is refused', () => {
    // A thousand notes of one key that never end, then ten thousand bends: ten million steps, out of 70 kB.
    const bytes = written(0, [
      ...Array.from({ length: 1000 }, () => on(0, 60)),
      ...Array.from({ length: 10_000 }, (_, k) => bend(1, k % 8000)),
      end,
    ]);
    const refused = readMidi(bytes, 'line.mid');
    expect(refused.ok ? '' : english(refused.problem)).toMatch(/line\.mid.*5000000 pitch bends.*never ended/);
  });

  it('names its tracks by UTF-8 or by one byte a letter, and by their place where nothing can be read', () => {
    // The standard leaves open how texts are written (Standard MIDI Files 1.0, from memory).
    const named = (...letters: number[]): MidiEvent => ({
      deltaTime: 0,
      type: 'trackName',
      text: String.fromCharCode(...letters),
    });
    const titles = (name: MidiEvent) =>
      read(written(1, [name, on(0, 60), off(480, 60), end], [on(0, 60), end]))
        .warnings.map(english)
        .join();
    expect(titles(named(...new TextEncoder().encode('Flöte ♭')))).toContain('"Flöte ♭" (track 1)');
    expect(titles(named(...[...'Fl\u00f6te'].map((letter) => letter.charCodeAt(0))))).toContain('"Flöte"');
    expect(titles(named(0, 0, 32))).toContain('notes; track 1 was taken');
  });

  it('takes the bend range that the file sets', () => {
    const control = (controllerType: number, value: number): MidiEvent => ({
      deltaTime: 0,
      type: 'controller',
      channel: 0,
      controllerType,
      value,
    });
    const bytes = written(0, [
      control(101, 0),
      control(100, 0),
      control(6, 12),
      bend(0, 4096),
      on(0, 60),
      off(480, 60),
      end,
    ]);
    expect(rows(bytes)[0]![2]).toBeCloseTo(66, 9);
  });

  it('takes the line with most notes, and says so; another on request', () => {
    const chords = [0, 480, 480].flatMap((deltaTime) => [
      ...[48, 52, 55].map((key, k) => on(k === 0 ? deltaTime : 0, key)),
      ...[48, 52, 55].map((key, k) => off(k === 0 ? 480 : 0, key)),
    ]);
    const line = [62, 64, 65, 67].flatMap((key) => [on(0, key), off(240, key)]);
    const drums = Array.from({ length: 20 }, () => [on(0, 42, 9), off(120, 42, 9)]).flat();
    const name: MidiEvent = { deltaTime: 0, type: 'trackName', text: 'Tenor' };
    const bytes = written(1, [...chords, end], [name, ...line, end], [...drums, end]);
    const chosen = read(bytes);
    expect(chosen.notes.map(({ midi }) => midi)).toEqual([62, 64, 65, 67]);
    expect(chosen.warnings.map(english)).toEqual([
      expect.stringMatching(/2 parts.*"Tenor" \(track 2\).*part 2/),
    ]);
    expect(read(bytes, 1).notes).toHaveLength(9);
    expect(readMidi(bytes, 'line.mid', 3)).toMatchObject({ ok: false });
  });

  it('takes six channels of one program as one instrument, and of several as several', () => {
    const strings = [0, 1, 2, 3].flatMap((channel) => [
      on(0, 60 + channel, channel),
      off(240, 60 + channel, channel),
    ]);
    const program = (channel: number, programNumber: number): MidiEvent => ({
      deltaTime: 0,
      type: 'programChange',
      channel,
      programNumber,
    });
    expect(read(written(0, [...strings, end])).notes).toHaveLength(4);
    expect(read(written(0, [program(0, 25), program(1, 25), ...strings, end])).notes).toHaveLength(4);
    expect(read(written(0, [program(0, 25), program(1, 33), ...strings, end])).notes).toHaveLength(1);
  });
});
