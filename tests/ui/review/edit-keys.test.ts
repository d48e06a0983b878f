import { describe, expect, it } from 'vitest';
import { EDIT_KEYS, editCommand, type Press } from '../../../src/ui/review/edit-keys.ts';
import { REVIEW_KEYS } from '../../../src/ui/review/review-keys.ts';

const press = (key: string, held: Partial<Press> = {}): Press => ({
  ...{ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false },
  ...held,
});

describe('the keys that correct notes', () => {
  it('do one thing each, and none that the review does', () => {
    const keys = [...EDIT_KEYS, ...REVIEW_KEYS].map(([key]) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const [key, command] of EDIT_KEYS) expect(editCommand(press(key), 'line')).toBe(command);
  });

  it('leave a field for text alone, and the page its arrows', () => {
    expect(editCommand(press('x'), 'text')).toBeNull();
    expect(editCommand(press('ArrowUp'), 'elsewhere')).toBeNull();
    expect(editCommand(press('X'), 'elsewhere')).toBe('split');
    expect(editCommand(press('Backspace'), 'line')).toBe('delete');
    expect(editCommand(press('x', { altKey: true }), 'line')).toBeNull();
  });

  it('undo and redo as other programs do', () => {
    expect(editCommand(press('z', { ctrlKey: true }), 'elsewhere')).toBe('undo');
    expect(editCommand(press('z', { metaKey: true }), 'line')).toBe('undo');
    expect(editCommand(press('Z', { ctrlKey: true, shiftKey: true }), 'line')).toBe('redo');
    expect(editCommand(press('y', { ctrlKey: true }), 'line')).toBe('redo');
    expect(editCommand(press('a', { ctrlKey: true }), 'line')).toBeNull();
  });
});
