/**
 * What the worker does, without the worker: takes requests and sends messages. The worker file and the tests both use
 * this. The pipeline is the core's, the same that the command line runs, so the notes are the same.
 */
import { tempoOfOnsets, tempoOfSound, type RecordingTempo } from '../core/beats/recording-tempo.ts';
import { isAudio, openAudioOfKind, readWhole } from '../core/files/audio.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { readBacking } from '../core/files/read-backing.ts';
import { readChartFile } from '../core/files/charts/read-chart-file.ts';
import type { ReadChartFile } from '../core/files/charts/read-musicxml.ts';
import { readList } from '../core/files/read-list.ts';
import { sniff } from '../core/files/sniff.ts';
import { Listener } from '../core/listen.ts';
import type { HeardNote } from '../core/take/note.ts';
import { MOST_SCORE_BYTES } from '../core/base/limits.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import { BandRemover, type RoomPath } from '../core/room/cancel/band-remover.ts';
import { ROOM_HZ } from '../core/room/align/room-rate.ts';
import { AimSoFar, type AimCount } from './aim-so-far.ts';
import { LandingsSoFar } from './landings-so-far.ts';
import { timelineOf } from '../core/timeline-of-order.ts';
import { choiceOf, type GradeOrder } from '../core/grade-order.ts';
import {
  factsOf,
  gradeHeard,
  gradeNotes,
  gradeSearched,
  gradeSound,
  withHeard,
  type GradedSound,
  type GradingEvents,
} from '../core/grade-samples.ts';
import { BandSearch } from './band-search.ts';
import { blobBytes, isUnreadable } from './blob-source.ts';
import type { AnalysisMessage, AnalysisRequest, FileLine, LandingsFrom } from './messages.ts';
import { gradeReturnedFile } from './returned-file.ts';

/** Least time between two messages about what is heard: one for every hop of a microphone. */
const READINGS_PER_SECOND = 120;

export type Post = (message: AnalysisMessage, transfer?: Transferable[]) => void;

export class AnalysisSession {
  readonly #post: Post;
  #listener: Listener | null = null;
  #remover: BandRemover | null = null;
  #search: BandSearch | null = null;
  #landings: LandingsSoFar | null = null;
  #aim: AimSoFar | null = null;
  /** Notes that had ended when the landings were last looked at, and the one that still sounded. */
  #ended = 0;
  #standing: HeardNote | null = null;
  #sampleRate = 1;
  /** Samples taken since the page was last told what is heard. */
  #untold = 0;
  /** Samples taken in all. */
  #taken = 0;

  constructor(post: Post) {
    this.#post = post;
  }

  /**
   * Takes a request; resolves once it is answered. An error is sent as the answer; a hop has none, so that its error is
   * thrown at once, which ends the worker: notes would be missing from a listening that went on.
   */
  handle(request: AnalysisRequest): Promise<void> {
    if (request.kind !== 'hop') return this.#answerTo(request);
    this.#hop(request.samples, request.band);
    return Promise.resolve();
  }

