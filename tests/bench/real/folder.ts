/** A folder of recordings, each NAME.flac (or wav, mp3, ogg) beside NAME.json, with or without a catalogue.json. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, parse } from 'node:path';
import type { Outcome } from '../../../src/core/base/outcome.ts';
import { read, unreadable, type Read } from './read.ts';
import { bytesInMemory } from '../../../src/core/files/bytes/bytes.ts';
import { openAudio, readWhole, type Recording } from '../../../src/core/files/audio.ts';
import { entryWithoutCatalogue, readCatalogue, readTruth, type CatalogueEntry, type Truth } from './truth.ts';

export interface AnnotatedRecording extends CatalogueEntry {
  readonly audioPath: string;
  readonly truth: Truth;
}

const AUDIO_ENDINGS = ['.flac', '.wav', '.mp3', '.ogg'];

/** Every annotated recording of a folder, in order of name. A folder without any is a problem, not an empty list. */
export function readFolder(folder: string, wide: readonly string[]): Read<readonly AnnotatedRecording[]> {
  if (!existsSync(folder)) return unreadable(`There is no folder ${folder}.`);
  const files = readdirSync(folder).sort();
  let entries: readonly CatalogueEntry[] = [];
  if (files.includes('catalogue.json')) {
    const catalogue = readCatalogue(
      readFileSync(join(folder, 'catalogue.json'), 'utf8'),
      'catalogue.json',
      wide,
    );
    if (!catalogue.ok) return catalogue;
    entries = catalogue.value;
  }
  const recordings: AnnotatedRecording[] = [];
  for (const file of files) {
    const { name, ext } = parse(file);
    if (!AUDIO_ENDINGS.includes(ext) || !files.includes(`${name}.json`)) continue;
    const truth = readTruth(readFileSync(join(folder, `${name}.json`), 'utf8'), `${name}.json`);
    if (!truth.ok) return truth;
    const entry = entries.find((one) => one.name === name) ?? entryWithoutCatalogue(name, wide);
    recordings.push({ ...entry, audioPath: join(folder, file), truth: truth.value });
  }
  if (recordings.length === 0)
    return unreadable(`${folder} holds no recording with its notes: put NAME.flac beside NAME.json.`);
  return read(recordings);
}

/** The whole sound of one recording, decoded as the app decodes it. */
export async function readSound(path: string): Promise<Outcome<Recording>> {
  const opened = await openAudio(bytesInMemory(path, readFileSync(path)));
  return opened.ok ? readWhole(opened.value, path) : opened;
}
