/**
 * What the state classes need from the outside world, in their own words. `main.ts` fills these in with the
 * real audio, worker and storage; the unit tests fill them in with fakes. Nothing here is a browser object.
 */
import type { GradedSound, GradingEvents, Sound, SoundToGrade } from '../core/grade-samples.ts';
import type { FileLine, Heard } from '../analysis/messages.ts';
import type { GradeOrder } from '../core/grade-order.ts';
import type { Microphone, MicrophoneEvents } from '../audio/microphone/capture.ts';
import type { BackingRun, BackingSource, ChordSearch, OpenBacking } from '../audio/backing/backing-sounds.ts';
import type { BandClock } from '../audio/base/clock.ts';
import type { DeviceChoice } from '../audio/devices/devices.ts';
import type { NotesToPlay } from '../audio/playback/notes-line.ts';
import type { PlayingSounds } from '../audio/playback/play-sounds.ts';
import type { TakePlayer } from '../audio/playback/take-player.ts';
import type { RecordingTempo } from '../core/beats/recording-tempo.ts';
import type { BandPart } from '../core/band/events.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { FeelName } from '../core/chart/feel-names.ts';
import type { GradeSettings } from '../core/grade-settings.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { PlayedMessage } from '../core/midi/played-notes.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { RoomPath } from '../core/room/cancel/band-remover.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { BackingRecord } from '../storage/backing-record.ts';
import type { ChartRecord } from '../storage/records.ts';
import type { Report } from '../core/take/schema.ts';
import type { KeptReport } from '../core/kept-notes.ts';
import type { DevicePair, MeasuredRoom } from './measured-room.ts';
import type { Message, Problem } from '../core/words/problem.ts';
import type {
  StoredTake,
  TakeCard,
  TakeDetails,
  TakeId,
  TakeMark,
  TakeSummary,
  UnfinishedTake,
} from './take.ts';

export type TakeAudio = Sound;

/** Level of each part of the band and of the whole, in dB: -60 is silent, 0 the part's own balance. */
export type BandLevels = Readonly<Record<BandPart | 'all', number>>;

/** A band that is ready to play one chart. */
export interface OpenBand {
  /** Starts the count-in; answers with the clock of this run. */
  start(): BandClock;
  setLevels(levels: BandLevels): void;
  /** The same from both speakers: then one path leads to the microphone, the one that a sweep measures. */
  playInMono(mono: boolean): void;
  /** Called once when the band falls silent by itself. */
  onFailed(listener: (problem: Problem) => void): void;
  dispose(): void;
}

/** The band that plays along with a take that is heard again. */
export interface Accompaniment {
  readonly timeline: Timeline;
  readonly settings: BandSettings;
  readonly levels: BandLevels;
  /** Where the first downbeat lies in the take. */
  readonly firstBeatSeconds: number;
  /** The recording that was played to, in the band's place. */
  readonly backing?: BackingRun;
}

export type { NotesToPlay } from '../audio/playback/notes-line.ts';
export type { Passage } from '../audio/playback/take-player.ts';
export type { BackingRun, BackingSource, ChordSearch, OpenBacking } from '../audio/backing/backing-sounds.ts';

/** A recording to be played in the band's place. */
export interface BackingToPlay extends BackingRun {
  /** The share that is rendered. */
  progress(share: number): void;
}

/** Plays a take back. */
export interface OpenPlayer extends Pick<
  TakePlayer,
  'durationSeconds' | 'play' | 'pause' | 'positionSeconds' | 'setTakeLevelDb' | 'onEnded' | 'dispose'
> {
  setBandLevels(levels: BandLevels): void;
}

