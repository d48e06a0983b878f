/**
 * Everything that is open while a take is played: microphone, band, listener, the file it is written to. The
 * take is kept in memory too, so that a full disk or a fallen listener costs nothing of what was played.
 */
import type { Heard } from '../analysis/messages.ts';
import type { Hop, Microphone } from '../audio/microphone/capture.ts';
import type { BandClock } from '../audio/base/clock.ts';
import { clockWords } from '../core/base/clock-words.ts';
import { fromPcm16 } from '../core/files/sound/pcm16.ts';
import { badSentence, good, type Outcome } from '../core/base/outcome.ts';
import type {
  AnalysisPort,
  AudioPort,
  BandLevels,
  LiveListener,
  OpenBand,
  RoomsPort,
  TakesPort,
} from './ports.ts';
import type { Report } from '../core/take/schema.ts';
import type { FinishedTake } from './finished-take.ts';
import { QueuedWriter } from './queued-writer.ts';
import { openBand } from './open-band.ts';
import { BandRecording, Recording } from './recording.ts';
import { roundTripOf, type MeasuredRoom } from './measured-rooms.svelte.ts';
import { gradeOrder, type TakeDetails } from './take.ts';
import type { TakeEvents, TakePlan } from './take-plan.ts';

export type { TakeEvents, TakePlan } from './take-plan.ts';

export interface TakePorts {
  readonly audio: AudioPort;
  readonly analysis: AnalysisPort;
  readonly takes: TakesPort;
  readonly rooms: RoomsPort;
}

/** Less than this is not worth a word: one late block of the browser's. */
const LOST_SECONDS_WORTH_TELLING = 0.02;

/** A delay that changed by less is a reflection that was taken for the first sound. */
const DELAY_WORTH_A_WORD = 0.005;
const OTHER_DEVICES =
  'You play through other devices than at your last sound check: half a minute of sound check sets them right.';

export class MicrophoneTake {
  readonly #ports: TakePorts;
  readonly #plan: TakePlan;
  readonly #events: TakeEvents;
  #band: OpenBand | null = null;
  #microphone: Microphone | null = null;
  #listener: LiveListener | null = null;
  #writer: QueuedWriter | null = null;
  #recording: Recording | null = null;
  /** Where the band comes back through the microphone, or nobody knows whether it does. */
  #bandRecording: BandRecording | null = null;
  #levels: BandLevels;
  #clock: BandClock | null = null;
  #firstBeatSeconds: number | null = null;
  #assumedRoundTrip: number | null = null;
  #room: MeasuredRoom | null = null;
  /** Delay against the measured one that is allowed for already. */
  #delayChange = 0;
  #lossTold = false;
  #calledOff = false;

  constructor(ports: TakePorts, plan: TakePlan, events: TakeEvents) {
    this.#ports = ports;
    this.#plan = plan;
    this.#levels = plan.levels;
    this.#events = events;
  }

  /**
   * Opens everything, side by side, and starts the count-in as soon as band, microphone and listener are there. After a
   * failure, or if it was called off meanwhile, call `dispose`.
   */
  async open(): Promise<Outcome<void>> {
    const { audio, analysis, takes } = this.#ports;
    // The band is asked for first: its bus is recorded beside the microphone.
    const [woken, band, microphone] = await Promise.all([
      audio.wake(),
      openBand(audio, this.#plan, this.#events).then((opened) => {
        if (opened.ok) this.#keepBand(opened.value);
        return opened;
      }),
      this.#openMicrophone(),
    ]);
    if (!woken.ok) return woken;
    if (!band.ok) return band;
    if (!microphone.ok) return microphone;
    const { sampleRate } = microphone.value;
    const path = this.#room?.path ?? null;
    const listener = await analysis.listen(sampleRate, path, {
      heard: (heard) => this.#heard(heard),
      failed: this.#events.notice,
    });
    if (!listener.ok) return listener;
    if (this.#calledOff) {
      listener.value.dispose();
      return badSentence('The take was called off before it began.');
    }
    this.#listener = listener.value;
    this.#writer = new QueuedWriter(
      takes.begin(this.#details(sampleRate), this.#events.notice),
      this.#events.notice,
    );
    // From here on hops count: the count-in is on the recording, and the first downbeat after it.
    this.#recording = new Recording(sampleRate);
    this.#bandRecording = this.#keepsBand ? new BandRecording() : null;
    band.value.playInMono(this.#keepsBand);
    this.#clock = band.value.start();
    return good(undefined);
  }

