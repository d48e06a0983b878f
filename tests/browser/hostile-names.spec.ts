/**
 * Names that want to be markup, scripts, terminal orders or a turned-round sentence, or that are endless, in every other
 * place where a name comes from outside: kept charts, backings and takes, devices, scores and MIDI files, a class, and
 * whatever leaves the page again: files, pictures, paper. Names of opened files and take files: `hostile.spec.ts`.
 */
import { parseXml } from '@rgrove/parse-xml';
import { Buffer } from 'node:buffer';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { THIRDS_SHEET } from '../core/lesson/thirds-sheet.ts';
import { details, fileOf, madeTake } from '../core/take-file/made-take.ts';
import { expect, test } from './app.ts';
import { keptTake } from './kept-takes.ts';
import { demoButton, download, untilReview, withoutSaveDialogue } from './screens.ts';

const MARKUP = '<img src=x onerror="globalThis.harmed=1"><script>globalThis.harmed=1</script>';
const QUOTES = `"'><svg onload=globalThis.harmed=1>{{7*7}}\${globalThis.harmed=1}`;
const TURNED = 'take\u202Egpj.vaw\u2066\u0007\u001b[31m';
const BROKEN = 'one\ntwo\r\nthree\u2028four\tfive';
const LONG = 'W'.repeat(10_000);
const PICTURES = '👩‍🎤🏳️‍🌈'.repeat(60);
const NAMES = [MARKUP, QUOTES, TURNED, BROKEN, LONG, PICTURES];

/** Nothing was done, and the page is as wide as its window, at a desk and on a telephone. */
async function unharmed(page: Page): Promise<void> {
  for (const width of [1280, 390]) {
    await page.setViewportSize({ width, height: 800 });
    const harm = await page.evaluate(() => ({
      flag: 'harmed' in globalThis,
      pictures: document.querySelectorAll('img[src="x"], svg[onload]').length,
      scripts: [...document.scripts].filter(({ src }) => src === '').length,
      // Where the page is wider: what has more in it than room, to be found again by who reads that this failed.
      wider:
        document.documentElement.scrollWidth > document.documentElement.clientWidth
          ? [...document.querySelectorAll('*')]
              .filter((one) => one.scrollWidth > one.clientWidth + 1 && !one.matches('.only-heard'))
              .map((one) => `${one.tagName} ${String(one.className)}`)
              .slice(-8)
          : [],
    }));
    expect(harm).toEqual({ flag: false, pictures: 0, scripts: 0, wider: [] });
  }
  await page.setViewportSize({ width: 1280, height: 800 });
}

/** A name of a file that every system takes, and that leads nowhere. */
const expectSafeName = (name: string) => expect(name).not.toMatch(/[<>:"/\\|?*\p{Cc}\p{Cf}]|^[-.]/u);

const CHART = '| D7 | G7 | A7 | E7 |';

/** Charts, backings and takes, one for each name. */
const records = () => ({
  charts: NAMES.map((title, n) => ({ id: `c${n}`, title, chartText: CHART, key: 'D' })),
  backings: NAMES.map((title, n) => ({
    ...{ id: `b${n}`, title, fileName: title, durationSeconds: 8, chartText: CHART },
    ...{ beats: Array.from({ length: 17 }, (_, beat) => beat / 2), pinned: [], downbeat: 0 },
    ...{ swing: 0.5, referenceHz: 440, speed: 1, cents: 0, bars: null },
  })),
  takes: NAMES.map((title, n) => {
    const take = keptTake({ daysAgo: n + 1 });
    return {
      ...take,
      details: {
        ...take.details,
        title,
        name: title,
        lesson: { mark: 'm', title, student: title, tryNumber: 1 },
      },
    };
  }),
});

test('kept charts, backings and takes, and devices', async ({ openApp }) => {
  const { page } = await openApp({
    microphone: 'beeps',
    before: async (empty) => {
      await empty.addInitScript((names) => {
        const device = (kind: MediaDeviceKind, label: string, n: number) =>
          ({ kind, label, deviceId: `${kind} ${n}`, groupId: '', toJSON: () => ({}) }) as MediaDeviceInfo;
        navigator.mediaDevices.enumerateDevices = () =>
          Promise.resolve(
            names.flatMap((name, n) => [device('audioinput', name, n), device('audiooutput', name, n)]),
          );
      }, NAMES);
    },
  });
  await expect(demoButton(page)).toBeVisible();
  await page.evaluate(
    (kept) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('landfall');
        opening.onerror = () => reject(new Error('no database'));
        opening.onsuccess = () => {
          const stores = ['charts', 'backings', 'takes'] as const;
          const writing = opening.result.transaction([...stores], 'readwrite');
          for (const store of stores)
            for (const record of kept[store]) writing.objectStore(store).put(record, record.id);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    records(),
  );
  await page.reload();
  await expect(page.getByText('<img src=x').first()).toBeVisible();
  await unharmed(page);
  for (const open of await page.locator('details:not([open]) > summary').all())
    if (await open.isVisible()) await open.click();
  await unharmed(page);

  await page.getByRole('button', { name: 'What to practise today' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'From day to day' })).toBeVisible();
  await unharmed(page);
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Sound check' }).click();
  await expect(page.getByRole('combobox', { name: 'Microphone' }).locator('option')).toHaveCount(
    NAMES.length + 1,
  );
  await unharmed(page);
});

test('a take whose chart, sections and title are hostile leaves as files, a picture and paper', async ({
  openApp,
}) => {
  const { page } = await openApp({ before: withoutSaveDialogue });
  for (const [n, name] of NAMES.entries())
    await test.step(name.slice(0, 24), async () => {
      const line = name.replaceAll(/[\r\n\u2028]/g, ' ').slice(0, 2000);
      const take = {
        ...madeTake(),
        id: `names-${n}`,
        details: {
          ...details,
          ...{ title: name, name, startedAt: new Date(Date.UTC(2026, 0, 2, 9, n)).toISOString() },
          chartText: `title: ${line}\n${details.chartText}`,
        },
      };
      await page.locator('input[type=file][accept=".landfall,.zip"]').setInputFiles({
        name: 'take.landfall',
        mimeType: 'application/zip',
        buffer: Buffer.from(fileOf(take)),
      });
      await untilReview(page);
      await unharmed(page);
      expectSafeName((await download(page, 'Save the report')).name);
      await page.getByRole('button', { name: 'Written out' }).click();
      await expect(page.locator('.screen svg').first()).toBeVisible();
      await unharmed(page);
      const score = await download(page, 'Score (MusicXML)');
      const picture = await download(page, 'Picture (SVG)');
      for (const file of [score, picture]) {
        expectSafeName(file.name);
        const text = readFileSync(file.path, 'utf8');
        expect(text).not.toMatch(/<(img|script)|<svg[^>]*onload/);
        // By a reader that is not the browser's: it throws where the file is not well formed.
        expect(parseXml(text).root).not.toBeNull();
      }
      await page.emulateMedia({ media: 'print' });
      await expect(page.locator('.paper svg').first()).toBeVisible();
      expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(1000);
      await page.emulateMedia({ media: null });
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: 'Back', exact: true }).click();
    });
});

