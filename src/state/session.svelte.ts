/** One take from the first click to its review: it is played, and everything that a `ReviewSession` can do with it. */
import { sheetOfTake } from './lesson-files.ts';
import type { BandPart } from '../core/band/events.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { notice, type Message, type Problem } from '../core/words/problem.ts';
import type { Landing } from '../core/take/schema.ts';
import { setUpAgain, type AgainChange } from './again.ts';
import { wholeTakeFile } from './export-files.ts';
import type { FinishedTake } from './finished-take.ts';
import type { LiveMoment } from './live-moment.ts';
import { LiveState, type LiveAim } from './live-state.svelte.ts';
import { ReviewSession } from './review-session.svelte.ts';
import { areChorusesOver, createTake, type RunningTake } from './running-take.ts';

export type { LiveMoment, LiveNote } from './live-moment.ts';

export class Session extends ReviewSession {
  readonly #live = new LiveState();
  #take: RunningTake | null = null;
  /** The take that was stopped, until it is handed over to be graded. */
  #ending: RunningTake | null = null;
  #stopFrames: (() => void) | null = null;
  #endedByItself = $state.raw(false);

  /** null unless counting in or playing. */
  get live(): LiveMoment | null {
    return this.#live.now;
  }

  /** Landings as they happen; the same shape as the report's. */
  get landingsSoFar(): readonly Landing[] {
    return this.#live.landings;
  }

  /** The aim in hand and how it goes; null outside a take. */
  get aimSoFar(): LiveAim | null {
    return this.#live.aim;
  }

  /** Whether the take in review came to the end of its choruses. */
  get endedByItself(): boolean {
    return this.#endedByItself;
  }

  /** Also of a take that is being played, or was just stopped, once the disk has refused a part of it. */
  override get isOnlyInMemory(): boolean {
    const running = this.#take ?? this.#ending;
    return running?.isOnlyInMemory === true || super.isOnlyInMemory;
  }

  /** Microphone, band, count-in, take. Needs a user's gesture the first time. */
  async start(): Promise<void> {
    if (['opening', 'counting-in', 'playing', 'grading'].includes(this.phaseNow.kind)) return;
    const { setup, today, tries, lesson } = this.ports;
    const turn = this.begin();
    this.opened = false;
    // Bars that are tried again are no try at the sheet.
    const played = tries.tried === null ? lesson.begin() : null;
    const timeline = setup.timeline;
    if (!timeline.ok) return this.trouble(timeline.problem, 'back');
    this.timelineNow = timeline.value;
    const plan = setup.planTake(timeline.value, today());
    const details = { ...plan.details, ...(played !== null && { lesson: played }) };
    const take = createTake(
      this.ports,
      { ...plan, details },
      {
        opening: (what) => this.whileTurn(turn, () => (this.phaseNow = { kind: 'opening', what })),
        notice: (message) => this.whileTurn(turn, () => this.tell(message)),
        withdraw: (problem) => this.whileTurn(turn, () => this.dismissNotice(problem)),
        lost: (problem) => this.whileTurn(turn, () => void this.#endByLoss(problem)),
        heard: (heard) => this.whileTurn(turn, () => this.#live.heard(heard) && void this.stop()),
      },
    );
    this.#take = take;
    const opened = await take.open();
    if (turn !== this.turn) return take.dispose();
    if (!opened.ok) {
      this.release();
      return this.trouble(opened.problem, 'try again');
    }
    this.phaseNow = { kind: 'counting-in' };
    this.#live.open(setup.settings, timeline.value, played && (lesson.sheet?.aims[0] ?? null));
    this.#stopFrames = this.ports.frames.each(() => this.#draw(take, timeline.value));
  }

  /** Ends the take and grades it; before the first downbeat it just goes back. */
  async stop(): Promise<void> {
    if (this.#isPlayed) return this.#finish();
    if (this.phaseNow.kind === 'counting-in' || this.phaseNow.kind === 'opening') this.close();
  }

  /**
   * Starts again. A take that was opened brings its whole set-up; one just played goes on with what is set now, which is
   * its own and what was turned since.
   */
  async again(change: AgainChange = {}): Promise<void> {
    if (this.asksFirst(() => void this.again(change))) return;
    const { review } = this;
    const opened = this.opened ? (review?.details ?? null) : null;
    if (opened !== null) this.ports.lesson.follow(sheetOfTake(opened));
    const ready = setUpAgain(opened, change, { ...this.ports, review });
    return ready.ok ? this.start() : this.trouble(ready.problem, 'back');
  }

  /** Sets it in the setup, and at once in the band of a take that is being played. */
  setLevel(part: BandPart | 'all', levelDb: number): void {
    const { setup } = this.ports;
    setup.setLevel(part, levelDb);
    this.#take?.setLevels(setup.settings.levels);
  }

  protected override release(): void {
    super.release();
    this.#endedByItself = false;
    this.#stopFrames?.();
    this.#stopFrames = null;
    this.#take?.dispose();
    this.#take = null;
    this.#live.clear();
  }

  /** Whether the first downbeat has come. The clock tells: a page that is out of sight draws nothing and stays counting in. */
  get #isPlayed(): boolean {
    const { kind } = this.phaseNow;
    return kind === 'playing' || (kind === 'counting-in' && (this.#take?.beat ?? -1) >= 0);
  }

  #draw(take: RunningTake, timeline: Timeline): void {
    const beat = take.beat;
    if (beat === null) return;
    if (this.phaseNow.kind === 'counting-in' && beat >= 0) this.phaseNow = { kind: 'playing' };
    this.#live.draw(timeline, beat);
    const { settings, passes } = this.ports.setup;
    const { choruses } = settings;
    this.#endedByItself = areChorusesOver(beat, timeline, choruses, passes);
    if (this.#endedByItself) void this.stop();
  }

  /** The microphone is gone: what was played is kept and graded. */
  async #endByLoss(problem: Problem): Promise<void> {
    if (this.#isPlayed) return this.#finish(problem);
    this.begin();
    this.trouble(problem, 'try again');
  }

  async #finish(notice: Message | null = null): Promise<void> {
    const take = this.#take;
    if (take === null) return;
    this.phaseNow = { kind: 'grading', progress: 0 };
    this.#take = null;
    this.#stopFrames?.();
    this.#stopFrames = null;
    this.#live.halt();
    if (notice !== null) this.tell(notice);
    const turn = this.turn;
    this.#ending = take;
    const finished = await take.finish();
    this.#ending = null;
    const problem = await this.judge({ ...finished, changed: {} }, turn);
    if (problem !== null) this.#leaveUngraded(finished.take, problem);
  }

  /** A take that could not be graded and is nowhere but in memory is handed to the player as a file. */
  #leaveUngraded(take: FinishedTake, problem: Problem): void {
    if (take.id === null) {
      this.saveMade(wholeTakeFile({ ...take, report: null, heard: null }));
      this.tell(notice('take.savedUngraded'));
    }
    this.trouble(problem, 'back');
  }
}
