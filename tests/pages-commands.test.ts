/**
 * Every command of the guide pages is run as it stands there, by a shell, in a folder with the files that the pages show
 * and the recordings that a reader would bring along. A command ends with 0, or with the exit code that stands behind it;
 * a block "text output" is what the command before it prints.
 */
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { toPcm16 } from '../src/core/base/pcm16.ts';
import { writeWav } from '../src/core/files/sound/write-wav.ts';
import { pluckLine } from './analysis/pluck.ts';
import { build, LANDFALL, scratch } from './cli/built.ts';
import { fileOf, madeTake } from './core/take-file/made-take.ts';
import { isGnuParallelInstalled, needs } from './needs.ts';
import { blocksOf, guidePages, type Block } from './read-pages.ts';

beforeAll(build);
const files = scratch();
afterAll(files.dispose);

const RATE = 16_000;
const blocks = guidePages().flatMap((page) => blocksOf(page).map((block) => ({ page: page.path, block })));
const shown = blocks.filter(({ block }) => block.name !== '' && block.name !== 'output');
const solo = shown.find(({ block }) => block.name === 'solo.csv')!.block.content;

/** The notes of solo.csv, plucked; the first downbeat lies 0.6 s in. */
function recordedSolo(): Uint8Array {
  const rows = solo.trim().split('\n').slice(1);
  const plucks = rows.map((row) => {
    const [onset = 0, seconds = 0, midi = 0] = row.split(',').map(Number);
    return { atSeconds: onset + 0.6, midi, seconds };
  });
  return writeWav(toPcm16(pluckLine(plucks, RATE, 20)), RATE);
}

/** A folder as the reader of a page has it. */
function folderFor(page: string): string {
  const folder = join(files.folder, page.replaceAll('/', ' '));
  for (const name of ['takes', 'src/pages']) mkdirSync(join(folder, name), { recursive: true });
  const put = (name: string, content: string | Uint8Array) => writeFileSync(join(folder, name), content);
  for (const { block } of shown) put(block.name, block.content);
  put('src/pages/solo.csv', solo);
  put('take.wav', recordedSolo());
  put('take.landfall', fileOf(madeTake()));
  for (const name of ['alto', 'trumpet', 'guitar 1', 'guitar 2']) put(`takes/${name}.csv`, solo);
  return folder;
}

/** `npx landfall` as the built command line, and nothing else that npx could fetch. */
function npxFolder(): string {
  const bin = join(files.folder, 'bin');
  if (existsSync(bin)) return bin;
  mkdirSync(bin);
  const script = `#!/bin/sh\n[ "$1" = landfall ] || exit 127\nshift\nexec '${process.execPath}' '${LANDFALL}' "$@"\n`;
  writeFileSync(join(bin, 'npx'), script);
  chmodSync(join(bin, 'npx'), 0o755);
  return bin;
}

function run(command: string, folder: string) {
  const { status, stdout, stderr } = spawnSync('bash', ['-o', 'pipefail', '-c', command], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    env: {
      ...process.env,
      PATH: `${npxFolder()}${delimiter}${process.env.PATH}`,
      XDG_CACHE_HOME: join(dirname(folder), 'cache'),
    },
  });
  return { status, stdout, stderr };
}

/** npm is not run here: tests/pages.test.ts asks whether its scripts are there. */
const linesOf = ({ content }: Block) =>
  content.split('\n').filter((line) => line.trim() !== '' && !/^(?:#|npm )/.test(line));

describe.each(guidePages().filter((page) => blocksOf(page).some(({ language }) => language === 'sh')))(
  '$path',
  (page) => {
    const all = blocksOf(page);
    const runs = all
      .map((block, i) => ({ block, lines: linesOf(block), next: all[i + 1] }))
      .filter(({ block, lines }) => block.language === 'sh' && lines.length > 0);
    let folder: string;
    beforeAll(() => {
      folder = folderFor(page.path);
    });

    for (const { lines, next } of runs) {
      const usesParallel = lines.some((line) => line.includes('parallel'));
      const where = needs(!usesParallel || isGnuParallelInstalled(), 'GNU parallel is not installed.');
      it(lines[0]!, where, () => {
        let printed = '';
        for (const line of lines) {
          const wanted = Number(/# exit code (\d)\s*$/.exec(line)?.[1] ?? 0);
          const { status, stdout, stderr } = run(line, folder);
          // What was said stands in the failure of a command that ended otherwise than the page has it.
          expect({ line, status, said: status === wanted ? '' : stderr }).toEqual({
            line,
            status: wanted,
            said: '',
          });
          expect(wanted === 0 || stderr !== '').toBe(true);
          printed = stdout;
        }
        if (next?.language === 'text' && next.name === 'output') expect(printed).toBe(next.content);
      });
    }

    it('has a command that is run', () => {
      expect(runs.length + all.filter(({ content }) => content.startsWith('npm ')).length).toBeGreaterThan(0);
    });
  },
);
