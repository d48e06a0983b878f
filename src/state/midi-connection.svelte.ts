/** MIDI as the player has it: asked for when it is chosen, its notes handed to a take, its foot switch to the screen. */
import type { MidiEvents, MidiInput } from '../audio/devices/midi-input.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import type { Problem } from '../core/words/problem.ts';
import { FootLearning, FootSwitch, type LearnedFoot, type Step } from './foot-switch.ts';

export interface MidiPort {
  open(events: MidiEvents): Promise<Outcome<MidiInput>>;
  /** Whether the browser would not have to ask the player. */
  allowed(): Promise<boolean>;
  nowSeconds(): number;
  /** Calls back later; returns a function that cancels it. */
  later(act: () => void, ms: number): () => void;
}

/** A press and its release take less than this; a switch that is silent until then sends nothing at a release. */
const LEARNING_MS = 1500;

type Listen = MidiEvents['onMessage'];

export class MidiConnection {
  readonly #port: MidiPort;
  #names = $state.raw<readonly string[]>([]);
  #problem = $state.raw<Problem | null>(null);
  #open: MidiInput | null = null;
  #opening: Promise<Outcome<void>> | null = null;
  #notes: Listen | null = null;
  #foot: ((step: Step) => void) | null = null;
  #switch = new FootSwitch(null);
  #learning = $state.raw<'a press' | 'its release' | null>(null);
  #learn: ((message: Uint8Array) => void) | null = null;
  #stopLearning: (() => void) | null = null;

  constructor(port: MidiPort) {
    this.#port = port;
  }

  /** What is plugged in; empty before it was asked for. */
  get names(): readonly string[] {
    return this.#names;
  }

  /** Why there is no MIDI, or null. */
  get problem(): Problem | null {
    return this.#problem;
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

  /** Hands over every message but the foot switch's; one listener at a time. Returns a function that ends it. */
  listen(notes: Listen): () => void {
    this.#notes = notes;
    return () => {
      if (this.#notes === notes) this.#notes = null;
    };
  }

  /**
   * The foot switch runs the screen, or, with null, is the instrument's own.
   * @param learned null: any damper, sostenuto or soft pedal
   */
  onFoot(foot: ((step: Step) => void) | null, learned: LearnedFoot | null = null): void {
    this.#foot = foot;
    this.#switch = new FootSwitch(learned);
  }

  /** What comes next while a switch is taught; null while none is. */
  get learning(): 'a press' | 'its release' | null {
    return this.#learning;
  }

  /** The next switch that is pressed is handed over; meanwhile no message goes anywhere else. */
  learnFoot(learned: (foot: LearnedFoot) => void): void {
    this.forgetLearning();
    const learning = new FootLearning();
    const end = (foot: LearnedFoot | null) => {
      this.forgetLearning();
      if (foot !== null) learned(foot);
    };
    this.#learning = 'a press';
    this.#learn = (message) => {
      const foot = learning.hears(message);
      if (foot !== null) return end(foot);
      if (!learning.pressed || this.#learning === 'its release') return;
      this.#learning = 'its release';
      this.#stopLearning = this.#port.later(() => end(learning.finish()), LEARNING_MS);
    };
  }

  /** Nothing is learned after all. */
  forgetLearning(): void {
    this.#stopLearning?.();
    this.#stopLearning = null;
    this.#learn = null;
    this.#learning = null;
  }

  dispose(): void {
    this.forgetLearning();
    this.#open?.dispose();
    this.#open = this.#opening = null;
  }

  async #connect(): Promise<Outcome<void>> {
    const opened = await this.#port.open({
      onMessage: (message, agoSeconds) => {
        if (this.#learn !== null) return this.#learn(message);
        const at = this.#port.nowSeconds() - agoSeconds;
        const step = this.#foot === null ? null : this.#switch.hears(message, at);
        if (step === null) this.#notes?.(message, agoSeconds);
        else if (step !== 'nothing new') this.#foot?.(step);
      },
      onInputs: (names) => (this.#names = names),
    });
    if (!opened.ok) {
      this.#problem = opened.problem;
      this.#opening = null;
      return opened;
    }
    this.#problem = null;
    this.#open = opened.value;
    return good(undefined);
  }
}
