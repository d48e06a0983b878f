/** The demo take written out: drawn, accessible by day and by night, at a telephone's width, on paper, and as files. */
import { parseXml } from '@rgrove/parse-xml';
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readMusicXml } from '../../src/core/files/charts/read-musicxml.ts';
import { english } from '../english.ts';
import { expect, oneVisit, test } from './app.ts';
import { demoButton, download, expectAccessibleInBothLights, untilReview } from './screens.ts';

const app = oneVisit(
  () => ({}),
  async ({ page }) => {
    await demoButton(page).click();
    await untilReview(page);
  },
);
test.afterEach(async () => {
  await app().page.keyboard.press('Escape');
  await expect(app().page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
});

async function writeOut(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Written out' }).click();
  await expect(page.locator('.screen svg').first()).toBeVisible();
}

const linesOf = (page: Page) => page.locator('.screen').getByRole('img');

test('the demo take is written out, read by axe, and left again', async () => {
  const { page } = app();
  await writeOut(page);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Demo take');
  await expect(linesOf(page).first()).toHaveAttribute('aria-label', /^Bars 1 to \d+$/);
  // The line's tablature and degrees can be put away.
  const frets = page.locator('.screen .fret');
  const degrees = page.locator('.screen .degree');
  expect(await frets.count()).toBeGreaterThan(20);
  expect(await degrees.count()).toBeGreaterThan(20);
  await page.getByRole('checkbox', { name: 'Tablature' }).uncheck();
  await expect(frets).toHaveCount(0);
  await page.getByRole('checkbox', { name: 'Degrees' }).uncheck();
  await expect(degrees).toHaveCount(0);
  await expectAccessibleInBothLights(page);
  await page.getByRole('checkbox', { name: 'Tablature' }).check();
  await page.getByRole('checkbox', { name: 'Degrees' }).check();
  await expect(frets.first()).toBeVisible();
});

test('a narrow screen has fewer bars in a line, and nothing beside it', async () => {
  const { page } = app();
  await page.setViewportSize({ width: 1280, height: 800 });
  await writeOut(page);
  const wide = await linesOf(page).count();
  await page.setViewportSize({ width: 390, height: 844 });
  await expect.poll(() => linesOf(page).count()).toBeGreaterThan(wide);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(over).toBeLessThanOrEqual(0);
});

test('on paper it is black on white, without buttons, by night too', async () => {
  const { page } = app();
  await writeOut(page);
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  await expect(page.locator('.paper svg').first()).toBeVisible();
  await expect(page.locator('.screen')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
  await expect(page.getByText(/landings/).first()).toBeVisible();
  const inks = await page
    .locator('.paper svg')
    .first()
    .evaluate((svg) => getComputedStyle(svg).color);
  expect(inks).toBe('rgb(0, 0, 0)');
  // Two choruses of twelve bars take two sheets of either size.
  for (const format of ['A4', 'Letter']) {
    const sheets = (await page.pdf({ format })).toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g);
    expect(sheets?.length, format).toBe(2);
  }
});

test('it leaves as a score that our own reader opens, and as a picture that is whole in itself', async () => {
  const { page } = app();
  await writeOut(page);
  const score = await download(page, 'Score (MusicXML)');
  expect(score.name).toMatch(/^landfall .*\.musicxml$/);
  const read = readMusicXml(readFileSync(score.path, 'utf8'), score.name);
  if (!read.ok) throw new Error(english(read.problem));
  const bars = read.value.chart.sections.flatMap((section) => section.bars);
  expect(bars.slice(0, 3).map((bar) => bar.chords[0]?.chord?.symbol)).toEqual(['D7', 'G7', 'D7']);
  const picture = await download(page, 'Picture (SVG)');
  const svg = readFileSync(picture.path, 'utf8');
  expect(svg).toContain('data:font/woff2;base64,');
  // Nothing is asked for from outside: names of namespaces alone begin with http.
  expect(svg.replaceAll(/xmlns(:\w+)?="[^"]*"/g, '')).not.toContain('http');
  // By a reader that is not the browser's: it throws where the file is not well formed.
  expect(parseXml(svg).root?.name).toBe('svg');
  expect(svg).toContain('<style>');
});
