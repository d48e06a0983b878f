/**
 * A long take in a real browser, with the built site: memory while it is played, sound that was lost, and whether onsets
 * drift between its first and its last minutes.
 *
 *   npm run build && npx tsx tests/bench/long-browser.ts [--minutes 20]
 *
 * It takes as long as the take. The fake microphone sends a line of which every onset is known. Memory is that of each process
 * of the browser, and the page's JavaScript heap, read every ten seconds. The fake microphone holds its whole file in the
 * audio process.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium, type Page } from '@playwright/test';
import type { Report } from '../../src/core/take/schema.ts';
import { findBrowser } from '../browser/find-browser.ts';
import { siteServer } from '../browser/site-server.ts';
import { browserMemory, type ProcessMemory } from './browser-memory.ts';
import { driftMs, gridOf, heardLate, writeLongLine } from './long-line.ts';

const { values } = parseArgs({ options: { minutes: { type: 'string', default: '20' } } });
const minutes = Number(values.minutes);

const LOOK_EVERY_MS = 10_000;
/** Onsets of so many minutes at each end are compared. */
const END_MINUTES = 2;
/** Before this share of the take the page is still being compiled. */
const WARM_UP = 0.2;
const ANSWER_MS = 600_000;

interface Memory {
  readonly processes: readonly ProcessMemory[];
  readonly heapMb: number;
}

async function memoryOf(page: Page, profile: string): Promise<Memory> {
  const heap = await page.evaluate(
    () => (performance as unknown as { memory: { usedJSHeapSize: number } }).memory.usedJSHeapSize,
  );
  return { processes: browserMemory(profile), heapMb: heap / 1e6 };
}

/** Of the largest process of a kind: the page's own among the renderers. */
const largest = ({ processes }: Memory, kind: string, what: 'residentMb' | 'privateMb') =>
  Math.max(...processes.filter((one) => one.kind === kind).map((one) => one[what]));

/** One row a kind of process: at the first look, and at fifths of the take. */
function memoryTable(memory: readonly Memory[], what: 'residentMb' | 'privateMb'): string {
  const fifths = Array.from({ length: 6 }, (_, i) => memory[Math.round((i * (memory.length - 1)) / 5)]!);
  const kinds = [...new Set(memory.flatMap(({ processes }) => processes.map(({ kind }) => kind)))];
  return kinds
    .map((kind) => `  ${kind}: ${fifths.map((look) => largest(look, kind, what).toFixed(0)).join(' ')}`)
    .join('\n');
}

async function played(page: Page, profile: string): Promise<{ report: Report; memory: readonly Memory[] }> {
  const button = (name: string) => page.getByRole('button', { name }).first();
  await button('Start playing').click();
  await button('Stop').waitFor({ timeout: ANSWER_MS });
  const memory: Memory[] = [];
  for (const end = Date.now() + 60_000 * minutes; Date.now() < end;) {
    await page.waitForTimeout(LOOK_EVERY_MS);
    const look = await memoryOf(page, profile);
    memory.push(look);
    console.error(
      `${memory.length * 10} s: ${largest(look, 'renderer', 'residentMb').toFixed(0)} MB, heap ${look.heapMb.toFixed(1)} MB`,
    );
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
  const begin = gridOf(report);
  const total = report.source.durationSeconds;
  const end = 60 * Math.min(END_MINUTES, minutes / 2);
  const first = heardLate(report, 0, end, begin);
  const last = heardLate(report, total - end, total, begin);
  console.log(`${(total / 60).toFixed(1)} minutes, ${report.notes.length} notes heard`);
  console.log(
    `page after warm-up: ${range(warm.map((look) => largest(look, 'renderer', 'residentMb')))} resident, heap ${range(warm.map(({ heapMb }) => heapMb))}`,
  );
  console.log(`resident at fifths of the take, MB:\n${memoryTable(memory, 'residentMb')}`);
  console.log(`private, MB:\n${memoryTable(memory, 'privateMb')}`);
  console.log(`sound that the browser lost: ${JSON.stringify(report.source.lost ?? [])}`);
  console.log(
    `onsets, later than the grid: ${first.ms.toFixed(2)} ms in the first minutes (${first.notes}), ${last.ms.toFixed(2)} ms in the last (${last.notes}): drift ${driftMs(first, last).toFixed(2)} ms`,
  );
} finally {
  await server.goAway();
  browser.dispose();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
