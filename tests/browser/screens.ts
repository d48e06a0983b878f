/** The app's screens by what a player reads on them. */
import axe from 'axe-core';
import type { Locator, Page } from '@playwright/test';
import { expect } from './app.ts';

export const startButton = (page: Page) => page.getByRole('button', { name: 'Start playing' });
/** Not the button that closes a sentence in which something stopped: its name begins with another word. */
export const stopButton = (page: Page) => page.getByRole('button', { name: /^Stop\b/ });
export const demoButton = (page: Page) => page.getByRole('button', { name: 'Hear the demo take' });

/** The review stands as soon as the take can be heard again; the demo is left for it. */
export async function untilReview(page: Page): Promise<void> {
  const hear = page.getByRole('button', { name: 'Hear the take' });
  const on = page.getByRole('button', { name: 'To the review' });
  await expect(hear.or(on).first()).toBeVisible();
  if (await on.isVisible()) await on.click();
  await expect(hear).toBeVisible();
}

export const untilTrouble = async (page: Page): Promise<string> => {
  const sentence = page.getByRole('heading', { level: 1 });
  await expect(page.getByRole('button', { name: 'Back', exact: true })).toBeVisible();
  return sentence.innerText();
};

export async function openRecording(
  page: Page,
  files: Parameters<ReturnType<Page['locator']>['setInputFiles']>[0],
) {
  await page.locator('input[type=file][multiple][accept^="audio"]').setInputFiles(files);
}

/**
 * Confirms what an opened recording is graded by: as it is proposed, or, by default, as the open page has it, from the first
 * sample on.
 */
export async function gradeOpened(
  page: Page,
  said: { bpm: number; firstSeconds: number } | 'as proposed' = { bpm: 96, firstSeconds: 0 },
): Promise<void> {
  const grade = page.getByRole('button', { name: 'Grade it' });
  await expect(grade).toBeVisible();
  if (said !== 'as proposed') {
    await page.getByRole('spinbutton', { name: 'Tempo' }).fill(String(said.bpm));
    await page.getByRole('spinbutton', { name: /^The first bar/ }).fill(String(said.firstSeconds));
  }
  await grade.click();
}

/** Puts a text into the clipboard and pastes it, as a player does: one change of the field, however many lines it has. */
export async function paste(field: Locator, text: string): Promise<void> {
  await field.evaluate((_, copied) => {
    const source = document.createElement('textarea');
    source.value = copied;
    document.body.append(source);
    source.select();
    document.execCommand('copy');
    source.remove();
  }, text);
  await field.press('ControlOrMeta+A');
  await field.press('ControlOrMeta+V');
  await expect(field).toHaveValue(text);
}

/** To be given as `before`: the dialogue that asks for a name can't be answered by a test; files are downloaded instead. */
export async function withoutSaveDialogue(page: Page): Promise<void> {
  const removed = () => delete (globalThis as { showSaveFilePicker?: unknown }).showSaveFilePicker;
  await page.context().addInitScript(removed);
}

/** Saves a file by a button of the review; answers with its path. */
export async function download(page: Page, button: string): Promise<{ path: string; name: string }> {
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return { path: await saved.path(), name: saved.suggestedFilename() };
}

const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * WCAG 2.2 A and AA, as far as axe can tell. In half of the time by asking for violations alone, and by an axe that stays in
 * the page as long as that stands. The site has no frames, which would each need one of their own.
 */
export async function expectAccessible(
  page: Page,
  asked: { readonly type: 'tag' | 'rule'; readonly values: string[] } = { type: 'tag', values: WCAG },
): Promise<void> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
  const told = await page.evaluate(async (runOnly) => {
    const here = (globalThis as unknown as { axe: typeof axe }).axe;
    const { violations } = await here.run(document, { runOnly, resultTypes: ['violations'] });
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
    );
  }, asked);
  expect(told).toEqual([]);
}

/** The rules of axe whose answer depends on colours; by night the page differs in nothing else. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/** The same by day and by night. */
export async function expectAccessibleInBothLights(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'light' });
  await expectAccessible(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(page, { type: 'rule', values: COLOUR_RULES });
}
