/**
 * A take from the microphone while it is played: microphone, band, listener, and the file it is written to. What can't be
 * written is kept in memory, so that a full disk or a failed listener costs nothing of what was played.
 */
import { gradeOrder } from '../core/grade-order.ts';
import type { GradedSound } from '../core/grade-samples.ts';
import type { Heard } from '../analysis/messages.ts';
import type { Microphone } from '../audio/microphone/capture.ts';
import type { Hop } from '../audio/microphone/hop.ts';
import { clockWords } from '../core/base/clock-words.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { fromPcm16 } from '../core/base/pcm16.ts';
import { chooseRoundTrip, firstBeatAfterChange, firstBeatInRecording } from '../core/take/round-trip.ts';
import { DelaySinceCheck } from './delay-since-check.ts';
import type { FinishedTake, TakeContent } from './finished-take.ts';
import type { DevicePair, MeasuredRoom } from './measured-room.ts';
import type {
  AnalysisPort,
  AudioPort,
  BandLevels,
  LiveListener,
  RoomsPort,
  TakesPort,
  TakeWriter,
} from './ports.ts';
import { QueuedWriter } from './queued-writer.ts';
import type { Recording } from './recording.ts';
import type { TakeDetails } from './take.ts';
import { TakeBand } from './take-band.ts';
import { TakeSound } from './take-sound.ts';
import { notice, problem } from '../core/words/problem.ts';
import type { TakeEvents, TakePlan } from './take-plan.ts';

export interface TakePorts {
  readonly audio: AudioPort;
  readonly analysis: AnalysisPort;
  readonly takes: TakesPort;
  readonly rooms: RoomsPort;
}

/** Less lost sound than this is not worth a notice: one late block of the browser's. */
const LOST_WORTH_A_NOTICE_SECONDS = 0.02;

export class MicrophoneTake {
  readonly #ports: TakePorts;
  readonly #plan: TakePlan;
  readonly #events: TakeEvents;
  readonly #band: TakeBand;
  #microphone: Microphone | null = null;
  #listener: LiveListener | null = null;
  #writer: QueuedWriter<TakeWriter> | null = null;
  #sound: TakeSound | null = null;
  #firstBeatSeconds: number | null = null;
  #assumedRoundTrip: number | null = null;
  #room: MeasuredRoom | null = null;
  #pair: DevicePair | null = null;
  /** Where the first downbeat would lie without any delay; null until it is placed. */
  #undelayedFirstBeat: number | null = null;
  readonly #delay = new DelaySinceCheck();
  #lossNoticed = false;
  #calledOff = false;
  #isOnlyInMemory = false;

  constructor(ports: TakePorts, plan: TakePlan, events: TakeEvents) {
    this.#ports = ports;
    this.#plan = plan;
    this.#events = events;
    this.#band = new TakeBand(ports.audio, plan, events);
  }

  /**
   * Opens everything at the same time, and starts the count-in as soon as band, microphone and listener are open. After
   * a failure, or if the take was called off meanwhile, call `dispose`.
   */
  async open(): Promise<Outcome<void>> {
    const { audio, analysis, takes } = this.#ports;
    // The band is asked for first: its bus is recorded beside the microphone.
    const [woken, band, microphone] = await Promise.all([
      audio.wake(),
      this.#band.open(),
      this.#openMicrophone(),
    ]);
    if (!woken.ok) return woken;
    if (!band.ok) return band;
    if (!microphone.ok) return microphone;
    const { sampleRate } = microphone.value;
    const path = this.#room?.path ?? null;
    const listener = await analysis.listen(sampleRate, path, {
      heard: (heard) => this.#takeHeard(heard),
      failed: this.#events.notice,
    });
    if (!listener.ok) return listener;
    if (this.#calledOff) {
      listener.value.dispose();
      return bad('take.calledOff');
    }
    this.#listener = listener.value;
    this.#writer = new QueuedWriter(
      (onFull) => takes.begin(this.#details(sampleRate), onFull),
      (problem) => {
        this.#isOnlyInMemory = true;
        this.#events.notice(problem);
      },
    );
    // From here on hops are recorded: the count-in, then the first downbeat.
    this.#sound = new TakeSound(sampleRate, this.#keepsBand);
    this.#band.start({ inMono: this.#keepsBand });
    return good(undefined);
  }

