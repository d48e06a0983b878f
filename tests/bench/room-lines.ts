/** Lines and their trios, rendered once and kept under .bench/ (ignored by git). */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { TruthNote } from '../../fixtures/lines/line.ts';
import { lineAndParts } from '../../fixtures/room/band-in-a-room.ts';

const folder = fileURLToPath(new URL('../../.bench/rooms/', import.meta.url));

type Wanted = Parameters<typeof lineAndParts>[0];
interface Kept {
  readonly truth: readonly TruthNote[];
  readonly player: Float32Array;
  /** Bass, chords, drums. */
  readonly parts: readonly Float32Array[];
}

/** As `lineAndParts` gives it. Delete the folder when `fixtures/lines` has changed. */
export async function keptLine({ instrument, sampleRate, seconds, seed }: Wanted): Promise<Kept> {
  const base = `${folder}${instrument}-${seed}-${seconds}-${sampleRate}`;
  if (!existsSync(`${base}.json`)) {
    const made = await lineAndParts({ instrument, sampleRate, seconds, seed });
    mkdirSync(folder, { recursive: true });
    for (const [i, sound] of [made.player, ...made.parts].entries())
      writeFileSync(`${base}.${i}`, new Uint8Array(sound.buffer, sound.byteOffset, sound.byteLength));
    writeFileSync(`${base}.json`, JSON.stringify(made.truth));
  }
  const sound = (i: number) => new Float32Array(new Uint8Array(readFileSync(`${base}.${i}`)).buffer);
  const truth = JSON.parse(readFileSync(`${base}.json`, 'utf8')) as TruthNote[];
  return { truth, player: sound(0), parts: [sound(1), sound(2), sound(3)] };
}
