/** A file that the player opened, read piece by piece. */
import type { ByteSource } from '../core/files/bytes/bytes.ts';

export const blobBytes = (blob: Blob, name: string): ByteSource => ({
  name,
  size: blob.size,
  read: async (offset, length) => new Uint8Array(await blob.slice(offset, offset + length).arrayBuffer()),
});

/** Whether a file could not be read because it was moved, changed or removed since it was chosen (File API, W3C). */
export const isUnreadable = (error: unknown): boolean =>
  error instanceof DOMException && ['NotReadableError', 'NotFoundError'].includes(error.name);
