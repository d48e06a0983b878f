/**
 * Ogg Vorbis files against sox: every frame must be there and be what sox decodes.
 *
 *   npx tsx tests/bench/ogg-bench.ts           a hundred short ones
 *   npx tsx tests/bench/ogg-bench.ts --long    twenty-one of four minutes and one of an hour, all in stereo
 *
 * The short ones are plucked lines with clicks, whose short blocks come and go, in four rates, one and two channels, five
 * qualities; each decoded in one piece and in pieces of 4 and 40 kB, so that pieces meet at some fifty places a file. The
 * long ones are such lines and a sampled guitar in turn, written by libvorbis (through sox, and through ffmpeg, whose pages
 * are cut otherwise) and by ffmpeg's own encoder, and decoded in the pieces of the program itself.
 */
import { spawnSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chance } from '../../src/core/base/random.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { openVorbis } from '../../src/core/files/sound/vorbis.ts';
import { largestDifference, soxDecodes, soxEncodes, struckStrings } from '../core/files/vorbis-made.ts';
import { writeLongLine } from './long-line.ts';

const SAME = 1e-3;

if (spawnSync('sox', ['--version']).status !== 0) throw new Error('sox is not installed');
const folder = mkdtempSync(join(tmpdir(), 'landfall-ogg-'));

/** A hundred short files, each in several ways. */
async function short(): Promise<void> {
  const kinds = [
    { sampleRate: 44_100, channels: 2 },
    { sampleRate: 48_000, channels: 1 },
    { sampleRate: 22_050, channels: 1 },
    { sampleRate: 32_000, channels: 2 },
  ] as const;
  const takes = 5;
  const seconds = 6;
  const pieces = [4096, 40_960, 1 << 20];
  let files = 0;
  let wrong = 0;
  for (const kind of kinds)
    for (const quality of [-1, 2, 5, 8, 10])
      for (let take = 0; take < takes; take++) {
        const path = join(folder, `${files}.ogg`);
        const samples = struckStrings({ ...kind, seconds, chance: chance(files, take) });
        writeFileSync(path, soxEncodes(samples, kind, quality));
        const expected = soxDecodes(path);
        files++;
        for (const pieceBytes of pieces) {
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
  console.log(`${files} files in ${pieces.length} ways each: ${wrong} differ from sox.`);
}

/** Ends with an error where the program does. */
function run(program: string, ...words: readonly string[]): void {
  const { status, stderr } = spawnSync(program, words, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`${program} ended with ${status}: ${stderr}`);
}

const RATE = 44_100;
const RAW = ['-t', 'raw', '-e', 'floating-point', '-b', '32', '-r', String(RATE), '-c', '2'];

/** The sound of a long file as WAV in stereo, made minute by minute. */
async function longSound(number: number, minutes: number): Promise<string> {
  const wav = join(folder, 'sound.wav');
  if (number % 2 === 0) {
    const line = join(folder, 'line.wav');
    await writeLongLine(line, minutes);
    // Not the same on both sides: stereo is coupled by difference.
    run('sox', line, '-c', '2', wav, 'remix', '1', '1v0.6');
    return wav;
  }
  const raw = join(folder, 'sound.raw');
  writeFileSync(raw, '');
  for (let minute = 0; minute < minutes; minute++)
    appendFileSync(
      raw,
      new Uint8Array(
        struckStrings({
          ...{ sampleRate: RATE, channels: 2, seconds: 60 },
          chance: chance(1000 + number, minute),
        }).buffer,
      ),
    );
  run('sox', ...RAW, raw, '-b', '16', wav);
  return wav;
}

type Encoder = readonly [name: string, encode: (wav: string, ogg: string) => void];
const bySox = (quality: number): Encoder => [
  `libvorbis through sox, quality ${quality}`,
  (wav, ogg) => run('sox', wav, '-C', String(quality), ogg),
];
const byFfmpeg = (name: string, ...words: readonly string[]): Encoder => [
  name,
  (wav, ogg) => run('ffmpeg', '-loglevel', 'error', '-y', '-i', wav, ...words, ogg),
];
const libvorbis = (...words: readonly string[]) =>
  byFfmpeg(`libvorbis through ffmpeg, ${words.join(' ')}`, '-c:a', 'libvorbis', ...words);
const ownOfFfmpeg = (...words: readonly string[]) =>
  byFfmpeg(`ffmpeg's own encoder, ${words.join(' ')}`, '-c:a', 'vorbis', '-strict', 'experimental', ...words);

const LONG: readonly Encoder[] = [
  ...[-1, 0, 1, 2, 3, 4, 5, 6, 8, 10].map(bySox),
  ...[0, 3, 5, 7, 10].map((quality) => libvorbis('-q:a', String(quality))),
  ...['64k', '128k', '256k'].map((rate) => libvorbis('-b:a', rate)),
  // A page of a fiftieth of a second and one of ten seconds: most pieces begin in mid-page, or on many pages.
  libvorbis('-q:a', '4', '-page_duration', '20000'),
  libvorbis('-q:a', '6', '-page_duration', '10000000'),
  ownOfFfmpeg('-q:a', '5'),
];

async function compareLong(number: number, minutes: number, [name, encode]: Encoder): Promise<boolean> {
  const ogg = join(folder, 'long.ogg');
  const decoded = join(folder, 'decoded.raw');
  encode(await longSound(number, minutes), ogg);
  run('sox', ogg, ...RAW, decoded);
  const expected = new Float32Array(readFileSync(decoded).buffer);
  const difference = await largestDifference(openVorbis(bytesInMemory(ogg, readFileSync(ogg))), expected);
  const right = difference <= SAME && expected.length >= minutes * 60 * RATE * 2;
  console.log(
    `${right ? 'same ' : 'WRONG'} ${minutes} minutes, ${number % 2 === 0 ? 'guitar' : 'plucked'}, ${name}, ` +
      `${(statSync(ogg).size / 1e6).toFixed(1)} MB, ${expected.length / 2} frames, off by ${difference.toExponential(1)} at most`,
  );
  return right;
}

async function long(): Promise<void> {
  let wrong = 0;
  for (const [number, encoder] of LONG.entries()) if (!(await compareLong(number, 4, encoder))) wrong++;
  if (!(await compareLong(LONG.length, 60, bySox(5)))) wrong++;
  console.log(`${LONG.length + 1} files: ${wrong} differ from sox.`);
}

try {
  await (process.argv.includes('--long') ? long() : short());
} finally {
  rmSync(folder, { recursive: true });
}
