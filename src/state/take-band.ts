/** The band of a take while it is played, or the player's own recording in its place: opened, started, its levels set. */
import type { BandClock } from '../audio/base/clock.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { AudioPort, BandLevels, OpenBand } from './ports.ts';
import type { TakeEvents, TakePlan } from './take-plan.ts';

type BandAudio = Pick<AudioPort, 'openBand' | 'heardSeconds'>;

export class TakeBand {
  readonly #audio: BandAudio;
  readonly #plan: TakePlan;
  readonly #events: TakeEvents;
  #band: OpenBand | null = null;
  #clock: BandClock | null = null;
  #levels: BandLevels;
  #disposed = false;

  constructor(audio: BandAudio, plan: TakePlan, events: TakeEvents) {
    this.#audio = audio;
    this.#plan = plan;
    this.#levels = plan.levels;
    this.#events = events;
  }

  /** Fails where the band can't be rendered, or where the take was called off meanwhile. */
  async open(): Promise<Outcome<void>> {
    const opened = await this.#open();
    if (!opened.ok) return opened;
    if (this.#disposed) {
      opened.value.dispose();
      return bad('take.calledOff');
    }
    this.#band = opened.value;
    opened.value.onFailed(this.#events.notice);
    return good(undefined);
  }

  /**
   * Starts the count-in. A caller's bug where the band is not open.
   * @param inMono the same sound from both speakers
   */
  start({ inMono }: { readonly inMono: boolean }): void {
    if (this.#band === null) throw new Error('the band of a take is started before it is open');
    this.#band.playInMono(inMono);
    this.#clock = this.#band.start();
  }

  get levels(): BandLevels {
    return this.#levels;
  }

  setLevels(levels: BandLevels): void {
    this.#levels = levels;
    this.#band?.setLevels(levels);
  }

  /** When the first downbeat is scheduled, in seconds of the audio clock; null until the count-in has begun. */
  get firstBeatClockSeconds(): number | null {
    return this.#clock?.firstBeatContextSeconds ?? null;
  }

  /** The beat that reaches the ear now; null until the count-in has begun. */
  get beat(): number | null {
    return this.#clock?.beatAt(this.#audio.heardSeconds()) ?? null;
  }

  dispose(): void {
    this.#disposed = true;
    this.#band?.dispose();
    this.#band = null;
    this.#clock = null;
  }

  #open(): Promise<Outcome<OpenBand>> {
    const { timeline, band, levels, backing } = this.#plan;
    if (backing === undefined) {
      this.#events.opening({ kind: 'band' });
      return this.#audio.openBand(timeline, band, levels);
    }
    this.#events.opening({ kind: 'backing' });
    const progress = (share: number) => this.#events.opening({ kind: 'rendering', share });
    return this.#audio.openBand(timeline, band, levels, { ...backing, progress });
  }
}
