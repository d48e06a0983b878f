/**
 * Bars of a take tried again: they go round with the band for a few times, and what comes of it stands beside the take
 * that they are from. The loop is a trial: the player's own set-up is what it was when the trial is over.
 */
import type { Review } from './phase.ts';
import type { Setup } from './setup.svelte.ts';

/** Bars of the take's chorus, from 1, both included. */
export interface BarsToTry {
  readonly fromBar: number;
  readonly toBar: number;
}

/** The take that bars are from, and which bars. */
export interface TriedBars {
  readonly first: Review;
  readonly bars: BarsToTry;
}

/** How many times the bars go round: enough to hear them come, and to play them surely. */
const LEAST_TIMES = 4;
/** Fewer changes say nothing about an aim (see `leastEvents` in core/grade/aims/aims.ts). */
const LEAST_CHANGES = 8;

export class Tries {
  readonly #setup: Setup;
  #tried = $state.raw<TriedBars | null>(null);

  constructor(setup: Setup) {
    this.#setup = setup;
  }

  /** What is being tried again, or was just now; null where nothing is. */
  get tried(): TriedBars | null {
    return this.#tried;
  }

  /** Bars of a take are looped. While bars are tried already, the same ones go on: the first take stays the first. */
  begin(first: Review, bars: BarsToTry): void {
    if (this.#tried !== null) return;
    this.#tried = { first, bars };
    const { practice } = this.#setup.settings;
    const loop = loopOfSetup(bars, first, practice.loop);
    this.#setup.setTrial({ choruses: timesRound(bars, first), practice: { ...practice, loop } });
  }

  /** The whole form again. */
  end(): void {
    this.#tried = null;
    this.#setup.setTrial(null);
  }
}

/** Why bars can't go round: a recording in the band's place goes round as it is, and a loop is in one key. */
export type NotTried = 'recording' | 'keys';

/** null where they can. */
export function notTried({ details, timeline }: Review): NotTried | null {
  if (details.backing !== undefined) return 'recording';
  return timeline.keys === undefined ? null : 'keys';
}

/** A take of a loop counts its bars from the loop's first. */
function loopOfSetup({ fromBar, toBar }: BarsToTry, { timeline }: Review, loop: BarsToTry | null): BarsToTry {
  const isLoop = loop !== null && loop.toBar - loop.fromBar + 1 === timeline.bars;
  const before = isLoop ? loop.fromBar - 1 : 0;
  return { fromBar: fromBar + before, toBar: toBar + before };
}

function timesRound({ fromBar, toBar }: BarsToTry, { report }: Review): number {
  const inBars = report.landings.filter(({ bar }) => bar + 1 >= fromBar && bar + 1 <= toBar);
  const changes = new Set(inBars.map(({ bar, beatOfBar }) => `${bar} ${beatOfBar}`)).size;
  return Math.max(LEAST_TIMES, Math.ceil(LEAST_CHANGES / Math.max(1, changes)));
}
