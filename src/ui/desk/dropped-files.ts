/** Files that were dropped or chosen, with the folders that they lay in. */
import type { DroppedFile } from '../../state/class-file.ts';

/** A folder that is dropped holds so many levels of folders at most. */
const DEEPEST = 12;

/** Of a drop: folders are walked (File and Directory Entries API, WICG). */
export async function filesOf(data: DataTransfer): Promise<readonly DroppedFile[]> {
  // Entries are only there while the event lasts, so they are taken before anything is awaited.
  const entries = [...data.items].map((item) => item.webkitGetAsEntry());
  const plain = [...data.files].map((file): DroppedFile => ({ path: file.name, file }));
  const found = await Promise.all(entries.map((entry) => (entry === null ? [] : walk(entry, DEEPEST))));
  const all = found.flat();
  return all.length > 0 ? all : plain;
}

/** Of a picker: one for folders tells the path of each file. */
export const chosenFiles = (files: FileList | null): readonly DroppedFile[] =>
  [...(files ?? [])].map((file) => ({ path: file.webkitRelativePath || file.name, file }));

async function walk(entry: FileSystemEntry, levels: number): Promise<readonly DroppedFile[]> {
  if (isFile(entry)) {
    const file = await fileOf(entry);
    return file === null ? [] : [{ path: entry.fullPath.replace(/^\//, ''), file }];
  }
  if (!isFolder(entry) || levels === 0) return [];
  const inside: DroppedFile[] = [];
  const reader = entry.createReader();
  // A reader gives some entries at a time, and none at the end.
  for (let some = await entriesOf(reader); some.length > 0; some = await entriesOf(reader))
    for (const one of some) inside.push(...(await walk(one, levels - 1)));
  return inside;
}

const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile;
const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory;

const fileOf = (entry: FileSystemFileEntry): Promise<File | null> =>
  new Promise((resolve) => {
    entry.file(resolve, () => resolve(null));
  });

const entriesOf = (reader: FileSystemDirectoryReader): Promise<readonly FileSystemEntry[]> =>
  new Promise((resolve) => {
    reader.readEntries(resolve, () => resolve([]));
  });
