/** A file that the player opened, read piece by piece. */
import type { ByteSource } from '../core/files/bytes/bytes.ts';

export const blobBytes = (blob: Blob, name: string): ByteSource => ({
  name,
  size: blob.size,
  read: async (offset, length) => new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
});

/** Whether a file is a zip archive, by its first bytes: a take file, a library, or that of another program. */
export async function isArchive(file: Blob): Promise<boolean> {
  const [p, k] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return p === 0x50 && k === 0x4b;
}
