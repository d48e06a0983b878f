/** The line of a take as a standard MIDI file: read back by midi-file's parser, and by our own reader. */
import { english } from '../../../english.ts';
import { parseMidi, type MidiData } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { timelineFromTempo, timelineOnBeats } from '../../../../src/core/chart/build-timeline.ts';
import { roundBeatMap } from '../../../../src/core/chart/beat-maps.ts';
import { parseChart } from '../../../../src/core/chart/parse-chart.ts';
import { readChordMarkers } from '../../../../src/core/files/charts/read-chord-markers.ts';
import { readMidi } from '../../../../src/core/files/notes/midi.ts';
import { writeTakeMidi } from '../../../../src/core/files/notes/write-take-midi.ts';
import { notesPlayed, type PlayedMessage } from '../../../../src/core/midi/played-notes.ts';

const at = (seconds: number, ...bytes: number[]): PlayedMessage => ({ seconds, bytes });
const messages = [
  at(0.5, 0xb0, 64, 127),
  at(1.00013, 0x90, 60, 99),
  at(1.25, 0xe0, 0, 0x60),
  at(1.5, 0x90, 60, 0),
  at(61.2345, 0x91, 64, 30),
  at(62, 0x81, 64, 5),
  at(62, 0xf8),
];
const played = { messages, notes: [], durationSeconds: 63, title: 'Blues in Ä' };

const chartOf = (text: string) => {
  const chart = parseChart(text);
  if (!chart.ok) throw new Error(english(chart.problem));
  return chart.value;
};
const blues = chartOf('| A7 | D7 | A7 | E7 |');
const timeline = (bpm: number, firstBeatSeconds = 2) => timelineFromTempo(blues, { bpm, firstBeatSeconds });

/** Every event with its time, by the tempos in the file: computed here from the standard, not by our reader. */
function timesIn({ header, tracks }: MidiData) {
  const placed = tracks.map((track) => {
    let tick = 0;
    return track.map((event) => ({ tick: (tick += event.deltaTime), event }));
  });
  const tempos = placed
    .flat()
    .flatMap(({ tick, event }) =>
      event.type === 'setTempo'
        ? [{ tick, perTick: event.microsecondsPerBeat / 1e6 / header.ticksPerBeat! }]
        : [],
    );
  const secondsAt = (tick: number) =>
    tempos.reduce((sum, { tick: from, perTick }, i) => {
      const to = Math.min(tick, tempos[i + 1]?.tick ?? Infinity);
      return to > from ? sum + (to - from) * perTick : sum;
    }, 0);
  return placed.map((track) => track.map(({ tick, event }) => ({ tick, seconds: secondsAt(tick), event })));
}

describe('a line played by MIDI', () => {
  it('holds every message of a channel at its moment', () => {
    for (const bpm of [40, 97, 280]) {
      const data = parseMidi(writeTakeMidi(played, timeline(bpm)));
      expect(data.header).toMatchObject({ format: 1, numTracks: 2 });
      const told = timesIn(data)[1]!.filter(({ event }) => event.type !== 'endOfTrack');
      const kinds = ['controller', 'noteOn', 'pitchBend', 'noteOff', 'noteOn', 'noteOff'];
      expect(told.map(({ event }) => event.type)).toEqual(['trackName', ...kinds]);
      // Within a tenth of a millisecond after a minute, whatever the tempo.
      messages.slice(0, 6).forEach(({ seconds }, i) => {
        expect(Math.abs(told[i + 1]!.seconds - seconds)).toBeLessThan(1e-4);
      });
    }
  });

  it('comes back as the notes that were played', () => {
    const read = readMidi(writeTakeMidi(played, timeline(120)), 'line.mid');
    if (!read.ok) throw new Error(english(read.problem));
    const notes = notesPlayed(messages, 63);
    expect(read.value.notes.map(({ midi }) => midi)).toEqual(notes.map(({ midi }) => midi));
    read.value.notes.forEach(({ onsetSeconds, offsetSeconds }, i) => {
      expect(onsetSeconds).toBeCloseTo(notes[i]!.onsetSeconds, 4);
      expect(offsetSeconds).toBeCloseTo(notes[i]!.offsetSeconds, 4);
    });
  });
});

