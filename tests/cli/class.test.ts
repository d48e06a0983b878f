/** Several files at once: over worker threads, one bad file beside good ones, stopped and started again. */
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isGnuParallelInstalled, needs } from '../needs.ts';
import { build, LANDFALL, scratch } from './built.ts';
import { THIRDS_SHEET } from '../core/lesson/thirds-sheet.ts';

beforeAll(build);
const files = scratch();
afterAll(files.dispose);

const SHEET = files.file('sheet.json', JSON.stringify(THIRDS_SHEET));
const CHART = ['--chart', '| D7 | G7 | A7 | E7 |', '--tempo', '120'];

/** A list of notes: one a bar, three times round. */
const notes = (pitches: readonly number[]) =>
  [
    'onset,duration,pitch',
    ...Array.from({ length: 12 }, (_, bar) => `${2 * bar},1,${pitches[bar % 4]}`),
    '',
  ].join('\n');
const THIRDS = [66, 71, 73, 68];
const BESIDE = [61, 66, 68, 63];

let folders = 0;
function folderOf(content: Readonly<Record<string, string>>): string {
  const folder = join(files.folder, `class ${++folders}`);
  mkdirSync(folder);
  for (const [name, text] of Object.entries(content)) writeFileSync(join(folder, name), text);
  return folder;
}
const cacheOf = (folder: string) => ({ ...process.env, XDG_CACHE_HOME: `${folder}-kept` });
function run(folder: string, ...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [LANDFALL, ...args], {
    encoding: 'utf8',
    env: cacheOf(folder),
    maxBuffer: 1 << 26,
  });
  return { status, stdout, stderr };
}
const linesOf = (text: string) => text.trim().split('\n');

describe('landfall class', () => {
  const folder = folderOf({
    'alto 1.csv': notes(BESIDE),
    'alto 2.csv': notes(THIRDS),
    'bass.csv': notes(BESIDE),
    'torn.wav': 'RIFF',
    'letter.txt': 'Dear teacher',
  });

  it('grades every take, tells what it could not grade, and ends with 1 for it', () => {
    const { status, stdout, stderr } = run(folder, 'class', folder, '--sheet', SHEET);
    expect(status).toBe(1);
    expect(stdout).toMatch(/2 students, 3 takes/);
    expect(stdout.indexOf('bass: not reached')).toBeGreaterThan(0);
    expect(stdout.indexOf('alto: reached')).toBeGreaterThan(stdout.indexOf('bass: not reached'));
    expect(linesOf(stderr)[0]).toBe('1 file could not be graded:');
    expect(stderr).toContain('torn.wav');
  });

  it('prints CSV, lines of JSON and a page of HTML', () => {
    const csv = linesOf(run(folder, 'class', folder, '--sheet', SHEET, '--csv').stdout);
    expect(csv).toHaveLength(3);
    expect(csv[0]).toMatch(/^student,file,/);
    const json = linesOf(run(folder, 'class', folder, '--sheet', SHEET, '--json').stdout).map(
      (text) => JSON.parse(text) as { student: string; thirds: { hits: number } },
    );
    expect(json.map(({ student, thirds }) => [student, thirds.hits])).toEqual([
      ['alto', 0],
      ['alto', 12],
      ['bass', 0],
    ]);
    expect(run(folder, 'class', folder, '--sheet', SHEET, '--html').stdout).toMatch(/^<!doctype html>/);
  });

  it('says what is wrong with the call or the sheet, before anything is graded', () => {
    expect(run(folder, 'class', folder)).toMatchObject({ status: 2, stdout: '' });
    expect(run(folder, 'class', '--sheet', SHEET).status).toBe(2);
    expect(run(folder, 'class', folder, '--sheet', SHEET, '--tempo', '99').status).toBe(2);
    const bad = files.file('bad.json', '{}');
    expect(run(folder, 'class', folder, '--sheet', bad)).toMatchObject({ status: 1, stdout: '' });
    const empty = folderOf({});
    expect(run(empty, 'class', empty, '--sheet', SHEET).stderr).toMatch(/no recording/);
  });
});

