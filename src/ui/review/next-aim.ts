/** The aim that the report of the take in review offers, and at it again. */
import type { AppState } from '../../state/app-state.ts';

export function takeNextAim({ session, lesson }: Pick<AppState, 'session' | 'lesson'>): void {
  const { phase } = session;
  const next = phase.kind === 'review' && lesson.sheet === null ? phase.review.report.nextAim : null;
  void session.again({ ...(next !== null && { aim: next.id }), tryBars: 'none' });
}
