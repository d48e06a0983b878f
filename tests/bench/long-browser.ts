/**
 * A long take in a real browser, with the built site: memory while it is played, sound that was lost, and whether onsets
 * drift between its first and its last minutes.
 *
 *   npm run build && npx tsx tests/bench/long-browser.ts [--minutes 20]
 *
 * It takes as long as the take. The fake microphone sends a line of which every onset is known. Memory is the resident set
 * of the page's own process (proc(5), VmRSS) and the page's JavaScript heap, read every ten seconds.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium, type Page } from '@playwright/test';
import type { Report } from '../../src/core/take/schema.ts';
import { findBrowser } from '../browser/find-browser.ts';
import { siteServer } from '../browser/site-server.ts';
import { mean, offsetsMs, residentMb, writeLongLine } from './long-line.ts';

const { values } = parseArgs({ options: { minutes: { type: 'string', default: '20' } } });
const minutes = Number(values.minutes);

const LOOK_EVERY_MS = 10_000;
/** Onsets of so many minutes at each end are compared. */
const END_MINUTES = 2;
/** Before this share of the take the page is still being compiled. */
const WARM_UP = 0.2;
const ANSWER_MS = 600_000;

/** The process that runs the page: the largest of the browser's renderers on this profile. */
function pageProcess(profile: string): number {
  const lines = spawnSync('ps', ['-eo', 'pid=,rss=,args='], { encoding: 'utf8' }).stdout.split('\n');
  const [largest] = lines
    .filter((line) => line.includes('--type=renderer') && line.includes(profile))
    .map((line) => line.trim().split(/\s+/).slice(0, 2).map(Number) as [number, number])
    .toSorted((a, b) => b[1] - a[1]);
  if (largest === undefined) throw new Error('the page’s process was not found');
  return largest[0];
}

interface Memory {
  readonly residentMb: number;
  readonly heapMb: number;
}

async function memoryOf(page: Page, pid: number): Promise<Memory> {
  const heap = await page.evaluate(
    () => (performance as unknown as { memory: { usedJSHeapSize: number } }).memory.usedJSHeapSize,
  );
  return { residentMb: residentMb(pid) ?? NaN, heapMb: heap / 1e6 };
}

async function played(page: Page, profile: string): Promise<{ report: Report; memory: readonly Memory[] }> {
  const button = (name: string) => page.getByRole('button', { name }).first();
  await button('Start playing').click();
  await button('Stop').waitFor({ timeout: ANSWER_MS });
  const pid = pageProcess(profile);
  const memory: Memory[] = [];
  for (const end = Date.now() + 60_000 * minutes; Date.now() < end;) {
    await page.waitForTimeout(LOOK_EVERY_MS);
    memory.push(await memoryOf(page, pid));
    const { residentMb: mb, heapMb } = memory.at(-1)!;
    console.error(`${memory.length * 10} s: ${mb.toFixed(0)} MB, heap ${heapMb.toFixed(1)} MB`);
  }
  await button('Stop').click();
  await button('Hear the take').waitFor({ timeout: ANSWER_MS });
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the report' }).click(),
  ]);
  return { report: JSON.parse(readFileSync(await saved.path(), 'utf8')) as Report, memory };
}

const range = (numbers: readonly number[]) =>
  `${Math.min(...numbers).toFixed(0)} to ${Math.max(...numbers).toFixed(0)} MB`;

/** Where the line begins in the take: the first onsets, brought to the grid of its notes. */
function beginOf(report: Report): number {
  const first = report.notes.slice(0, 40).map(({ onsetSeconds }) => onsetSeconds % 0.5);
  return first.toSorted((a, b) => a - b)[Math.floor(first.length / 2)] ?? 0;
}

const folder = mkdtempSync(join(tmpdir(), 'landfall-long-'));
const browser = findBrowser();
const server = await siteServer(fileURLToPath(new URL('../../dist/app', import.meta.url)));
try {
  const file = join(folder, 'long.wav');
  await writeLongLine(file, minutes + 1);
  const profile = join(folder, 'profile');
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: browser.executable,
    env: { ...process.env, ...browser.env } as Record<string, string>,
    acceptDownloads: true,
    args: [
      ...['--headless', '--no-sandbox', '--disable-gpu', '--autoplay-policy=no-user-gesture-required'],
      ...[
        '--enable-precise-memory-info',
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
      ],
      `--use-file-for-fake-audio-capture=${file}%noloop`,
    ],
  });
  const page = context.pages()[0] ?? (await context.newPage());
  await page.goto(server.url);
  const { report, memory } = await played(page, profile);
  await context.close();
  const warm = memory.slice(Math.round(WARM_UP * memory.length));
  const begin = beginOf(report);
  const total = report.source.durationSeconds;
  const end = 60 * Math.min(END_MINUTES, minutes / 2);
  const first = offsetsMs(report, 0, end, begin);
  const last = offsetsMs(report, total - end, total, begin);
  console.log(`${(total / 60).toFixed(1)} minutes, ${report.notes.length} notes heard`);
  console.log(
    `page after warm-up: ${range(warm.map(({ residentMb: mb }) => mb))} resident, heap ${range(warm.map(({ heapMb }) => heapMb))}`,
  );
  console.log(`sound that the browser lost: ${JSON.stringify(report.source.lost ?? [])}`);
  console.log(
    `onsets, heard minus played: ${mean(first).toFixed(2)} ms in the first minutes (${first.length}), ${mean(last).toFixed(2)} ms in the last (${last.length}): drift ${(mean(last) - mean(first)).toFixed(2)} ms`,
  );
} finally {
  await server.goAway();
  browser.dispose();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
