/**
 * A take played on a MIDI instrument: the band and its clock as ever, notes as the instrument tells them. Nothing has
 * to be heard, so nothing is late: the player plays to the beat that reaches the ear, and so the notes are placed.
 * Each message is on the disk as soon as it is played.
 */
import { LandingsSoFar } from '../analysis/landings-so-far.ts';
import { timelineOf } from '../analysis/order.ts';
import type { BandClock } from '../audio/base/clock.ts';
import { PlayedNotes, type PlayedMessage } from '../core/midi/played-notes.ts';
import { badSentence, good, type Outcome } from '../core/base/outcome.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';
import { NOTES_RATE, playedContent, type FinishedTake } from './finished-take.ts';
import type { MidiConnection } from './midi-connection.svelte.ts';
import { openBand } from './open-band.ts';
import type { AudioPort, BandLevels, NotesWriter, OpenBand, TakesPort } from './ports.ts';
import { gradeOrder, type TakeDetails } from './take.ts';
import type { TakeEvents, TakePlan } from './microphone-take.ts';

interface MidiTakePorts {
  readonly audio: AudioPort;
  readonly midi: MidiConnection;
  readonly takes: TakesPort;
}

export class MidiTake {
  readonly #ports: MidiTakePorts;
  readonly #plan: TakePlan;
  readonly #events: TakeEvents;
  readonly #notes = new PlayedNotes();
  readonly #messages: PlayedMessage[] = [];
  #levels: BandLevels;
  #band: OpenBand | null = null;
  #clock: BandClock | null = null;
  #writer: NotesWriter | null = null;
  #beganSeconds = 0;
  #landings: LandingsSoFar | null = null;
  #told = 0;
  #stopListening: (() => void) | null = null;
  #calledOff = false;

  constructor(ports: MidiTakePorts, plan: TakePlan, events: TakeEvents) {
    this.#ports = ports;
    this.#plan = plan;
    this.#levels = plan.levels;
    this.#events = events;
  }

  async open(): Promise<Outcome<void>> {
    const { audio, midi, takes } = this.#ports;
    this.#events.opening('the sound');
    const woken = await audio.wake();
    if (!woken.ok) return woken;
    this.#events.opening('MIDI');
    const connected = await midi.connect();
    if (!connected.ok) return connected;
    const band = await openBand(audio, this.#plan, this.#events);
    if (!band.ok) return band;
    this.#band = band.value;
    band.value.onFailed(this.#events.notice);
    if (midi.names.length === 0)
      this.#events.notice('No MIDI instrument is plugged in yet; it will be heard as soon as it is.');

    const writer = await takes.beginNotes(this.#details(), this.#events.notice);
    if (writer.ok) this.#writer = writer.value;
    else this.#events.notice(writer.sentence);
    if (this.#calledOff) return badSentence('The take was called off before it began.');

    this.#beganSeconds = audio.heardSeconds();
    this.#clock = band.value.start();
    const details = this.#details();
    this.#writer?.change({ firstBeatSeconds: details.firstBeatSeconds });
    const timeline = timelineOf(gradeOrder(details));
    if (!timeline.ok) return timeline;
    this.#landings = new LandingsSoFar(timeline.value, STANDARD_A4_HZ);
    this.#stopListening = midi.listen((message, agoSeconds) => this.#play(message, agoSeconds));
    return good(undefined);
  }

  get beat(): number | null {
    return this.#clock?.beatAt(this.#ports.audio.heardSeconds()) ?? null;
  }

  setLevels(levels: BandLevels): void {
    this.#levels = levels;
    this.#band?.setLevels(levels);
    this.#writer?.change({ levels });
  }

  /** What was played, where it is kept; it is still to be graded. */
  async finish(): Promise<{ readonly take: FinishedTake; readonly report: null }> {
    const seconds = Math.max(0, this.#now);
    const details = this.#details();
    const writer = this.#writer;
    this.#writer = null;
    this.dispose();
    const stopped = await writer?.finish(seconds);
    return {
      take: {
        id: writer && stopped === null ? writer.id : null,
        details,
        content: playedContent(this.#messages, seconds),
      },
      report: null,
    };
  }

  /** A take that was begun and not finished is thrown away. */
  dispose(): void {
    this.#calledOff = true;
    this.#stopListening?.();
    this.#band?.dispose();
    this.#stopListening = this.#band = this.#clock = null;
    const writer = this.#writer;
    this.#writer = null;
    if (writer) void writer.finish(0).then(() => this.#ports.takes.remove(writer.id));
  }

  /** Seconds since the take began, as heard. */
  get #now(): number {
    return this.#ports.audio.heardSeconds() - this.#beganSeconds;
  }

  #play(message: Uint8Array, agoSeconds: number): void {
    const seconds = this.#now - agoSeconds;
    const kept: PlayedMessage = { seconds, bytes: [...message] };
    this.#messages.push(kept);
    this.#writer?.append(kept);
    if (!this.#notes.message(message, seconds)) return;
    const { ended } = this.#notes;
    const standing = this.#notes.standing(seconds);
    this.#landings?.update(ended, standing);
    this.#events.heard({
      reading: this.#notes.reading(seconds),
      notes: ended.slice(this.#told),
      landings: this.#landings?.landings ?? [],
      referenceHz: STANDARD_A4_HZ,
      delayChangeSeconds: null,
    });
    this.#told = ended.length;
  }

  #details(): TakeDetails {
    const first = this.#clock?.firstBeatContextSeconds;
    return {
      ...this.#plan.details,
      source: 'midi',
      sampleRate: NOTES_RATE,
      firstBeatSeconds: first === undefined ? null : first - this.#beganSeconds,
      reference: STANDARD_A4_HZ,
      levels: this.#levels,
    };
  }
}
