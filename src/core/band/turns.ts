/** Whose turn it is where player and band trade bars: the player begins, and turns are counted from the first downbeat. */

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
