/**
 * What goes wrong on a machine while somebody plays, done to the page by hand: each has a sentence, and nothing that was
 * played is lost. The other faults: `microphone.spec.ts` (refused, missing, pulled out), `takes.spec.ts` (closed tab, full
 * disk), `offline.spec.ts` (no network, a newer build).
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { openRecording, startButton, stopButton, untilReview, untilTrouble } from './screens.ts';
import { siteServer } from './site-server.ts';

/** What the tests reach into the page by. */
interface Faults {
  contexts: AudioContext[];
  workers: { name: string; worker: Worker }[];
  /** The browser does not let the sound go on. */
  keepAsleep: boolean;
  /** Timers run once a second and no frame is drawn, as in a tab that is hidden. */
  hidden: boolean;
  /** The machine's clock is wrong by this much. */
  clockMs: number;
  /** The context can't take the stream, as in Firefox after the output has changed its rate. */
  otherRate: boolean;
  unplug(): void;
}

const faultsIn = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const here: Faults = {
      contexts: [],
      workers: [],
      keepAsleep: false,
      hidden: false,
      clockMs: 0,
      otherRate: false,
      unplug: () => undefined,
    };
    (globalThis as unknown as { faults: Faults }).faults = here;

    const { resume, createMediaStreamSource } = AudioContext.prototype;
    AudioContext.prototype.resume = function () {
      return here.keepAsleep ? Promise.reject(new DOMException('asleep')) : resume.call(this);
    };
    AudioContext.prototype.createMediaStreamSource = function (stream) {
      if (here.otherRate) throw new DOMException('different sample-rate', 'NotSupportedError');
      return createMediaStreamSource.call(this, stream);
    };
    globalThis.AudioContext = class extends AudioContext {
      constructor(options?: AudioContextOptions) {
        super(options);
        here.contexts.push(this);
      }
    };
    globalThis.Worker = class extends Worker {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        here.workers.push({ name: String(address), worker: this });
      }
    };

    const interval = globalThis.setInterval;
    globalThis.setInterval = ((act: () => void, ms: number) => {
      let last = 0;
      return interval(() => {
        if (here.hidden && performance.now() - last < 1000) return;
        last = performance.now();
        act();
      }, ms);
    }) as typeof setInterval;
    const frame = globalThis.requestAnimationFrame.bind(globalThis);
    globalThis.requestAnimationFrame = (draw) => {
      const wait = (time: number): void => void (here.hidden ? frame(wait) : draw(time));
      return frame(wait);
    };
    const now = Date.now;
    globalThis.Date = class extends Date {
      constructor(...given: []) {
        if (given.length === 0) super(now() + here.clockMs);
        else super(...(given as unknown as [number]));
      }
      static override now() {
        return now() + here.clockMs;
      }
    } as DateConstructor;

    const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (constraints) => {
      const stream = await ask(constraints);
      here.unplug = () => {
        for (const track of stream.getTracks()) {
          track.stop();
          track.dispatchEvent(new Event('ended'));
        }
      };
      return stream;
    };
  });
};

const set = (page: Page, changed: Partial<Pick<Faults, 'keepAsleep' | 'hidden' | 'clockMs' | 'otherRate'>>) =>
  page.evaluate(
    (values) => void Object.assign((globalThis as unknown as { faults: Faults }).faults, values),
    changed,
  );

const FLAC = fileURLToPath(new URL('../../fixtures/audio/pluck.flac', import.meta.url));

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

