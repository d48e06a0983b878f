/** Every screen and state by day and by night: WCAG 2.2 A and AA, as far as axe can tell. */
import { expect, oneVisit, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import {
  demoButton,
  expectAccessibleInBothLights,
  gradeOpened,
  openRecording,
  startButton,
  stopButton,
  untilReview,
} from './screens.ts';

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

test('the open page with everything unfolded, on a phone too', async ({ openApp }) => {
  const { page } = await openApp();
  await page.getByLabel(/^Instrument/).selectOption('alto-sax');
  await page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  await expectAccessibleInBothLights(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await expectAccessibleInBothLights(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
});

test.describe('with a microphone', () => {
  const app = oneVisit(() => ({ microphone: { file: line.file } }));

  test('the sound check', async () => {
    const { page } = app();
    await page.getByRole('button', { name: 'Sound check' }).click();
    await expect(page.getByRole('heading', { name: 'Sound check' })).toBeVisible();
    await expect(page.getByRole('button', { name: 'Play the sweeps' })).toBeEnabled();
    await expectAccessibleInBothLights(page);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
  });

  test('playing, with a dial just turned', async () => {
    const { page } = app();
    await startButton(page).click();
    await expect(stopButton(page)).toBeVisible();
    await page.keyboard.press('+');
    await expect(page.getByText('loud sound harms hearing')).toBeVisible();
    await expectAccessibleInBothLights(page);
  });
});

test('grading', async ({ openApp }) => {
  const { page } = await openApp({
    // The order to grade never arrives: the screen stands for as long as it is looked at.
    before: async (fresh) => {
      await fresh.addInitScript(() => {
        const post = Object.getOwnPropertyDescriptor(Worker.prototype, 'postMessage')!.value as (
          ...message: unknown[]
        ) => void;
        Worker.prototype.postMessage = function (this: Worker, ...message: unknown[]) {
          if ((message[0] as { kind?: string } | null)?.kind !== 'grade') post.apply(this, message);
        };
      });
    },
  });
  await openRecording(page, line.file);
  await gradeOpened(page);
  await expect(page.getByRole('progressbar', { name: 'Grading' })).toBeVisible();
  await expectAccessibleInBothLights(page);
});

test.describe('the demo take', () => {
  const app = oneVisit(
    () => ({}),
    async ({ page }) => {
      await demoButton(page).click();
      await untilReview(page);
    },
  );

  test('the marks are told apart by shape alone, with no colour at all', async () => {
    const { page } = app();
    // Every mark of the key drawn in one ink; of each two, how much of what they cover they do not share.
    const unlike = await page.evaluate(() => {
      const marks = [...document.querySelectorAll('[aria-label="Key to the marks"] li')].map((item) => {
        const svg = item.querySelector('svg')!;
        const canvas = new OffscreenCanvas(52, 52);
        const context = canvas.getContext('2d')!;
        context.setTransform(2, 0, 0, 2, 26, 26);
        const path = new Path2D(svg.querySelector('path')!.getAttribute('d')!);
        context.lineWidth = 2.8;
        if (getComputedStyle(svg).fill === 'none') context.stroke(path);
        else context.fill(path);
        const { data } = context.getImageData(0, 0, 52, 52);
        return {
          name: item.textContent.trim(),
          inked: Array.from({ length: 52 * 52 }, (_, i) => data[4 * i + 3]! > 127),
        };
      });
      return marks.flatMap((one, i) =>
        marks.slice(i + 1).map((other) => {
          const both = one.inked.filter((ink, j) => ink && other.inked[j]).length;
          const either = one.inked.filter((ink, j) => ink || other.inked[j]).length;
          return { pair: `${one.name} and ${other.name}`, share: 1 - both / either };
        }),
      );
    });
    expect(unlike).toHaveLength(36);
    const alike = unlike.filter(({ share }) => share < 0.2).map(({ pair, share }) => `${pair}: ${share}`);
    expect(alike).toEqual([]);
  });

  test('the review with a note explained and all shares unfolded, and trouble', async () => {
    const { page } = app();
    await page.getByRole('heading', { name: 'How much, and is it luck?' }).click();
    await page.getByText('Phrase ends, strong beats').click();
    await expectAccessibleInBothLights(page);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await openRecording(page, { name: 'words.wav', mimeType: 'audio/wav', buffer: Buffer.from('no sound') });
    await expect(page.getByRole('heading', { level: 1 })).toContainText('words.wav');
    await expectAccessibleInBothLights(page);
  });
});
