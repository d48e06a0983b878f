/** Opens the built site as a player would: with a line as the microphone, with none, or with one refused. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test as base, type BrowserContext, type Page } from '@playwright/test';
import { fewFrames } from './few-frames.ts';

export { expect };

export type Microphone =
  /** A 44.1 kHz 16-bit mono WAV, played once. Other kinds come out as silence, without an error. */
  | { readonly file: string }
  /** A PulseAudio server whose null sink is speaker and microphone in one; the test may run code of its own there. */
  | { readonly pulse: string }
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
  /** Kills the browser as a power cut would, and starts it again on the same profile. */
  killed(): Promise<{ readonly context: BrowserContext; readonly page: Page }>;
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
  if (microphone === 'none') return ['--use-fake-ui-for-media-stream', '--disable-audio-input'];
  // A headless browser that nobody answers for says no.
  if (microphone === 'refused') return ['--use-fake-device-for-media-stream'];
  if (typeof microphone === 'object' && 'pulse' in microphone) return ['--use-fake-ui-for-media-stream'];
  const said = ['--use-fake-ui-for-media-stream', '--use-fake-device-for-media-stream'];
  if (microphone === 'beeps') return said;
  return [...said, `--use-file-for-fake-audio-capture=${microphone.file}%noloop`];
}

/** Ends every process of the browser that works on a profile, at once. */
function killProcessesOf(profile: string): void {
  const listed = spawnSync('ps', ['-eo', 'pid=,args='], { encoding: 'utf8' }).stdout.split('\n');
  for (const line of listed) {
    if (!line.includes(`--user-data-dir=${profile}`)) continue;
    try {
      process.kill(Number.parseInt(line, 10), 'SIGKILL');
    } catch {
      // It went with its parent.
    }
  }
}

const WINDOW = { width: 1280, height: 720 };

interface Opening {
  readonly microphone?: Microphone;
  /** Called on the empty page, before the site is opened. */
  readonly before?: (page: Page) => Promise<void>;
  /** A server of the test's own. There the site may keep itself; elsewhere it may not, so that no test waits for that. */
  readonly at?: string;
}

interface OpenVisit {
  readonly visit: Visit;
  close(): Promise<void>;
}

/** Starts a browser on a profile of its own and opens the site. */
async function visitSite({ microphone = 'none', before, at }: Opening = {}): Promise<OpenVisit> {
  const url = at ?? process.env.LANDFALL_URL!;
  // A profile on the disk, as a player has: a private window keeps its files in memory and has no quota.
  const profile = mkdtempSync(join(tmpdir(), 'landfall-profile-'));
  const pulse = typeof microphone === 'object' && 'pulse' in microphone ? microphone.pulse : null;
  const strangers: string[] = [];
  const faults: string[] = [];
  const launch = async () => {
    const context = await chromium.launchPersistentContext(profile, {
      executablePath: process.env.LANDFALL_EXECUTABLE!,
      args: [...FLAGS, ...microphoneFlags(microphone)],
      env: {
        ...process.env,
        ...JSON.parse(process.env.LANDFALL_EXECUTABLE_ENV ?? '{}'),
        ...(pulse === null ? {} : { PULSE_SERVER: pulse }),
      },
      acceptDownloads: true,
      serviceWorkers: at === undefined ? 'block' : 'allow',
      ...(pulse === null ? {} : { ignoreDefaultArgs: ['--mute-audio'], bypassCSP: true }),
      viewport: WINDOW,
      reducedMotion: 'reduce',
    });
    if (base.info().project.name === 'site') await fewFrames(context);
    context.on('request', (request) => {
      const asked = request.url();
      if (!asked.startsWith(url) && !/^(data|blob):/.test(asked)) strangers.push(asked);
    });
    context.on('weberror', (error) => faults.push(String(error.error())));
    context.on('console', (message) => {
      // A server that has gone away on purpose is no fault of the page.
      const isGone = at !== undefined && message.text().includes('ERR_CONNECTION_REFUSED');
      if (message.type() === 'error' && !isGone) faults.push(message.text());
    });
    return { context, page: context.pages()[0] ?? (await context.newPage()) };
  };
  let now = await launch();
  const close = async () => {
    await now.context.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  };
  const killed = async () => {
    const gone = new Promise((resolve) => now.context.once('close', resolve));
    killProcessesOf(profile);
    await gone;
    now = await launch();
    await now.page.goto(url);
    return now;
  };
  const { context, page } = now;
  await before?.(page);
  await page.goto(url);
  return { visit: { context, page, url, strangers, faults, killed }, close };
}

/** The site as on a first visit, in the browser that is open already: nothing is remembered, nothing is kept. */
export async function asOnAFirstVisit({ page, context, url }: Visit): Promise<void> {
  await page.goto('about:blank');
  const devtools = await context.newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', { origin: new URL(url).origin, storageTypes: 'all' });
  await devtools.detach();
  await page.goto(url);
}

/** Holds for every test: nothing is asked of another host, and the page runs without a fault. */
function expectNothingAmiss(visits: readonly Visit[]): void {
  expect(visits.flatMap(({ strangers }) => strangers)).toEqual([]);
  expect(visits.flatMap(({ faults }) => faults)).toEqual([]);
}

export const test = base.extend<{ openApp: (opening?: Opening) => Promise<Visit> }>({
  // eslint-disable-next-line no-empty-pattern -- Playwright reads the names of fixtures from this pattern.
  openApp: async ({}, use) => {
    const visits: OpenVisit[] = [];
    await use(async (opening) => {
      const opened = await visitSite(opening);
      visits.push(opened);
      return opened.visit;
    });
    for (const { close } of visits) await close();
    expectNothingAmiss(visits.map(({ visit }) => visit));
  },
});

/**
 * One visit for all tests of the file, or of the `describe` in which it stands, one after another: what the first one
 * computed is there for the next. Each test leaves the page as it found it; the size of the window and the lights are
 * set back. After a test that failed the next one gets a visit of its own.
 * @param begin brings the page to where the tests begin
 * @returns the visit, to be asked within a test
 */
export function oneVisit(
  opening: () => Opening | Promise<Opening>,
  begin: (visit: Visit) => Promise<void> = () => Promise.resolve(),
): () => Visit {
  let opened: OpenVisit;
  test.describe.configure({ mode: 'default' });
  test.beforeAll(async () => {
    opened = await visitSite(await opening());
    await begin(opened.visit);
  });
  test.afterEach(async () => {
    expectNothingAmiss([opened.visit]);
    const size = opened.visit.page.viewportSize();
    if (size?.width !== WINDOW.width || size.height !== WINDOW.height)
      await opened.visit.page.setViewportSize(WINDOW);
    await opened.visit.page.emulateMedia({ media: null, colorScheme: 'light', forcedColors: null });
  });
  test.afterAll(() => opened.close());
  return () => opened.visit;
}
