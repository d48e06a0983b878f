/** The keys of the review, as players of sound and video have them. */

export type ReviewCommand =
  | 'play'
  | 'bar back'
  | 'bar on'
  | 'start'
  | 'loop'
  | 'loop starts'
  | 'loop ends'
  | 'speed'
  | 'mix'
  | 'note'
  | 'correct'
  | 'keys';

/** In the order in which they are shown. */
export const REVIEW_KEYS: readonly (readonly [key: string, command: ReviewCommand])[] = [
  [' ', 'play'],
  ['ArrowLeft', 'bar back'],
  ['ArrowRight', 'bar on'],
  ['Home', 'start'],
  ['l', 'loop'],
  ['[', 'loop starts'],
  [']', 'loop ends'],
  ['s', 'speed'],
  ['m', 'mix'],
  ['h', 'note'],
  ['e', 'correct'],
  ['?', 'keys'],
];

/** What stands under the focus; a list or a slider moves by the arrow keys itself. */
export type Focus = 'text' | 'list' | 'button' | null;

/** Keys that a list or a slider takes itself. */
const MOVES: ReadonlySet<string> = new Set(['ArrowLeft', 'ArrowRight', 'Home']);

/**
 * What a key does; null leaves it its usual work.
 * @param key as `KeyboardEvent.key`
 */
export function reviewCommand(key: string, focus: Focus): ReviewCommand | null {
  if (focus === 'text' || (focus === 'button' && key === ' ')) return null;
  if (focus === 'list' && MOVES.has(key)) return null;
  const wanted = key.length === 1 ? key.toLowerCase() : key;
  return REVIEW_KEYS.find(([one]) => one === wanted)?.[1] ?? null;
}

/** Which kind of thing an event of the keyboard comes from. */
export function focusOf(target: EventTarget | null): Focus {
  if (!(target instanceof Element)) return null;
  if (target.closest('input[type=range], [role=listbox]')) return 'list';
  if (target.closest('input[type=radio]')) return 'list';
  if (target.closest('input:not([type=checkbox]), select, textarea')) return 'text';
  return target.closest('button, summary, a, input[type=checkbox]') ? 'button' : null;
}

/** The next of a few, round and round. */
export const nextOf = <T>(all: readonly T[], now: T): T => all[(all.indexOf(now) + 1) % all.length]!;
