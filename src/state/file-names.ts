/** Names of files that every system takes. */

/** Of each part of a name. */
const MOST_CHARACTERS = 50;
/** What Windows keeps for its devices, with whatever ending. *Naming Files, Paths, and Namespaces, Microsoft Learn; from memory.* */
const DEVICES = /^(?:con|prn|aux|nul|com\d|lpt\d)$/i;
const NAMELESS = 'landfall';

/**
 * Letters, digits, spaces, dashes and number signs; everything else becomes a space.
 * @example safeFileName(['Student 7', 'Thirds: slow/blues', 'try 2'], '.landfall') // "Student 7 - Thirds slow blues - try 2.landfall"
 */
export function safeFileName(parts: readonly string[], ending: string): string {
  const safe = parts
    .map((part) =>
      [
        ...part
          .normalize('NFC')
          .replace(/[^\p{L}\p{M}\p{N}#-]+/gu, ' ')
          .trim(),
      ]
        .slice(0, MOST_CHARACTERS)
        .join('')
        .replace(/^[-\s]+|[-\s]+$/gu, ''),
    )
    .filter((part) => part !== '');
  const stem = safe.join(' - ');
  return `${stem === '' || DEVICES.test(stem) ? NAMELESS : stem}${ending}`;
}
