/** The sound check: devices, level, tuning, and the sweeps that measure the room. Open while its screen stands. */
import type { Hop, Microphone } from '../audio/microphone/capture.ts';
import type { DeviceChoice } from '../audio/devices/devices.ts';
import type { HeardNote } from '../core/take/note.ts';
import { fromPcm16 } from '../core/files/sound/pcm16.ts';
import { badSentence, type Outcome } from '../core/base/outcome.ts';
import { InputLevel, type LevelReading } from '../core/room/check/input-level.ts';
import {
  checkSweeps,
  judgeSweeps,
  SWEEP_GAP_SECONDS,
  type SweepResult,
} from '../core/room/check/sound-check.ts';
import type { AnalysisPort, AudioPort, LiveListener, RoomsPort, SettingsPort } from './ports.ts';
import { Recording } from './recording.ts';
import {
  findRoom,
  MOST_NUDGE_SECONDS,
  usualDevices,
  measuredRoom,
  withRoom,
  type MeasuredRoom,
  type DeviceSettings,
} from './measured-rooms.svelte.ts';
import { readTuning, type TuningReading } from './tuning-check.ts';

export type SoundCheckStep = 'closed' | 'opening' | 'listening' | 'sweeping';

export interface SoundCheckPorts {
  readonly audio: AudioPort;
  readonly analysis: AnalysisPort;
  readonly store: SettingsPort<DeviceSettings>;
  /** MIDI numbers of the open strings, the lowest first; empty for an instrument without. */
  readonly openStrings: () => readonly number[];
  readonly today: () => Date;
}

export class SoundCheck implements RoomsPort {
  readonly #ports: SoundCheckPorts;
  #settings = $state.raw<DeviceSettings>(usualDevices);
  #step = $state.raw<SoundCheckStep>('closed');
  #problem = $state.raw<string | null>(null);
  #warnings = $state.raw<readonly string[]>([]);
  #inputs = $state.raw<readonly DeviceChoice[]>([]);
  #outputs = $state.raw<readonly DeviceChoice[]>([]);
  #pair = $state.raw<{ readonly input: string; readonly output: string } | null>(null);
  #level = $state.raw<LevelReading | null>(null);
  #notes = $state.raw<readonly HeardNote[]>([]);
  #microphone: Microphone | null = null;
  #listener: LiveListener | null = null;
  #meter: InputLevel | null = null;
  #sweeping: { readonly recording: Recording; readonly done: () => void; readonly lastFrame: number } | null =
    null;
  #unplug: (() => void) | null = null;
  /** What was said of a microphone that sends nothing; taken back when it does. */
  #silence: string | null = null;
  /** Counts openings: what an older one still sends is dropped. */
  #turn = 0;
  readonly #tuning = $derived.by(() => readTuning(this.#ports.openStrings(), this.#notes));

  constructor(ports: SoundCheckPorts) {
    this.#ports = ports;
  }

  async load(): Promise<void> {
    this.#settings = (await this.#ports.store.load()).value;
    if (this.outputId !== null) await this.#ports.audio.chooseOutput(this.outputId);
  }

  get step(): SoundCheckStep {
    return this.#step;
  }

  /** What is in the way, a sentence with a way on; null while all is well. */
  get problem(): string | null {
    return this.#problem;
  }

  /** Processing that the browser left on, a telephone codec. */
  get warnings(): readonly string[] {
    return this.#warnings;
  }

  get inputs(): readonly DeviceChoice[] {
    return this.#inputs;
  }

  /** Empty where this browser lets nobody choose. */
  get outputs(): readonly DeviceChoice[] {
    return this.#outputs;
  }

  get inputId(): string | null {
    return this.#settings.inputId;
  }

  get outputId(): string | null {
    return this.#settings.outputId;
  }

  get level(): LevelReading | null {
    return this.#level;
  }

  get tuning(): TuningReading {
    return this.#tuning;
  }

  /** What is known of the devices that are plugged in. */
  get room(): MeasuredRoom | null {
    return this.#pair && this.find(this.#pair.input, this.#pair.output);
  }

  get knowsOthers(): boolean {
    return this.#settings.rooms.length > 0;
  }

