/** Three low notes on the open page start the band, where the player has asked for that. */
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { expectAccessible, stopButton } from './screens.ts';

/** The open low string of a guitar, three times, half a second apart. */
let knocks: KnownLine;
test.beforeAll(async () => {
  knocks = await knownLine([40, 40, 40]);
});

test('it says that it listens, hears three low notes, and the band counts in', async ({ openApp }) => {
  const { page, context, url } = await openApp({ microphone: { file: knocks.file } });
  await context.grantPermissions(['microphone'], { origin: new URL(url).origin });
  await page.getByText('Display and hands-free control').click();
  await page.getByLabel('Three low notes start and stop').check();
  await expect(page.getByRole('status').getByText(/^Listening: /)).toBeVisible();
  await expectAccessible(page);
  await expect(stopButton(page)).toBeVisible();
});

test('it asks nothing: without permission nothing is opened, and it says so', async ({ openApp }) => {
  const { page } = await openApp({
    microphone: 'refused',
    before: async (fresh) => {
      await fresh.addInitScript(() => {
        navigator.mediaDevices.getUserMedia = () => {
          throw new Error('nobody may ask for the microphone here');
        };
      });
    },
  });
  await page.getByText('Display and hands-free control').click();
  await page.getByLabel('Three low notes start and stop').check();
  await expect(page.getByRole('status').getByText(/once the browser allows the microphone/)).toBeVisible();
  // What was chosen is remembered; on the next visit the page asks just as little.
  await page.waitForTimeout(300);
  await page.reload();
  await expect(page.getByRole('status').getByText(/once the browser allows the microphone/)).toBeVisible();
});
