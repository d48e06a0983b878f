/** Plays again with the set-up of a take: its settings and its recording, changed where the player asks for it. */
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { Backings } from './backings.svelte.ts';
import type { Setup } from './setup.svelte.ts';
import type { PracticeSettings } from './practice-settings.ts';
import type { Library } from './library.svelte.ts';
import type { Review } from './phase.ts';
import type { BarsToTry, Tries } from './tries.svelte.ts';
import type { TakeDetails, TakeMark } from './take.ts';

/** What is to be changed for the new take. */
export interface AgainChange {
  /** Id of an aim. */
  readonly aim?: string;
  readonly loop?: PracticeSettings['practice']['loop'];
  /** Bars to try again; 'none' ends a trial: the whole form. */
  readonly tryBars?: BarsToTry | 'none';
}

/** The player's own recordings, of which one can play in the band's place. */
export type Stand = Pick<Backings, 'kept' | 'play'>;

interface AgainPorts {
  readonly setup: Setup;
  readonly stand: Stand;
  /** Needed where bars are tried: they are bars of the take in review. */
  readonly tries?: Tries;
  readonly review?: Review | null;
}

/**
 * @param opened the take whose set-up is taken up; null goes on with what is set
 * @returns a problem where the recording that the take was played to is no longer kept
 */
export function setUpAgain(
  opened: TakeDetails | null,
  { aim, loop, tryBars }: AgainChange,
  { setup, stand, tries, review = null }: AgainPorts,
): Outcome<void> {
  const ready = opened === null ? good(undefined) : takeUp(opened, setup, stand);
  if (tryBars === 'none') tries?.end();
  else if (tryBars !== undefined && review !== null && ready.ok) tries?.begin(review, tryBars);
  if (aim !== undefined) setup.setPlaying({ aim });
  if (loop !== undefined) setup.setPractice({ loop });
  return ready;
}

/** A take in review with what the player says of it, kept where the take is kept. */
export function marked(review: Review, change: TakeMark, library: Pick<Library, 'mark'>): Review {
  if (review.id !== null) void library.mark(review.id, change);
  return { ...review, details: { ...review.details, ...change } };
}

function takeUp(details: TakeDetails, setup: Setup, stand: Stand): Outcome<void> {
  setup.takeUp(details);
  if (details.backing === undefined) return good(undefined);
  const { id, speed, cents, bars = null } = details.backing;
  if (stand.kept.every((record) => record.id !== id)) return bad('backing.gone');
  // The recording is chosen at once; its speed may be written a little later.
  void stand.play(id, { speed, cents, bars });
  return setup.backing === null ? bad('backing.gone') : good(undefined);
}
