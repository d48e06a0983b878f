/** Many takes in one zip archive, each as a take file of its own; written and read one by one. */
import { bad, good, type Outcome } from '../base/outcome.ts';
import { bytesInMemory, hasMark, type ByteSource } from '../files/bytes/bytes.ts';
import { contentStart, readPart } from '../files/zip/unpack.ts';
import { openZip, type ZipArchive, type ZipEntry } from '../files/zip/read-zip.ts';
import { STORED } from '../files/zip/zip-format.ts';
import { ZipWriter, type Bytes } from '../files/zip/write-zip.ts';
import { TAKE_FILE_ENDING } from './schema.ts';

const MOST_TAKES = 100_000;
/** Of a take that another program has packed: it is unpacked in memory. */
const MOST_PACKED_BYTES = 1 << 30;

/** Writes an archive of take files; only one take is in memory at a time. */
export class LibraryWriter {
  readonly #zip: ZipWriter;
  readonly #names = new Set<string>();

  /** @param changedAt ISO 8601: the date of every entry */
  constructor(changedAt: string) {
    this.#zip = new ZipWriter(changedAt);
  }

  /**
   * The pieces of the next take.
   * @param stem what it is to be called; a number is put behind a name that is taken
   */
  take(stem: string, parts: readonly Bytes[]): readonly Bytes[] {
    let name = `${stem}${TAKE_FILE_ENDING}`;
    for (let n = 2; this.#names.has(name); n++) name = `${stem} (${n})${TAKE_FILE_ENDING}`;
    this.#names.add(name);
    return this.#zip.entry({ name, parts, pack: false });
  }

  finish(): readonly Bytes[] {
    return this.#zip.finish();
  }
}

/** A take file in an archive. */
export interface TakeInLibrary {
  /** With the folders that it lies in. */
  readonly name: string;
  open(): Promise<Outcome<ByteSource>>;
}

/** The take files in an archive, in its order; each is read when it is wanted. Fails where there is none. */
export async function takesInLibrary(source: ByteSource): Promise<Outcome<readonly TakeInLibrary[]>> {
  // What begins otherwise was no archive before it was cut either.
  if (!hasMark(await source.read(0, 2), 'PK')) return bad('takeFile.noTakes', { name: source.name });
  const archive = await openZip(source, MOST_TAKES);
  if (!archive.ok) return archive;
  const takes = archive.value.entries.filter(({ name }) => name.toLowerCase().endsWith(TAKE_FILE_ENDING));
  if (takes.length === 0) return bad('takeFile.none', { name: source.name });
  return good(takes.map((entry) => ({ name: entry.name, open: () => sourceOf(archive.value, entry) })));
}

async function sourceOf(archive: ZipArchive, entry: ZipEntry): Promise<Outcome<ByteSource>> {
  const { source } = archive;
  const { name, size } = entry;
  if (entry.method !== STORED) {
    const bytes = await readPart(archive, entry, MOST_PACKED_BYTES);
    return bytes.ok ? good(bytesInMemory(name, bytes.value)) : bytes;
  }
  const start = await contentStart(archive, entry);
  if (start === null) return bad('archive.damaged', { name: source.name, part: name });
  return good({
    name,
    size,
    read: (offset, length) => source.read(start + offset, Math.max(0, Math.min(length, size - offset))),
  });
}
