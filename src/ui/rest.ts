/** What is fetched after the open page: see the table in this folder's README. */
import type { AppState } from '../state/app-state.ts';
import type { ChartFiles } from '../state/songbook.svelte.ts';
import type { LatePart } from '../state/late-part.svelte.ts';
import type HelpDialog from './help/HelpDialog.svelte';
import type WrittenScreen from './notation/WrittenScreen.svelte';
import type RestScreens from './RestScreens.svelte';

/** Everything that a take needs, from its count-in to its review, and all pages but the open one. */
export interface Rest {
  readonly app: AppState;
  readonly chartFiles: ChartFiles;
  readonly Screens: typeof RestScreens;
  readonly Help: typeof HelpDialog;
  /** The line written out as notes, with its own drawing of scores. */
  readonly written: LatePart<typeof WrittenScreen>;
}
