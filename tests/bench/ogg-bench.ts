/**
 * A hundred Ogg Vorbis files against sox: `npx tsx tests/bench/ogg-bench.ts`. Plucked lines with clicks, whose short
 * blocks come and go, in four rates, one and two channels, five qualities; each decoded in one piece and in pieces of 4
 * and 40 kB, so that pieces meet at some fifty places a file. Every frame must be there and be what sox decodes.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chance } from '../../src/core/base/random.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { openVorbis } from '../../src/core/files/sound/vorbis.ts';
import { largestDifference, soxDecodes, soxEncodes, struckStrings } from '../core/files/vorbis-made.ts';

const KINDS = [
  { sampleRate: 44_100, channels: 2 },
  { sampleRate: 48_000, channels: 1 },
  { sampleRate: 22_050, channels: 1 },
  { sampleRate: 32_000, channels: 2 },
] as const;
const QUALITIES = [-1, 2, 5, 8, 10];
const TAKES = 5;
const SECONDS = 6;
const PIECES = [4096, 40_960, 1 << 20];
const SAME = 1e-3;

if (spawnSync('sox', ['--version']).status !== 0) throw new Error('sox is not installed');
const folder = mkdtempSync(join(tmpdir(), 'landfall-ogg-'));
let files = 0;
let wrong = 0;
try {
  for (const kind of KINDS)
    for (const quality of QUALITIES)
      for (let take = 0; take < TAKES; take++) {
        const path = join(folder, `${files}.ogg`);
        const samples = struckStrings({ ...kind, seconds: SECONDS, chance: chance(files, take) });
        writeFileSync(path, soxEncodes(samples, kind, quality));
        const expected = soxDecodes(path);
        files++;
        for (const pieceBytes of PIECES) {
          const difference = await largestDifference(
            openVorbis(bytesInMemory(path, readFileSync(path)), pieceBytes),
            expected,
          );
          if (difference <= SAME) continue;
          wrong++;
          console.log(
            `${kind.sampleRate} Hz, ${kind.channels} ch, quality ${quality}, take ${take}, ${pieceBytes} bytes: off by ${difference}`,
          );
        }
      }
} finally {
  rmSync(folder, { recursive: true });
}
console.log(`${files} files in ${PIECES.length} ways each: ${wrong} differ from sox.`);
