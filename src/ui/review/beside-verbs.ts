/** Bars that were tried again and the take that they are from: either is heard, from the page of the try. */
import type { Playback } from '../../state/playback.svelte.ts';
import type { Report } from '../../core/take/schema.ts';
import type { BarsToTry, TriedBars } from '../../state/tries.svelte.ts';

/** The take that bars are from, as its player reads it. */
export interface FirstTake {
  readonly report: Report;
  readonly bars: BarsToTry;
  /** null where the sound can't be played. */
  readonly verbs: BesideVerbs | null;
}

export interface BesideVerbs {
  /** What sounds now. */
  readonly hearing: 'first' | 'now' | null;
  /** The bars as they were the first time, or the whole try. Asked for what sounds, it stops. */
  hear(which: 'first' | 'now'): void;
}

/** @param playbacks of the take that the bars are from, and of the try */
export function besideVerbs(
  { first, bars }: TriedBars,
  playbacks: { readonly first: Playback; readonly now: Playback },
): BesideVerbs {
  const { beatsPerBar, bars: barsOfForm, beatMap } = first.timeline;
  const landing = first.report.landings.find(({ bar }) => bar + 1 >= bars.fromBar && bar + 1 <= bars.toBar);
  const chorusBar = (landing?.chorus ?? 0) * barsOfForm;
  const secondsAtBar = (bar: number) =>
    Math.min(
      first.report.source.durationSeconds,
      Math.max(0, beatMap.secondsAt((chorusBar + bar) * beatsPerBar)),
    );
  const stretches = {
    first: { fromSeconds: secondsAtBar(bars.fromBar - 1), toSeconds: secondsAtBar(bars.toBar) },
    now: { fromSeconds: 0, toSeconds: playbacks.now.durationSeconds },
  };
  return {
    get hearing() {
      const sounds = (['first', 'now'] as const).find((which) => playbacks[which].hearing === which);
      return sounds ?? null;
    },
    hear: (which) => {
      playbacks[which === 'first' ? 'now' : 'first'].pause();
      void playbacks[which].hear({ id: which, ...stretches[which] });
    },
  };
}
