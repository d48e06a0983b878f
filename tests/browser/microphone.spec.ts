/** What can be wrong with a microphone: each gives a sentence and a way on, and nothing that was played is lost. */
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { expectAccessible, startButton, stopButton, untilReview, untilTrouble } from './screens.ts';

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

test('a microphone that is refused', async ({ openApp }) => {
  const { page } = await openApp({ microphone: 'refused' });
  await startButton(page).click();
  expect(await untilTrouble(page)).toMatch(/microphone/i);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(startButton(page)).toBeVisible();
});

test('no microphone at all', async ({ openApp }) => {
  const { page } = await openApp({ microphone: 'none' });
  await startButton(page).click();
  expect(await untilTrouble(page)).toMatch(/microphone/i);
  await page.getByRole('button', { name: 'Try again' }).click();
  expect(await untilTrouble(page)).toMatch(/microphone/i);
});

test('a microphone pulled out in mid-take: what was played is kept and graded', async ({ openApp }) => {
  const { page } = await openApp({
    microphone: { file: line.file },
    // Pulling a plug stops the track: that is done here by hand, on the track that the app was given.
    before: async (fresh) => {
      await fresh.addInitScript(() => {
        const devices = navigator.mediaDevices;
        const ask = devices.getUserMedia.bind(devices);
        devices.getUserMedia = async (constraints) => {
          const stream = await ask(constraints);
          (globalThis as { pull?: () => void }).pull = () => {
            for (const track of stream.getTracks()) {
              track.stop();
              track.dispatchEvent(new Event('ended'));
            }
          };
          return stream;
        };
      });
    },
  });
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await page.waitForTimeout(7000);
  await page.evaluate(() => (globalThis as { pull?: () => void }).pull?.());
  await untilReview(page);
  await expect(page.getByRole('status').getByText('The microphone is gone')).toBeVisible();
  await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Earlier takes' })).toBeVisible();
});
