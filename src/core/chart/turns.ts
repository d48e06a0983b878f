/** Whose turn it is where player and band trade bars: the player begins, and turns are counted from the first downbeat. */

import type { Timeline } from './timeline.ts';

/** Beats are sums of fractions: this much apart they are the same. */
const SAME_BEAT = 1e-5;

/** The bars of [fromBar, toBar) in which the band has its turn, as stretches; bars are counted on through the choruses. */
export function bandTurns(
  turnBars: number,
  fromBar: number,
  toBar: number,
): readonly { readonly fromBar: number; readonly toBar: number }[] {
  const turns: { fromBar: number; toBar: number }[] = [];
  const first = Math.floor(fromBar / turnBars);
  for (let turn = first + ((first + 1) % 2); turn * turnBars < toBar; turn += 2) {
    turns.push({
      fromBar: Math.max(fromBar, turn * turnBars),
      toBar: Math.min(toBar, (turn + 1) * turnBars),
    });
  }
  return turns.filter((turn) => turn.toBar > turn.fromBar);
}

/** Whether a beat, counted from the first downbeat, lies in a turn of the player's; before the first downbeat it does. */
export const isPlayersTurn = (
  { turnBars, beatsPerBar }: Pick<Timeline, 'turnBars' | 'beatsPerBar'>,
  beat: number,
): boolean => turnBars === undefined || beat < 0 || turnAt(turnBars * beatsPerBar, beat) % 2 === 0;

/** The first beat behind the turn that a beat lies in; Infinity where nobody trades. */
export const endOfTurn = (
  { turnBars, beatsPerBar }: Pick<Timeline, 'turnBars' | 'beatsPerBar'>,
  beat: number,
): number =>
  turnBars === undefined
    ? Infinity
    : (turnAt(turnBars * beatsPerBar, Math.max(0, beat)) + 1) * turnBars * beatsPerBar;

const turnAt = (turnBeats: number, beat: number) => Math.floor((beat + SAME_BEAT) / turnBeats);
