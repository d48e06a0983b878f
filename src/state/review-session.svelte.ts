/** Takes that are opened, graded and reviewed: what is going on now, as one tagged union, and the review's actions. */
import type { Timeline } from '../core/chart/timeline.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import type { Message, Problem } from '../core/words/problem.ts';
import { marked } from './again.ts';
import { exportFile, type ExportFile, type ExportPart } from './export-files.ts';
import type { FinishedTake } from './finished-take.ts';
import { gradeAndKeep } from './grade-and-keep.ts';
import { withMessage, withoutMessage } from './messages.ts';
import { openDemoTake, openStoredTake, withBacking, type OpenedTake } from './open-take.ts';
import { makeReview, type Opening, type Phase, type Review } from './phase.ts';
import type { Playback } from './playback.svelte.ts';
import type { SessionPorts } from './session-ports.ts';
import { canTakeSuspected, suspectedTake, type SuspectedThing, type TakeToGrade } from './suspected-take.ts';
import { TakeCorrections, type CorrectionEvents, type PlaceInReport } from './take-corrections.svelte.ts';
import { openTakePlayback } from './take-playback.ts';
import { UnsavedTake } from './unsaved-take.svelte.ts';
import type { TakeDetails, TakeId, TakeMark } from './take.ts';

/** What a session can do with takes that are not being played; `Session` adds the playing. */
export abstract class ReviewSession {
  protected readonly ports: SessionPorts;
  protected phaseNow = $state.raw<Phase>({ kind: 'ready' });
  protected timelineNow = $state.raw<Timeline | null>(null);
  /** Whether the take in review was opened, and not just played. */
  protected opened = false;
  /** Counts what was begun: an answer that comes after something else began is dropped. */
  protected turn = 0;
  #notices = $state.raw<readonly Message[]>([]);
  #playback = $state.raw<Playback | null>(null);
  #firstPlayback = $state.raw<Playback | null>(null);
  readonly #unsaved = new UnsavedTake();
  /** The take that is being graded, and what ends that. */
  #grading: { readonly take: FinishedTake; readonly stop: AbortController } | null = null;
  /** What the player corrects of the take in review. */
  readonly corrections: TakeCorrections;

