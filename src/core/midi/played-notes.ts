/** Notes from a MIDI instrument (MIDI 1.0): messages in the order they come → notes. */
import { bendTrack, type BendTrack } from './midi-bend.ts';
import type { HeardNote, LiveReading } from '../take/note.ts';

/** Status bytes without their channel, and controllers (MIDI 1.0). */
const NOTE_OFF = 0x80;
const NOTE_ON = 0x90;
const CONTROL = 0xb0;
const BEND = 0xe0;
const BEND_MIDDLE = 8192;
const FULL_VELOCITY = 127;

/** A message as it was played, to be kept. */
export interface PlayedMessage {
  /** From the take's beginning. */
  readonly seconds: number;
  readonly bytes: readonly number[];
}

/** The notes of kept messages: those that were gathered while they were played. */
export function notesPlayed(
  messages: readonly PlayedMessage[],
  durationSeconds: number,
): readonly HeardNote[] {
  const notes = new PlayedNotes();
  for (const { seconds, bytes } of messages) notes.message(Uint8Array.from(bytes), seconds);
  return notes.finish(durationSeconds);
}

interface Held {
  readonly key: number;
  readonly channel: number;
  readonly onsetSeconds: number;
  readonly velocity: number;
}

/** Collects notes: a note ends when its key is released. Seconds count from the start of the take. */
export class PlayedNotes {
  readonly #bends = new Map<number, BendTrack>();
  #held: readonly Held[] = [];
  #ended: HeardNote[] = [];

  /** Every note that has ended, in order of onset. */
  get ended(): readonly HeardNote[] {
    return this.#ended;
  }

  /** @returns whether the message began or ended a note */
  message(message: Uint8Array, seconds: number): boolean {
    const [status = 0, first = 0, second = 0] = message;
    const channel = status & 0x0f;
    const kind = status & 0xf0;
    if (kind === BEND) this.#bend(channel).bend(seconds, first + second * 128 - BEND_MIDDLE);
    if (kind === CONTROL) this.#bend(channel).control(first, second);
    if (kind !== NOTE_ON && kind !== NOTE_OFF) return false;
    const before = this.#held.length;
    this.#letGo(first, channel, seconds);
    // A note-on without velocity is a note-off (MIDI 1.0).
    const struck = kind === NOTE_ON && second > 0;
    if (struck)
      this.#held = [...this.#held, { key: first, channel, onsetSeconds: seconds, velocity: second }];
    return struck || this.#held.length !== before;
  }

  /** The note struck last that still sounds, as if it ended now. */
  standing(seconds: number): HeardNote | null {
    const held = this.#held.at(-1);
    return held === undefined ? null : this.#note(held, seconds);
  }

  reading(seconds: number): LiveReading {
    const note = this.standing(seconds);
    return { timeSeconds: seconds, midi: note?.midi ?? null, levelDb: note?.levelDb ?? -Infinity };
  }

  /** Ends every note that is still held. */
  finish(seconds: number): readonly HeardNote[] {
    for (const { key, channel } of this.#held) this.#letGo(key, channel, seconds);
    return this.#ended;
  }

  #letGo(key: number, channel: number, seconds: number): void {
    const held = this.#held.find((note) => note.key === key && note.channel === channel);
    if (held === undefined) return;
    this.#held = this.#held.filter((note) => note !== held);
    this.#ended = [...this.#ended, this.#note(held, seconds)].sort((a, b) => a.onsetSeconds - b.onsetSeconds);
  }

  #note({ key, channel, onsetSeconds, velocity }: Held, offsetSeconds: number): HeardNote {
    return {
      onsetSeconds,
      offsetSeconds,
      midi: key + this.#bend(channel).heard(onsetSeconds, offsetSeconds),
      confidence: 1,
      levelDb: 20 * Math.log10(velocity / FULL_VELOCITY),
      attack: 'struck',
      bendSemitones: 0,
      vibrato: null,
      second: null,
    };
  }

  #bend(channel: number): BendTrack {
    const known = this.#bends.get(channel) ?? bendTrack();
    this.#bends.set(channel, known);
    return known;
  }
}
