/** Bars of a take as stretches of its seconds: what is gone round, and where the arrow keys jump to. */
import type { Timeline } from '../core/chart/timeline.ts';
import type { Stretch } from './playback.svelte.ts';

type Bars = Pick<Timeline, 'beatMap' | 'beatsPerBar' | 'bars'>;

const SAME_BEAT = 1e-6;

/** The whole bars round a stretch of beats, one at least; a stretch that ends on a bar line ends there. */
export function wholeBars({ beatMap, beatsPerBar }: Bars, fromBeat: number, toBeat: number): Stretch {
  const first = Math.floor(fromBeat / beatsPerBar + SAME_BEAT);
  const last = Math.max(first + 1, Math.ceil(toBeat / beatsPerBar - SAME_BEAT));
  return {
    fromSeconds: Math.max(0, beatMap.secondsAt(first * beatsPerBar)),
    toSeconds: beatMap.secondsAt(last * beatsPerBar),
  };
}

/** Which bars of the form a stretch goes over, from 1. */
export function barsOfForm(
  { beatMap, beatsPerBar, bars }: Bars,
  { fromSeconds, toSeconds }: Stretch,
): { readonly fromBar: number; readonly toBar: number } {
  const barAt = (beat: number) => {
    const bar = Math.floor(beat / beatsPerBar + SAME_BEAT);
    return (((bar % bars) + bars) % bars) + 1;
  };
  const lastBeat = Math.ceil(beatMap.beatAt(toSeconds) / beatsPerBar - SAME_BEAT) * beatsPerBar;
  return { fromBar: barAt(beatMap.beatAt(fromSeconds)), toBar: barAt(lastBeat - beatsPerBar) };
}

/** So soon after a bar line, in seconds, a key still goes to the bar before. */
const JUST_AFTER_SECONDS = 0.4;

/** The bar line before or after a place; it begins again where the bar has gone on for a moment. */
export function barLine({ beatMap, beatsPerBar }: Bars, seconds: number, step: -1 | 1): number {
  const from = step < 0 ? seconds - JUST_AFTER_SECONDS : seconds + 0.01;
  const bar = beatMap.beatAt(from) / beatsPerBar;
  const line = step < 0 ? Math.floor(bar + SAME_BEAT) : Math.floor(bar + SAME_BEAT) + 1;
  return Math.max(0, beatMap.secondsAt(line * beatsPerBar));
}