  constructor(ports: SessionPorts) {
    this.ports = ports;
    this.corrections = new TakeCorrections(ports, () => this.#inReview());
  }

  get phase(): Phase {
    return this.phaseNow;
  }

  /** Everything that the player is to know and that does not stop the take. Newest last. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** The timeline of the take that is played or reviewed; null when ready. */
  get timeline(): Timeline | null {
    return this.timelineNow;
  }

  /** null outside the review. */
  get playback(): Playback | null {
    return this.#playback;
  }

  /** Of the take whose bars were tried again; null where none were. */
  get firstPlayback(): Playback | null {
    return this.#firstPlayback;
  }

  /** Whether the take just played is nowhere but in memory. An opened one has its file; one without a note is no loss. */
  get isOnlyInMemory(): boolean {
    const { phaseNow, review } = this;
    const take = phaseNow.kind === 'grading' ? (this.#grading?.take ?? null) : review;
    if (take === null || this.opened || take.id !== null) return false;
    return review?.report.notes.length !== 0 && this.#unsaved.wouldLose(take.details);
  }

  /** Whether the player is to say what becomes of a take that is nowhere but in memory. */
  get asksBeforeLeaving(): boolean {
    return this.#unsaved.isAsked;
  }

  /** What the player says then: saved as a file, or lost, the session goes on to what was wanted. */
  answerLeaving(answer: 'save' | 'lose' | 'stay'): void {
    const go = this.#unsaved.answered();
    if (answer === 'save') this.save('take');
    else if (answer === 'lose') this.#unsaved.settle(this.review?.details);
    if (answer !== 'stay') go?.();
  }

  /** Back to ready. A take that is being played is thrown away; bars that are tried are left, unless it goes on at once. */
  close(goesOn = false): void {
    if (this.asksFirst(() => this.close(goesOn))) return;
    this.begin();
    if (!goesOn) this.ports.tries.end();
    this.timelineNow = null;
    this.phaseNow = { kind: 'ready' };
  }

  /** Ends the grading; a take that is kept is graded when it is opened. null where a take would be lost by it. */
  get stopGrading(): (() => void) | null {
    const grading = this.#grading;
    if (this.phaseNow.kind !== 'grading' || this.isOnlyInMemory || grading === null) return null;
    return () => {
      this.close();
      grading.stop.abort();
    };
  }

  /** Grades a recording that was read, by what the player has said of it; tells why where it could not be read. */
  gradeRecording(name: string, opened: Outcome<OpenedTake>): Promise<void> {
    return this.#openTaken({ kind: 'file', name }, () => Promise.resolve(opened));
  }

  /** Grades the take in review in place, by what the player says of it now. */
  correct(change: Partial<TakeDetails>): Promise<void> {
    const events = this.#inReview();
    // The band plays along on other beats: the playback is opened anew.
    return this.corrections.correct(change, { ...events, graded: (review) => this.#show(review, review) });
  }

  /** Grades the recording in review again with its backing taken out of it; null leaves it in. */
  setBacking(file: File | null): Promise<void> {
    return this.#judgeAgain(async (review) => {
      const take = await withBacking(review, file, this.ports.analysis);
      return take.ok ? good({ take: take.value, known: null, changed: {} }) : take;
    });
  }

  /** Renders the demo line and grades it like a recording. */
  playDemo(): Promise<void> {
    return this.#openTaken({ kind: 'demo' }, () => openDemoTake(this.ports));
  }

  /** Reviews a stored take; grades it first if it was cut off, or if its report can't be read any more. */
  openTake(id: TakeId): Promise<void> {
    return this.#openTaken({ kind: 'take' }, () => openStoredTake(this.ports, id));
  }

  /** Grades with the delay or over the chart that the take makes probable; it then holds for what comes next, too. */
  async takeSuspected(what: SuspectedThing): Promise<void> {
    const { review } = this;
    if (review === null || !canTakeSuspected(what, review)) return;
    await this.#judgeAgain(async (made) => good(await suspectedTake(what, made, this.ports)));
  }

  /**
   * Downloads a part of the take in review. Does nothing elsewhere, or where the take has no such part.
   * @param fileName in place of the usual one
   */
  save(part: ExportPart, fileName?: string): void {
    const file = this.phaseNow.kind === 'review' ? exportFile(this.phaseNow.review, part) : null;
    if (file === null) return;
    if (part === 'take' || part === 'line') this.#unsaved.settle(this.review?.details);
    this.ports.files.save(file.blob, fileName ?? file.fileName);
  }

  /** Downloads a file that a page has made. */
  saveMade({ blob, fileName }: ExportFile): void {
    this.ports.files.save(blob, fileName);
  }

  /** What the player says of a note of the take in review; it is graded again in place. */
  chooseNote(place: PlaceInReport, counts: boolean | null): Promise<void> {
    return this.corrections.choose(place, counts);
  }

  /** Names or stars the take in review. */
  mark(change: TakeMark): void {
    if (this.phaseNow.kind !== 'review') return;
    this.phaseNow = { kind: 'review', review: marked(this.phaseNow.review, change, this.ports.library) };
  }

  dismissNotice(message: Message): void {
    this.#notices = withoutMessage(this.#notices, message);
  }

  /** Whether `go` waits for the player's word, because it would lose the take in review. */
  protected asksFirst(go: () => void): boolean {
    if (this.review === null || !this.isOnlyInMemory) return false;
    this.#unsaved.ask(go);
    return true;
  }

  /** Ends what was going on; answers to it that still come are dropped. */
  protected begin(): number {
    this.release();
    this.#unsaved.answered();
    this.#grading = null;
    this.corrections.forget();
    this.#notices = [];
    return ++this.turn;
  }

  /** Closes the playback; a session that plays closes its take, too. */
  protected release(): void {
    this.#playback?.dispose();
    this.#firstPlayback?.dispose();
    this.#playback = this.#firstPlayback = null;
  }

  /** The take in review; null elsewhere. */
  protected get review(): Review | null {
    return this.phaseNow.kind === 'review' ? this.phaseNow.review : null;
  }

  /** What answers about the take in review are told to, as long as it stands there. */
  #inReview(): CorrectionEvents {
    const { turn } = this;
    return {
      review: () => (turn === this.turn ? this.review : null),
      graded: (review) => this.whileTurn(turn, () => (this.phaseNow = { kind: 'review', review })),
      message: (message) => this.whileTurn(turn, () => this.tell(message)),
    };
  }

  /** Hears or grades the take in review again, made over; where that fails, the review stands as it was. */
  async #judgeAgain(make: (review: Review) => Promise<Outcome<TakeToGrade>>): Promise<void> {
    const { review } = this;
    if (review === null) return;
    const turn = this.begin();
    const made = await make(review);
    if (turn !== this.turn) return;
    const problem = made.ok ? await this.judge(made.value, turn) : made.problem;
    if (problem === null) return;
    this.#show(review, review);
    this.tell(problem);
  }

