/** A foot switch that was learned, as the settings show it: "controller 64 on channel 1, down is low". */
import type { WholePageWords } from '../../core/words/words.ts';
import type { LearnedFoot } from '../../state/foot-switch.ts';

export function describeFoot(foot: LearnedFoot, { ready }: WholePageWords): string {
  const { kind, channel, number, inverted, pressesOnly } = foot;
  return ready.handsFree.learnedFoot({
    kind,
    // Programs and channels count from 1 for players, controllers and keys from 0.
    number: kind === 'program' ? number + 1 : number,
    channel: channel + 1,
    how: pressesOnly ? 'presses only' : inverted ? 'inverted' : 'plain',
  });
}
