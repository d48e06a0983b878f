/** A performance as a standard MIDI file (format 1): a track a part, chord symbols as markers. */
import { writeMidi, type MidiEvent } from 'midi-file';
import { bpmAt, nextTempoBeat } from '../chart/tempo-rise.ts';
import { fifthsOf } from '../music/keys.ts';
import type { ChordSpan } from '../chart/timeline.ts';
import { bandParts, type Arrangement, type BandPart } from './events.ts';
import { chorusBeats, type BandForm } from './form.ts';
import { bandInstruments, programsOf } from './instruments.ts';
import type { BandSettings } from './settings.ts';
import { tempoOf } from './tempo.ts';

/** Ticks in a quarter note: divisible by 3 and 4, and 1 ms at 60 bpm. */
export const ticksPerQuarter = 960;
const microsecondsPerMinute = 60_000_000;
/** General MIDI: percussion is channel 10, 9 counted from 0. */
const channels: Readonly<Record<BandPart, number>> = { bass: 0, chords: 1, line: 2, drums: 9, click: 9 };
const trackNames: Readonly<Record<BandPart, string>> = {
  bass: 'Bass',
  chords: 'Chords',
  line: 'Line',
  drums: 'Drums',
  click: 'Count-in',
};

/** An event and its place; `order` sorts what falls on one tick. */
interface Timed {
  readonly tick: number;
  readonly order: number;
  readonly event: MidiEvent;
}

/**
 * Writes the arrangement; tick 0 is its first beat (the count-in). The form's chords stand as markers in every
 * chorus, N.C. included. Swing is written out in the ticks.
 */
