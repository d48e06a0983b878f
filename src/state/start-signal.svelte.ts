/**
 * Three low notes on the open page start a take. It listens only where the player has asked for that and the browser
 * would not have to ask anything; the page always shows whether it listens.
 */
import type { Microphone } from '../audio/microphone/capture.ts';
import type { Hop } from '../audio/microphone/hop.ts';
import { instrumentOf } from '../core/music/instruments.ts';
import { PlayedNotes } from '../core/midi/played-notes.ts';
import { PlayedSignal } from '../core/take/played-signal.ts';
import type { MidiConnection } from './midi-connection.svelte.ts';
import type { PlayingSettings } from './playing-settings.ts';
import type { Problem } from '../core/words/problem.ts';
import type { AnalysisPort, AudioPort, LiveListener, RoomsPort } from './ports.ts';

/**
 * off: not asked for. closed: the browser has not allowed it yet. asleep: the page has to be touched first, or nobody
 * has played for long. failed: it can't, `problem` says why.
 */
export type SignalStatus = 'off' | 'closed' | 'asleep' | 'listening' | 'failed';

type Wanted = Pick<PlayingSettings, 'instrument' | 'input'>;

export interface StartSignalPorts {
  readonly audio: Pick<AudioPort, 'wake' | 'mayOpen' | 'openMicrophone'>;
  readonly analysis: Pick<AnalysisPort, 'listen'>;
  readonly rooms: Pick<RoomsPort, 'inputId'>;
  readonly midi: MidiConnection;
  readonly nowSeconds: () => number;
  /** It stops listening after this time; ten minutes unless given. */
  readonly longestSeconds?: number;
}

/** After this time without a signal the microphone is closed: an open one costs power and worries people. */
const USUAL_LONGEST_SECONDS = 600;

export class StartSignal {
  readonly #ports: StartSignalPorts;
  #status = $state.raw<SignalStatus>('off');
  #problem = $state.raw<Problem | null>(null);
  #microphone: Microphone | null = null;
  #listener: LiveListener | null = null;
  #stopMidi: (() => void) | null = null;
  /** Counts what was begun: what opens after something else began is closed again. */
  #turn = 0;

  constructor(ports: StartSignalPorts) {
    this.#ports = ports;
  }

  get status(): SignalStatus {
    return this.#status;
  }

  /** Why it can't listen, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** Listens until `halt`, or until the signal is given; then it has let go of the microphone already. */
  async listen({ instrument, input }: Wanted, given: () => void): Promise<void> {
    this.halt();
    const turn = this.#turn;
    const may = await this.#ports.audio.mayOpen(input);
    if (turn !== this.#turn) return;
    if (may !== 'yes') {
      this.#status = may;
      return;
    }
    const signal = new PlayedSignal(instrumentOf(instrument)?.lowestMidi ?? 0);
    const start = () => {
      if (turn !== this.#turn) return;
      this.halt();
      given();
    };
    if (input === 'midi') await this.#listenToMidi(signal, start, turn);
    else await this.#listenToMicrophone(signal, start, turn);
  }

  /** Closes everything. */
  halt(): void {
    this.#turn++;
    this.#release();
    this.#status = 'off';
    this.#problem = null;
  }

  async #listenToMicrophone(signal: PlayedSignal, start: () => void, turn: number): Promise<void> {
    const { audio, analysis, rooms, longestSeconds = USUAL_LONGEST_SECONDS } = this.#ports;
    const woken = await audio.wake();
    if (turn !== this.#turn) return;
    if (!woken.ok) return this.#fail(woken.problem);
    let heardFrames = 0;
    const microphone = await audio.openMicrophone(
      {
        onHop: ({ samples }: Hop) => {
          heardFrames += samples.length;
          this.#listener?.hop(samples, null);
          if (heardFrames > longestSeconds * (this.#microphone?.sampleRate ?? Infinity)) this.#sleep();
        },
        onLost: (problem) => this.#fail(problem),
        onSilent: () => undefined,
      },
      rooms.inputId,
    );
    if (turn !== this.#turn) return microphone.ok ? microphone.value.dispose() : undefined;
    if (!microphone.ok) return this.#fail(microphone.problem);
    this.#microphone = microphone.value;
    const listener = await analysis.listen(microphone.value.sampleRate, null, {
      heard: ({ notes }) => signal.hears(notes) && start(),
      failed: (problem) => this.#fail(problem),
    });
    if (turn !== this.#turn) return listener.ok ? listener.value.dispose() : undefined;
    if (!listener.ok) return this.#fail(listener.problem);
    this.#listener = listener.value;
    this.#status = 'listening';
  }

  async #listenToMidi(signal: PlayedSignal, start: () => void, turn: number): Promise<void> {
    const { midi, nowSeconds } = this.#ports;
    const connected = await midi.connect();
    if (turn !== this.#turn) return;
    if (!connected.ok) return this.#fail(connected.problem);
    const notes = new PlayedNotes();
    let told = 0;
    this.#stopMidi = midi.listen((message, agoSeconds) => {
      if (!notes.message(message, nowSeconds() - agoSeconds)) return;
      const fresh = notes.ended.slice(told);
      told = notes.ended.length;
      if (signal.hears(fresh)) start();
    });
    this.#status = 'listening';
  }

  #sleep(): void {
    this.halt();
    this.#status = 'asleep';
  }

  #fail(problem: Problem): void {
    this.halt();
    this.#status = 'failed';
    this.#problem = problem;
  }

  #release(): void {
    this.#microphone?.dispose();
    this.#listener?.dispose();
    this.#stopMidi?.();
    this.#microphone = this.#listener = this.#stopMidi = null;
  }
}
