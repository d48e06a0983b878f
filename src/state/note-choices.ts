/** What the player says of the take in review, of single notes or of what it is graded by: each is graded after the one before. */
import type { Outcome } from '../core/base/outcome.ts';
import { gradeWithChoice, gradeWithDetails, type GradingPorts } from './grade-and-keep.ts';
import type { Review } from './phase.ts';
import type { TakeDetails } from './take.ts';
import type { Message } from '../core/words/problem.ts';

/** Where a note stands in a report: in `notes`, which count, or in `doubtful`. */
export interface PlaceInReport {
  readonly counts: boolean;
  readonly index: number;
}

export interface ChoiceEvents {
  /** The take as it stands now; null where it is no longer in review. */
  review(): Review | null;
  graded(review: Review): void;
  message(message: Message): void;
}

export class NoteChoices {
  readonly #ports: GradingPorts;
  #last = Promise.resolve();

  constructor(ports: GradingPorts) {
    this.#ports = ports;
  }

  /**
   * The note is looked up at once and by what was heard: its place may be another once earlier choices are graded, and
   * the page may show it at written pitch.
   * @param counts null takes back what was said of the note
   */
  choose(
    { counts: counted, index }: PlaceInReport,
    counts: boolean | null,
    events: ChoiceEvents,
  ): Promise<void> {
    const report = events.review()?.report;
    const note = (counted ? report?.notes : report?.doubtful)?.[index];
    if (note === undefined) return this.#last;
    const { onsetSeconds, midi } = note;
    return this.#next(events, (review) =>
      gradeWithChoice(review, { onsetSeconds, midi, counts }, this.#ports, events.message),
    );
  }

  /** Other details of the take: the chart, its key and tempo, where it begins. */
  correct(change: Partial<TakeDetails>, events: ChoiceEvents): Promise<void> {
    return this.#next(events, (review) => gradeWithDetails(review, change, this.#ports, events.message));
  }

  #next(events: ChoiceEvents, grade: (review: Review) => Promise<Outcome<Review>>): Promise<void> {
    this.#last = this.#last.then(async () => {
      const review = events.review();
      if (review === null) return;
      const again = await grade(review);
      if (again.ok) events.graded(again.value);
      else events.message(again.problem);
    });
    return this.#last;
  }
}
