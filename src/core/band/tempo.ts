/** The tempo that the band plays by, in the terms of the chart's rising tempo. */
import { risingBeatMap, type RisingTempo } from '../chart/tempo-rise.ts';
import type { BeatMap } from '../chart/timeline.ts';
import type { BandForm } from './form.ts';
import type { BandSettings } from './settings.ts';

export const tempoOf = (
  { beatsPerBar }: Pick<BandForm, 'beatsPerBar'>,
  { bpm, rise }: Pick<BandSettings, 'bpm' | 'rise'>,
): RisingTempo => ({ bpm, rise: rise ?? null, beatsPerBar });

/** Beats against seconds from the first downbeat. */
export const beatMapOf = (form: Pick<BandForm, 'beatsPerBar'>, settings: BandSettings): BeatMap =>
  risingBeatMap(tempoOf(form, settings), 0);
