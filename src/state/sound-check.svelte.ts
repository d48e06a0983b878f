/** The sound check: devices, level, tuning, the sweeps that measure the room, and the delay. Open while its screen is shown. */
import type { Microphone } from '../audio/microphone/capture.ts';
import type { Hop } from '../audio/microphone/hop.ts';
import type { DeviceChoice } from '../audio/devices/devices.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { chooseRoundTrip, type RoundTrip } from '../core/take/round-trip.ts';
import { InputLevel, type LevelReading } from '../core/room/check/input-level.ts';
import type { HeardNote } from '../core/take/note.ts';
import { CheckRecording } from './check-recording.ts';
import { clicksToPlay, sweepsToPlay, type CheckSounds } from './check-sounds.ts';
import type { DevicePair, MeasuredRoom } from './measured-room.ts';
import type { MeasuredRooms } from './measured-rooms.svelte.ts';
import type { AnalysisPort, AudioPort, LiveListener } from './ports.ts';
import type { Notice, Problem } from '../core/words/problem.ts';
import { readTuning, type TuningReading } from './tuning-check.ts';

export type SoundCheckStep = 'closed' | 'opening' | 'listening' | 'sweeping' | 'striking';

export interface SoundCheckPorts {
  readonly audio: AudioPort;
  readonly analysis: AnalysisPort;
  readonly rooms: MeasuredRooms;
  /** MIDI numbers of the open strings, the lowest first; empty for an instrument without. */
  readonly openStrings: () => readonly number[];
  readonly today: () => Date;
}

export class SoundCheck {
  readonly #ports: SoundCheckPorts;
  #step = $state.raw<SoundCheckStep>('closed');
  #problem = $state.raw<Problem | null>(null);
  #warnings = $state.raw<readonly Notice[]>([]);
  #inputs = $state.raw<readonly DeviceChoice[]>([]);
  #outputs = $state.raw<readonly DeviceChoice[]>([]);
  #pair = $state.raw<DevicePair | null>(null);
  #level = $state.raw<LevelReading | null>(null);
  #notes = $state.raw<readonly HeardNote[]>([]);
  #microphone: Microphone | null = null;
  #listener: LiveListener | null = null;
  #meter: InputLevel | null = null;
  /** What is sounding and being recorded; null while only level and strings are listened to. */
  #recording: CheckRecording<unknown> | null = null;
  #stopWatchingDevices: (() => void) | null = null;
  /** The problem of a microphone that sends nothing; taken back when it does. */
  #silence: Problem | null = null;
  /** Counts openings: what an older one still sends is dropped. */
  #turn = 0;
  readonly #tuning = $derived.by(() => readTuning(this.#ports.openStrings(), this.#notes));

  constructor(ports: SoundCheckPorts) {
    this.#ports = ports;
  }

  get step(): SoundCheckStep {
    return this.#step;
  }

  /** What is in the way; null while all is well. */
  get problem(): Problem | null {
    return this.#problem;
  }

  /** Processing that the browser left on, a telephone codec. */
  get warnings(): readonly Notice[] {
    return this.#warnings;
  }

  get inputs(): readonly DeviceChoice[] {
    return this.#inputs;
  }

  /** Empty where this browser does not offer a choice. */
  get outputs(): readonly DeviceChoice[] {
    return this.#outputs;
  }

  get inputId(): string | null {
    return this.#ports.rooms.inputId;
  }

  get outputId(): string | null {
    return this.#ports.rooms.outputId;
  }

  get level(): LevelReading | null {
    return this.#level;
  }

  get tuning(): TuningReading {
    return this.#tuning;
  }

  /** What was measured with the devices that are plugged in. */
  get room(): MeasuredRoom | null {
    return this.#pair && this.#ports.rooms.find(this.#pair.input, this.#pair.output);
  }

