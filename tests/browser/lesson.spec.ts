/**
 * A lesson sheet goes from a teacher's browser to a student's, by link and by file; the take comes back and the command
 * line grades it as the app did; the teacher's answer is read beside it.
 */
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from '@playwright/test';
import { writeAnswer } from '../../src/core/lesson/answer.ts';
import { sheetFragment } from '../../src/core/lesson/sheet-link.ts';
import type { ReturnedTake } from '../../src/core/lesson/returned-take.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { download, expectAccessibleInBothLights, startButton, stopButton } from './screens.ts';

const CLI = fileURLToPath(new URL('../../dist/cli/landfall.js', import.meta.url));
const landfall = (...args: readonly string[]) =>
  execFileSync(process.execPath, [CLI, ...args], { encoding: 'utf8', maxBuffer: 1 << 26 });

let line: KnownLine;
let folder: string;
test.beforeAll(async () => {
  line = await knownLine();
  folder = mkdtempSync(join(tmpdir(), 'landfall-lesson-'));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

const TITLE = 'Guide tones: blues/one';
const other = sheetFragment({
  format: 'landfall-sheet',
  version: 1,
  title: 'Another task',
  note: '',
  chart: 'form:minor blues in C minor',
  tempo: 60,
  feel: 'straight',
  choruses: 1,
  aims: [{ id: 'guide-tones' }],
});
const OTHER_LINK = other.ok ? other.value : '';
const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });

/** Writes a sheet over the blues in A at 120; answers with its link and its file. */
async function writeSheet(page: Page) {
  await page.getByRole('button', { name: 'Write a lesson sheet' }).click();
  await expect(page.getByText('Give the sheet a title.')).toBeVisible();
  await page.getByLabel('Title', { exact: true }).fill(TITLE);
  await page.getByLabel('What you say about it').fill('Slowly.\nSing first.');
  await page.getByRole('spinbutton', { name: 'Tempo' }).fill('120');
  await page.getByRole('spinbutton', { name: 'Tempo' }).blur();
  await page.getByLabel('Another aim').selectOption({ label: 'All chord tones' });
  await page
    .getByRole('slider', { name: /Share to reach/ })
    .last()
    .fill('0.3');
  const link = await page.getByRole('textbox', { name: /^The link/ }).inputValue();
  return { link, file: await download(page, 'Save as a file') };
}

test('the example of a sheet is heard and stopped', async ({ openApp }) => {
  const { page, url, faults } = await openApp();
  const sheet = sheetFragment({
    format: 'landfall-sheet',
    version: 1,
    title: 'With an example',
    note: '',
    chart: '| D7 | G7 | A7 | E7 |',
    tempo: 120,
    feel: 'swing',
    choruses: 2,
    aims: [{ id: 'guide-tones' }],
    example: { instrument: 'guitar', notes: Array.from({ length: 16 }, (_, bar) => [4 * bar, 3, 66]) },
  });
  if (!sheet.ok) throw new Error(sheet.problem.code);
  await page.goto(url + sheet.value);
  await page.getByRole('button', { name: 'Listen to the example' }).click();
  const stop = page.getByRole('button', { name: 'Stop the example' });
  await expect(stop).toHaveAttribute('aria-pressed', 'true');
  // One thing sounds at a time.
  await expect(page.getByRole('button', { name: 'Listen to the band' })).toBeDisabled();
  await stop.click();
  await expect(page.getByRole('button', { name: 'Listen to the example' })).toBeEnabled();
  expect(faults).toEqual([]);
});