export interface AudioPort {
  /** Starts the audio clock; the first time it needs a user's gesture. */
  wake(): Promise<Outcome<void>>;
  /** The microphone, with the band's bus recorded beside it where a band is open. */
  openMicrophone(events: MicrophoneEvents, deviceId: string | null): Promise<Outcome<Microphone>>;
  /** What is plugged in; no outputs where the browser does not offer a choice. */
  devices(): Promise<{ readonly inputs: readonly DeviceChoice[]; readonly outputs: readonly DeviceChoice[] }>;
  /** Returns a function that stops it. */
  onDevicesChanged(listener: () => void): () => void;
  /**
   * Whether this input can be opened with nothing asked of the player: 'closed' where the browser would ask the
   * player, 'asleep' where the page has to be touched first.
   */
  mayOpen(input: 'microphone' | 'midi'): Promise<'yes' | 'closed' | 'asleep'>;
  /** null is the system's own choice. */
  chooseOutput(deviceId: string | null): Promise<Outcome<void>>;
  /** The name of the output that sounds when this one is chosen. */
  outputName(deviceId: string | null): Promise<string>;
  /** Sounds one after the other, silence between them. */
  playSounds(sounds: readonly Float32Array<ArrayBuffer>[], gapSeconds: number): PlayingSounds;
  /** @param backing plays in the band's place; the settings then only count in */
  openBand(
    timeline: Timeline,
    settings: BandSettings,
    levels: BandLevels,
    backing?: BackingToPlay,
  ): Promise<Outcome<OpenBand>>;
  /** A recording of the player's own, to be looked at and listened to; the signal ends the reading at once. */
  openBacking(source: BackingSource, signal?: AbortSignal): Promise<Outcome<OpenBacking>>;
  /** A search for the chords of a recording that is not played here. */
  searchChords(source: BackingSource): ChordSearch;
  /** Renders ahead what will be played, so that it starts at once. */
  prepareBacking(run: BackingRun): void;
  /** Notes are rendered on a sound of the kit while they play. */
  openPlayer(line: TakeAudio | NotesToPlay, band: Accompaniment | null): OpenPlayer;
  /** The moment of the audio clock that reaches the ear now, in seconds. */
  heardSeconds(): number;
  /** The round trip where no sound check has measured it: see `assumedRoundTripSeconds` in core/take/round-trip.ts. */
  assumedRoundTripSeconds(): number;
  /**
   * Notes on a sound of the kit, from second 0 on.
   * @param instrument id of the instrument whose sound is wanted; the guitar's where it is left out
   */
  renderNotes(
    notes: readonly HeardNote[],
    durationSeconds: number,
    instrument?: string,
  ): Promise<Outcome<TakeAudio>>;
  /** The demo line, rendered afresh. */
  renderDemo(): Promise<Outcome<DemoTake>>;
}

/** A rendered line with the setup it was written for. */
export interface DemoTake {
  readonly title: string;
  readonly chartText: string;
  readonly key: string;
  readonly bpm: number;
  readonly feel: FeelName;
  readonly swing: number;
  readonly firstBeatSeconds: number;
  readonly audio: TakeAudio;
}

/** One listening in the worker. */
export interface LiveListener {
  /** The samples are handed over: they can't be read afterwards. */
  hop(samples: Float32Array<ArrayBuffer>, band: Float32Array<ArrayBuffer> | null): void;
  /** From here on committed notes are set against the chart. */
  follow(order: GradeOrder): Promise<Outcome<void>>;
  /** The report of all that was heard: the same as of the whole recording. No hop after it. */
  report(order: GradeOrder): Promise<Outcome<GradedSound>>;
  dispose(): void;
}

export interface LiveListenerEvents {
  heard(heard: Heard): void;
  failed(problem: Problem): void;
}

/** Work that takes its time ends at once where its signal is raised; its answer is a problem then. */
export interface AnalysisPort {
  /** @param path how the band comes back through the microphone, to be taken out; null where it does not */
  listen(
    sampleRate: number,
    path: RoomPath | null,
    events: LiveListenerEvents,
  ): Promise<Outcome<LiveListener>>;
  /** Any file that can be graded: sound as one line of samples, or a line that is written down. */
  read(file: Blob, name: string, asBacking?: boolean, signal?: AbortSignal): Promise<Outcome<FileLine>>;
  /** What a line that was read says of its tempo; null where it says nothing. */
  tempo(line: FileLine, expectedBpm: number, signal?: AbortSignal): Promise<Outcome<RecordingTempo | null>>;
  /** Takes out what is to be taken out, listens, and grades. */
  grade(
    sound: SoundToGrade,
    order: GradeOrder,
    events: GradingEvents,
    signal?: AbortSignal,
  ): Promise<Outcome<GradedSound>>;
  /** Grades notes that are known without listening: played by MIDI, read from a file, or heard before. */
  gradeNotes(
    notes: readonly HeardNote[],
    source: GradeSettings['source'],
    order: GradeOrder,
    signal?: AbortSignal,
  ): Promise<Outcome<Report>>;
}

