/**
 * A long take in a real browser, with the built site: memory while it is played, sound that was lost, and whether onsets
 * drift between its first and its last minutes.
 *
 *   npm run build && npx tsx tests/bench/long-browser.ts [--minutes 20] [--site FOLDER] [--keep FOLDER] [--plain] [--pulse]
 *
 * It takes as long as the take. The fake microphone sends a line of which every onset is known. Its own timers leave out sound
 * on a busy machine; with --pulse the line comes through PulseAudio instead, by the input that real devices use. Memory is that of each process
 * of the browser, and the page's JavaScript heap, read every ten seconds. The fake microphone holds its whole file in the
 * audio process. After Stop the memory of the grading is read, and how evenly the review is drawn while its line is scrolled.
 * Who moved the sound, where it was moved, is told by a log of the microphone's buffers, which --plain leaves out.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium, type Page } from '@playwright/test';
import type { Report } from '../../src/core/take/schema.ts';
import { findBrowser } from '../browser/find-browser.ts';
import { pulseLoop } from '../browser/pulse-loop.ts';
import { siteServer } from '../browser/site-server.ts';
import { browserMemory, type ProcessMemory } from './browser-memory.ts';
import { joined, logInput, takeLog, type InputLog } from './input-log.ts';
import { inputSteps, stepLines } from './input-steps.ts';
import { driftMs, gridOf, heardLate, writeLongLine } from './long-line.ts';

const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '20' },
    site: { type: 'string', default: fileURLToPath(new URL('../../dist/app', import.meta.url)) },
    keep: { type: 'string' },
    plain: { type: 'boolean', default: false },
    pulse: { type: 'boolean', default: false },
  },
});
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

interface Played {
  readonly report: Report;
  readonly memory: readonly Memory[];
  /** Most of all renderers together while the take was graded, MB, and what they hold after. */
  readonly gradingMb: number;
  readonly reviewMb: number;
  readonly answerSeconds: number;
  readonly log: InputLog;
  /** Where the recording lies as a WAV file. */
  readonly recording: string;
}

const renderers = (profile: string) =>
  browserMemory(profile)
    .filter(({ kind }) => kind === 'renderer')
    .reduce((sum, { residentMb }) => sum + residentMb, 0);

async function played(page: Page, profile: string, playIntoTheLoop?: () => void): Promise<Played> {
  const button = (name: string) => page.getByRole('button', { name }).first();
  await button('Start playing').click();
  await button('Stop').waitFor({ timeout: ANSWER_MS });
  playIntoTheLoop?.();
  const memory: Memory[] = [];
  const logs: InputLog[] = [];
  for (const end = Date.now() + 60_000 * minutes; Date.now() < end;) {
    await page.waitForTimeout(LOOK_EVERY_MS);
    const look = await memoryOf(page, profile);
    if (!values.plain) logs.push(await takeLog(page));
    memory.push(look);
    console.error(
      `${memory.length * 10} s: ${largest(look, 'renderer', 'residentMb').toFixed(0)} MB, heap ${look.heapMb.toFixed(1)} MB`,
    );
  }
  if (!values.plain) logs.push(await takeLog(page));
  await button('Stop').click();
  const stopped = Date.now();
  let gradingMb = 0;
  const looking = setInterval(() => (gradingMb = Math.max(gradingMb, renderers(profile))), 500);
  await button('Hear the take').waitFor({ timeout: ANSWER_MS });
  clearInterval(looking);
  const answerSeconds = (Date.now() - stopped) / 1000;
  await page.waitForTimeout(5000);
  const reviewMb = renderers(profile);
  console.error(
    `review after ${answerSeconds.toFixed(0)} s; renderers at most ${gradingMb.toFixed(0)} MB, then ${reviewMb.toFixed(0)} MB; ` +
      `line scrolled at ${(await framesPerSecond(page)).join(', ')} frames a second`,
  );
  const saved = async (name: string) => {
    const [download] = await Promise.all([page.waitForEvent('download'), button(name).click()]);
    const file = join(values.keep ?? folder, download.suggestedFilename());
    await download.saveAs(file);
    return file;
  };
  const report = JSON.parse(readFileSync(await saved('Save the report'), 'utf8')) as Report;
  const recording = values.plain ? '' : await saved('Save the sound');
  return { report, memory, gradingMb, reviewMb, answerSeconds, log: joined(logs), recording };
}

/** Three seconds of even scrolling, 40 px a frame, three times. */
async function framesPerSecond(page: Page): Promise<readonly string[]> {
  const rates: string[] = [];
  for (let time = 0; time < 3; time++)
    rates.push(
      await page.evaluate(async () => {
        const scroller = document.querySelector('[role=listbox]')!.closest('.scroller')!;
        scroller.scrollLeft = 0;
        const start = performance.now();
        let frames = 0;
        for (; performance.now() - start < 3000; frames++) {
          scroller.scrollLeft = 40 * frames;
          await new Promise(requestAnimationFrame);
        }
        return ((1000 * frames) / (performance.now() - start)).toFixed(0);
      }),
    );
  return rates;
}

const range = (numbers: readonly number[]) =>
  `${Math.min(...numbers).toFixed(0)} to ${Math.max(...numbers).toFixed(0)} MB`;

const folder = mkdtempSync(join(tmpdir(), 'landfall-long-'));
const browser = findBrowser();
const server = await siteServer(values.site);
const loop = values.pulse ? await pulseLoop({ bandStaysOut: true }) : null;
try {
  const file = join(folder, 'long.wav');
  await writeLongLine(file, minutes + 1);
  const profile = join(folder, 'profile');
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: browser.executable,
    env: {
      ...process.env,
      ...browser.env,
      ...(loop === null ? {} : { PULSE_SERVER: loop.server }),
    } as Record<string, string>,
    acceptDownloads: true,
    ...(loop === null ? {} : { ignoreDefaultArgs: ['--mute-audio'] }),
    args: [
      ...['--headless', '--no-sandbox', '--disable-gpu', '--autoplay-policy=no-user-gesture-required'],
      ...['--enable-precise-memory-info', '--use-fake-ui-for-media-stream'],
      ...(loop === null
        ? ['--use-fake-device-for-media-stream', `--use-file-for-fake-audio-capture=${file}%noloop`]
        : []),
    ],
  });
  const page = context.pages()[0] ?? (await context.newPage());
  if (!values.plain) await logInput(page);
  await page.goto(server.url);
  const { report, memory, log, recording, ...after } = await played(
    page,
    profile,
    loop === null ? undefined : () => loop.play(file),
  );
  await context.close();
  if (values.keep !== undefined) writeFileSync(join(values.keep, 'input-log.json'), JSON.stringify(log));
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
  console.log(
    `review ${after.answerSeconds.toFixed(0)} s after Stop; renderers at most ${after.gradingMb.toFixed(0)} MB, then ${after.reviewMb.toFixed(0)} MB`,
  );
  if (recording !== '') {
    const samples = new Int16Array(readFileSync(recording).subarray(44).slice().buffer);
    for (const line of stepLines(inputSteps(log, samples, report.source.sampleRate!))) console.log(line);
  }
  console.log(`sound that the browser lost: ${JSON.stringify(report.source.lost ?? [])}`);
  console.log(
    `onsets, later than the grid: ${first.ms.toFixed(2)} ms in the first minutes (${first.notes}), ${last.ms.toFixed(2)} ms in the last (${last.notes}): drift ${driftMs(first, last).toFixed(2)} ms`,
  );
} finally {
  await server.goAway();
  loop?.dispose();
  browser.dispose();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
