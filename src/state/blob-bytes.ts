/** Files of the player, as bytes. */
export { blobBytes, isUnreadable } from '../analysis/blob-source.ts';

/**
 * Whether a file is a zip archive, by its first bytes: a take file, a library, or that of another program. Rejects where the
 * file can't be read.
 */
export async function isArchive(file: Blob): Promise<boolean> {
  const [p, k] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return p === 0x50 && k === 0x4b;
}