/** A take being written while it is played. No method throws; failures are answers. */
export interface TakeWriter {
  readonly id: TakeId;
  /** How much from the first sample on is safe on the disk. */
  readonly frames: number;
  /** @param band what the band played on the same frames; null where it was silent, or is not kept */
  append(samples: Int16Array, band: Int16Array | null): void;
  /** What has become known about the take. */
  change(details: Partial<TakeDetails>): void;
  /** null when the whole take is safe, else what stopped the writing. */
  finish(): Promise<Problem | null>;
}

/** The same for a take on a MIDI instrument. */
export interface NotesWriter {
  readonly id: TakeId;
  append(message: PlayedMessage): void;
  change(details: Partial<TakeDetails>): void;
  finish(durationSeconds: number): Promise<Problem | null>;
}

export interface TakesPort {
  /** @param onFull called at most once, when nothing more can be written; the caller goes on in memory */
  begin(details: TakeDetails, onFull: (problem: Problem) => void): Promise<Outcome<TakeWriter>>;
  beginNotes(details: TakeDetails, onFull: (problem: Problem) => void): Promise<Outcome<NotesWriter>>;
  /** @param change what the grading found out about the take */
  saveReport(
    id: TakeId,
    report: KeptReport,
    summary: TakeSummary,
    change?: Partial<TakeDetails>,
  ): Promise<Outcome<void>>;
  list(): Promise<{ readonly takes: readonly TakeCard[]; readonly messages: readonly Message[] }>;
  unfinished(): Promise<readonly UnfinishedTake[]>;
  open(id: TakeId): Promise<Outcome<StoredTake>>;
  mark(id: TakeId, change: TakeMark): Promise<Outcome<void>>;
  remove(id: TakeId): Promise<Outcome<void>>;
  /** Removes the sound and keeps all else. */
  removeSound(id: TakeId): Promise<Outcome<void>>;
  /** Bytes that the sound of a take needs. */
  soundBytes(id: TakeId): Promise<number>;
}

/** A chart that the player keeps. */
export type KeptChart = ChartRecord;

export interface ChartsPort {
  /** By title. */
  list(): Promise<{ readonly charts: readonly KeptChart[]; readonly messages: readonly Message[] }>;
  save(chart: KeptChart): Promise<Outcome<void>>;
  remove(id: string): Promise<Outcome<void>>;
}

/** The player's own recordings. */
export interface BackingsPort {
  /** By title. */
  list(): Promise<{ readonly backings: readonly BackingRecord[]; readonly messages: readonly Message[] }>;
  save(record: BackingRecord): Promise<Outcome<void>>;
  keepFile(id: string, file: Blob): Promise<Outcome<void>>;
  file(id: string): Promise<Outcome<Blob>>;
  remove(id: string): Promise<Outcome<void>>;
}

/** What the sound check is told of the devices that are plugged in. */
export interface RoomsPort {
  readonly inputId: string | null;
  readonly outputId: string | null;
  /** The measurement of this pair, by the names of the devices; null where there is none. */
  find(input: string, output: string): MeasuredRoom | null;
  /** Whether other pairs have been measured. */
  readonly knowsOthers: boolean;
  /** Sets the round trip of a pair by hand. */
  setDelay(of: DevicePair & { readonly delaySeconds: number | null }, today: Date): void;
}

/** Settings as one record; what was stored may be older or broken; the store replaces such a field and tells of it. */
export interface SettingsPort<T> {
  load(): Promise<{ readonly value: T; readonly messages: readonly Message[] }>;
  save(value: T): void;
}

export type { KeptSite as SitePort } from '../storage/kept-site.ts';

/** The display's frames. Returns a function that stops them. */
export interface FramesPort {
  each(draw: () => void): () => void;
}

/** Hands a file to the player, as a download. */
export interface FilesPort {
  save(blob: Blob, fileName: string): void;
}
