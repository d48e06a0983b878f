/** Which page stands while nothing is played, graded or reviewed. */
import type { AppState, OpenPageState } from '../state/app-state.ts';

/** 'stand' is the open page, 'sheet' a lesson sheet in its place. */
export type OpenPage =
  'sound check' | 'recording' | 'beats' | 'editor' | 'progress' | 'class desk' | 'sheet' | 'stand';

type Desks = Pick<AppState, 'soundCheck' | 'recordingDesk' | 'backingDesk' | 'sheetDesk'>;

/**
 * What was begun last lies on top, and shows again what lay under it when it is closed.
 * @param desks null until the rest of the program is there
 */
export function openPageOf(
  { pages, lesson }: Pick<OpenPageState, 'pages' | 'lesson'>,
  desks: Desks | null,
): OpenPage {
  if (desks !== null) {
    const { soundCheck, recordingDesk, backingDesk, sheetDesk } = desks;
    if (soundCheck.step !== 'closed') return 'sound check';
    if (recordingDesk.isOpen) return 'recording';
    if (backingDesk.record !== null) return 'beats';
    if (sheetDesk.draft !== null) return 'editor';
  }
  if (pages.progress) return 'progress';
  if (pages.classDesk) return 'class desk';
  return lesson.sheet === null ? 'stand' : 'sheet';
}

/** Pages from which a take starts, and whose place a sheet may take that comes by a link. */
export const startsTake = (page: OpenPage | null): boolean => page === 'stand' || page === 'sheet';
