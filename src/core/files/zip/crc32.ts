/** The checksum of a zip archive: CRC-32 with the polynomial 0xEDB88320 (ISO 3309, APPNOTE.TXT 4.4.7). */

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/**
 * @param before the checksum of the bytes before these; 0 at the beginning
 * @example crc32(new TextEncoder().encode('123456789')) // 0xcbf43926
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  let value = ~before;
  for (const byte of bytes) value = (value >>> 8) ^ TABLE[(value ^ byte) & 0xff]!;
  return ~value >>> 0;
}
