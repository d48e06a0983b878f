/** A desk on which the chords of a recording are proposed: what the screen of the proposal needs of it. */
import type { Outcome } from '../core/base/outcome.ts';
import type { Chart } from '../core/chart/chart.ts';
import type { BeatEditor } from './beat-editor.svelte.ts';
import type { ChordFinding } from './chord-finding.svelte.ts';

export interface ChordDesk {
  readonly finding: ChordFinding;
  /** The chart that stands. */
  readonly chart: Outcome<Chart>;
  /** The beats as they stand; `bpm`, in beats a minute, is null where none are known. */
  readonly editor: Pick<BeatEditor, 'bpm' | 'track'>;
  /** Whole bars that the recording holds from the first downbeat on. */
  readonly bars: number;
  /** What else the desk is doing now; null where nothing. */
  readonly busy: string | null;
  /**
   * Finds beats and chords, and lays them out.
   * @param over beats in seconds that are kept as they are; null looks for beats too
   */
  findChart(over: readonly number[] | null): Promise<void>;
  /** A chart in the place of the one that stands. */
  takeChart(chartText: string): void;
  /** Lays out again what was found, with what was set in it. */
  takeFound(): void;
}
