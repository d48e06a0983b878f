/**
 * A take played on a MIDI instrument: the band and its clock as ever, notes as the instrument tells them. Nothing has
 * to be heard, so nothing is late: the player plays to the beat that reaches the ear, and so the notes are placed.
 */
import { LandingsSoFar } from '../analysis/landings-so-far.ts';
import { timelineOf } from '../analysis/order.ts';
import type { BandClock } from '../audio/clock.ts';
import { grade } from '../core/grade.ts';
import { PlayedNotes } from '../core/notes/played-notes.ts';
import { good, type Outcome } from '../core/outcome.ts';
import type { Report } from '../core/report/schema.ts';
import { STANDARD_A4_HZ } from '../core/tuning/temperament.ts';
import type { FinishedTake } from './finished-take.ts';
import type { MidiDesk } from './midi-desk.svelte.ts';
import type { AudioPort, BandLevels, OpenBand } from './ports.ts';
import { orderOf, type TakeDetails } from './take.ts';
import type { TakeEvents, TakePlan } from './take-in-hand.ts';

/** A MIDI take has no sound of its own; its silence is kept at a rate that costs little. */
const SILENCE_RATE = 8000;
const NOT_KEPT =
  'A take played by MIDI is not kept on this machine: save its report if you want to look at it again.';

export class MidiTake {
  readonly #audio: AudioPort;
  readonly #midi: MidiDesk;
  readonly #plan: TakePlan;
  readonly #events: TakeEvents;
  readonly #notes = new PlayedNotes();
  #band: OpenBand | null = null;
  #clock: BandClock | null = null;
  #beganSeconds = 0;
  #landings: LandingsSoFar | null = null;
  #told = 0;
  #stopListening: (() => void) | null = null;

  constructor(
    ports: { readonly audio: AudioPort; readonly midi: MidiDesk },
    plan: TakePlan,
    events: TakeEvents,
  ) {
    this.#audio = ports.audio;
    this.#midi = ports.midi;
    this.#plan = plan;
    this.#events = events;
  }

  async open(): Promise<Outcome<void>> {
    this.#events.opening('the sound');
    const woken = await this.#audio.wake();
    if (!woken.ok) return woken;
    this.#events.opening('MIDI');
    const connected = await this.#midi.connect();
    if (!connected.ok) return connected;
    this.#events.opening('the band');
    const band = await this.#audio.openBand(this.#plan.timeline, this.#plan.band, this.#plan.levels);
    if (!band.ok) return band;
    this.#band = band.value;
    band.value.onFailed(this.#events.notice);
    if (this.#midi.names.length === 0)
      this.#events.notice('No MIDI instrument is plugged in yet; it will be heard as soon as it is.');

    this.#beganSeconds = this.#audio.heardSeconds();
    this.#clock = band.value.start();
    const timeline = timelineOf(orderOf(this.#details()));
    if (!timeline.ok) return timeline;
    this.#landings = new LandingsSoFar(timeline.value, STANDARD_A4_HZ);
    this.#stopListening = this.#midi.listen((message, agoSeconds) => this.#play(message, agoSeconds));
    return good(undefined);
  }

  get beat(): number | null {
    return this.#clock?.beatAt(this.#audio.heardSeconds()) ?? null;
  }

  setLevels(levels: BandLevels): void {
    this.#band?.setLevels(levels);
  }

  finish(): Promise<{ readonly take: FinishedTake; readonly report: Report | null }> {
    const seconds = Math.max(0, this.#now);
    const notes = this.#notes.finish(seconds);
    const details = this.#details();
    this.dispose();
    const timeline = timelineOf(orderOf(details));
    const report = timeline.ok
      ? grade(notes, timeline.value, {
          source: { kind: 'notes', durationSeconds: seconds, sampleRate: null },
          referenceHz: STANDARD_A4_HZ,
        })
      : null;
    const audio = { samples: new Int16Array(Math.round(seconds * SILENCE_RATE)), sampleRate: SILENCE_RATE };
    this.#events.notice(NOT_KEPT);
    return Promise.resolve({ take: { id: null, details, audio }, report });
  }

  dispose(): void {
    this.#stopListening?.();
    this.#band?.dispose();
    this.#stopListening = this.#band = this.#clock = null;
  }

  /** Seconds since the take began, as heard. */
  get #now(): number {
    return this.#audio.heardSeconds() - this.#beganSeconds;
  }

  #play(message: Uint8Array, agoSeconds: number): void {
    const seconds = this.#now - agoSeconds;
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
    const first = this.#clock?.firstBeatContextSeconds ?? this.#beganSeconds;
    return {
      ...this.#plan.details,
      sampleRate: SILENCE_RATE,
      firstBeatSeconds: first - this.#beganSeconds,
      reference: STANDARD_A4_HZ,
    };
  }
}