  find(input: string, output: string): MeasuredRoom | null {
    return findRoom(this.#settings.rooms, input, output);
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
    if (!opened.ok) this.#problem = opened.sentence;
  }

  async chooseInput(deviceId: string | null): Promise<void> {
    this.#change({ inputId: deviceId });
    await this.open();
  }

  async chooseOutput(deviceId: string | null): Promise<void> {
    this.#change({ outputId: deviceId });
    await this.open();
  }

  /** Plays the sweeps and keeps what they say. */
  async sweep(): Promise<void> {
    const { audio, today } = this.#ports;
    const [pair, turn, sampleRate] = [this.#pair, this.#turn, this.#microphone?.sampleRate];
    if (this.#step !== 'listening' || sampleRate === undefined || pair === null) return;
    this.#step = 'sweeping';
    this.#problem = null;
    const sweeps = checkSweeps(sampleRate);
    const playing = audio.playSounds(sweeps, SWEEP_GAP_SECONDS);
    const tail = Math.round(SWEEP_GAP_SECONDS * sampleRate);
    const recording = new Recording(sampleRate);
    const lastFrame = playing.startFrames.at(-1)! + sweeps.at(-1)!.length + tail;
    await new Promise<void>((done) => (this.#sweeping = { recording, done, lastFrame }));
    this.#sweeping = null;
    if (turn !== this.#turn) return playing.stop();
    this.#step = 'listening';
    const room = judgeRecording(recording, playing.startFrames, sweeps, tail);
    if (!room.ok) return this.#tell(turn, room.sentence);
    this.#change({ rooms: withRoom(this.#settings.rooms, measuredRoom(room.value, pair, today())) });
  }

  /** Shifts the delay of the devices in use by ear. */
  nudge(seconds: number): void {
    const { room } = this;
    if (room === null) return;
    const nudgeSeconds = Math.min(
      MOST_NUDGE_SECONDS,
      Math.max(-MOST_NUDGE_SECONDS, room.nudgeSeconds + seconds),
    );
    this.#change({ rooms: withRoom(this.#settings.rooms, { ...room, nudgeSeconds }) });
  }

  close(): void {
    this.#turn++;
    this.#release();
    this.#step = 'closed';
  }

  async #listen(turn: number): Promise<Outcome<void>> {
    const { audio, analysis } = this.#ports;
    const woken = await audio.wake();
    if (!woken.ok) return woken;
    const output = await audio.chooseOutput(this.outputId);
    if (!output.ok) return output;
    const microphone = await audio.openMicrophone(
      {
        onHop: (hop) => this.#hear(turn, hop),
        onLost: (sentence) => this.#lost(turn, sentence),
        onSilent: (sentence) => {
          this.#tell(turn, sentence);
          this.#silence = sentence;
        },
      },
      this.inputId,
    );
    if (!microphone.ok) return microphone;
    if (turn !== this.#turn) {
      microphone.value.dispose();
      return badSentence('The sound check was left.');
    }
    this.#microphone = microphone.value;
    this.#warnings = microphone.value.warnings;
    this.#meter = new InputLevel(microphone.value.sampleRate);
    await this.#lookAround(microphone.value);
    this.#unplug = audio.onDevicesChanged(() => void this.#lookAround(microphone.value));
    const listener = await analysis.listen(microphone.value.sampleRate, null, {
      heard: ({ notes }) => {
        if (turn === this.#turn && notes.length > 0) this.#notes = [...this.#notes, ...notes];
      },
      failed: (sentence) => this.#tell(turn, sentence),
    });
    if (!listener.ok) return listener;
    if (turn === this.#turn) this.#listener = listener.value;
    else listener.value.dispose();
    return { ok: true, value: undefined };
  }

  async #lookAround(microphone: Microphone): Promise<void> {
    const { audio } = this.#ports;
    const [{ inputs, outputs }, output] = await Promise.all([
      audio.devices(),
      audio.outputName(this.outputId),
    ]);
    this.#inputs = inputs;
    this.#outputs = outputs;
    this.#pair = { input: microphone.label, output };
  }

  #hear(turn: number, hop: Hop): void {
    if (turn !== this.#turn) return;
    const sweeping = this.#sweeping;
    if (sweeping !== null) {
      sweeping.recording.add(hop);
      if (hop.startFrame + hop.samples.length >= sweeping.lastFrame) sweeping.done();
      return;
    }
    this.#meter?.push(hop.samples);
    this.#level = this.#meter?.reading ?? null;
    if (this.#silence !== null && hop.samples.some((x) => x !== 0)) {
      if (this.#problem === this.#silence) this.#problem = null;
      this.#silence = null;
    }
    this.#listener?.hop(hop.samples, null);
  }

  #lost(turn: number, sentence: string): void {
    if (turn !== this.#turn) return;
    this.#turn++;
    this.#release();
    this.#step = 'listening';
    this.#problem = sentence;
  }

  #tell(turn: number, sentence: string): void {
    if (turn === this.#turn) this.#problem = sentence;
  }

  #change(change: Partial<DeviceSettings>): void {
    this.#settings = { ...this.#settings, ...change };
    this.#ports.store.save(this.#settings);
  }

  #release(): void {
    this.#unplug?.();
    this.#microphone?.dispose();
    this.#listener?.dispose();
    this.#sweeping?.done();
    this.#unplug = this.#microphone = this.#listener = this.#meter = null;
    this.#level = this.#pair = null;
    this.#silence = null;
    this.#notes = [];
    this.#warnings = [];
  }
}

/** Cuts the sweeps out of what was recorded. One with a hole in it says nothing; the others do. */
function judgeRecording(
  recording: Recording,
  startFrames: readonly number[],
  sweeps: readonly Float32Array[],
  tail: number,
): Outcome<SweepResult> {
  const { sampleRate, gaps } = recording;
  const whole = recording.whole();
  const firstFrame = Math.round((recording.startSeconds ?? 0) * sampleRate);
  const sound = sweeps
    .map((sweep, i) => {
      const from = startFrames[i]! - firstFrame;
      return { sweep, from, to: from + sweep.length + tail };
    })
    .filter(({ from, to }) => !gaps.some(({ atFrame, frames }) => atFrame < to && atFrame + frames > from));
  if (sound.length === 0) {
    return badSentence(
      'The browser lost sound during each sweep: close what else is running, and try again.',
    );
  }
  return judgeSweeps(
    sound.map(({ from, to }) => fromPcm16(whole.subarray(from, to))),
    sound.map(({ sweep }) => sweep),
    sampleRate,
  );
}
