/**
 * The line of a take as a standard MIDI file of format 1 ("Standard MIDI Files 1.0", MIDI Manufacturers Association 1988):
 * tempo, meter and the chords as markers, then the line with its bends. Times are those of the take. A take on a MIDI
 * instrument keeps its own messages.
 */
import { writeMidi, type MidiEvent } from 'midi-file';
import type { Timeline } from '../../chart/timeline.ts';
import type { PlayedMessage } from '../../midi/played-notes.ts';
import { bendEvents, BEND_RANGE_SEMITONES, type NoteToWrite } from './bend-events.ts';
import { midiTempoMap, TICKS_PER_QUARTER, type Placed } from './midi-tempo-map.ts';

const BEND_MIDDLE = 8192;
const FULL_VELOCITY = 127;
/** Of a note whose loudness is not known. */
const USUAL_VELOCITY = 90;
/** Registered parameter 0, the bend range (MIDI 1.0): its two halves, then semitones and cents. */
const BEND_RANGE: readonly (readonly [controllerType: number, value: number])[] = [
  [101, 0],
  [100, 0],
  [6, BEND_RANGE_SEMITONES],
  [38, 0],
];

export interface LineToWrite {
  /** What a MIDI instrument sent; null where the notes were heard. */
  readonly messages: readonly PlayedMessage[] | null;
  /** By onset, one after the other. */
  readonly notes: readonly NoteToWrite[];
  readonly durationSeconds: number;
  /** Of the track. */
  readonly title: string;
}

export function writeTakeMidi(line: LineToWrite, timeline: Timeline): Uint8Array<ArrayBuffer> {
  const { messages, notes, durationSeconds, title } = line;
  const map = midiTempoMap(timeline, durationSeconds);
  const lastBeat = timeline.beatMap.beatAt(durationSeconds);
  const markers = timeline.spansBetween(0, Math.max(0, lastBeat)).map(({ startBeat, chord }): Placed => ({
    tick: map.tickOfBeat(startBeat),
    event: { deltaTime: 0, type: 'marker', text: chord?.symbol ?? 'N.C.' },
  }));
  const name = (text: string): Placed => ({ tick: 0, event: { deltaTime: 0, type: 'trackName', text } });
  const played =
    messages === null
      ? noteEvents(notes, map.tickAt)
      : messages.flatMap((message) => playedEvent(message, map.tickAt));
  const tracks = [
    [...map.events, ...markers],
    // Letters of ASCII alone: a MIDI file does not say how its texts are written.
    [name(title.replace(/[^\x20-\x7e]/g, '?')), ...played],
  ];
  return Uint8Array.from(
    writeMidi({
      header: { format: 1, numTracks: tracks.length, ticksPerBeat: TICKS_PER_QUARTER },
      tracks: tracks.map((track) => inOrder(track, map.tickAt(durationSeconds))),
    }),
  );
}

/** Each event behind the one before; those of one tick stay in the order given. The track lasts as long as the take. */
function inOrder(placed: readonly Placed[], endTick: number): MidiEvent[] {
  let last = 0;
  const events = placed
    .map((one, order) => ({ ...one, order }))
    .sort((a, b) => a.tick - b.tick || a.order - b.order)
    .map(({ tick, event }) => {
      const deltaTime = tick - last;
      last = tick;
      return { ...event, deltaTime };
    });
  return [...events, { deltaTime: Math.max(0, endTick - last), type: 'endOfTrack' }];
}

type TickAt = (seconds: number) => number;

function noteEvents(notes: readonly NoteToWrite[], tickAt: TickAt): readonly Placed[] {
  const range = BEND_RANGE.map(([controllerType, value]): Placed => ({
    tick: 0,
    event: { deltaTime: 0, type: 'controller', channel: 0, controllerType, value },
  }));
  const played = notes.flatMap((note, i): Placed[] => {
    const noteNumber = Math.min(127, Math.max(0, Math.round(note.midi)));
    // The line has one voice: a note ends where the next begins, else a bend would pull at both.
    const endSeconds = Math.min(note.offsetSeconds, notes[i + 1]?.onsetSeconds ?? Infinity);
    const [start, end] = [tickAt(note.onsetSeconds), tickAt(endSeconds)];
    const loud =
      note.levelDb === null ? USUAL_VELOCITY : Math.round(FULL_VELOCITY * 10 ** (note.levelDb / 20));
    const velocity = Math.min(FULL_VELOCITY, Math.max(1, loud));
    return [
      ...bendEvents(note, noteNumber, endSeconds).map(({ seconds, value }): Placed => ({
        tick: tickAt(seconds),
        event: { deltaTime: 0, type: 'pitchBend', channel: 0, value },
      })),
      { tick: start, event: { deltaTime: 0, type: 'noteOn', channel: 0, noteNumber, velocity } },
      {
        tick: Math.max(start + 1, end),
        event: { deltaTime: 0, type: 'noteOff', channel: 0, noteNumber, velocity: 0 },
      },
    ];
  });
  // A note that ends where another begins ends before it, and its bend is over.
  const rank = ({ event }: Placed) => ['noteOff', 'pitchBend', 'noteOn'].indexOf(event.type);
  return [...range, ...played.sort((a, b) => a.tick - b.tick || rank(a) - rank(b))];
}

function playedEvent({ seconds, bytes }: PlayedMessage, tickAt: TickAt): readonly Placed[] {
  const event = eventOf(bytes);
  return event === null ? [] : [{ tick: tickAt(seconds), event }];
}

/** A channel message as the writer takes it; null for what a line is not made of, such as a change of sound. */
function eventOf(bytes: readonly number[]): MidiEvent | null {
  const [status = 0, first = 0, second = 0] = bytes;
  const channel = status & 0x0f;
  const deltaTime = 0;
  switch (status & 0xf0) {
    case 0x80:
      return { deltaTime, type: 'noteOff', channel, noteNumber: first, velocity: second };
    case 0x90:
      return second === 0
        ? { deltaTime, type: 'noteOff', channel, noteNumber: first, velocity: 0 }
        : { deltaTime, type: 'noteOn', channel, noteNumber: first, velocity: second };
    case 0xb0:
      return { deltaTime, type: 'controller', channel, controllerType: first, value: second };
    case 0xe0:
      return { deltaTime, type: 'pitchBend', channel, value: first + second * 128 - BEND_MIDDLE };
    default:
      return null;
  }
}
