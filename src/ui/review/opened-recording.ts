/** A recording that was opened: it does not say where its first bar starts, nor whether a backing is in it. */
import type { RecordingFiles } from '../../state/open-take.ts';
import type { Review } from '../../state/phase.ts';

export interface OpenedRecording {
  readonly firstBeatSeconds: number;
  /** The file of the backing that was given, or null; left out where a line can't have one. */
  readonly backingName?: string | null;
  onfirstbeat(seconds: number): void;
  onbacking(file: File | null): void;
}

/**
 * What the player can still say of a take; null for one that was played here.
 * @param openAgain opens the same recording against what was said
 */
export function openedRecording(
  { details: { source, firstBeatSeconds }, content }: Review,
  openAgain: (change: Partial<RecordingFiles>, firstBeatSeconds: number) => void,
): OpenedRecording | null {
  if (source !== 'recording' || firstBeatSeconds === null) return null;
  return {
    firstBeatSeconds,
    ...(content.kind === 'sound' && {
      backingName: content.backing?.kind === 'recording' ? content.backing.name : null,
    }),
    onfirstbeat: (seconds) => openAgain({}, seconds),
    onbacking: (backing) => openAgain({ backing }, firstBeatSeconds),
  };
}
