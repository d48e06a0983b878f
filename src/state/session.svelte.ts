/** One take from the first click to its review: what is going on now, as one tagged union. */
import type { BandPart } from '../core/band/events.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { Landing } from '../core/take/schema.ts';
import { areChorusesOver, createTake, type RunningTake } from './running-take.ts';
import { exportFile, type ExportPart } from './export-files.ts';
import type { FinishedTake } from './finished-take.ts';
import { openTakePlayback } from './take-playback.ts';
import type { GradedSound } from '../analysis/grade-samples.ts';
import { gradeAndKeep } from './grade-and-keep.ts';
import { NoteChoices, type PlaceInReport } from './note-choices.ts';
import type { LiveMoment } from './live-moment.ts';
import { LiveState, type LiveAim } from './live-state.svelte.ts';
import { takeOpeners, type OpenedTake, type RecordingFiles } from './open-take.ts';
import { makeReview, type Opening, type Phase, type Review } from './phase.ts';
import type { Playback } from './playback.svelte.ts';
import type { Message, Problem } from '../core/words/problem.ts';
import type { SessionPorts } from './session-ports.ts';
import { withMessage, withoutMessage } from './messages.ts';
import { marked, setUpAgain, type AgainChange } from './again.ts';
import { canTakeSuspected, suspectedTake, type SuspectedThing } from './suspected-take.ts';
import type { TakeDetails, TakeId, TakeMark } from './take.ts';

export type { LiveMoment, LiveNote } from './live-moment.ts';

export class Session {
  readonly #ports: SessionPorts;
  #phase = $state.raw<Phase>({ kind: 'ready' });
  #notices = $state.raw<readonly Message[]>([]);
  readonly #live = new LiveState();
  #timeline = $state.raw<Timeline | null>(null);
  #playback = $state.raw<Playback | null>(null);
  #take: RunningTake | null = null;
  #stopFrames: (() => void) | null = null;
  #endedByItself = $state.raw(false);
  /** Whether the take in review was opened, and not just played. */
  #opened = false;
  /** Counts what was begun: an answer that comes after something else began is dropped. */
  #turn = 0;
  readonly #choices: NoteChoices;
  readonly #openers: ReturnType<typeof takeOpeners>;

  constructor(ports: SessionPorts) {
    this.#ports = ports;
    this.#choices = new NoteChoices(ports);
    this.#openers = takeOpeners(ports);
  }

  get phase(): Phase {
    return this.#phase;
  }

  /** Everything that the player is to know and that does not stop the take. Newest last. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** null unless counting in or playing. */
  get live(): LiveMoment | null {
    return this.#live.now;
  }

  /** The timeline of the take that is played or reviewed; null when ready. */
  get timeline(): Timeline | null {
    return this.#timeline;
  }

  /** Landings as they happen; the same shape as the report's. */
  get landingsSoFar(): readonly Landing[] {
    return this.#live.landings;
  }

  /** The aim in hand and how it goes; null outside a take. */
  get aimSoFar(): LiveAim | null {
    return this.#live.aim;
  }

  /** null outside the review. */
  get playback(): Playback | null {
    return this.#playback;
  }

  /** Whether the take in review came to the end of its choruses. */
  get endedByItself(): boolean {
    return this.#endedByItself;
  }

