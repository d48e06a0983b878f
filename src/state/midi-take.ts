/**
 * A take on a MIDI instrument while it is played: the band as for a microphone, the notes as the instrument sends them.
 * The player plays to the beat that reaches the ear, and the messages arrive at once, so the take is timed by what is
 * heard. Each message is written to the disk as soon as it is played.
 */
import { AimSoFar } from '../analysis/aim-so-far.ts';
import { LandingsSoFar } from '../analysis/landings-so-far.ts';
import { timelineOf } from '../core/timeline-of-order.ts';
import { gradeOrder, choiceOf } from '../core/grade-order.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { PlayedNotes, type PlayedMessage } from '../core/midi/played-notes.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';
import { firstBeatInHeardTime } from '../core/take/round-trip.ts';
import { NOTES_RATE, playedContent, type FinishedTake } from './finished-take.ts';
import type { MidiConnection } from './midi-connection.svelte.ts';
import type { AudioPort, BandLevels, NotesWriter, TakesPort } from './ports.ts';
import { QueuedWriter } from './queued-writer.ts';
import type { TakeDetails } from './take.ts';
import { TakeBand } from './take-band.ts';
import { notice } from '../core/words/problem.ts';
import type { TakeEvents, TakePlan } from './take-plan.ts';

interface MidiTakePorts {
  readonly audio: AudioPort;
  readonly midi: MidiConnection;
  readonly takes: TakesPort;
}

export class MidiTake {
  readonly #ports: MidiTakePorts;
  readonly #plan: TakePlan;
  readonly #events: TakeEvents;
  readonly #band: TakeBand;
  readonly #notes = new PlayedNotes();
  readonly #messages: PlayedMessage[] = [];
  #writer: QueuedWriter<NotesWriter> | null = null;
  /** When the take began, as heard; see `firstBeatInHeardTime`. */
  #startHeardSeconds = 0;
  #landings: LandingsSoFar | null = null;
  #aim: AimSoFar | null = null;
  /** How many of the ended notes the session has been given. */
  #notesSent = 0;
  #stopListening: (() => void) | null = null;
  #calledOff = false;
  #isOnlyInMemory = false;

  constructor(ports: MidiTakePorts, plan: TakePlan, events: TakeEvents) {
    this.#ports = ports;
    this.#plan = plan;
    this.#events = events;
    this.#band = new TakeBand(ports.audio, plan, events);
  }

  /** Opens everything and starts the count-in. After a failure, or if it was called off meanwhile, call `dispose`. */
  async open(): Promise<Outcome<void>> {
    const { audio, midi, takes } = this.#ports;
    this.#events.opening({ kind: 'sound' });
    const woken = await audio.wake();
    if (!woken.ok) return woken;
    this.#events.opening({ kind: 'midi' });
    const connected = await midi.connect();
    if (!connected.ok) return connected;
    const band = await this.#band.open();
    if (!band.ok) return band;
    if (this.#calledOff) return bad('take.calledOff');
    if (midi.names.length === 0) this.#events.notice(notice('midi.nothingPlugged'));

    this.#writer = new QueuedWriter(
      (onFull) => takes.beginNotes(this.#details(), onFull),
      (problem) => {
        this.#isOnlyInMemory = true;
        this.#events.notice(problem);
      },
    );
    this.#startHeardSeconds = audio.heardSeconds();
    this.#band.start({ inMono: false });
    const details = this.#details();
    this.#writer.change({ firstBeatSeconds: details.firstBeatSeconds });
    const timeline = timelineOf(gradeOrder(details));
    if (!timeline.ok) return timeline;
    this.#landings = new LandingsSoFar(timeline.value, STANDARD_A4_HZ);
    const [aim] = choiceOf(gradeOrder(details)).aims ?? [];
    this.#aim = aim === undefined ? null : new AimSoFar(aim, timeline.value);
    this.#stopListening = midi.listen((message, agoSeconds) => this.#takeMessage(message, agoSeconds));
    return good(undefined);
  }

  /** Whether a part of it could not be written: all of it is then in memory, and nowhere else. */
  get isOnlyInMemory(): boolean {
    return this.#isOnlyInMemory;
  }

  /** The beat that reaches the ear now; null until the count-in has begun. */
  get beat(): number | null {
    return this.#band.beat;
  }

  setLevels(levels: BandLevels): void {
    this.#band.setLevels(levels);
    this.#writer?.change({ levels });
  }

  /** What was played, where it is kept; it is still to be graded. */
  async finish(): Promise<{ readonly take: FinishedTake; readonly known: null }> {
    const seconds = Math.max(0, this.#nowSeconds);
    const details = this.#details();
    const writer = this.#writer;
    this.#writer = null;
    this.dispose();
    const id = (await writer?.finish((open) => open.finish(seconds))) ?? null;
    return { take: { id, details, content: playedContent(this.#messages, seconds) }, known: null };
  }

  /** A take that was begun and not finished is thrown away. */
  dispose(): void {
    this.#calledOff = true;
    this.#stopListening?.();
    this.#stopListening = null;
    this.#band.dispose();
    const writer = this.#writer;
    this.#writer = null;
    void writer?.discard(
      (open) => open.finish(0),
      (id) => this.#ports.takes.remove(id),
    );
  }

  /** Since the take began, in heard time. */
  get #nowSeconds(): number {
    return this.#ports.audio.heardSeconds() - this.#startHeardSeconds;
  }

  #takeMessage(message: Uint8Array, agoSeconds: number): void {
    const seconds = this.#nowSeconds - agoSeconds;
    const kept: PlayedMessage = { seconds, bytes: [...message] };
    this.#messages.push(kept);
    this.#writer?.write((writer) => writer.append(kept));
    if (!this.#notes.message(message, seconds)) return;
    const { ended } = this.#notes;
    const standing = this.#notes.standing(seconds);
    this.#landings?.update(ended, standing);
    this.#aim?.update(ended, standing, STANDARD_A4_HZ);
    this.#events.heard({
      reading: this.#notes.reading(seconds),
      notes: ended.slice(this.#notesSent),
      landings: this.#landings?.changed ?? null,
      aim: this.#aim?.count ?? null,
      referenceHz: STANDARD_A4_HZ,
      delayChangeSeconds: null,
    });
    this.#notesSent = ended.length;
  }

  #details(): TakeDetails {
    const firstBeat = this.#band.firstBeatClockSeconds;
    return {
      ...this.#plan.details,
      source: 'midi',
      sampleRate: NOTES_RATE,
      firstBeatSeconds: firstBeat === null ? null : firstBeatInHeardTime(firstBeat, this.#startHeardSeconds),
      reference: STANDARD_A4_HZ,
      levels: this.#band.levels,
    };
  }
}
