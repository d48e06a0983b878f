/**
 * Control characters but for tab and line breaks (line feed, alone or behind a carriage return), and what turns the
 * direction of writing (Unicode Standard Annex 9), so that a line would read otherwise than it is. The names of tracks,
 * files and aims may hold any.
 */
// eslint-disable-next-line no-control-regex -- these are the characters that are meant
const CONTROLS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]|\r(?!\n)/g;

/**
 * Text as a terminal may have it: control characters, which would move the cursor or change its colours, are written
 * as JSON writes them.
 * @example printable('\u001b[2J') // "\\u001b[2J"
 */
export const printable = (text: string): string =>
  text.replace(CONTROLS, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