test('sound asleep, tab hidden, clock moved, a second tab, a dead listener, the microphone out and in again', async ({
  openApp,
}) => {
  const { page, context, url } = await openApp({ microphone: { file: line.file }, before: faultsIn });
  const told = page.getByRole('status');
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await page.waitForTimeout(3000);

  await test.step('the browser stops its sound, and gives it back', async () => {
    await set(page, { keepAsleep: true });
    await page.evaluate(() => (globalThis as unknown as { faults: Faults }).faults.contexts[0]!.suspend());
    await expect(told.getByText('The browser has stopped the sound')).toBeVisible();
    await set(page, { keepAsleep: false });
    await expect(told.getByText('The browser has stopped the sound')).toHaveCount(0);
  });

  await test.step('the tab is hidden, and the clock is set back by a day', async () => {
    await set(page, { hidden: true, clockMs: -86_400_000 });
    await page.waitForTimeout(3500);
    await set(page, { hidden: false });
  });

  await test.step('a second tab does not take this take for one that was cut off', async () => {
    const other = await context.newPage();
    await other.goto(url);
    await expect(startButton(other)).toBeVisible();
    await expect(other.getByText('A take was cut off')).toHaveCount(0);
    await other.close();
  });

  await test.step('the listener dies: said, and the take is graded from its recording', async () => {
    await page.evaluate(() => {
      const listeners = (globalThis as unknown as { faults: Faults }).faults.workers.filter(({ name }) =>
        name.includes('listen.worker'),
      );
      // The oldest is the one that hears this take; a spare one may stand behind it.
      listeners[0]!.worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory' }));
    });
    await expect(told.getByText('The listener stopped by itself')).toBeVisible();
    // The sentence can be put away by a button whose name holds the same word.
    await stopButton(page).first().click();
    await untilReview(page);
    await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await expect(
      page.getByRole('region', { name: 'Earlier takes' }).getByRole('button').first(),
    ).toBeVisible();
  });

  await test.step('the microphone is pulled out; plugged in again, the next take runs', async () => {
    await startButton(page).click();
    await expect(stopButton(page)).toBeVisible();
    await page.waitForTimeout(1500);
    await page.evaluate(() => (globalThis as unknown as { faults: Faults }).faults.unplug());
    // In the notices, or as the heading where the take was too short to be graded.
    await expect(page.getByText('The microphone is gone').first()).toBeVisible();
    await page.reload();
    await startButton(page).click();
    await expect(stopButton(page)).toBeVisible();
    await stopButton(page).click();
  });

  await test.step('the devices have another rate than the page', async () => {
    await page.reload();
    await set(page, { otherRate: true });
    await startButton(page).click();
    expect(await untilTrouble(page)).toContain('The sound devices have changed');
    await set(page, { otherRate: false });
    await page.getByRole('button', { name: 'Try again' }).click();
    await expect(stopButton(page)).toBeVisible();
    await stopButton(page).click();
  });
});

test('a browser that stores nothing, and a server without the sounds of the band', async ({ openApp }) => {
  const server = await siteServer(process.env.LANDFALL_SITE!, ['landfall-kit', 'assets/flac']);
  const { page, faults } = await openApp({
    microphone: { file: line.file },
    at: server.url,
    before: async (fresh) => {
      await fresh.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('denied', 'SecurityError');
        };
        // No service worker may keep what is missing here.
        Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined });
        delete (Navigator.prototype as { serviceWorker?: unknown }).serviceWorker;
      });
    },
  });
  await expect(page.getByRole('status').getByText('This browser stores nothing')).toBeVisible();
  await startButton(page).click();
  expect(await untilTrouble(page)).toContain('The sounds of the band did not load');
  await page.getByRole('button', { name: 'Back', exact: true }).click();

  // A decoder that did not load is no fault of the file, nor is a listener that did not.
  await openRecording(page, { name: 'mine.flac', mimeType: 'audio/flac', buffer: readFileSync(FLAC) });
  await expect(page.getByText('mine.flac can’t be opened now')).toBeVisible();
  await server.goAway();
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await openRecording(page, line.file);
  await expect(page.getByText('The listener did not load')).toBeVisible();

  // The browser itself tells of the file that is missing; nothing else went wrong.
  expect(faults.filter((fault) => !/404|ERR_CONNECTION_REFUSED/.test(fault))).toEqual([]);
  (faults as string[]).length = 0;
});
