/** The takes that are kept, and those that were cut off. */
import { failure, good, type Outcome } from '../core/base/outcome.ts';
import { readKeptReport } from '../core/kept-report.ts';
import { lineFile, reportFile } from './export-files.ts';
import { takeFromStore } from './finished-take.ts';
import type { FilesPort, TakesPort } from './ports.ts';
import type { Message, Problem } from '../core/words/problem.ts';
import { withMessage } from './messages.ts';
import type { TakeCard, TakeId, TakeMark, UnfinishedTake } from './take.ts';

export class Library {
  readonly #store: TakesPort;
  readonly #files: FilesPort;
  #turn = 0;
  #takes = $state.raw<readonly TakeCard[]>([]);
  #unfinished = $state.raw<readonly UnfinishedTake[]>([]);
  #notices = $state.raw<readonly Message[]>([]);

  constructor(ports: { readonly takes: TakesPort; readonly files: FilesPort }) {
    this.#store = ports.takes;
    this.#files = ports.files;
  }

  /** Newest first. */
  get takes(): readonly TakeCard[] {
    return this.#takes;
  }

  /** Takes that were cut off and can still be graded (`session.openTake`). */
  get unfinished(): readonly UnfinishedTake[] {
    return this.#unfinished;
  }

  /** Records that could not be read, and why the last action failed, if it did. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  async load(): Promise<void> {
    const turn = ++this.#turn;
    const [{ takes, messages }, unfinished] = await Promise.all([
      this.#store.list(),
      this.#store.unfinished(),
    ]);
    // A later call has read newer data.
    if (turn !== this.#turn) return;
    this.#takes = takes;
    this.#unfinished = unfinished;
    this.#notices = messages;
  }

  /** Names a take, or takes its name away with an empty one; stars it, or takes the star away. */
  async mark(id: TakeId, change: TakeMark): Promise<void> {
    await this.#afterwards(await this.#store.mark(id, change));
  }

  async remove(id: TakeId): Promise<void> {
    await this.#afterwards(await this.#store.remove(id));
  }

  /** Downloads the sound as WAV, the first downbeat marked by a cue point; or what was played by MIDI. */
  async exportLine(id: TakeId): Promise<Outcome<void>> {
    const take = await this.#store.open(id);
    if (!take.ok) return this.#fail(take.problem);
    const file = lineFile(takeFromStore(take.value));
    if (file !== null) this.#files.save(file.blob, file.fileName);
    return good(undefined);
  }

  /** Downloads the report as JSON. */
  async exportReport(id: TakeId): Promise<Outcome<void>> {
    const take = await this.#store.open(id);
    if (!take.ok) return this.#fail(take.problem);
    const report = readKeptReport(take.value);
    if (!report.ok) return this.#fail(report.problem);
    const { blob, fileName } = reportFile(take.value.details, report.value);
    this.#files.save(blob, fileName);
    return good(undefined);
  }

  /** The list as it is now; a failure is added after it, so that the new list does not wipe it out. */
  async #afterwards(outcome: Outcome<void>): Promise<void> {
    await this.load();
    if (!outcome.ok) this.#fail(outcome.problem);
  }

  #fail(problem: Problem): Outcome<never> {
    this.#notices = withMessage(this.#notices, problem);
    return failure(problem);
  }
}
