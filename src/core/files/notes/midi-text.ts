/** Texts of a MIDI file, which does not say how their letters are written. */
import { decodeText } from '../bytes/text.ts';

/**
 * A text as it is meant: UTF-8 where its bytes are that, as programs of today write it, else Windows-1252.
 * @param bytewise each byte as one character, as the parser gives it
 * @returns without white space at its ends
 */
export function midiText(bytewise: string): string {
  // Nearly all are ASCII, and a file may hold half a million of them.
  if (!NOT_ASCII.test(bytewise)) return bytewise.trim();
  const bytes = Uint8Array.from(bytewise, (letter) => letter.charCodeAt(0));
  return (decodeText(bytes) ?? bytewise).trim();
}
const NOT_ASCII = /[\u0080-\uffff]/;
