/** A carriage return and a line feed, and whatever else begins a new line (Unicode Standard Annex 14, classes BK, CR, LF, NL). */
// eslint-disable-next-line no-control-regex -- these are the characters that are meant
const LINE_BREAKS = /[\n\r\u000b\u000c\u0085\u2028\u2029]/g;

const SHORT: Readonly<Record<string, string>> = { '\n': '\\n', '\r': '\\r' };

/**
 * A text from outside as part of one line: the name of a file may hold a line break, and what stands behind it would read
 * as a sentence of the program. Line breaks are written as JSON writes them.
 * @example onOneLine('a\nb') // "a\\nb"
 */
export const onOneLine = (text: string): string =>
  text.replace(
    LINE_BREAKS,
    (sign) => SHORT[sign] ?? `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