  /** Opens the microphone and listens. Needs a user's gesture the first time. */
  async open(): Promise<void> {
    this.#release();
    const turn = ++this.#turn;
    this.#step = 'opening';
    this.#problem = null;
    const opened = await this.#listen(turn);
    if (turn !== this.#turn) return;
    this.#step = 'listening';
    if (!opened.ok) this.#problem = opened.problem;
  }

  async chooseInput(deviceId: string | null): Promise<void> {
    this.#ports.rooms.chooseInput(deviceId);
    await this.open();
  }

  async chooseOutput(deviceId: string | null): Promise<void> {
    this.#ports.rooms.chooseOutput(deviceId);
    await this.open();
  }

  /** The round trip that a take counts with: set, measured, or assumed; null before the devices are known. */
  get delay(): RoundTrip | null {
    if (this.#pair === null) return null;
    return chooseRoundTrip(this.room, () => this.#ports.audio.assumedRoundTripSeconds());
  }

  /** Plays the sweeps and keeps what they measure. */
  async sweep(): Promise<void> {
    const { rooms, today } = this.#ports;
    await this.#record('sweeping', sweepsToPlay, (pair, room) => rooms.keep(pair, room, today()));
  }

  /** Plays a count-in and eight clicks, and keeps the delay of the muted strokes that are played with them. */
  async strike(): Promise<void> {
    const { rooms, today } = this.#ports;
    await this.#record('striking', clicksToPlay, (pair, delay) => rooms.keepStrokes(pair, delay, today()));
  }

  /** Sets the round trip of the devices in use by hand; null goes back to what was measured. */
  setDelay(seconds: number | null): void {
    const { rooms, today } = this.#ports;
    if (this.#pair !== null) rooms.setDelay({ ...this.#pair, delaySeconds: seconds }, today());
  }

  close(): void {
    this.#turn++;
    this.#release();
    this.#step = 'closed';
  }

  /** Plays and records, then measures and keeps the result; a failure becomes the problem that is shown. */
  async #record<Measured>(
    step: 'sweeping' | 'striking',
    soundsAt: (sampleRate: number) => CheckSounds<Measured>,
    keep: (pair: DevicePair, measured: Measured) => void,
  ): Promise<void> {
    const [pair, turn, sampleRate] = [this.#pair, this.#turn, this.#microphone?.sampleRate];
    if (this.#step !== 'listening' || sampleRate === undefined || pair === null) return;
    this.#step = step;
    this.#problem = null;
    const recording = new CheckRecording(this.#ports.audio, sampleRate, soundsAt(sampleRate));
    this.#recording = recording;
    await recording.ended;
    if (turn !== this.#turn) return;
    this.#recording = null;
    this.#step = 'listening';
    const measured = recording.measure();
    if (measured.ok) keep(pair, measured.value);
    else this.#problem = measured.problem;
  }

  async #listen(turn: number): Promise<Outcome<void>> {
    const { audio, analysis, rooms } = this.#ports;
    const woken = await audio.wake();
    if (!woken.ok) return woken;
    const output = await audio.chooseOutput(rooms.outputId);
    if (!output.ok) return output;
    const microphone = await audio.openMicrophone(
      {
        onHop: (hop) => this.#takeHop(turn, hop),
        onLost: (problem) => this.#endByLoss(turn, problem),
        onSilent: (problem) => {
          this.#setProblem(turn, problem);
          this.#silence = problem;
        },
      },
      rooms.inputId,
    );
    if (!microphone.ok) return microphone;
    if (turn !== this.#turn) {
      microphone.value.dispose();
      return bad('soundCheck.left');
    }
    this.#microphone = microphone.value;
    this.#warnings = microphone.value.warnings;
    this.#meter = new InputLevel(microphone.value.sampleRate);
    await this.#listDevices(turn, microphone.value);
    if (turn !== this.#turn) return bad('soundCheck.left');
    this.#stopWatchingDevices = audio.onDevicesChanged(() => void this.#listDevices(turn, microphone.value));
    const listener = await analysis.listen(microphone.value.sampleRate, null, {
      heard: ({ notes }) => {
        if (turn === this.#turn && notes.length > 0) this.#notes = [...this.#notes, ...notes];
      },
      failed: (problem) => this.#setProblem(turn, problem),
    });
    if (!listener.ok) return listener;
    if (turn === this.#turn) this.#listener = listener.value;
    else listener.value.dispose();
    return good(undefined);
  }

  async #listDevices(turn: number, microphone: Microphone): Promise<void> {
    const { audio } = this.#ports;
    const [{ inputs, outputs }, output] = await Promise.all([
      audio.devices(),
      audio.outputName(this.outputId),
    ]);
    if (turn !== this.#turn) return;
    this.#inputs = inputs;
    this.#outputs = outputs;
    this.#pair = { input: microphone.label, output };
  }

  #takeHop(turn: number, hop: Hop): void {
    if (turn !== this.#turn) return;
    if (this.#recording !== null) return this.#recording.add(hop);
    this.#meter?.push(hop.samples);
    this.#level = this.#meter?.reading ?? null;
    if (this.#silence !== null && hop.samples.some((x) => x !== 0)) {
      if (this.#problem?.code === this.#silence.code) this.#problem = null;
      this.#silence = null;
    }
    this.#listener?.hop(hop.samples, null);
  }

  /** The microphone is gone: everything is closed, and the screen stays with the problem. */
  #endByLoss(turn: number, problem: Problem): void {
    if (turn !== this.#turn) return;
    this.#turn++;
    this.#release();
    this.#step = 'listening';
    this.#problem = problem;
  }

  #setProblem(turn: number, problem: Problem): void {
    if (turn === this.#turn) this.#problem = problem;
  }

  #release(): void {
    this.#stopWatchingDevices?.();
    this.#microphone?.dispose();
    this.#listener?.dispose();
    this.#recording?.stop();
    this.#stopWatchingDevices = this.#microphone = this.#listener = this.#meter = this.#recording = null;
    this.#level = this.#pair = null;
    this.#silence = null;
    this.#notes = [];
    this.#warnings = [];
  }
}
