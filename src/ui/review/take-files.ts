/** Which files a take in review leaves as, and the command that grades them at the command line. */
import { gradeCommand } from '../../state/grade-command.ts';
import type { Review } from '../../state/phase.ts';

export interface TakeFiles {
  /** What the line leaves as; null for a file that was opened: the player has it already. */
  readonly line: 'sound' | 'notes' | null;
  /** Whether the band that was taken out can be saved: it is needed to take it out again. */
  readonly band: boolean;
  /** Whether it was played to listed beats, which say where its chords lie. */
  readonly beats: boolean;
  readonly command: string;
}

export function takeFiles(review: Review): TakeFiles {
  const { details, content, report } = review;
  return {
    line: details.source === 'recording' ? null : content.kind,
    band: content.kind === 'sound' && content.backing?.kind === 'band' && Boolean(report.source.backing),
    beats: details.backing !== undefined,
    command: gradeCommand(review),
  };
}