  async #openTaken(what: Opening, open: () => Promise<Outcome<OpenedTake>>): Promise<void> {
    if (this.asksFirst(() => void this.#openTaken(what, open))) return;
    const turn = this.begin();
    this.phaseNow = { kind: 'opening', what };
    this.opened = true;
    const opened = await open();
    if (turn !== this.turn) return;
    if (!opened.ok) return this.trouble(opened.problem, 'back');
    const { take, report, heard, warnings } = opened.value;
    for (const warning of warnings) this.tell(warning);
    if (report !== null) return this.#show(take, { report, heard });
    const problem = await this.judge({ take, known: null, changed: {} }, turn);
    if (problem !== null) this.trouble(problem, 'back');
  }

  protected whileTurn(turn: number, act: () => void): void {
    if (turn === this.turn) act();
  }

  protected tell(message: Message): void {
    this.#notices = withMessage(this.#notices, message);
  }

  protected trouble(problem: Problem, wayOn: 'try again' | 'back'): void {
    this.phaseNow = { kind: 'trouble', problem, wayOn };
  }

  /**
   * Grades what is not graded yet, keeps it and shows it.
   * @returns why it could not be graded; null where it could, or where something else began meanwhile
   */
  protected async judge({ take, known, changed }: TakeToGrade, turn: number): Promise<Problem | null> {
    const progress = (share: number) =>
      this.whileTurn(turn, () => (this.phaseNow = { kind: 'grading', progress: share }));
    const stop = new AbortController();
    this.whileTurn(turn, () => (this.#grading = { take, stop }));
    progress(0);
    const message = (told: Message) => this.whileTurn(turn, () => this.tell(told));
    const events = { progress, message, signal: stop.signal };
    const judged = await gradeAndKeep(take, known, this.ports, events, changed);
    if (turn !== this.turn) return null;
    if (!judged.ok) return judged.problem;
    this.#show(judged.value.take, judged.value);
    return null;
  }

  #show(take: FinishedTake, graded: Pick<Review, 'report' | 'heard'>): void {
    const review = makeReview(take, graded);
    if (!review.ok) return this.trouble(review.problem, 'back');
    this.#playback?.dispose();
    this.#firstPlayback?.dispose();
    const playbackOf = (made: Review) => openTakePlayback(made, this.ports, this.ports.setup.settings.levels);
    const { tried } = this.ports.tries;
    this.#playback = playbackOf(review.value);
    this.#firstPlayback = tried && playbackOf(tried.first);
    this.timelineNow = review.value.timeline;
    this.phaseNow = { kind: 'review', review: review.value };
  }
}
