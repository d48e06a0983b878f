/** Takes go out as files and come back: one, and all of them; a page that is killed meanwhile leaves whole takes only. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, unzipSync, zipSync, strFromU8 } from 'fflate';
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { untilReview, withoutSaveDialogue } from './screens.ts';

const folder = mkdtempSync(join(tmpdir(), 'landfall-take-files-'));
test.afterAll(() => rmSync(folder, { recursive: true }));

const takes = (page: Page) => page.getByRole('region', { name: 'Earlier takes' }).getByRole('listitem');
const chooser = (page: Page) => page.locator('input[type=file][accept=".landfall,.zip"]');
const back = (page: Page) => page.getByRole('button', { name: 'Back', exact: true }).click();

async function download(page: Page, button: string): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return readFileSync(await file.path());
}

/** The take under other ids, each at a minute of its own. */
function copies(file: Uint8Array, count: number): readonly Uint8Array[] {
  const parts = unzipSync(file);
  const json = JSON.parse(strFromU8(parts['take.json']!)) as { details: object };
  return Array.from({ length: count }, (_, n) => {
    const startedAt = new Date(Date.UTC(2026, 0, 1, 9, n)).toISOString();
    const details = { ...json.details, startedAt, name: `take number ${n + 1}` };
    return zipSync(
      { ...parts, 'take.json': strToU8(JSON.stringify({ ...json, id: `copy-${n}`, details })) },
      { level: 0 },
    );
  });
}

test('takes as files: out, in, without doubles, whole after a kill', async ({ openApp }) => {
  const { page, context, url, faults } = await openApp({ microphone: 'none', before: withoutSaveDialogue });
  await page.getByRole('button', { name: 'Hear the demo take' }).click();
  await untilReview(page);
  const sentence = await page.getByRole('heading', { level: 1 }).innerText();
  const file = await download(page, 'The whole take');
  await back(page);

  // One file is shown at once, with the same grade.
  await chooser(page).setInputFiles({ name: 'demo.landfall', mimeType: 'application/zip', buffer: file });
  await untilReview(page);
  expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe(sentence);
  await back(page);
  await expect(takes(page)).toHaveCount(1);

  // A bad one is told and changes nothing.
  await chooser(page).setInputFiles({
    name: 'cut.landfall',
    mimeType: 'application/zip',
    buffer: file.subarray(0, file.length / 2),
  });
  await expect(page.getByText(/cut\.landfall ends too early/)).toBeVisible();
  await expect(takes(page)).toHaveCount(1);

  // All of them go out, and come in again without doubles.
  const library = await download(page, 'Save all takes in one file');
  await chooser(page).setInputFiles({ name: 'all.zip', mimeType: 'application/zip', buffer: library });
  await untilReview(page);
  await back(page);
  await expect(takes(page)).toHaveCount(1);

  // A library of many; the page is closed while they come in, five times over 0.9 s, each time a little later.
  const many = copies(file, 12);
  const packed = join(folder, 'many.zip');
  writeFileSync(
    packed,
    zipSync(Object.fromEntries(many.map((bytes, n) => [`${n}.landfall`, bytes])), { level: 0 }),
  );
  let killed = page;
  for (let round = 0; round < 5; round++) {
    await chooser(killed).setInputFiles(packed);
    await killed.waitForTimeout(60 + 200 * round);
    await killed.close({ runBeforeUnload: false });
    killed = await context.newPage();
    await killed.goto(url);
    await expect(killed.getByRole('button', { name: 'Bring takes in from files' })).toBeVisible();
    await expect(killed.getByText('A take was cut off')).toHaveCount(0);
  }
  await chooser(killed).setInputFiles(packed);
  await expect(takes(killed)).toHaveCount(13);
  await takes(killed).last().getByRole('button').first().click();
  await untilReview(killed);
  expect(await killed.getByRole('heading', { level: 1 }).innerText()).toBe(sentence);
  expect(faults).toEqual([]);
});