  async #answerTo(request: Exclude<AnalysisRequest, { kind: 'hop' }>): Promise<void> {
    const { id } = request;
    let outcome: Outcome<unknown>;
    try {
      outcome = await this.#answer(request);
    } catch (error) {
      outcome =
        'name' in request && isUnreadable(error)
          ? bad('file.gone', { name: request.name })
          : bad('listener.failed', { reason: String(error) });
    }
    const line = request.kind === 'read' && outcome.ok ? (outcome.value as FileLine) : null;
    this.#post({ kind: 'answer', id, outcome }, line?.kind === 'sound' ? [line.samples.buffer] : []);
  }

  #answer(request: Exclude<AnalysisRequest, { kind: 'hop' }>): Outcome<unknown> | Promise<Outcome<unknown>> {
    switch (request.kind) {
      case 'open':
        return this.#open(request.sampleRate, request.path);
      case 'follow':
        return this.#follow(request.order);
      case 'finish':
        return this.#finish();
      case 'report':
        return this.#report(request.order);
      case 'grade':
        return gradeSound(request.sound, request.order, this.#eventsOf(request.id));
      case 'search piece':
        this.#search ??= new BandSearch(request.whole);
        this.#search.push(request.take, request.band);
        return good(undefined);
      case 'grade searched':
        return this.#gradeSearched(request);
      case 'grade notes':
        return gradeNotes(request.notes, request.source, request.order);
      case 'grade returned':
        return gradeReturnedFile(request.returned, request.by, (share) =>
          this.#post({ kind: 'progress', id: request.id, share }),
        );
      case 'tempo':
        return good(tempoOfLine(request.line, request.expectedBpm));
      case 'read':
        return readLine(blobBytes(request.file, request.name), request.asBacking === true);
      case 'read chart':
        return readChart(request.file, request.name);
    }
  }

  #eventsOf(id: number): GradingEvents {
    return {
      progress: (share) => this.#post({ kind: 'progress', id, share }),
      message: (message) => this.#post({ kind: 'message', id, message }),
    };
  }

  #gradeSearched({ id, order, known }: Extract<AnalysisRequest, { kind: 'grade searched' }>) {
    const search = this.#search;
    this.#search = null;
    if (search === null) return bad('listener.notOpen');
    return gradeSearched(search.finish(), order, known, this.#eventsOf(id));
  }

  #open(sampleRate: number, path: RoomPath | null): Outcome<void> {
    if (!(sampleRate >= 8000 && sampleRate <= 192_000)) return bad('listener.sampleRate', { hz: sampleRate });
    this.#remover = path && new BandRemover(sampleRate, path);
    this.#listener = new Listener({ sampleRate: path ? ROOM_HZ : sampleRate });
    this.#sampleRate = sampleRate;
    this.#landings = null;
    this.#aim = null;
    this.#ended = 0;
    this.#standing = null;
    this.#untold = 0;
    this.#taken = 0;
    return good(undefined);
  }

  #follow(order: GradeOrder): Outcome<void> {
    const timeline = timelineOf(order);
    if (!timeline.ok) return timeline;
    this.#landings = new LandingsSoFar(timeline.value, order.reference);
    const [aim] = choiceOf(order).aims ?? [];
    this.#aim = aim === undefined ? null : new AimSoFar(aim, timeline.value);
    return good(undefined);
  }

  #hop(samples: Float32Array, band: Float32Array | null): void {
    // A hop that comes before `open` or after `finish` belongs to no take.
    if (this.#listener === null) return;
    this.#listener.push(this.#remover ? this.#remover.push(samples, band) : samples);
    this.#taken += samples.length;
    this.#untold += samples.length;
    if (this.#untold < this.#sampleRate / READINGS_PER_SECOND) return;
    this.#untold = 0;
    const { reading } = this.#listener;
    const notes = this.#listener.takeNotes();
    const landings = this.#landingsAfter(this.#listener, notes);
    const aim: AimCount | null = landings === null ? null : (this.#aim?.count ?? null);
    const referenceHz = this.#landings?.referenceHz ?? null;
    const delayChangeSeconds = this.#remover?.delayChangeSeconds ?? null;
    this.#post({ kind: 'heard', heard: { reading, notes, landings, aim, referenceHz, delayChangeSeconds } });
  }

  /** The landings that have changed since they were last told, or null where none has. */
  #landingsAfter({ ended }: Listener, fresh: readonly HeardNote[]): LandingsFrom | null {
    if (this.#landings === null || (fresh.length === 0 && ended.length === this.#ended)) return null;
    this.#ended = ended.length;
    this.#standing = fresh.at(-1) ?? this.#standing;
    const lastEnded = ended.at(-1)?.onsetSeconds ?? -Infinity;
    if (this.#standing && this.#standing.onsetSeconds <= lastEnded) this.#standing = null;
    this.#landings.update(ended, this.#standing);
    this.#aim?.update(ended, this.#standing, this.#landings.referenceHz);
    return this.#landings.changed;
  }

  #finish(): Outcome<readonly HeardNote[]> {
    if (this.#listener === null) return bad('listener.notOpen');
    if (this.#remover) this.#listener.push(this.#remover.finish());
    const notes = this.#listener.finish();
    this.#listener = null;
    return good(notes);
  }

  #report(order: GradeOrder): Outcome<GradedSound> {
    const notes = this.#finish();
    if (!notes.ok) return notes;
    const taken = { samples: { length: this.#taken }, sampleRate: this.#sampleRate };
    const facts = this.#remover ? { backing: factsOf(this.#remover) } : {};
    return withHeard(notes.value, gradeHeard(notes.value, taken, order, facts));
  }
}

/** So much of a line without a pulse is listened to for its onsets, seconds: a player waits for it. */
const LISTENED_TO_SECONDS = 40;

/** By what plays in it, where something does; else by the onsets of its notes. */
function tempoOfLine(line: FileLine, expectedBpm: number): RecordingTempo | null {
  if (line.kind === 'notes')
    return tempoOfOnsets(
      line.notes.map(({ onsetSeconds }) => onsetSeconds),
      expectedBpm,
    );
  const found = tempoOfSound(line.samples, line.sampleRate);
  if (found !== null) return found;
  const listener = new Listener({ sampleRate: line.sampleRate });
  listener.push(line.samples.subarray(0, LISTENED_TO_SECONDS * line.sampleRate));
  return tempoOfOnsets(
    listener.finish().map(({ onsetSeconds }) => onsetSeconds),
    expectedBpm,
  );
}

async function readLine(source: ByteSource, asBacking: boolean): Promise<Outcome<FileLine>> {
  const kind = await sniff(source);
  if (!kind.ok) return kind;
  if (!isAudio(kind.value)) {
    const line = await readList(source, kind.value);
    return line.ok ? good({ kind: 'notes', ...line.value }) : line;
  }
  if (asBacking) {
    const backing = await readBacking(source);
    return backing.ok ? good(soundOf(backing.value)) : backing;
  }
  const file = await openAudioOfKind(source, kind.value);
  if (!file.ok) return file;
  const whole = await readWhole(file.value, source.name);
  if (!whole.ok) return whole;
  return good(soundOf(whole.value));
}

async function readChart(file: Blob, name: string): Promise<Outcome<ReadChartFile>> {
  // What is larger is not even taken into memory.
  if (file.size > MOST_SCORE_BYTES) return bad('chartFile.tooLong', { name });
  return readChartFile(new Uint8Array(await file.arrayBuffer()), name);
}

/** A copy with a buffer of its own length: the buffer of a view may be larger, and would be transferred as a whole. */
const soundOf = <T extends { readonly samples: Float32Array }>(whole: T) => ({
  kind: 'sound' as const,
  ...whole,
  samples: new Float32Array(whole.samples),
});
