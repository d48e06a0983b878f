/** What a take is played to, opened: the band, or the player's own recording in its place. */
import type { Outcome } from '../core/base/outcome.ts';
import type { AudioPort, OpenBand } from './ports.ts';
import type { TakeEvents, TakePlan } from './take-plan.ts';

export function openBand(audio: AudioPort, plan: TakePlan, events: TakeEvents): Promise<Outcome<OpenBand>> {
  const { timeline, band, levels, backing } = plan;
  if (backing === undefined) {
    events.opening('the band');
    return audio.openBand(timeline, band, levels);
  }
  events.opening('the backing');
  const progress = (share: number) => events.opening(`the backing, ${Math.round(100 * share)} % rendered`);
  return audio.openBand(timeline, band, levels, { ...backing, progress });
}
