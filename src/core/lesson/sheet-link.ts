/**
 * A lesson sheet as the fragment of a link: its JSON, deflated (RFC 1951), in the alphabet that is safe in addresses
 * (base64url, RFC 4648, section 5). A browser sends no fragment to any server (RFC 3986, section 3.5).
 */
import { deflateSync, Inflate, strToU8 } from 'fflate';
import { fromBase64Url, toBase64Url } from '../base/base64url.ts';
import { bad, failure, good, type Outcome } from '../base/outcome.ts';
import { decodeText } from '../files/bytes/text.ts';
import { readSheetFile, SHEET_LIMITS, type LessonSheet, type SheetFile } from './sheet.ts';

/** What stands before the sheet, the number sign included. */
export const LINK_START = '#sheet=';

/** Of the fragment. Every program that handles addresses should take 8,000 (RFC 9110, section 4.1); the rest is the site's. */
export const LINK_CHARACTERS = 7500;

/** So many packed bytes are unpacked at a time: deflate makes 1,032 out of one at the most. */
const PIECE_BYTES = 64;

/**
 * The fragment of a link that holds the whole sheet, the number sign included.
 * @returns a problem where it is too long for a link
 */
export function sheetFragment(file: SheetFile): Outcome<string> {
  const packed = deflateSync(strToU8(JSON.stringify(file)), { level: 9 });
  const fragment = LINK_START + toBase64Url(packed);
  return fragment.length > LINK_CHARACTERS
    ? bad('sheetLink.tooLong', { characters: fragment.length, most: LINK_CHARACTERS })
    : good(fragment);
}

/**
 * The sheet that a fragment holds; null where it is the fragment of something else.
 * @param fragment of an address, the number sign included
 */
export function readSheetFragment(fragment: string): Outcome<LessonSheet> | null {
  if (!fragment.startsWith(LINK_START)) return null;
  if (fragment.length > LINK_CHARACTERS)
    return bad('sheetLink.tooLong', { characters: fragment.length, most: LINK_CHARACTERS });
  const packed = fromBase64Url(fragment.slice(LINK_START.length));
  const bytes = packed && inflated(packed, SHEET_LIMITS.bytes);
  const text = bytes && decodeText(bytes);
  if (text === null) return bad('sheetLink.damaged');
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return bad('sheetLink.damaged');
  }
  const sheet = readSheetFile(json, 'link');
  return sheet.ok ? sheet : failure(sheet.problem);
}

/** null for what is no deflate stream, for one that is cut, and for one that is longer than `mostBytes` unpacked. */
function inflated(packed: Uint8Array, mostBytes: number): Uint8Array | null {
  const whole = new Uint8Array(mostBytes);
  let length = 0;
  let tooLong = false;
  let ended = false;
  const inflate = new Inflate((piece, last) => {
    tooLong ||= length + piece.length > mostBytes;
    if (!tooLong) whole.set(piece, length);
    length += piece.length;
    ended = last;
  });
  try {
    for (let at = 0; at < packed.length && !tooLong; at += PIECE_BYTES)
      inflate.push(packed.slice(at, at + PIECE_BYTES), at + PIECE_BYTES >= packed.length);
  } catch {
    return null;
  }
  return tooLong || !ended ? null : whole.subarray(0, length);
}
