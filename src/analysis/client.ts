/**
 * The page's side of the listening: typed requests, answers as outcomes. Each job has a worker of its own; one worker stays,
 * to grade notes again and again.
 */
import type { RecordingTempo } from '../core/beats/recording-tempo.ts';
import type { GradeSettings } from '../core/grade-settings.ts';
import type { HeardNote } from '../core/take/note.ts';
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import type { Report } from '../core/take/schema.ts';
import type { RoomPath } from '../core/room/cancel/band-remover.ts';
import type { ReadChartFile } from '../core/files/charts/read-musicxml.ts';
import type { GradedSound, GradingEvents, SoundToGrade } from '../core/grade-samples.ts';
import type { AnalysisMessage, FileLine, Heard, Order } from './messages.ts';
import type { Problem } from '../core/words/problem.ts';
import type { GradeOrder } from '../core/grade-order.ts';
import type { GradedReturn } from '../core/take-file/grade-returned.ts';
import { gradeWhole } from './grade-whole.ts';
import { ListeningWorker, WORKER_GONE } from './listening-worker.ts';
import type { ByTheseSheets, ReturnedFile } from './returned-file.ts';

export interface ListeningEvents {
  /** What is heard, at most 120 times a second. */
  heard(heard: Heard): void;
  /** The worker of an open listening has stopped; reported once. The take can still be graded from its recording. */
  failed(problem: Problem): void;
}

/** A spare worker listens to a second of silence, so that its code is compiled. */
const WARM_RATE = 48_000;
const WARM_HOP_FRAMES = 4800;
const WARM_HOPS = 10;
/** The next spare worker warms up after the count-in, when that disturbs nothing. */
const WARM_AGAIN_MS = 8000;

/** What listens while somebody plays. */
export interface Listening {
  /**
   * The samples are transferred: they can't be read afterwards.
   * @param band what the band played on the same frames, to be removed; null where it was silent
   */
  hop(samples: Float32Array<ArrayBuffer>, band: Float32Array<ArrayBuffer> | null): void;
  /** From here on, notes that are settled are graded by the chart. */
  follow(order: GradeOrder): Promise<Outcome<void>>;
  /** Every note of the listening, ends corrected; no hop after it. */
  finish(): Promise<Outcome<readonly HeardNote[]>>;
  /** Finishes and grades: the same report as for the whole recording, without listening to it again. */
  report(order: GradeOrder): Promise<Outcome<GradedSound>>;
  dispose(): void;
}

/** A worker that grades the files of a class one after the other. */
export interface ClassGrader {
  /** False once its worker has failed: the next file needs another. */
  readonly alive: boolean;
  grade(returned: ReturnedFile, by: ByTheseSheets): Promise<Outcome<GradedReturn>>;
  /** What is being graded then fails. */
  dispose(): void;
}

export class AnalysisClient {
  readonly #makeWorker: () => Worker;
  readonly #busy = new Set<ListeningWorker>();
  /** A worker that is loaded and waits for the next job; only once `warm` was called. */
  #spare: ListeningWorker | null = null;
  /** Loaded as well: it becomes the spare worker when a job has taken that. */
  #reserve: ListeningWorker | null = null;
  #keepsWarm = false;
  /** The spare worker that has warmed up. */
  #warmed: ListeningWorker | null = null;
  /** A worker that grades notes, once some were. */
  #grader: ListeningWorker | null = null;

  constructor(makeWorker: () => Worker = newWorker) {
    this.#makeWorker = makeWorker;
  }

  /** From now on a worker stands ready, so that a listening opens at once. */
  warm(): void {
    this.#keepsWarm = true;
    this.#warmSpare();
    if (this.#reserve?.alive !== true) this.#reserve = new ListeningWorker(this.#makeWorker);
  }

  #warmSpare(): void {
    const spare = this.#readySpare();
    if (this.#warmed === spare) return;
    this.#warmed = spare;
    // A moment of silence, so that the machine has compiled the listener before somebody plays.
    void this.#load(spare);
    for (let hop = 0; hop < WARM_HOPS; hop++) spare.hop(new Float32Array(WARM_HOP_FRAMES), null);
  }

  /** The spare worker; where there is none, the one in reserve becomes it, or a new one. */
  #readySpare(): ListeningWorker {
    if (this.#spare?.alive === true) return this.#spare;
    this.#spare = this.#reserve?.alive === true ? this.#reserve : new ListeningWorker(this.#makeWorker);
    this.#reserve = null;
    return this.#spare;
  }

  /** @param path how the band comes back through the microphone, to be taken out; null where it does not */
  async listen(
    sampleRate: number,
    path: RoomPath | null,
    events: ListeningEvents,
  ): Promise<Outcome<Listening>> {
    let open = false;
    const spare = this.#takeSpare();
    const worker = this.#workerFor(
      (message) => {
        // What a spare worker heard while it warmed up is ignored.
        if (message.kind === 'heard' && open) events.heard(message.heard);
      },
      // One that stops while it opens is the answer to that.
      () => open && events.failed(WORKER_GONE),
      spare,
    );
    const opened = await this.#open(worker, sampleRate, path);
    if (!opened.ok) {
      this.#end(worker);
      return opened;
    }
    open = true;
    const listening: Listening = {
      hop: (samples, band) => worker.hop(samples, band),
      follow: (order) => worker.ask({ kind: 'follow', order }),
      finish: () => worker.ask({ kind: 'finish' }),
      report: (order) => worker.ask({ kind: 'report', order }),
      dispose: () => this.#end(worker),
    };
    return good(listening);
  }