  #keepBand(band: OpenBand): void {
    if (this.#calledOff) return band.dispose();
    this.#band = band;
    band.onFailed(this.#events.notice);
  }

  async #openMicrophone(): Promise<Outcome<Microphone>> {
    const { audio, rooms } = this.#ports;
    this.#events.opening('the microphone');
    const opened = await audio.openMicrophone(
      {
        onHop: (hop) => this.#take(hop),
        onLost: this.#events.lost,
        onSilent: this.#events.notice,
        onSoundBack: this.#events.withdraw,
      },
      rooms.inputId,
    );
    if (!opened.ok) return opened;
    const microphone = opened.value;
    if (this.#calledOff) {
      microphone.dispose();
      return badSentence('The take was called off before it began.');
    }
    this.#microphone = microphone;
    for (const warning of microphone.warnings) this.#events.notice(warning);
    this.#room = rooms.find(microphone.label, await audio.outputName(rooms.outputId));
    if (this.#room === null && rooms.knowsOthers) this.#events.notice(OTHER_DEVICES);
    return opened;
  }

  /** The beat that reaches the ear now; null until the count-in has begun. */
  get beat(): number | null {
    return this.#clock?.beatAt(this.#ports.audio.heardSeconds()) ?? null;
  }

  setLevels(levels: BandLevels): void {
    this.#levels = levels;
    this.#band?.setLevels(levels);
    this.#writer?.change({ levels });
  }

  /**
   * Silence first; then what was played, whole, where it is kept, and its report. The report is null where the
   * listener fell over: the recording can still be graded.
   */
  async finish(): Promise<{ readonly take: FinishedTake; readonly report: Report | null }> {
    const recording = this.#recording ?? new Recording(1);
    const band = this.#bandRecording;
    const [writer, listener] = [this.#writer, this.#listener];
    this.#writer = this.#listener = null;
    this.dispose();
    const { sampleRate } = recording;
    const details = this.#details(sampleRate);
    const path = this.#room?.path ?? null;
    const [id, report] = await Promise.all([writer?.finish() ?? null, listener?.report(gradeOrder(details))]);
    listener?.dispose();
    return {
      take: {
        id,
        details,
        content: {
          kind: 'sound',
          audio: { samples: recording.whole(), sampleRate },
          backing: band && { kind: 'band', samples: band.whole(), path },
        },
      },
      report: report?.ok ? report.value : null,
    };
  }

  /** Closes all devices. A take that was begun and not finished is thrown away. */
  dispose(): void {
    this.#calledOff = true;
    this.#microphone?.dispose();
    this.#band?.dispose();
    this.#listener?.dispose();
    this.#microphone = this.#band = this.#listener = null;
    this.#clock = null;
    const writer = this.#writer;
    this.#writer = null;
    if (writer)
      void writer.abandon().then((id) => (id === null ? undefined : void this.#ports.takes.remove(id)));
  }

  #take(hop: Hop): void {
    const recording = this.#recording;
    if (recording === null) return;
    const lostBefore = recording.lostFrames;
    const piece = recording.add(hop);
    const band = this.#bandRecording?.add(hop, piece.length) ?? null;
    this.#writer?.append(piece, band);
    this.#listener?.hop(fromPcm16(piece), this.#room?.path && band ? fromPcm16(band) : null);
    this.#placeFirstBeat(recording);
    if (recording.lostFrames > lostBefore) this.#writer?.change({ lost: recording.lost });
    if (!this.#lossTold && recording.lostFrames > LOST_SECONDS_WORTH_TELLING * recording.sampleRate) {
      this.#lossTold = true;
      this.#events.notice(
        "The browser loses sound; what is played there can't be heard. Close what else is running.",
      );
    }
  }

  /** As soon as the clock and the first sample are known. */
  #placeFirstBeat(recording: Recording): void {
    const start = recording.startSeconds;
    if (this.#firstBeatSeconds !== null || this.#clock === null || start === null) return;
    const known = (this.#room && roundTripOf(this.#room)) ?? this.#plan.roundTripSeconds;
    if (known === null) this.#assumedRoundTrip = this.#ports.audio.assumedRoundTripSeconds();
    const roundTrip = known ?? this.#assumedRoundTrip ?? 0;
    this.#setFirstBeat(this.#clock.firstBeatContextSeconds - start + roundTrip, recording);
  }

  #setFirstBeat(seconds: number, recording: Recording): void {
    this.#firstBeatSeconds = seconds;
    const assumed = this.#assumedRoundTrip;
    this.#writer?.change({
      firstBeatSeconds: seconds,
      ...(assumed !== null && { assumedRoundTripSeconds: assumed }),
    });
    void this.#listener?.follow(gradeOrder(this.#details(recording.sampleRate)));
  }

  /** Only where a sound check heard nothing come back is the band not worth keeping. */
  get #keepsBand(): boolean {
    return this.#room === null || this.#room.path !== null;
  }

  #heard(heard: Heard): void {
    this.#events.heard(heard);
    const { delayChangeSeconds: change } = heard;
    const [recording, beat] = [this.#recording, this.beat];
    if (change === null || recording === null || beat === null || this.#firstBeatSeconds === null) return;
    const off = change - this.#delayChange;
    if (Math.abs(off) < DELAY_WORTH_A_WORD) return;
    this.#delayChange = change;
    // The count-in is heard again each time: what was measured long ago is put right before the first downbeat.
    if (beat < 0) return this.#setFirstBeat(this.#firstBeatSeconds + off, recording);
    const ms = Math.round(1000 * Math.abs(off));
    this.#events.notice(
      `The sound slipped by ${ms} ms at ${clockWords(heard.reading.timeSeconds)}: the notes after it are placed ${ms} ms too ${off > 0 ? 'late' : 'early'}. Close what else is running.`,
    );
  }

  #details(sampleRate: number): TakeDetails {
    const lost = this.#recording?.lost ?? [];
    return {
      ...this.#plan.details,
      sampleRate,
      firstBeatSeconds: this.#firstBeatSeconds,
      levels: this.#levels,
      ...(this.#room?.path && { path: this.#room.path }),
      ...(this.#keepsBand && { bandKept: true }),
      ...(this.#assumedRoundTrip !== null && { assumedRoundTripSeconds: this.#assumedRoundTrip }),
      ...(lost.length > 0 && { lost }),
    };
  }
}