describe('a line that was heard', () => {
  const plain = { bendSemitones: 0, vibrato: null, levelDb: -12 };
  const notes = [
    { ...plain, onsetSeconds: 2.1, offsetSeconds: 2.5, midi: 61 },
    { ...plain, onsetSeconds: 2.5, offsetSeconds: 3.4, midi: 64.31 },
    { ...plain, onsetSeconds: 4, offsetSeconds: 5, midi: 66, bendSemitones: 2 },
    { ...plain, onsetSeconds: 5, offsetSeconds: 6.2, midi: 69, vibrato: { rateHz: 5, depthCents: 30 } },
    // Rings on into the next one.
    { ...plain, onsetSeconds: 6.5, offsetSeconds: 8, midi: 57, levelDb: null },
    { ...plain, onsetSeconds: 7, offsetSeconds: 8.5, midi: 57 },
  ];
  const line = { messages: null, notes, durationSeconds: 10, title: 'Line' };

  it('comes back at its times and exact pitches, bends where they arrive', () => {
    const read = readMidi(writeTakeMidi(line, timeline(96)), 'line.mid');
    if (!read.ok) throw new Error(english(read.problem));
    expect(read.value.notes).toHaveLength(notes.length);
    read.value.notes.forEach((note, i) => {
      expect(note.onsetSeconds).toBeCloseTo(notes[i]!.onsetSeconds, 3);
      expect(Math.abs(note.midi - notes[i]!.midi), `note ${i}`).toBeLessThan(0.02);
    });
    expect(read.value.notes[2]!.bendSemitones).toBeCloseTo(2, 1);
  });

  it('has its chords as markers, each at its bar line, and they are read back as a chart', () => {
    for (const [bpm, first] of [
      [96, 2],
      [131.7, 0.05],
      [60, -1.2],
    ] as const) {
      const bytes = writeTakeMidi(line, timeline(bpm, first));
      const [conductor] = timesIn(parseMidi(bytes));
      const markers = conductor!.filter(({ event }) => event.type === 'marker');
      const chords = markers.map(({ event }) => (event.type === 'marker' ? event.text : ''));
      expect(chords.slice(0, 2)).toEqual(['A7', 'D7']);
      markers.forEach(({ seconds, tick }, bar) => {
        // What lies before the first whole bar has no bar line of its own.
        if (first + (bar * 240) / bpm < 120 / bpm) return;
        expect(Math.abs(seconds - (first + (bar * 240) / bpm)), `bar ${bar}`).toBeLessThan(0.0005);
        expect(tick % (4 * 9600), `bar ${bar}`).toBe(0);
      });
    }
    const chart = readChordMarkers(writeTakeMidi({ ...line, durationSeconds: 12 }, timeline(96)), 'line.mid');
    expect(
      chart.ok && chart.value.chart.sections[0]!.bars.map(({ chords }) => chords[0]!.chord!.symbol),
    ).toEqual(['A7', 'D7', 'A7', 'E7']);
  });

  it('follows beats that drift', () => {
    const beats = [0, 0.5, 1.02, 1.49, 2.03, 2.5, 3.1, 3.55, 4.04];
    const drifting = timelineOnBeats(blues, roundBeatMap(beats, 1.3), 0.5);
    const [conductor] = timesIn(parseMidi(writeTakeMidi(line, drifting)));
    const [, second] = conductor!.filter(({ event }) => event.type === 'marker');
    expect(second!.seconds).toBeCloseTo(1.3 + 2.03, 3);
    expect(second!.tick % (4 * 9600)).toBe(0);
  });

  it('counts a compound meter in eighths', () => {
    const slow = timelineFromTempo(chartOf('meter: 12/8\n| A7 | D7 |'), { bpm: 60, firstBeatSeconds: 4 });
    const [conductor] = timesIn(parseMidi(writeTakeMidi(line, slow)));
    expect(conductor![0]!.event).toMatchObject({ type: 'timeSignature', numerator: 12, denominator: 8 });
    const [first, second] = conductor!.filter(({ event }) => event.type === 'marker');
    expect(first!.seconds).toBeCloseTo(4, 3);
    expect(second!.seconds).toBeCloseTo(8, 3);
  });
});
