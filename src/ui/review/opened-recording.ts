/** A recording that was opened: the player can say again what it is graded by, and which backing is in it. */
import { RecordingDraft } from '../../state/recording-draft.svelte.ts';
import type { Review } from '../../state/phase.ts';
import type { Session } from '../../state/session.svelte.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import type { Songbook } from '../../state/songbook.svelte.ts';
import type { FormChoice } from '../chart/form-choice.ts';

export interface OpenedRecording {
  /** The chart by its title, in its key. */
  readonly chart: string;
  readonly facts: { readonly bpm: number; readonly seconds: number };
  readonly forms: readonly FormChoice[];
  readonly songbook: Songbook;
  /** The file of the backing that was given, or null; left out where a line can't have one. */
  readonly backingName?: string | null;
  /** What it was graded by, to be changed. */
  draft(): RecordingDraft;
  oncorrect(draft: RecordingDraft): void;
  onbacking(file: File | null): void;
}

interface Desk {
  readonly session: Session;
  readonly setup: Setup;
  readonly songbook: Songbook;
  readonly forms: readonly FormChoice[];
  /** The title of a set-up as the player reads it. */
  readonly titled: (title: string) => string;
}

/** null for a take that was played here. */
export function openedRecording(
  { details, content, report }: Review,
  { session, setup, songbook, forms, titled }: Desk,
): OpenedRecording | null {
  const { source, firstBeatSeconds, bpm } = details;
  if (source !== 'recording' || firstBeatSeconds === null) return null;
  const draft = () => RecordingDraft.ofTake(details, setup.settings);
  const given =
    content.kind === 'sound' && content.backing?.kind === 'recording' ? content.backing.name : null;
  return {
    chart: titled(draft().setup.title),
    facts: { bpm, seconds: firstBeatSeconds },
    forms,
    songbook,
    // A backing that was taken out at an earlier visit is not kept, and its name neither.
    ...(content.kind === 'sound' && (given !== null || !report.source.backing) && { backingName: given }),
    draft,
    oncorrect: (said) => {
      const change = said.change(new Date());
      if (change !== null) void session.correct(change);
    },
    onbacking: (file) => void session.setBacking(file),
  };
}