  /** Opens a listening; where a worker is to stand ready, fails too where the one that will grade the take does not load. */
  async #open(
    worker: ListeningWorker,
    sampleRate: number,
    path: RoomPath | null,
  ): Promise<Outcome<undefined>> {
    const opened = await worker.ask<undefined>({ kind: 'open', sampleRate, path });
    if (!opened.ok || !this.#keepsWarm) return opened;
    // It is loaded before the take begins: its server may be gone by the end.
    const loaded = await this.#load(this.#readySpare());
    if (!loaded.ok) return loaded;
    setTimeout(() => this.#keepsWarm && this.#warmSpare(), WARM_AGAIN_MS);
    return worker.alive ? opened : failure(WORKER_GONE);
  }

  /**
   * Grades a whole recording. The samples are copied, not transferred, because the caller still plays and draws them; a take
   * that may hold its band, piece by piece.
   */
  async grade(
    sound: SoundToGrade,
    order: GradeOrder,
    events: GradingEvents = { progress: () => undefined, message: () => undefined },
    signal?: AbortSignal,
  ): Promise<Outcome<GradedSound>> {
    const worker = this.#workerFor(
      (message) => {
        if (message.kind === 'progress') events.progress(message.share);
        if (message.kind === 'message') events.message(message.message);
      },
      undefined,
      this.#takeSpare(),
    );
    const end = () => this.#end(worker);
    const graded = await untilStopped(() => gradeWhole(sound, order, worker), end, signal);
    end();
    if (this.#keepsWarm) this.warm();
    return graded;
  }

  /** Grades notes that are known without listening. */
  async gradeNotes(
    notes: readonly HeardNote[],
    source: GradeSettings['source'],
    order: GradeOrder,
    signal?: AbortSignal,
  ): Promise<Outcome<Report>> {
    // Notes are graded again with each correction: the worker stays, because to load it takes longer than to grade.
    if (this.#grader?.alive !== true) this.#grader = this.#workerFor(() => undefined);
    const grader = this.#grader;
    const ask = () => grader.ask<Report>({ kind: 'grade notes', notes, source, order });
    return untilStopped(ask, () => this.#end(grader), signal);
  }

  /** A worker of its own for the files of a class. */
  openGrader(): ClassGrader {
    const worker = this.#workerFor(() => undefined);
    return {
      get alive() {
        return worker.alive;
      },
      grade: (returned, by) => worker.ask<GradedReturn>({ kind: 'grade returned', returned, by }),
      dispose: () => this.#end(worker),
    };
  }

  /**
   * Any file that can be graded, read as the command line reads it; as a backing with what left and right differ by.
   */
  read(file: Blob, name: string, asBacking = false, signal?: AbortSignal): Promise<Outcome<FileLine>> {
    return this.#askOnce({ kind: 'read', file, name, asBacking }, signal);
  }

  /** The chart in a file of any kind that holds one. */
  readChart(file: Blob, name: string, signal?: AbortSignal): Promise<Outcome<ReadChartFile>> {
    return this.#askOnce({ kind: 'read chart', file, name }, signal);
  }

  /** What a line that was read says of its tempo; null where it says nothing. */
  tempo(line: FileLine, expectedBpm: number, signal?: AbortSignal): Promise<Outcome<RecordingTempo | null>> {
    return this.#askOnce({ kind: 'tempo', line, expectedBpm }, signal);
  }

  /** Ends every job; those still open fail. */
  dispose(): void {
    for (const worker of [...this.#busy]) this.#end(worker);
    this.#grader = null;
    this.#keepsWarm = false;
    for (const worker of [this.#spare, this.#reserve]) worker?.dispose();
    this.#spare = null;
    this.#reserve = null;
  }

  /** Answers once the worker has loaded. */
  #load(worker: ListeningWorker): Promise<Outcome<undefined>> {
    return worker.ask<undefined>({ kind: 'open', sampleRate: WARM_RATE, path: null });
  }

  /** The worker that stands ready, if one does. */
  #takeSpare(): ListeningWorker | null {
    const spare = this.#spare?.alive === true ? this.#spare : null;
    this.#spare = null;
    return spare;
  }

  #workerFor(
    onMessage: (message: AnalysisMessage) => void,
    onGone?: () => void,
    spare: ListeningWorker | null = null,
  ): ListeningWorker {
    const worker = spare ?? new ListeningWorker(this.#makeWorker);
    worker.take(onMessage, onGone);
    this.#busy.add(worker);
    return worker;
  }

  /** One job for a worker of its own, which ends with the job, or when the player stops it. */
  async #askOnce<T>(order: Order, signal?: AbortSignal): Promise<Outcome<T>> {
    const worker = this.#workerFor(() => undefined);
    const end = () => this.#end(worker);
    const answer = await untilStopped(() => worker.ask<T>(order), end, signal);
    end();
    return answer;
  }

  #end(worker: ListeningWorker): void {
    worker.dispose();
    this.#busy.delete(worker);
  }
}

/** The answer to what is asked; `end` is called when the signal is raised, and makes the answer a failure. */
async function untilStopped<T>(ask: () => Promise<T>, end: () => void, signal?: AbortSignal): Promise<T> {
  const asked = ask();
  if (signal?.aborted) end();
  signal?.addEventListener('abort', end);
  const answer = await asked;
  signal?.removeEventListener('abort', end);
  return answer;
}

const newWorker = () => new Worker(new URL('./listen.worker.ts', import.meta.url), { type: 'module' });
