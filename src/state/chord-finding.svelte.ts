/** The chords that were found in a recording and are proposed, with what the player has set in them. */
import type { Outcome } from '../core/base/outcome.ts';
import type { FoundChart } from '../core/harmony/chart-of-recording.ts';
import { numberOfSymbol } from '../core/harmony/chord-names.ts';
import type { ChartProposal } from '../core/harmony/proposal.ts';
import { proposeChart, withBarSet, type ChartPins } from '../core/harmony/propose.ts';
import type { ChordSearch } from './ports.ts';

const NO_PINS: ChartPins = {};

/** The chart of the desk on which the recording lies. */
export interface ChartOnDesk {
  /** Its text as it stands; null where none of the player's own does. */
  text(): string | null;
  write(chartText: string): void;
}

/** What was found, and what the player has set in it. */
export interface FoundAndSet {
  readonly found: FoundChart;
  readonly pins: ChartPins;
}

export class ChordFinding {
  readonly #chart: ChartOnDesk;
  #found = $state.raw<FoundChart | null>(null);
  #pins = $state.raw<ChartPins>(NO_PINS);
  #share = $state.raw<number | null>(null);
  #sound: ChordSearch | null = null;
  #turn = 0;
  readonly #proposal = $derived.by(() => {
    if (this.#found === null || this.#pins === NO_PINS) return this.#found?.proposal ?? null;
    return proposeChart(this.#found.heard, this.#pins);
  });

  constructor(chart: ChartOnDesk) {
    this.#chart = chart;
  }

  /** What was found, with what was set in it; null where nothing was found, or nothing was looked for. */
  get proposal(): ChartProposal | null {
    return this.#proposal;
  }

  /** The proposal, while its chart is the one on the desk; null else. */
  get standing(): ChartProposal | null {
    return this.#proposal !== null && this.#proposal.chart === this.#chart.text() ? this.#proposal : null;
  }

  /** To be taken over by another desk; null where nothing was found. */
  get kept(): FoundAndSet | null {
    return this.#found && { found: this.#found, pins: this.#pins };
  }

  takeOver({ found, pins }: FoundAndSet): void {
    this.stop();
    this.#found = found;
    this.#pins = pins;
  }

  /** The beats that the chords were found over, in seconds; null where none were. */
  get beats(): readonly number[] | null {
    return this.#found?.beats ?? null;
  }

  /** How much of the search is done, 0 to 1; null while nothing is looked for. */
  get share(): number | null {
    return this.#share;
  }

  /**
   * Looks for beats and chords; what is found takes the place of what was.
   * @param over beats in seconds that are kept as they are; null looks for beats too
   * @returns null where it was stopped
   */
  async search(sound: ChordSearch, over: readonly number[] | null): Promise<Outcome<FoundChart> | null> {
    this.stop();
    const turn = this.#turn;
    this.#sound = sound;
    this.#share = 0;
    const found = await sound.findChords(over, (share) => {
      if (turn === this.#turn) this.#share = share;
    });
    if (turn !== this.#turn) return null;
    this.#share = null;
    if (found.ok) {
      this.#found = found.value;
      this.#pins = NO_PINS;
    }
    return found;
  }

  /** Ends a search at once. */
  stop(): void {
    if (this.#share === null) return;
    this.#turn++;
    this.#share = null;
    this.#sound?.stopFinding();
  }

  /** Nothing is proposed any more. */
  forget(): void {
    this.stop();
    this.#found = null;
    this.#pins = NO_PINS;
  }

  /** One chord for a whole bar: it stays, and the others are decoded again around it. @param bar from 0 */
  setBar(bar: number, symbol: string): void {
    const chord = numberOfSymbol(symbol);
    if (chord !== null) this.#pin(withBarSet(this.#pins, bar, chord));
  }

  /** The form has so many bars. What was set in bars is let go: they are other bars now. */
  setLength(formBars: number): void {
    const { bars: _, ...rest } = this.#pins;
    this.#pin({ ...rest, formBars });
  }

  /** Bar 1 begins at this beat. @param beat index among `beats`; null where it is none of them */
  setDownbeat(beat: number | null): void {
    if (beat === null || beat === this.#proposal?.downbeat) return;
    const { bars: _, ...rest } = this.#pins;
    this.#pin({ ...rest, downbeat: beat });
  }

  /** What the player has set; the chart that follows takes its place on the desk. */
  #pin(pins: ChartPins): void {
    this.#pins = pins;
    if (this.#proposal !== null) this.#chart.write(this.#proposal.chart);
  }
}