test('a sheet goes to a student and the take comes back', async ({ openApp }) => {
  const teacher = await openApp();
  const { link, file } = await writeSheet(teacher.page);
  await expectAccessibleInBothLights(teacher.page);
  expect(file.name).toBe('Guide tones blues one.sheet.json');
  const sheetFile = join(folder, 'task.json');
  copyFileSync(file.path, sheetFile);

  const { page } = await openApp({ microphone: { file: line.file } });
  await page.getByLabel('Tempo').first().fill('77');
  await page.getByLabel('Tempo').first().blur();
  // By the link, while the app is open already.
  await page.goto(link);
  await expect(heading(page, TITLE)).toBeVisible();
  await expect(page.getByText('Sing first.')).toBeVisible();
  await expect(page.getByText('at least 30 %')).toBeVisible();
  await expectAccessibleInBothLights(page);
  await page.getByRole('button', { name: 'Leave the sheet' }).click();
  await expect(startButton(page)).toBeVisible();
  expect(new URL(page.url()).hash).toBe('');
  await expect(page.getByLabel('Tempo').first()).toHaveValue('77');
  // By the file.
  await page.locator('input[type=file][accept^=".json"]').setInputFiles(sheetFile);
  await expect(heading(page, TITLE)).toBeVisible();

  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect(page.getByLabel('Your name')).toBeFocused();
  await page.getByLabel('Your name').fill('Student Seven');
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect(stopButton(page)).toBeVisible();
  await page.waitForTimeout(3000);
  // Another sheet by its link does not stop the take.
  await page.evaluate((hash) => (location.hash = hash), OTHER_LINK);
  await page.waitForTimeout(line.seconds * 1000 - 3000);
  await expect(stopButton(page)).toBeVisible();
  await stopButton(page).click();

  await expect(page.getByText('Student Seven, try 1')).toBeVisible();
  await expectAccessibleInBothLights(page);
  const report = JSON.parse(readFileSync((await download(page, 'Save the report')).path, 'utf8')) as Report;
  const given = await download(page, 'Give back');
  expect(given.name).toBe('Student Seven - Guide tones blues one - try 1.landfall');
  const take = join(folder, given.name);
  copyFileSync(given.path, take);

  // The command line reads who, which sheet and which try, and grades every note as the app did.
  const row = JSON.parse(landfall('class', take, '--sheet', sheetFile, '--json')) as ReturnedTake;
  expect(row).toMatchObject({ student: 'Student Seven', sheet: 'this one', tryNumber: 1, doubts: [] });
  const tried = report.aims.filter((aim) => aim.tried);
  expect(tried).toHaveLength(2);
  expect(row.aims.map(({ id, shareToReach, result }) => [id, shareToReach, result.hits, result.of])).toEqual(
    tried.map(({ id, shareToReach, result }) => [id, shareToReach, result.hits, result.of]),
  );
  expect(row.thirds).toEqual(report.shares.landings.thirds);
  const facts = ({ notes }: Report) =>
    notes.map(({ name, role, onsetSeconds }) => [name, role, onsetSeconds]);
  expect(report.notes.length).toBeGreaterThan(10);
  expect(facts(JSON.parse(landfall('grade', take, '--json')) as Report)).toEqual(facts(report));

  // The teacher's answer is read beside the take.
  const json = JSON.parse(strFromU8(unzipSync(readFileSync(take))['take.json']!)) as { id: string };
  const answer = join(folder, 'answer.json');
  writeFileSync(
    answer,
    writeAnswer({
      format: 'landfall-answer',
      version: 1,
      takeId: json.id,
      mark: null,
      title: TITLE,
      student: 'Student Seven',
      tryNumber: 1,
      note: 'Much better.',
      comments: [{ chorus: 0, bar: 1, text: 'Wait for the change here.' }],
    }),
  );
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  // The sheet that waited opens now; the first one still knows its tries.
  await expect(heading(page, 'Another task')).toBeVisible();
  await expect(page.getByText('This will be try 1.')).toBeVisible();
  await page.goto(link);
  await expect(page.getByText('This will be try 2.')).toBeVisible();
  await page.locator('input[type=file][accept^=".json"]').setInputFiles(answer);
  await expect(page.getByText('Much better.')).toBeVisible();
  await expect(page.getByText('Wait for the change here.')).toBeVisible();
  await page.getByRole('button', { name: 'Chorus 1, bar 2' }).click();
  await expectAccessibleInBothLights(page);
});
