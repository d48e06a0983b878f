/** The practice in a few words, for the line that it folds into. */
import type { OpenPageWords } from '../../core/words/words.ts';
import type { PracticeSettings } from '../../state/practice-settings.ts';

/** What is practised, piece by piece; none where the form is simply played. */
export function practiceWords(
  { loop, keys, rise, tradeBars, drone, chordsRest, backbeatClick }: PracticeSettings['practice'],
  bars: number,
  { ready: { practice } }: OpenPageWords,
): readonly string[] {
  const pieces: string[] = [];
  if (loop !== null && bars > 0)
    pieces.push(practice.bars({ from: Math.min(loop.fromBar, bars), to: Math.min(loop.toBar, bars) }));
  if (keys !== null) pieces.push(practice.throughKeys);
  if (rise !== null) pieces.push(practice.fasterEvery({ bpm: rise.byBpm, choruses: rise.everyChoruses }));
  if (tradeBars !== null) pieces.push(practice.turnsEach({ bars: tradeBars }));
  if (drone !== null) pieces.push(practice.overDrone);
  else if (chordsRest) pieces.push(practice.chordsEverySecond);
  if (backbeatClick) pieces.push(practice.clickOn);
  return pieces;
}

/** Whether the player's turns fall on the same bars each time round: whole pairs of turns fill the loop. */
export const sameBarsEachTime = (tradeBars: number | null, loopBars: number): boolean =>
  tradeBars !== null && loopBars > 0 && loopBars % (2 * tradeBars) === 0;
