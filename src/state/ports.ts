/**
 * What the state classes need from the outside world, in their own words. `main.ts` fills these in with the
 * real audio, worker and storage; the unit tests fill them in with fakes. Nothing here is a browser object.
 */
import type { GradeOrder } from '../analysis/order.ts';
import type { Hop, Microphone } from '../audio/capture.ts';
import type { BandClock } from '../audio/clock.ts';
import type { BandPart } from '../core/band/events.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { HeardNote, LiveReading } from '../core/notes/note.ts';
import type { Outcome } from '../core/outcome.ts';
import type { Report } from '../core/report/schema.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { StoredTake, TakeCard, TakeDetails, TakeId, TakeSummary, UnfinishedTake } from './take.ts';

/** Mono samples as they are kept: 16-bit, so that an exported take is graded from the very same numbers. */
export interface TakeAudio {
  readonly samples: Int16Array;
  readonly sampleRate: number;
}

/** An open input, in one hand: hops come to `onHop` until `dispose()`. */
export interface InputEvents {
  onHop(hop: Hop): void;
  /** Called once when the microphone is gone. */
  onLost(sentence: string): void;
}

/** Level of each part of the band and of the whole, in dB: -60 is silent, 0 the part's own balance. */
export type BandLevels = Readonly<Record<BandPart | 'all', number>>;

/** A band that is ready to play one chart. */
export interface OpenBand {
  /** Starts the count-in; answers with the clock of this run. */
  start(): BandClock;
  setLevels(levels: BandLevels): void;
  dispose(): void;
}

/** Plays a recorded take back. */
export interface OpenPlayer {
  readonly durationSeconds: number;
  play(fromSeconds: number): void;
  pause(): void;
  positionSeconds(): number;
  onEnded(listener: () => void): void;
  dispose(): void;
}

export interface AudioPort {
  /** Wakes the audio clock; needs a user's gesture the first time. */
  wake(): Promise<Outcome<void>>;
  /** The microphone, with the band's bus recorded beside it where a band is open. */
  openMicrophone(events: InputEvents): Promise<Outcome<Microphone>>;
  openBand(timeline: Timeline, settings: BandSettings, levels: BandLevels): Promise<Outcome<OpenBand>>;
  openPlayer(audio: TakeAudio): Promise<Outcome<OpenPlayer>>;
  /** The moment of the audio clock that reaches the ear now, in seconds. */
  heardSeconds(): number;
  /** What the browser admits to between the clock and the ear, and between the string and the clock, together. */
  assumedRoundTripSeconds(): number;
  /** The demo line, rendered afresh. `firstBeatSeconds` is where its first downbeat lies. */
  renderDemo(timeline: Timeline): Promise<Outcome<TakeAudio & { readonly firstBeatSeconds: number }>>;
  /** Any audio file the browser can read, as mono. */
  decode(bytes: ArrayBuffer, fileName: string): Promise<Outcome<TakeAudio>>;
}

/** One listening in the worker: hops in, readings and committed notes out. */
export interface LiveListener {
  /** The samples are handed over: they can't be read afterwards. */
  hop(samples: Float32Array<ArrayBuffer>): void;
  dispose(): void;
}

export interface LiveListenerEvents {
  reading(reading: LiveReading): void;
  /** Notes that the listener has committed since the last call. */
  notes(notes: readonly HeardNote[]): void;
  failed(sentence: string): void;
}

export interface AnalysisPort {
  listen(sampleRate: number, events: LiveListenerEvents): Promise<Outcome<LiveListener>>;
  /** @param progress called with a share, 0 to 1 */
  grade(audio: TakeAudio, order: GradeOrder, progress: (share: number) => void): Promise<Outcome<Report>>;
}

/** A take being written while it is played. Every verb answers; none throws. */
export interface TakeWriter {
  readonly id: TakeId;
  append(samples: Int16Array): void;
  setFirstBeat(seconds: number): void;
  /** null when the whole take is safe, else what stopped the writing. */
  finish(): Promise<string | null>;
}

export interface TakesPort {
  /** @param onFull called at most once, when nothing more can be written; the caller goes on in memory */
  begin(details: TakeDetails, onFull: (sentence: string) => void): Promise<Outcome<TakeWriter>>;
  saveReport(id: TakeId, report: Report, summary: TakeSummary): Promise<Outcome<void>>;
  list(): Promise<{ readonly takes: readonly TakeCard[]; readonly sentences: readonly string[] }>;
  unfinished(): Promise<readonly UnfinishedTake[]>;
  open(id: TakeId): Promise<Outcome<StoredTake>>;
  rename(id: TakeId, title: string): Promise<Outcome<void>>;
  remove(id: TakeId): Promise<Outcome<void>>;
}

/** Settings as one record; what was stored may be older or broken, the store mends or says so. */
export interface SettingsPort<T> {
  load(): Promise<{ readonly value: T; readonly sentences: readonly string[] }>;
  save(value: T): void;
}

/** The display's frames. Answers with the verb that stops them. */
export interface FramesPort {
  each(draw: () => void): () => void;
}

/** Hands a file to the player, as a download. */
export interface FilesPort {
  save(blob: Blob, fileName: string): void;
}
