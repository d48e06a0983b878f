/**
 * Names and texts that want to be markup, scripts, terminal orders or a turned-round sentence, in names of files and in
 * take files: they stand on the page as they are written, and nothing of them is done. What
 * would be done raises a flag, asks another host, or breaks the page's policy, which every test of this folder counts.
 * Bidirectional controls: Unicode Standard Annex 9; that they are used to deceive: Boucher and Anderson, "Trojan Source", 2021.
 */
import { readFileSync } from 'node:fs';
import { Buffer } from 'node:buffer';
import type { Page } from '@playwright/test';
import { details, fileOf, madeTake } from '../core/take-file/made-take.ts';
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { gradeOpened, openRecording, untilReview } from './screens.ts';

const MARKUP = '<img src=x onerror="globalThis.harmed=1"><script>globalThis.harmed=1</script>';
const QUOTES = `"'><svg onload=globalThis.harmed=1>{{7*7}}\${globalThis.harmed=1}`;
const TURNED = 'take\u202Egpj.vaw\u2066\u0007\u001b[31m';
const LONG = 'W'.repeat(5000);
const HOSTILE = [MARKUP, QUOTES, TURNED, LONG];

const back = (page: Page) => page.getByRole('button', { name: 'Back', exact: true }).click();

async function unharmed(page: Page): Promise<void> {
  const harm = await page.evaluate(() => ({
    flag: 'harmed' in globalThis,
    pictures: document.querySelectorAll('img[src="x"], svg[onload]').length,
    scripts: [...document.scripts].filter(({ src }) => src === '').length,
    wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
  }));
  expect(harm).toEqual({ flag: false, pictures: 0, scripts: 0, wider: 0 });
}

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

test('names of files: a recording, a list of notes, one that can’t be read', async ({ openApp }) => {
  const { page } = await openApp();
  const recording = readFileSync(line.file);
  const table = Buffer.from(`time,note,length\n0.5,60,0.4\n1,64,0.4\n1.5,"${MARKUP}",0.4\n2,67,0.4\n`);
  for (const name of HOSTILE) {
    await test.step(name.slice(0, 24), async () => {
      await openRecording(page, {
        name: `${name.slice(0, 200)}.wav`,
        mimeType: 'audio/wav',
        buffer: Buffer.from('no sound'),
      });
      await expect(page.getByText('.wav').first()).toBeVisible();
      await unharmed(page);
      await back(page);
      await openRecording(page, { name: `${name.slice(0, 200)}.csv`, mimeType: 'text/csv', buffer: table });
      await expect(page.getByText('.csv').first()).toBeVisible();
      await unharmed(page);
      await back(page);
    });
  }
  await openRecording(page, {
    name: `${MARKUP.replaceAll('/', '∕')}.wav`,
    mimeType: 'audio/wav',
    buffer: recording,
  });
  await gradeOpened(page);
  await untilReview(page);
  await unharmed(page);
});

test('a take file in which every text is hostile', async ({ openApp }) => {
  const { page } = await openApp();
  const chooser = page.locator('input[type=file][accept=".landfall,.zip"]');
  for (const [n, said] of [MARKUP, QUOTES, TURNED].entries()) {
    await test.step(said.slice(0, 24), async () => {
      const take = {
        ...madeTake(),
        id: `hostile-${n}`,
        details: {
          ...details,
          title: said,
          name: `${said} named`,
          aim: said,
          instrument: said,
          lesson: { mark: said, title: said, student: said, tryNumber: 1 },
          startedAt: new Date(Date.UTC(2026, 0, 1, 9, n)).toISOString(),
        },
      };
      await chooser.setInputFiles({
        name: `${said.slice(0, 200)}.landfall`,
        mimeType: 'application/zip',
        buffer: Buffer.from(fileOf(take)),
      });
      await untilReview(page);
      await unharmed(page);
      await back(page);
    });
  }
  // The list of takes; the ends of a turned name are the page's own, so that nothing after it is turned.
  const takes = page.getByRole('region', { name: 'Earlier takes' });
  await expect(takes.getByText('<img src=x').first()).toBeVisible();
  await unharmed(page);
  await page.getByRole('button', { name: 'What to practise today' }).click();
  await unharmed(page);
});
