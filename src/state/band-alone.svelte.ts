/** The band heard without a take, as it would play to one: what is set on the open page is followed while it sounds. */
import type { Timeline } from '../core/chart/timeline.ts';
import type { Message } from '../core/words/problem.ts';
import type { AudioPort } from './ports.ts';
import type { Setup } from './setup.svelte.ts';
import { TakeBand } from './take-band.ts';
import type { TakePlan } from './take-plan.ts';

export interface BandAlonePorts {
  readonly setup: Setup;
  readonly audio: Pick<AudioPort, 'wake' | 'openBand' | 'heardSeconds'>;
  today(): Date;
  /** Calls back later; returns a function that cancels it. */
  later(act: () => void, ms: number): () => void;
}

/** Changes that follow each other faster than this start the band anew only once. */
const TURNED_MS = 400;

/** What the band plays, its levels aside: while this stays the same, it plays on. */
const piece = ({ timeline, band, details }: TakePlan) =>
  JSON.stringify([timeline.chart, { ...band, seed: 0, countInBars: 0 }, details.backing ?? null]);

export class BandAlone {
  readonly #ports: BandAlonePorts;
  #sounds = $state.raw(false);
  #problem = $state.raw<Message | null>(null);
  #band: TakeBand | null = null;
  #plan: TakePlan | null = null;
  #callOff: () => void = () => undefined;
  /** Number of the latest start or stop: a band that opens after another one does not sound any more. */
  #turn = 0;

  constructor(ports: BandAlonePorts) {
    this.#ports = ports;
  }

  /** Whether it sounds, or is about to. */
  get sounds(): boolean {
    return this.#sounds;
  }

  /** Why it did not sound, or null. */
  get problem(): Message | null {
    return this.#problem;
  }

  /** The beat that reaches the ear now, and the chart that it is a beat of; null where nothing sounds yet. */
  get place(): { readonly beat: number; readonly timeline: Timeline } | null {
    const beat = this.#band?.beat ?? null;
    return beat === null || this.#plan === null ? null : { beat, timeline: this.#plan.timeline };
  }

  /** From the first bar on, without a count-in. Needs a user's gesture the first time. */
  async play(): Promise<void> {
    const { setup, audio, today } = this.#ports;
    this.stop();
    const turn = this.#turn;
    const { timeline } = setup;
    if (!timeline.ok) return void (this.#problem = timeline.problem);
    const set = setup.planTake(timeline.value, today());
    const plan = { ...set, band: { ...set.band, countInBars: 0 } };
    const failed = (problem: Message) => {
      if (turn === this.#turn) this.#fail(problem);
    };
    const band = new TakeBand(audio, plan, {
      opening: () => undefined,
      notice: failed,
      withdraw: () => undefined,
      lost: failed,
      heard: () => undefined,
    });
    this.#plan = plan;
    this.#band = band;
    this.#problem = null;
    this.#sounds = true;
    const [woken, opened] = await Promise.all([audio.wake(), band.open()]);
    if (turn !== this.#turn) return;
    if (!woken.ok) return this.#fail(woken.problem);
    if (!opened.ok) return this.#fail(opened.problem);
    band.start({ inMono: false });
  }

  stop(): void {
    this.#turn++;
    this.#callOff();
    this.#band?.dispose();
    this.#band = null;
    this.#sounds = false;
  }

  /** What is set has changed: a level changes at once; for anything else the band begins anew at its first bar. */
  follow(): void {
    const { setup, today, later } = this.#ports;
    const { timeline, settings } = setup;
    if (!this.#sounds || this.#plan === null) return;
    if (!timeline.ok) return this.stop();
    this.#band?.setLevels(settings.levels);
    this.#callOff();
    if (piece(setup.planTake(timeline.value, today())) === piece(this.#plan)) return;
    this.#callOff = later(() => void this.play(), TURNED_MS);
  }

  #fail(problem: Message): void {
    this.stop();
    this.#problem = problem;
  }
}
