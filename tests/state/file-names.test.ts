import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { safeFileName } from '../../src/state/file-names.ts';

describe('the name of a file', () => {
  it.each([
    [['Alto', 'Thirds: slow/blues', 'try 2'], 'Alto - Thirds slow blues - try 2.landfall'],
    [['Jürgen Ōe', 'Übung „Terz“', 'Versuch 1'], 'Jürgen Ōe - Übung Terz - Versuch 1.landfall'],
    [['../../etc/passwd', '', 'try 1'], 'etc passwd - try 1.landfall'],
    [['', '...', '?'], 'landfall.landfall'],
    [['CON'], 'landfall.landfall'],
    [['a\u202Egnp.exe'], 'a gnp exe.landfall'],
  ])('is made of %j', (parts, name) => {
    expect(safeFileName(parts, '.landfall')).toBe(name);
  });

  it('has no character that Windows, macOS or a shell minds, and is short, whatever it is made of', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'binary' }), { maxLength: 3 }), (parts) => {
        const name = safeFileName(parts, '.landfall');
        // Microsoft Learn, "Naming Files, Paths, and Namespaces": these, control characters, and a point or space at the end.
        expect(name).not.toMatch(/[<>:"/\\|?*\p{Cc}\p{Cf}]|^[-.\s]|[.\s]$/u);
        expect(name.endsWith('.landfall')).toBe(true);
        expect([...name].length).toBeLessThanOrEqual(3 * 50 + 6 + 9);
      }),
    );
  });
});