  async #openMicrophone(): Promise<Outcome<Microphone>> {
    const { audio, rooms } = this.#ports;
    this.#events.opening({ kind: 'microphone' });
    const opened = await audio.openMicrophone(
      {
        onHop: (hop) => this.#takeHop(hop),
        onLost: this.#events.lost,
        onSilent: this.#events.notice,
        onSoundBack: this.#events.withdraw,
        // While everything is opened a processor has much to do; what is lost in the count-in is missing in no grade.
        onBehind: () => {
          if ((this.beat ?? -1) >= 0) this.#noticeLoss();
        },
      },
      rooms.inputId,
    );
    if (!opened.ok) return opened;
    const microphone = opened.value;
    if (this.#calledOff) {
      microphone.dispose();
      return bad('take.calledOff');
    }
    this.#microphone = microphone;
    for (const warning of microphone.warnings) this.#events.notice(warning);
    this.#pair = { input: microphone.label, output: await audio.outputName(rooms.outputId) };
    this.#room = rooms.find(this.#pair.input, this.#pair.output);
    if (this.#room === null && rooms.knowsOthers) this.#events.notice(notice('devices.notChecked'));
    return opened;
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

  /**
   * Ends the sound first; answers with the whole of what was played, where it is kept, its report and notes. They are
   * null where the listener has failed: the recording can still be graded.
   */
  async finish(): Promise<{ readonly take: FinishedTake; readonly known: GradedSound | null }> {
    const sound = this.#sound ?? new TakeSound(1, false);
    const [writer, listener] = [this.#writer, this.#listener];
    this.#writer = this.#listener = null;
    this.dispose();
    const { sampleRate, frames } = sound.recording;
    const details = this.#details(sampleRate);
    if (this.#delay.notice !== null) this.#events.notice(this.#delay.notice);
    const { path = null } = details;
    const [id, reported] = await Promise.all([
      writer?.finish((open) => open.finish()) ?? null,
      listener?.report(gradeOrder(details)),
    ]);
    listener?.dispose();
    const known = reported?.ok ? reported.value : null;
    const whole = await sound.content(writer?.opened ?? null, this.#ports.takes, path);
    if (!whole.ok) this.#events.notice(whole.problem);
    // Where what was written can't be read again, the notes are left that were heard while it was played.
    const content: TakeContent = whole.ok
      ? whole.value
      : {
          kind: 'notes',
          notes: known?.heard ?? [],
          durationSeconds: frames / sampleRate,
          messages: null,
        };
    const isHeardRight = !(whole.ok && this.#delay.isKnownLate);
    return { take: { id, details, content, ...this.#playedThrough }, known: isHeardRight ? known : null };
  }

  /** Closes all devices. A take that was begun and not finished is thrown away. */
  dispose(): void {
    this.#calledOff = true;
    this.#microphone?.dispose();
    this.#band.dispose();
    this.#listener?.dispose();
    this.#microphone = this.#listener = null;
    const writer = this.#writer;
    this.#writer = null;
    void writer?.discard(
      (open) => open.finish(),
      (id) => this.#ports.takes.remove(id),
    );
  }

  #takeHop(hop: Hop): void {
    const sound = this.#sound;
    if (sound === null) return;
    const { recording } = sound;
    const lostBefore = recording.lostFrames;
    const { piece, band } = sound.add(hop);
    this.#writer?.write((writer) => {
      writer.append(piece, band);
      sound.letGo(writer);
    });
    this.#listener?.hop(fromPcm16(piece), this.#room?.path && band ? fromPcm16(band) : null);
    this.#placeFirstBeat(recording);
    if (recording.lostFrames > lostBefore) this.#writer?.change({ lost: recording.lost });
    if (recording.lostFrames > LOST_WORTH_A_NOTICE_SECONDS * recording.sampleRate) this.#noticeLoss();
  }

  #noticeLoss(): void {
    if (this.#lossNoticed) return;
    this.#lossNoticed = true;
    this.#events.notice(problem('take.soundLost'));
  }

  /** As soon as the start of the band and the first sample are known. */
  #placeFirstBeat(recording: Recording): void {
    const start = recording.startSeconds;
    const firstBeat = this.#band.firstBeatClockSeconds;
    if (this.#firstBeatSeconds !== null || firstBeat === null || start === null) return;
    const { seconds, basis } = chooseRoundTrip(this.#room, () => this.#ports.audio.assumedRoundTripSeconds());
    this.#assumedRoundTrip = basis === 'assumed' ? seconds : null;
    this.#undelayedFirstBeat = firstBeatInRecording(firstBeat, start, 0);
    this.#setFirstBeat(firstBeatInRecording(firstBeat, start, seconds), recording);
  }

  #setFirstBeat(seconds: number, recording: Recording): void {
    this.#firstBeatSeconds = seconds;
    const details = this.#details(recording.sampleRate);
    const { assumedRoundTripSeconds, path } = details;
    this.#writer?.change({
      firstBeatSeconds: seconds,
      ...(assumedRoundTripSeconds !== undefined && { assumedRoundTripSeconds }),
      ...(this.#delay.isKnownLate && path && { path }),
    });
    void this.#listener?.follow(gradeOrder(details));
  }

  /** The band is kept unless the sweeps of a sound check were not heard to come back. */
  get #keepsBand(): boolean {
    return this.#room === null || !this.#room.isSwept || this.#room.path !== null;
  }

  #takeHeard(heard: Heard): void {
    this.#events.heard(heard);
    const [recording, beat] = [this.#sound?.recording, this.beat];
    if (recording === undefined || beat === null || this.#firstBeatSeconds === null) return;
    const change = this.#delay.take(heard.delayChangeSeconds, beat);
    if (change === null) return;
    const { before, now, isFromStart } = change;
    if (isFromStart) {
      const [old, found] = [{ roundTripSeconds: before }, { roundTripSeconds: now }];
      return this.#setFirstBeat(firstBeatAfterChange(this.#firstBeatSeconds, old, found), recording);
    }
    const ms = Math.round(1000 * Math.abs(now - before));
    this.#events.notice(
      problem('take.slipped', { ms, time: clockWords(heard.reading.timeSeconds), late: now > before }),
    );
  }

  get #playedThrough(): Pick<FinishedTake, 'playedThrough'> {
    const [pair, undelayedFirstBeatSeconds] = [this.#pair, this.#undelayedFirstBeat];
    if (pair === null || undelayedFirstBeatSeconds === null) return {};
    return { playedThrough: { pair, undelayedFirstBeatSeconds } };
  }

  #details(sampleRate: number): TakeDetails {
    const lost = this.#sound?.recording.lost ?? [];
    return {
      ...this.#plan.details,
      sampleRate,
      firstBeatSeconds: this.#firstBeatSeconds,
      levels: this.#band.levels,
      ...(this.#room?.path && { path: this.#delay.pathOf(this.#room.path) }),
      ...(this.#keepsBand && { bandKept: true }),
      ...(this.#assumedRoundTrip !== null && { assumedRoundTripSeconds: this.#assumedRoundTrip }),
      ...(lost.length > 0 && { lost }),
    };
  }
}
