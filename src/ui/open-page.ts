/** Which page stands while nothing is played, graded or reviewed. */
import type { AppState } from '../state/app-state.ts';

/** 'stand' is the open page, 'sheet' a lesson sheet in its place. */
export type OpenPage =
  'sound check' | 'recording' | 'beats' | 'editor' | 'progress' | 'class desk' | 'sheet' | 'stand';

type Places = Pick<
  AppState,
  'soundCheck' | 'recordingDesk' | 'backingDesk' | 'sheetDesk' | 'pages' | 'lesson'
>;

/** What was begun last lies on top, and shows again what lay under it when it is closed. */
export function openPageOf({
  soundCheck,
  recordingDesk,
  backingDesk,
  sheetDesk,
  pages,
  lesson,
}: Places): OpenPage {
  if (soundCheck.step !== 'closed') return 'sound check';
  if (recordingDesk.isOpen) return 'recording';
  if (backingDesk.record !== null) return 'beats';
  if (sheetDesk.draft !== null) return 'editor';
  if (pages.progress) return 'progress';
  if (pages.classDesk) return 'class desk';
  return lesson.sheet === null ? 'stand' : 'sheet';
}

/** Pages from which a take starts, and whose place a sheet may take that comes by a link. */
export const startsTake = (page: OpenPage | null): boolean => page === 'stand' || page === 'sheet';
