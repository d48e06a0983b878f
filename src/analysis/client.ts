/** The page's side of the listening worker: typed questions, answers as outcomes, one worker a job. */
import type { HeardNote } from '../core/notes/note.ts';
import type { Outcome } from '../core/outcome.ts';
import type { Report } from '../core/report/schema.ts';
import type { RoomPath } from '../core/room/band-remover.ts';
import { Requests } from '../core/requests.ts';
import type { GradingEvents, SoundToGrade } from './grade-samples.ts';
import type { AnalysisMessage, AnalysisRequest, FileLine, Heard } from './messages.ts';
import type { GradeOrder } from './order.ts';

const WORKER_GONE = 'The listener stopped by itself. What was played is kept: grade it again.';

export interface ListeningEvents {
  /** What is heard, at most 120 times a second. */
  heard(heard: Heard): void;
  /** The worker is gone; said once. The take can still be graded from its recording. */
  failed(sentence: string): void;
}

type Asked = Extract<AnalysisRequest, { readonly id: number }>;
/** A request without its number. */
type Order<R> = R extends unknown ? Omit<R, 'id'> : never;

/** One worker and the questions it was asked. */
class Line {
  readonly #requests = new Requests();
  readonly #worker: Worker;

  constructor(makeWorker: () => Worker, onMessage: (message: AnalysisMessage) => void, onGone?: () => void) {
    this.#worker = makeWorker();
    this.#worker.onmessage = ({ data }: MessageEvent<AnalysisMessage>) => {
      if (data.kind === 'answer') this.#requests.answer(data.id, data.outcome);
      else onMessage(data);
    };
    this.#worker.onerror = () => {
      this.dispose();
      onGone?.();
    };
  }

  ask<T>(order: Order<Asked>, transfer: Transferable[] = []): Promise<Outcome<T>> {
    return this.#requests.ask((id) => this.#worker.postMessage({ ...order, id }, transfer));
  }

  hop(samples: Float32Array<ArrayBuffer>, band: Float32Array<ArrayBuffer> | null): void {
    const request: AnalysisRequest = { kind: 'hop', samples, band };
    this.#worker.postMessage(request, band ? [samples.buffer, band.buffer] : [samples.buffer]);
  }

  dispose(): void {
    this.#worker.terminate();
    this.#requests.fail(WORKER_GONE);
  }
}

/** A listening that goes on while somebody plays. */
export interface Listening {
  /**
   * The samples are handed over: they can't be read afterwards.
   * @param band what the band played on the same frames, to be taken out; null where it was silent
   */
  hop(samples: Float32Array<ArrayBuffer>, band: Float32Array<ArrayBuffer> | null): void;
  /** From here on committed notes are set against the chart. */
  follow(order: GradeOrder): Promise<Outcome<void>>;
  /** Every note of the listening, ends corrected; no hop after it. */
  finish(): Promise<Outcome<readonly HeardNote[]>>;
  /** Finishes and grades: the same report as of the whole recording, without hearing it again. */
  report(order: GradeOrder): Promise<Outcome<Report>>;
  dispose(): void;
}

export class AnalysisClient {
  readonly #makeWorker: () => Worker;
  readonly #lines = new Set<Line>();

  constructor(makeWorker: () => Worker = newWorker) {
    this.#makeWorker = makeWorker;
  }

  /** @param path how the band comes back through the microphone, to be taken out; null where it does not */
  async listen(
    sampleRate: number,
    path: RoomPath | null,
    events: ListeningEvents,
  ): Promise<Outcome<Listening>> {
    const line = this.#line(
      (message) => {
        if (message.kind === 'heard') events.heard(message.heard);
      },
      () => events.failed(WORKER_GONE),
    );
    const opened = await line.ask<undefined>({ kind: 'open', sampleRate, path });
    if (!opened.ok) {
      this.#hangUp(line);
      return opened;
    }
    const listening: Listening = {
      hop: (samples, band) => line.hop(samples, band),
      follow: (order) => line.ask({ kind: 'follow', order }),
      finish: () => line.ask({ kind: 'finish' }),
      report: (order) => line.ask({ kind: 'report', order }),
      dispose: () => this.#hangUp(line),
    };
    return { ok: true, value: listening };
  }

  /** Grades a whole recording. The samples are copied, not handed over: the caller still plays and draws them. */
  async grade(
    sound: SoundToGrade,
    order: GradeOrder,
    events: GradingEvents = { progress: () => undefined, told: () => undefined },
  ): Promise<Outcome<Report>> {
    const line = this.#line((message) => {
      if (message.kind === 'progress') events.progress(message.share);
      if (message.kind === 'told') events.told(message.sentence);
    });
    const report = await line.ask<Report>({ kind: 'grade', sound, order });
    this.#hangUp(line);
    return report;
  }

  /** Grades notes that nobody has to hear. */
  async gradeNotes(
    notes: readonly HeardNote[],
    durationSeconds: number,
    order: GradeOrder,
  ): Promise<Outcome<Report>> {
    const line = this.#line(() => undefined);
    const report = await line.ask<Report>({ kind: 'grade notes', notes, durationSeconds, order });
    this.#hangUp(line);
    return report;
  }

  /** Any file that can be graded, read as the command line reads it. */
  async read(file: Blob, name: string): Promise<Outcome<FileLine>> {
    const line = this.#line(() => undefined);
    const found = await line.ask<FileLine>({ kind: 'read', file, name });
    this.#hangUp(line);
    return found;
  }

  /** Ends every job; those still open answer with a sentence. */
  dispose(): void {
    for (const line of [...this.#lines]) this.#hangUp(line);
  }

  #line(onMessage: (message: AnalysisMessage) => void, onGone?: () => void): Line {
    const line = new Line(this.#makeWorker, onMessage, onGone);
    this.#lines.add(line);
    return line;
  }

  #hangUp(line: Line): void {
    line.dispose();
    this.#lines.delete(line);
  }
}

const newWorker = () => new Worker(new URL('./listen.worker.ts', import.meta.url), { type: 'module' });
