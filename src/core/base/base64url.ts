/** Bytes in 64 characters that are safe in addresses: base64url of RFC 4648, section 5, without padding. */

const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUES: ReadonlyMap<string, number> = new Map([...ALPHABET].map((character, i) => [character, i]));
const BITS_A_BYTE = 8;
const BITS_A_CHARACTER = 6;

/** @example toBase64Url(Uint8Array.of(0xff, 0xfe)) // "__4" */
export function toBase64Url(bytes: Uint8Array): string {
  const characters: string[] = [];
  let held = 0;
  let bits = 0;
  for (const byte of bytes) {
    held = (held << BITS_A_BYTE) | byte;
    for (bits += BITS_A_BYTE; bits >= BITS_A_CHARACTER; bits -= BITS_A_CHARACTER)
      characters.push(ALPHABET.charAt((held >> (bits - BITS_A_CHARACTER)) & 63));
    held &= (1 << bits) - 1;
  }
  if (bits > 0) characters.push(ALPHABET.charAt(held << (BITS_A_CHARACTER - bits)));
  return characters.join('');
}

/** null for a text with other characters, and for one of a length that no bytes have. Bits behind the last byte are dropped. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * BITS_A_CHARACTER) / BITS_A_BYTE));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (const character of text) {
    const value = VALUES.get(character);
    if (value === undefined) return null;
    held = (held << BITS_A_CHARACTER) | value;
    bits += BITS_A_CHARACTER;
    if (bits < BITS_A_BYTE) continue;
    bits -= BITS_A_BYTE;
    bytes[at++] = held >> bits;
    held &= (1 << bits) - 1;
  }
  return bytes;
}
