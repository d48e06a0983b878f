/** MIDI as the player has it: asked for when it is chosen, its notes handed to a take, its foot switch to the screen. */
import { footSwitchOf } from '../core/notes/played-notes.ts';
import type { MidiEvents, MidiInput } from '../audio/midi-input.ts';
import { good, type Outcome } from '../core/outcome.ts';

export interface MidiPort {
  open(events: MidiEvents): Promise<Outcome<MidiInput>>;
  /** Whether the browser would not have to ask the player. */
  allowed(): Promise<boolean>;
}

type Listen = MidiEvents['onMessage'];

export class MidiDesk {
  readonly #port: MidiPort;
  #names = $state.raw<readonly string[]>([]);
  #sentence = $state.raw<string | null>(null);
  #open: MidiInput | null = null;
  #opening: Promise<Outcome<void>> | null = null;
  #notes: Listen | null = null;
  #foot: ((down: boolean) => void) | null = null;

  constructor(port: MidiPort) {
    this.#port = port;
  }

  /** What is plugged in; empty before it was asked for. */
  get names(): readonly string[] {
    return this.#names;
  }

  /** Why there is no MIDI, or null. */
  get sentence(): string | null {
    return this.#sentence;
  }

  /** Asks the browser once; answers the same afterwards, and asks again after a refusal. */
  connect(): Promise<Outcome<void>> {
    this.#opening ??= this.#connect();
    return this.#opening;
  }

  /** On a later visit: connects where that was allowed before, and asks nothing. */
  async reconnect(): Promise<void> {
    if (await this.#port.allowed()) await this.connect();
  }

  /** Hands over every message but the foot switch's; one listener at a time. Answers with the verb that ends it. */
  listen(notes: Listen): () => void {
    this.#notes = notes;
    return () => {
      if (this.#notes === notes) this.#notes = null;
    };
  }

  /** The foot switch runs the screen, or, with null, is the instrument's own. */
  onFoot(foot: ((down: boolean) => void) | null): void {
    this.#foot = foot;
  }

  dispose(): void {
    this.#open?.dispose();
    this.#open = this.#opening = null;
  }

  async #connect(): Promise<Outcome<void>> {
    const opened = await this.#port.open({
      onMessage: (message, agoSeconds) => {
        const foot = footSwitchOf(message);
        if (foot !== null && this.#foot !== null) this.#foot(foot === 'down');
        else this.#notes?.(message, agoSeconds);
      },
      onInputs: (names) => (this.#names = names),
    });
    if (!opened.ok) {
      this.#sentence = opened.sentence;
      this.#opening = null;
      return opened;
    }
    this.#sentence = null;
    this.#open = opened.value;
    return good(undefined);
  }
}