const score = (name: string) => {
  const text = name
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    // eslint-disable-next-line no-control-regex -- what XML 1.0 forbids
    .replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, '');
  return (
    `<score-partwise><work><work-title>${text}</work-title></work><part-list><score-part id="P1"><part-name>${text}` +
    `</part-name></score-part></part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions>` +
    `</attributes><direction><direction-type><rehearsal>${text}</rehearsal></direction-type></direction>` +
    `<harmony><root><root-step>D</root-step></root><kind text="${text.replaceAll('"', '&quot;')}">dominant</kind></harmony>` +
    `<note><rest/><duration>4</duration></note></measure></part></score-partwise>`
  );
};

test('scores with hostile names inside, and a class of hostile names with its table', async ({ openApp }) => {
  const { page } = await openApp();
  await page.locator('span.title', { hasText: 'Write a chart' }).click();
  for (const [n, name] of NAMES.entries()) {
    await page
      .locator('input[type=file][accept*=".musicxml"]')
      .first()
      .setInputFiles({
        name: `${n}.musicxml`,
        mimeType: 'application/xml',
        buffer: Buffer.from(score(name)),
      });
    await expect(page.getByText('D7').first()).toBeVisible();
    await unharmed(page);
  }

  const folder = mkdtempSync(join(tmpdir(), 'landfall-names-'));
  try {
    // What a file may be called; a slash parts folders.
    const students = [MARKUP, QUOTES, TURNED, BROKEN, '👩‍🎤'.repeat(10), 'W'.repeat(240)];
    const notes = 'onset,duration,pitch\n0,1,66\n2,1,71\n4,1,73\n6,1,68\n';
    for (const student of students) writeFileSync(join(folder, `${student.replaceAll('/', '∕')}.csv`), notes);
    writeFileSync(
      join(folder, 'sheet.json'),
      JSON.stringify({ ...THIRDS_SHEET, title: MARKUP, note: NAMES.join('\n').slice(0, 2000) }),
    );
    await page.reload();
    await page.getByRole('button', { name: 'The teacher’s desk' }).click();
    await page.locator('input[webkitdirectory]').setInputFiles(folder);
    const table = page.getByRole('region', { name: 'Who needs you first' }).getByRole('table');
    await expect(table.getByRole('row')).toHaveCount(students.length + 1);
    await unharmed(page);
    const csv = await download(page, 'Save the table (CSV)');
    expectSafeName(csv.name);
    // No cell begins as a formula of a spreadsheet.
    expect(readFileSync(csv.path, 'utf8')).not.toMatch(/(^|,)"?[=+@]/m);
    await page.emulateMedia({ media: 'print' });
    expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(1000);
    await page.emulateMedia({ media: null });
    await page.getByRole('button', { name: /^Open the take of W+/ }).click();
    await untilReview(page);
    await unharmed(page);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
