/**
 * What the player corrects of the take in review: its notes, with undo, and what it is graded by. Each is graded after the
 * one before and kept with the take at once.
 */
import type { Outcome } from '../core/base/outcome.ts';
import { correctNotes, type CorrectedNotes } from '../core/correct/correct-notes.ts';
import { notesOfReport } from '../core/kept-notes.ts';
import type { HeardNote } from '../core/take/note.ts';
import { correctionsOf, type Correction } from '../core/take/correction.ts';
import { edited, redo, undo, undoAll, type EditHistory } from '../core/correct/edit-history.ts';
import type { Message } from '../core/words/problem.ts';
import { gradeWithDetails, type GradingPorts } from './grade-and-keep.ts';
import type { Review } from './phase.ts';
import type { TakeDetails } from './take.ts';

/** Where a note stands in a report: in `notes`, which count, or in `doubtful`. */
export interface PlaceInReport {
  readonly counts: boolean;
  readonly index: number;
}

export interface CorrectionEvents {
  /** The take as it stands now; null where it is no longer in review. */
  review(): Review | null;
  graded(review: Review): void;
  message(message: Message): void;
}

/** Why a correction was not made. */
export type Refusal = CorrectedNotes['leftOut'][number]['why'];

const NOTHING: EditHistory = { done: [], undone: [] };

export class TakeCorrections {
  readonly #ports: GradingPorts;
  readonly #events: () => CorrectionEvents;
  /** What is asked for; the review has it as soon as it is graded. null: what is kept with the take. */
  #asked = $state.raw<EditHistory | null>(null);
  #latest: {
    readonly heard: readonly HeardNote[];
    readonly done: readonly Correction[];
    readonly notes: CorrectedNotes;
  } | null = null;
  #last = Promise.resolve();

  /** @param events of the take that is in review when they are asked for */
  constructor(ports: GradingPorts, events: () => CorrectionEvents) {
    this.#ports = ports;
    this.#events = events;
  }

  /** Another take came into review. */
  forget(): void {
    this.#asked = null;
  }

  get canUndo(): boolean {
    return this.#history.done.length > 0;
  }

  get canRedo(): boolean {
    return this.#history.undone.length > 0;
  }

  /** The notes with every correction that was asked for, those too that are not graded yet. */
  get notes(): CorrectedNotes['notes'] {
    return this.#corrected(this.#history.done).notes;
  }

  /** @returns why the notes do not allow it, or null: then it is made */
  edit(correction: Correction): Refusal | null {
    const history = edited(this.#history, correction);
    const { leftOut } = this.#corrected(history.done);
    const refused = leftOut.find((one) => one.correction === correction);
    if (refused !== undefined) return refused.why;
    this.#set(history);
    return null;
  }

  /** How many corrections hold. */
  get count(): number {
    return this.#history.done.length;
  }

  /** @returns the correction that was undone; null where there was none */
  undo(): Correction | null {
    const last = this.#history.done.at(-1) ?? null;
    this.#set(undo(this.#history));
    return last;
  }

  /** @returns the correction that was done again; null where there was none */
  redo(): Correction | null {
    const last = this.#history.undone.at(-1) ?? null;
    this.#set(redo(this.#history));
    return last;
  }

  /** Back to what was heard. */
  undoAll(): void {
    this.#set(undoAll(this.#history));
  }

  /**
   * The note is looked up at once and by what was heard: its place may be another once earlier corrections are graded, and
   * the page may show it at written pitch.
   * @param counts null takes back what was said of the note
   */
  choose({ counts: counted, index }: PlaceInReport, counts: boolean | null): Promise<void> {
    const report = this.#events().review()?.report;
    const note = (counted ? report?.notes : report?.doubtful)?.[index];
    if (note !== undefined) {
      const { onsetSeconds, midi } = note;
      this.edit({ kind: 'count', of: { onsetSeconds, midi }, counts });
    }
    return this.settled();
  }

  /** Other details of the take: the chart, its key and tempo, where it begins. */
  correct(change: Partial<TakeDetails>, events: CorrectionEvents): Promise<void> {
    return this.#next(events, (review) => gradeWithDetails(review, change, this.#ports, events.message));
  }

  /** Resolves when everything that was asked for is graded and kept. */
  settled(): Promise<void> {
    return this.#last;
  }

  get #history(): EditHistory {
    const review = this.#events().review();
    return this.#asked ?? (review === null ? NOTHING : { ...NOTHING, done: correctionsOf(review.details) });
  }

  /** The last answer is kept: one edit asks for it several times. */
  #corrected(done: readonly Correction[]): CorrectedNotes {
    const heard = this.#heard;
    if (this.#latest?.heard !== heard || this.#latest.done !== done)
      this.#latest = { heard, done, notes: correctNotes(heard, done) };
    return this.#latest.notes;
  }

  get #heard() {
    const review = this.#events().review();
    return review === null ? [] : (review.heard ?? notesOfReport(review.report));
  }

  #set(history: EditHistory): void {
    if (history.done === this.#history.done) return;
    this.#asked = history;
    const events = this.#events();
    void this.#next(events, async (review) => {
      // Of corrections that follow each other faster than they are graded, the last one stands for all.
      const corrections = this.#history.done;
      if (corrections === review.details.corrections) return null;
      return gradeWithDetails(review, { corrections }, this.#ports, events.message);
    });
  }

  #next(events: CorrectionEvents, grade: (review: Review) => Promise<Outcome<Review> | null>): Promise<void> {
    this.#last = this.#last.then(async () => {
      const review = events.review();
      if (review === null) return;
      const again = await grade(review);
      if (again === null) return;
      if (again.ok) events.graded(again.value);
      else events.message(again.problem);
    });
    return this.#last;
  }
}
