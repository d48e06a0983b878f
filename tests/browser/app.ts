/** Opens the built site as a player would: with a line as the microphone, with none, or with one refused. */
import { chromium, test as base, type BrowserContext, type Page } from '@playwright/test';

export { expect } from '@playwright/test';

export type Microphone =
  /** A 44.1 kHz 16-bit mono WAV, played once. Other kinds come out as silence, without an error. */
  | { readonly file: string }
  /** The browser's own beeping device. */
  | 'beeps'
  /** No device at all. */
  | 'none'
  /** The player says no. */
  | 'refused';

export interface Visit {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly url: string;
  /** Every address the site asked for that is not its own. */
  readonly strangers: readonly string[];
  /** Errors of the page: exceptions, and what a content security policy blocked. */
  readonly faults: readonly string[];
}

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--autoplay-policy=no-user-gesture-required',
];

function microphoneFlags(microphone: Microphone): string[] {
  if (microphone === 'none' || microphone === 'refused') return [];
  return [
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    ...(microphone === 'beeps' ? [] : [`--use-file-for-fake-audio-capture=${microphone.file}%noloop`]),
  ];
}

type Open = (options?: { microphone?: Microphone; before?: (page: Page) => Promise<void> }) => Promise<Visit>;

export const test = base.extend<{ openApp: Open }>({
  // eslint-disable-next-line no-empty-pattern -- Playwright reads the names of fixtures from this pattern.
  openApp: async ({}, use) => {
    const closing: (() => Promise<void>)[] = [];
    await use(async ({ microphone = 'none', before } = {}) => {
      const url = process.env.LANDFALL_URL!;
      const browser = await chromium.launch({
        executablePath: process.env.LANDFALL_EXECUTABLE!,
        args: [...FLAGS, ...microphoneFlags(microphone)],
        env: { ...process.env, ...JSON.parse(process.env.LANDFALL_EXECUTABLE_ENV ?? '{}') },
      });
      closing.push(() => browser.close());
      const context = await browser.newContext({ acceptDownloads: true });
      const strangers: string[] = [];
      const faults: string[] = [];
      context.on('request', (request) => {
        const asked = request.url();
        if (!asked.startsWith(url) && !/^(data|blob):/.test(asked)) strangers.push(asked);
      });
      context.on('weberror', (error) => faults.push(String(error.error())));
      context.on('console', (message) => {
        if (message.type() === 'error') faults.push(message.text());
      });
      const page = await context.newPage();
      await before?.(page);
      await page.goto(url);
      return { context, page, url, strangers, faults };
    });
    for (const close of closing) await close();
  },
});
