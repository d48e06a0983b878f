/** The private folder of this page (origin private file system, WHATWG File System standard) that holds sounds. */
export async function soundsFolder(): Promise<FileSystemDirectoryHandle> {
  const root = await navigator.storage.getDirectory();
  return root.getDirectoryHandle('takes', { create: true });
}
