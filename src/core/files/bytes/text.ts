/** Bytes to text. The core has no TextDecoder (that is the host's), and needs to know what is *not* text. */

/** Control characters that plain text files do hold: tab, line feed, form feed, carriage return. */
const PLAIN_CONTROLS = new Set([0x09, 0x0a, 0x0c, 0x0d]);

function plain(codePoint: number): boolean {
  if (codePoint < 0x20) return PLAIN_CONTROLS.has(codePoint);
  return codePoint !== 0x7f;
}

/** UTF-8 by RFC 3629: overlong forms, surrogates and code points over U+10FFFF are refused. */
function decodeUtf8(bytes: Uint8Array, mayEndEarly: boolean): string | null {
  const parts: string[] = [];
  let at = 0;
  while (at < bytes.length) {
    const lead = bytes[at]!;
    const extra = lead < 0x80 ? 0 : lead >= 0xc2 && lead < 0xe0 ? 1 : lead >= 0xe0 && lead < 0xf0 ? 2 : 3;
    if (extra === 3 && (lead < 0xf0 || lead > 0xf4)) return null;
    if (at + extra >= bytes.length) return mayEndEarly ? parts.join('') : null;
    let codePoint = extra === 0 ? lead : lead & (0x3f >> extra);
    for (let k = 1; k <= extra; k++) {
      const next = bytes[at + k]!;
      if ((next & 0xc0) !== 0x80) return null;
      codePoint = (codePoint << 6) | (next & 0x3f);
    }
    const smallest = extra === 2 ? 0x800 : extra === 3 ? 0x10000 : 0;
    if (codePoint < smallest || codePoint > 0x10ffff || (codePoint >= 0xd800 && codePoint < 0xe000))
      return null;
    if (!plain(codePoint)) return null;
    parts.push(String.fromCodePoint(codePoint));
    at += extra + 1;
  }
  return parts.join('');
}

function decodeUtf16(bytes: Uint8Array, littleEndian: boolean): string | null {
  const parts: string[] = [];
  for (let at = 2; at + 1 < bytes.length; at += 2) {
    const unit = littleEndian ? bytes[at]! | (bytes[at + 1]! << 8) : (bytes[at]! << 8) | bytes[at + 1]!;
    if (!plain(unit)) return null;
    parts.push(String.fromCharCode(unit));
  }
  return parts.join('');
}

/**
 * Text of a file, or null where the bytes are no text. UTF-8, with or without a byte-order mark, and UTF-16
 * with one (spreadsheets write it).
 * @param mayEndEarly the bytes are the beginning of a longer file: a character cut in two at the end is fine.
 */
export function decodeText(bytes: Uint8Array, mayEndEarly = false): string | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return decodeUtf16(bytes, true);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return decodeUtf16(bytes, false);
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  return decodeUtf8(marked ? bytes.subarray(3) : bytes, mayEndEarly);
}