describe('landfall grade of several files', () => {
  const folder = folderOf({ 'a.csv': notes(THIRDS), 'b.csv': 'onset\n', 'c.csv': notes(BESIDE) });

  it('prints a line of JSON a file, in the order of their names, and goes on behind a bad one', () => {
    const { status, stdout } = run(folder, 'grade', folder, ...CHART, '--json');
    const lines = linesOf(stdout).map((text) => JSON.parse(text) as Record<string, unknown>);
    expect(status).toBe(1);
    expect(lines.map((line) => [String(line['file']).slice(-5), 'report' in line])).toEqual([
      ['a.csv', true],
      ['b.csv', false],
      ['c.csv', true],
    ]);
  });

  it('gives each file the report that it has alone', () => {
    const alone = run(folder, 'grade', join(folder, 'c.csv'), ...CHART, '--json').stdout;
    const together = linesOf(run(folder, 'grade', folder, ...CHART, '--json', '--threads', '2').stdout);
    expect((JSON.parse(together[2]!) as { report: unknown }).report).toEqual(JSON.parse(alone));
  });

  const list = ['a.csv', 'c.csv'].map((name) => join(folder, name));

  it('goes through xargs, a file a process, to the same lines', () => {
    const { stdout } = spawnSync(
      'xargs',
      ['-n', '1', '-P', '2', process.execPath, LANDFALL, 'grade', ...CHART, '--lines'],
      { encoding: 'utf8', env: cacheOf(folder), input: list.map((path) => `"${path}"\n`).join('') },
    );
    const together = linesOf(run(folder, 'grade', ...list, ...CHART, '--lines').stdout);
    expect(linesOf(stdout).sort()).toEqual(together);
  });

  const needsParallel = needs(isGnuParallelInstalled(), 'GNU parallel is not installed.');
  it('goes through GNU parallel, a file a process, to the same lines', needsParallel, () => {
    const { stdout } = spawnSync(
      'parallel',
      ['-k', '-q', process.execPath, LANDFALL, 'grade', '{}', ...CHART, '--lines', ':::', ...list],
      { encoding: 'utf8', env: cacheOf(folder) },
    );
    const together = linesOf(run(folder, 'grade', ...list, ...CHART, '--lines').stdout);
    expect(linesOf(stdout)).toEqual(together);
  });
});

describe('a batch that was stopped', () => {
  const many = Object.fromEntries(
    Array.from({ length: 24 }, (_, i) => [
      `p${String(i).padStart(2, '0')}.csv`,
      notes(THIRDS) + `${40 + i},1,60\n`,
    ]),
  );
  const folder = folderOf(many);
  const kept = () =>
    readdirSync(join(`${folder}-kept`, 'landfall/results')).filter((name) => name.endsWith('.json'));

  it('goes on where it stopped, and says the same as one that never stopped', async () => {
    const child = spawn(
      process.execPath,
      [LANDFALL, 'class', folder, '--sheet', SHEET, '--json', '--threads', '1'],
      {
        env: cacheOf(folder),
      },
    );
    await new Promise<void>((resolve) => {
      child.stdout.once('data', () => child.kill('SIGKILL'));
      child.once('exit', () => {
        resolve();
      });
    });
    const before = new Map(
      kept().map((name) => [name, statSync(join(`${folder}-kept`, 'landfall/results', name)).mtimeMs]),
    );
    expect(before.size).toBeGreaterThan(0);
    const again = run(folder, 'class', folder, '--sheet', SHEET, '--json');
    expect(again.status).toBe(0);
    expect(kept()).toHaveLength(24);
    for (const [name, time] of before)
      expect(statSync(join(`${folder}-kept`, 'landfall/results', name)).mtimeMs).toBe(time);
    const anew = run(folder, 'class', folder, '--sheet', SHEET, '--json', '--anew');
    expect(anew.stdout).toBe(again.stdout);
  });
});
