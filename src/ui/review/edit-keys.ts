/** The keys that correct notes, while the bar for it is open. */
import type { EditVerb } from '../../core/correct/edits.ts';

export type EditCommand = EditVerb | 'count' | 'undo' | 'redo';

/** In the order in which they are shown. The arrows go up and down on the line itself, where they have no other work. */
export const EDIT_KEYS: readonly (readonly [key: string, command: EditCommand])[] = [
  ['ArrowUp', 'up'],
  ['ArrowDown', 'down'],
  [',', 'earlier'],
  ['.', 'later'],
  ['<', 'shorter'],
  ['>', 'longer'],
  ['x', 'split'],
  ['j', 'join'],
  ['a', 'add'],
  ['Delete', 'delete'],
  ['c', 'count'],
];

export interface Press {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
}

/**
 * What a key does; null leaves it its usual work.
 * @param where what has the focus: a field for text keeps its keys, and only the line of notes has arrows to spare
 */
export function editCommand(press: Press, where: 'text' | 'line' | 'elsewhere'): EditCommand | null {
  if (where === 'text' || press.altKey) return null;
  const key = press.key.length === 1 ? press.key.toLowerCase() : press.key;
  if (press.ctrlKey || press.metaKey) {
    if (key === 'y' || (key === 'z' && press.shiftKey)) return 'redo';
    return key === 'z' ? 'undo' : null;
  }
  if (key.startsWith('Arrow') && where !== 'line') return null;
  return EDIT_KEYS.find(([one]) => one === (key === 'Backspace' ? 'Delete' : key))?.[1] ?? null;
}

/** Which kind of thing an event of the keyboard comes from. */
export function editFocus(target: EventTarget | null): 'text' | 'line' | 'elsewhere' {
  if (!(target instanceof Element)) return 'elsewhere';
  if (target.closest('[role=listbox]')) return 'line';
  return target.closest('input:not([type=checkbox], [type=radio], [type=range]), select, textarea')
    ? 'text'
    : 'elsewhere';
}
