/** Opens the built site as a player would: with a line as the microphone, with none, or with one refused. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test as base, type BrowserContext, type Page } from '@playwright/test';

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

type Open = (options?: { microphone?: Microphone; before?: (page: Page) => Promise<void> }) => Promise<Visit>;

export const test = base.extend<{ openApp: Open }>({
  // eslint-disable-next-line no-empty-pattern -- Playwright reads the names of fixtures from this pattern.
  openApp: async ({}, use) => {
    const visits: { readonly visit: Visit; close(): Promise<void> }[] = [];
    await use(async ({ microphone = 'none', before } = {}) => {
      const url = process.env.LANDFALL_URL!;
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
          ...(pulse === null ? {} : { ignoreDefaultArgs: ['--mute-audio'], bypassCSP: true }),
          reducedMotion: 'reduce',
        });
        context.on('request', (request) => {
          const asked = request.url();
          if (!asked.startsWith(url) && !/^(data|blob):/.test(asked)) strangers.push(asked);
        });
        context.on('weberror', (error) => faults.push(String(error.error())));
        context.on('console', (message) => {
          if (message.type() === 'error') faults.push(message.text());
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
      const visit = { context, page, url, strangers, faults, killed };
      visits.push({ visit, close });
      await before?.(page);
      await page.goto(url);
      return visit;
    });
    for (const { close } of visits) await close();
    // Holds for every test: nothing is asked of another host, and the page runs without a fault.
    expect(visits.flatMap(({ visit }) => visit.strangers)).toEqual([]);
    expect(visits.flatMap(({ visit }) => visit.faults)).toEqual([]);
  },
});
