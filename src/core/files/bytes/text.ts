/** Bytes to text, and the answer to whether bytes are text at all. */

/** Control characters that plain text files do hold: tab, line feed, form feed, carriage return. */
const PLAIN_CONTROLS = new Set([0x09, 0x0a, 0x0c, 0x0d]);
const DELETE = 0x7f;
const FIRST_PRINTABLE = 0x20;

function isPlain(text: string): boolean {
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    if (unit === DELETE || (unit < FIRST_PRINTABLE && !PLAIN_CONTROLS.has(unit))) return false;
  }
  return true;
}

/** UTF-8 by RFC 3629: overlong forms, surrogates and code points over U+10FFFF are refused. */
function decodeUtf8(bytes: Uint8Array, mayEndEarly: boolean): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: mayEndEarly });
  } catch {
    // The decoder throws a TypeError where the bytes are not UTF-8.
    return null;
  }
}

/** One byte a letter, as older spreadsheets and programs for notation save on Windows (WHATWG Encoding Standard). */
const decodeWindows1252 = (bytes: Uint8Array): string => new TextDecoder('windows-1252').decode(bytes);

/** A byte left over at the end is dropped. */
const decodeUtf16 = (bytes: Uint8Array, label: 'utf-16le' | 'utf-16be'): string =>
  new TextDecoder(label).decode(bytes, { stream: true });

/**
 * Text of a file, or null where the bytes are no text. UTF-8, with or without a byte-order mark, and UTF-16
 * with one (spreadsheets write it); what is neither and holds no control character is read as Windows-1252, which
 * ISO 8859-1 is a part of. There only names could be read wrongly: numbers and chords are the same everywhere.
 *
 * @param mayEndEarly the bytes are the beginning of a longer file: a character cut in two at the end is fine.
 */
export function decodeText(bytes: Uint8Array, mayEndEarly = false): string | null {
  const [first, second] = bytes;
  const text =
    first === 0xff && second === 0xfe
      ? decodeUtf16(bytes, 'utf-16le')
      : first === 0xfe && second === 0xff
        ? decodeUtf16(bytes, 'utf-16be')
        : (decodeUtf8(bytes, mayEndEarly) ?? decodeWindows1252(bytes));
  return isPlain(text) ? text : null;
}
