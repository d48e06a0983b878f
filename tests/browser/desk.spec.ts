/** The teacher's desk: a folder with good, broken and other-sheet files becomes a table; a review, a comment, an answer. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { readAnswer } from '../../src/core/lesson/answer.ts';
import { readReport, type Report } from '../../src/core/take/schema.ts';
import { LANDFALL } from '../cli/built.ts';
import { expect, test } from './app.ts';
import { knownLine } from './known-line.ts';
import { THIRDS_SHEET as SHEET } from '../core/lesson/thirds-sheet.ts';
import { expectAccessible, untilReview } from './screens.ts';

const folder = mkdtempSync(join(tmpdir(), 'landfall-desk-'));
test.afterAll(() => rmSync(folder, { recursive: true }));

/** A list of notes, one a bar. */
const notes = (pitches: readonly number[], bars = 12) =>
  [
    'onset,duration,pitch',
    ...Array.from({ length: bars }, (_, bar) => `${2 * bar},1,${pitches[bar % 4]}`),
    '',
  ].join('\n');

async function classFolder(): Promise<string> {
  const made = join(folder, 'class');
  mkdirSync(join(made, 'late'), { recursive: true });
  const write = (name: string, text: string) => writeFileSync(join(made, name), text);
  write('thirds.json', JSON.stringify(SHEET));
  write('alto 1.csv', notes([61, 66, 68, 63]));
  write('alto 2.csv', notes([66, 71, 73, 68]));
  write('bass.csv', notes([61, 66, 68, 63]));
  write('late/cleo.csv', notes([66, 71, 68, 63]));
  write('torn.wav', 'RIFF');
  write('letter.txt', 'Dear teacher');
  copyFileSync((await knownLine()).file, join(made, 'flute 1.wav'));
  return made;
}

async function download(page: Page, button: string): Promise<string> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return readFileSync(await file.path(), 'utf8');
}

const landfall = (...args: readonly string[]) =>
  spawnSync(process.execPath, [LANDFALL, ...args], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
    env: { ...process.env, XDG_CACHE_HOME: join(folder, 'kept') },
  }).stdout;

/** What both grade must say alike of every note and landing. */
const judged = ({ notes: played, landings }: Report) => ({
  notes: played.map(({ name, role, degree, chord, bar, chorus }) => ({
    name,
    role,
    degree,
    chord,
    bar,
    chorus,
  })),
  landings: landings.map(({ kind, role, degree, note }) => ({ kind, role, degree, note })),
});

test('a folder of a class: table, review, comment, answer; the same rows as the command line', async ({
  openApp,
}) => {
  test.setTimeout(300_000);
  const made = await classFolder();
  const { page, faults } = await openApp({ microphone: 'none' });
  await page.getByRole('button', { name: 'The teacher’s desk' }).click();
  await page.locator('input[webkitdirectory]').setInputFiles(made);
  const table = page.getByRole('region', { name: 'Who needs you first' }).getByRole('table');
  await expect(table.getByRole('row')).toHaveCount(5, { timeout: 60_000 });

  // One bad file stops no other, and says why; a letter is no take.
  const failed = page.getByRole('region', { name: 'could not be graded' });
  await expect(failed.getByRole('listitem')).toHaveCount(1);
  await expect(failed).toContainText('torn.wav');

  // The order of the rows, and the table itself, are those of the command line.
  const csv = await download(page, 'Save the table (CSV)');
  const byCommand = landfall('class', made, '--sheet', join(made, 'thirds.json'), '--csv');
  const prefix = `${folder}/`;
  expect(csv.trim().split(/\r?\n/)).toEqual(byCommand.trim().replaceAll(prefix, '').split(/\r?\n/));

  // Which change fails for whom.
  const map = page.getByRole('table', { name: 'Which change fails for whom' });
  await expect(map).toContainText('bass');

  // The recording in review: every note and role as the command line has them.
  await page.getByRole('button', { name: 'Open the take of flute' }).click();
  await untilReview(page);
  const report = readReport(JSON.parse(await download(page, 'Save the report')));
  const alone = readReport(
    JSON.parse(
      landfall(
        'grade',
        join(made, 'flute 1.wav'),
        '--chart',
        SHEET.chart,
        '--tempo',
        '120',
        '--feel',
        'straight',
        '--reference',
        'auto',
        '--json',
      ),
    ),
  );
  if (!report.ok || !alone.ok) throw new Error('A report can’t be read.');
  expect(report.value.notes.length).toBeGreaterThan(8);
  expect(judged(report.value)).toEqual(judged(alone.value));

  // A comment on a bar, and the answer as a file.
  const panel = page.getByRole('region', { name: 'Your answer to flute' });
  await panel.getByLabel('About the whole take').fill('Calmer than last week.');
  await panel.getByLabel('Chorus').fill('1');
  await panel.getByLabel('Bar', { exact: true }).fill('3');
  await panel.getByLabel('Comment').fill('Here the C♯ was waiting.');
  await panel.getByRole('button', { name: 'Add this comment' }).click();
  await expect(panel.getByRole('listitem')).toContainText('chorus 1, bar 3');
  await expectAccessible(page);
  const answer = readAnswer(await download(page, 'Save the answer as a file'), 'answer.json');
  if (!answer.ok) throw new Error(answer.problem.code);
  expect(answer.value).toMatchObject({
    ...{ student: 'flute', tryNumber: 1, takeId: null, title: 'Thirds in D', note: 'Calmer than last week.' },
    comments: [{ chorus: 0, bar: 2, text: 'Here the C♯ was waiting.' }],
  });

  // Back at the desk the table still stands; nothing of the class is among the teacher's own takes.
  await page.getByRole('button', { name: 'Back to the desk' }).click();
  await expect(table.getByRole('row')).toHaveCount(5);
  await expect(table).toContainText('answer begun');
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(page.getByRole('region', { name: 'Earlier takes' }).getByRole('listitem')).toHaveCount(0);
  expect(faults).toEqual([]);
});
