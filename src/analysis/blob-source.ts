/** A file that the player opened, read piece by piece. */
import type { ByteSource } from '../core/files/bytes/bytes.ts';

export const blobBytes = (blob: Blob, name: string): ByteSource => ({
  name,
  size: blob.size,
  read: async (offset, length) => new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
});
