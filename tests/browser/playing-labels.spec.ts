/** On a phone no label of the playing screen is cut: of the lowest notes and of the highest, upright and on its side. */
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { knownLine } from './known-line.ts';

const PHONES = [
  { width: 390, height: 844 },
  { width: 360, height: 640 },
  { width: 844, height: 390 },
];

/** What was written beyond the edge of its canvas: where, and by how many pixels. */
type Cut = Record<string, number>;

/** Notes each text that is drawn on a canvas and does not lie on it as a whole. */
const watchLabels = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const here = globalThis as unknown as { cut: Cut };
    here.cut = {};
    const write = CanvasRenderingContext2D.prototype.fillText;
    CanvasRenderingContext2D.prototype.fillText = function (text, x, y, most) {
      const canvas = this.canvas as HTMLCanvasElement;
      const box = this.measureText(text);
      const at = this.getTransform();
      const from = at.transformPoint({
        x: x - box.actualBoundingBoxLeft,
        y: y - box.actualBoundingBoxAscent,
      });
      const to = at.transformPoint({
        x: x + box.actualBoundingBoxRight,
        y: y + box.actualBoundingBoxDescent,
      });
      const beyond = Math.max(-from.x, -from.y, to.x - canvas.width, to.y - canvas.height);
      // A canvas that is not shown has no size.
      if (canvas.clientHeight > 0 && beyond > 1)
        here.cut[`${text} on ${canvas.clientWidth}×${canvas.clientHeight}`] = beyond;
      write.call(this, text, x, y, ...((most === undefined ? [] : [most]) as [number]));
    };
  });
};

/** What was drawn before the page had its size. */
const forgetCut = (page: Page) => page.evaluate(() => void Object.assign(globalThis, { cut: {} }));

/** Texts of the stage that reach out of the window, and how far the stage reaches into the form under it. */
const outOfSight = (page: Page) =>
  page.evaluate(() => {
    const stage = document.querySelector('.stage')!;
    const texts: string[] = [];
    const walk = document.createTreeWalker(stage, NodeFilter.SHOW_TEXT);
    for (let node = walk.nextNode(); node !== null; node = walk.nextNode()) {
      const range = document.createRange();
      range.selectNodeContents(node);
      const { left, top, right, bottom, width } = range.getBoundingClientRect();
      const isHidden = node.parentElement!.closest('.only-heard') !== null;
      if (width === 0 || isHidden || node.textContent!.trim() === '') continue;
      if (Math.min(left, top, innerWidth - right, innerHeight - bottom) < -1) texts.push(node.textContent!);
    }
    const form = document.querySelector('section.form')!.getBoundingClientRect();
    const reaches = [...stage.children].map((part) => part.getBoundingClientRect().bottom - form.top);
    return { texts, into: Math.max(0, ...reaches.map((px) => Math.round(px))) };
  });

for (const [what, midis] of [
  ['low', [28, 31, 33, 36, 40, 33, 28, 29]],
  ['high', [88, 91, 93, 96, 91, 88, 95, 96]],
] as const)
  test(`a line of ${what} notes`, async ({ openApp }) => {
    const line = await knownLine(Array.from({ length: 6 }, () => midis).flat());
    const { page } = await openApp({ microphone: { file: line.file }, before: watchLabels });
    for (const [language, start] of [
      ['en', 'Start playing'],
      ['de', 'Spielen'],
    ] as const) {
      await page.getByRole('combobox', { name: /Language|Sprache/ }).selectOption(language);
      await page.getByRole('button', { name: start, exact: true }).click();
      await expect(page.locator('.stage > .note')).toHaveText(/\d/);
      for (const phone of PHONES) {
        await page.setViewportSize(phone);
        await page.waitForTimeout(300);
        await forgetCut(page);
        await page.waitForTimeout(1500);
        const place = `${language}, ${phone.width}×${phone.height}`;
        expect(await page.evaluate(() => (globalThis as unknown as { cut: Cut }).cut), place).toEqual({});
        expect(await outOfSight(page), place).toEqual({ texts: [], into: 0 });
      }
      await page.reload();
    }
  });
