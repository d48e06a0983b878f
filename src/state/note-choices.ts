/** What the player says of single notes of the take in review: each choice is graded after the one before. */
import { gradeWithChoice, type GradingPorts } from './grade-and-keep.ts';
import type { Review } from './phase.ts';
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
    this.#last = this.#last.then(async () => {
      const review = events.review();
      if (review === null) return;
      const again = await gradeWithChoice(
        review,
        { onsetSeconds, midi, counts },
        this.#ports,
        events.message,
      );
      if (again.ok) events.graded(again.value);
      else events.message(again.problem);
    });
    return this.#last;
  }
}
