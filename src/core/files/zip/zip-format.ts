/** The marks and lengths of a zip archive, as PKWARE's APPNOTE.TXT 6.3.10 has them. */

export const LOCAL_MARK = 0x04034b50;
export const CENTRAL_MARK = 0x02014b50;
export const END_MARK = 0x06054b50;
export const END64_MARK = 0x06064b50;
export const LOCATOR64_MARK = 0x07064b50;

/** Bytes of each record without its names and extra fields. */
export const LOCAL_BYTES = 30;
export const CENTRAL_BYTES = 46;
export const END_BYTES = 22;
export const END64_BYTES = 56;
export const LOCATOR64_BYTES = 20;

/** An extra field with the sizes and places that do not fit 32 bits. */
export const EXTRA_ZIP64 = 0x0001;
/** What stands in a field of 32 or 16 bits whose value is in the extra field. */
export const IN_EXTRA_32 = 0xffff_ffff;
export const IN_EXTRA_16 = 0xffff;

/** Ways of packing that are written and read. */
export const STORED = 0;
export const DEFLATED = 8;

/** Flags of an entry. */
export const FLAG_ENCRYPTED = 0x0001;
export const FLAG_STRONG_ENCRYPTION = 0x0040;
export const FLAG_UTF8 = 0x0800;
