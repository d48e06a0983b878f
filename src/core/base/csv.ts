/** Fields of a table as CSV (RFC 4180). */

/** A field, in double quotes where it holds a separator, a quote or a line break (RFC 4180, 2.6 and 2.7). */
export const csvField = (text: string): string =>
  /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