  /** Microphone, band, count-in, take. Needs a user's gesture the first time. */
  async start(): Promise<void> {
    if (['opening', 'counting-in', 'playing', 'grading'].includes(this.#phase.kind)) return;
    const { setup, today } = this.#ports;
    const turn = this.#begin();
    this.#opened = false;
    const timeline = setup.timeline;
    if (!timeline.ok) return this.#trouble(timeline.problem, 'back');
    this.#timeline = timeline.value;
    const take = createTake(this.#ports, setup.planTake(timeline.value, today()), {
      opening: (what) => this.#while(turn, () => (this.#phase = { kind: 'opening', what })),
      notice: (message) => this.#while(turn, () => this.#notice(message)),
      withdraw: (problem) => this.#while(turn, () => this.dismissNotice(problem)),
      lost: (problem) => this.#while(turn, () => void this.#endByLoss(problem)),
      heard: (heard) => this.#while(turn, () => this.#live.heard(heard) && void this.stop()),
    });
    this.#take = take;
    const opened = await take.open();
    if (turn !== this.#turn) return take.dispose();
    if (!opened.ok) {
      this.#release();
      return this.#trouble(opened.problem, 'try again');
    }
    this.#phase = { kind: 'counting-in' };
    this.#live.open(setup.settings, timeline.value);
    this.#stopFrames = this.#ports.frames.each(() => this.#draw(take, timeline.value));
  }

  /** Ends the take and grades it; before the first downbeat it just goes back. */
  async stop(): Promise<void> {
    if (this.#phase.kind === 'playing') return this.#finish();
    if (this.#phase.kind === 'counting-in' || this.#phase.kind === 'opening') this.close();
  }

  /**
   * Starts again. A take that was opened brings its whole set-up; one just played goes on with what is set now, which is
   * its own and what was turned since.
   */
  async again(change: AgainChange = {}): Promise<void> {
    const review = this.#phase.kind === 'review' ? this.#phase.review : null;
    const opened = this.#opened ? (review?.details ?? null) : null;
    const ready = setUpAgain(opened, change, { ...this.#ports, review });
    return ready.ok ? this.start() : this.#trouble(ready.problem, 'back');
  }

  /** Names or stars the take in review. */
  mark(change: TakeMark): void {
    const review = this.#phase.kind === 'review' && marked(this.#phase.review, change, this.#ports.library);
    if (review !== false) this.#phase = { kind: 'review', review };
  }

  /** Back to ready. A take that is being played is thrown away; bars that are tried are left, unless it goes on at once. */
  close(goesOn = false): void {
    this.#begin();
    if (!goesOn) this.#ports.tries.end();
    this.#timeline = null;
    this.#phase = { kind: 'ready' };
  }

  /** Grades files against the setup's chart and tempo, the first downbeat so many seconds from their start. */
  async openRecording(files: RecordingFiles, firstBeatSeconds = 0): Promise<void> {
    const opening: Opening = { kind: 'file', name: files.line.name };
    await this.#open(opening, () => this.#openers.recording(files, firstBeatSeconds));
  }

  /** Renders the demo line and grades it like a recording. */
  playDemo(): Promise<void> {
    return this.#open({ kind: 'demo' }, () => this.#openers.demo());
  }

  /** Reviews a stored take; grades it first if it was cut off, or if its report can't be read any more. */
  openTake(id: TakeId): Promise<void> {
    return this.#open({ kind: 'take' }, () => this.#openers.stored(id));
  }

  /** Grades with the delay or over the chart that the take makes probable; it then holds for what comes next, too. */
  async takeSuspected(what: SuspectedThing): Promise<void> {
    const review = this.#phase.kind === 'review' ? this.#phase.review : null;
    if (review === null || !canTakeSuspected(what, review)) return;
    const turn = this.#begin();
    const { take, known, changed } = await suspectedTake(what, review, this.#ports);
    if (turn === this.#turn) await this.#judge(take, known, turn, changed);
  }

  /** Downloads a part of the take in review. Does nothing elsewhere, or where the take has no such part. */
  save(part: ExportPart): void {
    const file = this.#phase.kind === 'review' ? exportFile(this.#phase.review, part) : null;
    if (file !== null) this.#ports.files.save(file.blob, file.fileName);
  }

  /** What the player says of a note of the take in review; it is graded again in place. */
  chooseNote(place: PlaceInReport, counts: boolean | null): Promise<void> {
    const turn = this.#turn;
    return this.#choices.choose(place, counts, {
      review: () => (turn === this.#turn && this.#phase.kind === 'review' ? this.#phase.review : null),
      graded: (review) => this.#while(turn, () => (this.#phase = { kind: 'review', review })),
      message: (message) => this.#while(turn, () => this.#notice(message)),
    });
  }

  /** Sets it in the setup, and at once in the band of a take that is being played. */
  setLevel(part: BandPart | 'all', levelDb: number): void {
    const { setup } = this.#ports;
    setup.setLevel(part, levelDb);
    this.#take?.setLevels(setup.settings.levels);
  }

  dismissNotice(message: Message): void {
    this.#notices = withoutMessage(this.#notices, message);
  }

  /** Lets go of whatever was going on and opens a new turn. */
  #begin(): number {
    this.#release();
    this.#endedByItself = false;
    this.#notices = [];
    return ++this.#turn;
  }

  async #open(what: Opening, open: () => Promise<Outcome<OpenedTake>>): Promise<void> {
    const turn = this.#begin();
    this.#phase = { kind: 'opening', what };
    this.#opened = true;
    const opened = await open();
    if (turn !== this.#turn) return;
    if (!opened.ok) return this.#trouble(opened.problem, 'back');
    const { take, report, heard, warnings } = opened.value;
    for (const warning of warnings) this.#notice(warning);
    if (report === null) await this.#judge(take, null, turn);
    else this.#review(take, { report, heard });
  }

  #release(): void {
    this.#stopFrames?.();
    this.#stopFrames = null;
    this.#take?.dispose();
    this.#take = null;
    this.#playback?.dispose();
    this.#playback = null;
    this.#live.clear();
  }

  #while(turn: number, act: () => void): void {
    if (turn === this.#turn) act();
  }

  #notice(message: Message): void {
    this.#notices = withMessage(this.#notices, message);
  }

  #trouble(problem: Problem, wayOn: 'try again' | 'back'): void {
    this.#phase = { kind: 'trouble', problem, wayOn };
  }

  #draw(take: RunningTake, timeline: Timeline): void {
    const beat = take.beat;
    if (beat === null) return;
    if (this.#phase.kind === 'counting-in' && beat >= 0) this.#phase = { kind: 'playing' };
    this.#live.draw(timeline, beat);
    this.#endedByItself = areChorusesOver(beat, timeline, this.#ports.setup.settings.choruses);
    if (this.#endedByItself) void this.stop();
  }

  /** The microphone is gone: what was played is kept and graded. */
  async #endByLoss(problem: Problem): Promise<void> {
    if (this.#phase.kind === 'playing') return this.#finish(problem);
    this.#begin();
    this.#trouble(problem, 'try again');
  }

  async #finish(notice: Message | null = null): Promise<void> {
    const take = this.#take;
    if (take === null) return;
    this.#phase = { kind: 'grading', progress: 0 };
    this.#take = null;
    this.#stopFrames?.();
    this.#stopFrames = null;
    this.#live.halt();
    if (notice !== null) this.#notice(notice);
    const turn = this.#turn;
    const finished = await take.finish();
    await this.#judge(finished.take, finished.known, turn);
  }

  /** Grades what is not graded yet, keeps it and shows it. */
  async #judge(
    take: FinishedTake,
    known: GradedSound | null,
    turn: number,
    changed: Partial<TakeDetails> = {},
  ): Promise<void> {
    const progress = (share: number) =>
      this.#while(turn, () => (this.#phase = { kind: 'grading', progress: share }));
    progress(0);
    const message = (told: Message) => this.#while(turn, () => this.#notice(told));
    const judged = await gradeAndKeep(take, known, this.#ports, { progress, message }, changed);
    this.#while(turn, () =>
      judged.ok ? this.#review(judged.value.take, judged.value) : this.#trouble(judged.problem, 'back'),
    );
  }

  #review(take: FinishedTake, graded: Pick<Review, 'report' | 'heard'>): void {
    const review = makeReview(take, graded);
    if (!review.ok) return this.#trouble(review.problem, 'back');
    this.#playback = openTakePlayback(review.value, this.#ports, this.#ports.setup.settings.levels);
    this.#timeline = review.value.timeline;
    this.#phase = { kind: 'review', review: review.value };
  }
}