export function writeBandMidi(arrangement: Arrangement, form: BandForm, settings: BandSettings): Uint8Array {
  const place: Place = (beat) =>
    Math.round((beat - arrangement.startBeat) * quartersPerBeat(form) * ticksPerQuarter);
  const tracks = [
    conductor(arrangement, form, settings, place),
    ...bandParts.flatMap((part) => partTrack(arrangement, part, settings, place)),
  ];
  const header = { format: 1 as const, numTracks: tracks.length, ticksPerBeat: ticksPerQuarter };
  const chunks = [
    // The header says how many tracks there are: written with empty ones, which are left out.
    writeMidi({ header, tracks: tracks.map(() => []) }).slice(0, HEADER_BYTES),
    ...tracks.map((track) => trackChunk(finished(track))),
  ];
  const bytes = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

const HEADER_BYTES = 14;
const TRACK_HEADER_BYTES = 8;
/** The time of midi-file's writer grows with the square of the events that it writes at once. */
const EVENTS_AT_ONCE = 256;

/** A track as its chunk ("MTrk", its length, its events), written a few events at a time. */
function trackChunk(events: readonly MidiEvent[]): Uint8Array {
  const pieces: (readonly number[])[] = [];
  for (let at = 0; at < events.length; at += EVENTS_AT_ONCE)
    pieces.push(
      writeMidi({
        header: { format: 1, numTracks: 1, ticksPerBeat: ticksPerQuarter },
        tracks: [events.slice(at, at + EVENTS_AT_ONCE)],
      }).slice(HEADER_BYTES + TRACK_HEADER_BYTES),
    );
  const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const chunk = new Uint8Array(TRACK_HEADER_BYTES + length);
  chunk.set([...'MTrk'].map((letter) => letter.charCodeAt(0)));
  new DataView(chunk.buffer).setUint32(4, length);
  let at = TRACK_HEADER_BYTES;
  for (const piece of pieces) {
    chunk.set(piece, at);
    at += piece.length;
  }
  return chunk;
}

/** The marker behind the last chorus: what comes after it is an ending. */
export const formEnd = 'end';

/** Beat → tick. */
type Place = (beat: number) => number;

/** The file counts quarters; in compound time the beat is a dotted one. */
const quartersPerBeat = ({ divisions }: BandForm): number => divisions / 2;
/** MIDI clocks in a quarter note (MIDI 1.0): the metronome clicks once a beat. */
const clocksPerQuarter = 24;

const meta = (event: MidiEvent, tick = 0): Timed => ({ tick, order: 0, event });

function conductor(
  arrangement: Arrangement,
  form: BandForm,
  settings: BandSettings,
  place: Place,
): readonly Timed[] {
  const { choruses } = arrangement;
  const marker = (span: ChordSpan, chorus = 0) => {
    const tick = place(chorus * chorusBeats(form) + span.startBeat);
    return meta({ deltaTime: 0, type: 'marker', text: span.chord?.symbol ?? 'N.C.' }, tick);
  };
  const markers = Array.from({ length: choruses }, (_, chorus) =>
    form.spans.map((span) => marker(span, chorus)),
  );
  const compound = form.divisions === 3;
  return [
    ...tempos(arrangement, form, settings, place),
    meta({
      deltaTime: 0,
      type: 'timeSignature',
      numerator: compound ? form.beatsPerBar * 3 : form.beatsPerBar,
      denominator: compound ? 8 : 4,
      metronome: clocksPerQuarter * quartersPerBeat(form),
      thirtyseconds: 8,
    }),
    meta({
      deltaTime: 0,
      type: 'keySignature',
      key: fifthsOf(form.key.tonic, form.key.mode),
      scale: form.key.mode === 'major' ? 0 : 1,
    }),
    ...form.pickup.map((span) => marker(span)),
    ...markers.flat(),
    meta({ deltaTime: 0, type: 'marker', text: formEnd }, place(choruses * chorusBeats(form))),
  ];
}

/** One at the start, and one where each rise begins. */
function tempos(
  { endBeat }: Arrangement,
  form: BandForm,
  settings: BandSettings,
  place: Place,
): readonly Timed[] {
  const tempo = tempoOf(form, settings);
  const setTempo = (beat: number, tick: number) => {
    const microsecondsPerBeat = Math.round(
      microsecondsPerMinute / bpmAt(tempo, beat) / quartersPerBeat(form),
    );
    return meta({ deltaTime: 0, type: 'setTempo', microsecondsPerBeat }, tick);
  };
  const changes = [setTempo(0, 0)];
  for (let beat = nextTempoBeat(tempo, 0); beat < endBeat; beat = nextTempoBeat(tempo, beat))
    changes.push(setTempo(beat, place(beat)));
  return changes;
}

function partTrack(
  arrangement: Arrangement,
  part: BandPart,
  settings: BandSettings,
  place: Place,
): readonly (readonly Timed[])[] {
  const programs = programsOf(bandInstruments(settings));
  const channel = channels[part];
  const notes = arrangement.events
    .filter((event) => event.part === part)
    .flatMap(({ beat, durationBeats, midi: noteNumber, velocity }): Timed[] => {
      const on = place(beat);
      const off = Math.max(on + 1, place(beat + durationBeats));
      return [
        { tick: on, order: 2, event: { deltaTime: 0, type: 'noteOn', channel, noteNumber, velocity } },
        { tick: off, order: 1, event: { deltaTime: 0, type: 'noteOff', channel, noteNumber, velocity: 64 } },
      ];
    });
  if (notes.length === 0) return [];
  return [
    [
      meta({ deltaTime: 0, type: 'trackName', text: trackNames[part] }),
      meta({ deltaTime: 0, type: 'programChange', channel, programNumber: programs[part] }),
      ...notes,
    ],
  ];
}

/** In order, with times counted from event to event, and closed. */
function finished(timed: readonly Timed[]): MidiEvent[] {
  const sorted = timed.toSorted((a, b) => a.tick - b.tick || a.order - b.order);
  let last = 0;
  const events = sorted.map(({ tick, event }) => {
    const deltaTime = tick - last;
    last = tick;
    return { ...event, deltaTime };
  });
  return [...events, { deltaTime: 0, type: 'endOfTrack' }];
}
