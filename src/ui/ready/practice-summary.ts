/** The practice in a few words, for the line that it folds into. */
import type { PracticeSettings } from '../../state/practice-settings.ts';

export const chorusWords = (count: number): string => (count === 1 ? 'chorus' : `${count} choruses`);
export const barWords = (count: number): string => (count === 1 ? '1 bar' : `${count} bars`);

/** What is practised, piece by piece; none where the form is simply played. */
export function practiceWords(
  { loop, keys, rise, tradeBars, drone, chordsRest, backbeatClick }: PracticeSettings['practice'],
  bars: number,
): readonly string[] {
  const words: string[] = [];
  if (loop !== null && bars > 0)
    words.push(`bars ${Math.min(loop.fromBar, bars)} to ${Math.min(loop.toBar, bars)}`);
  if (keys !== null) words.push('through the keys');
  if (rise !== null) words.push(`${rise.byBpm} bpm faster every ${chorusWords(rise.everyChoruses)}`);
  if (tradeBars !== null) words.push(`turns of ${barWords(tradeBars)}`);
  if (drone !== null) words.push('over a drone');
  else if (chordsRest) words.push('chords every second chorus');
  if (backbeatClick) words.push('click on 2 and 4');
  return words;
}

/** Whether the player's turns fall on the same bars each time round: whole pairs of turns fill the loop. */
export const sameBarsEachTime = (tradeBars: number | null, loopBars: number): boolean =>
  tradeBars !== null && loopBars > 0 && loopBars % (2 * tradeBars) === 0;
