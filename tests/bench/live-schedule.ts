/**
 * Whether the band is ever late while it plays in a real browser whose cores are busy. Every piece of sound that the
 * page hands to the audio clock is noted with the moment it was due and the moment it was handed over.
 *
 *   npx tsx tests/bench/live-schedule.ts [--seconds 20] [--busy 2]     LANDFALL_APP names a built site
 */
import { fork, type ChildProcess } from 'node:child_process';
import { loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import setUp from '../browser/set-up.ts';

const { values } = parseArgs({
  options: { seconds: { type: 'string', default: '20' }, busy: { type: 'string', default: '2' } },
});
const seconds = Number(values.seconds);

/** Keeps a core busy until it is killed. */
if (process.env.LANDFALL_BUSY === '1') for (;;) Math.sqrt(Math.random());

interface Start {
  readonly due: number;
  readonly at: number;
  readonly offset: number;
}

const tearDown = await setUp();
const busy: ChildProcess[] = Array.from({ length: Number(values.busy) }, () =>
  fork(fileURLToPath(import.meta.url), [], { env: { ...process.env, LANDFALL_BUSY: '1' } }),
);
const browser = await chromium.launch({
  executablePath: process.env.LANDFALL_EXECUTABLE!,
  env: { ...process.env, ...JSON.parse(process.env.LANDFALL_EXECUTABLE_ENV ?? '{}') },
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--autoplay-policy=no-user-gesture-required',
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
  ],
});
try {
  const page = await browser.newPage();
  await page.addInitScript(() => {
    const starts: Start[] = [];
    Object.assign(globalThis, { starts });
    const start = AudioBufferSourceNode.prototype.start;
    AudioBufferSourceNode.prototype.start = function (when = 0, offset = 0) {
      starts.push({ due: when, at: this.context.currentTime, offset });
      start.call(this, when, offset);
    };
  });
  await page.goto(process.env.LANDFALL_URL!);
  await page.getByRole('button', { name: 'Start playing' }).click({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Stop' }).waitFor({ timeout: 60_000 });
  const loads: number[] = [];
  for (let left = seconds; left > 0; left -= 10) {
    await page.waitForTimeout(1000 * Math.min(10, left));
    loads.push(loadavg()[0]!);
  }
  const starts = await page.evaluate(() => (globalThis as unknown as { starts: Start[] }).starts);
  const lost = await page.getByText('The browser los', { exact: false }).count();
  const aheadOf = starts.map(({ due, at }) => due - at);
  // The first pieces of a run are asked for as soon as they can sound; all later ones are rendered ahead.
  const later = aheadOf.slice(4);
  const late = starts.filter(({ due, at, offset }) => due < at || offset > 0).length;
  const report = {
    seconds,
    pieces: starts.length,
    late,
    leastAheadSeconds: Math.round(1000 * Math.min(...later)) / 1000,
    firstAheadSeconds: Math.round(1000 * Math.min(...aheadOf.slice(0, 4))) / 1000,
    load: [Math.min(...loads), Math.max(...loads)].map((one) => Math.round(10 * one) / 10),
    saidThatSoundWasLost: lost > 0,
  };
  console.log(JSON.stringify(report));
  process.exitCode = late === 0 ? 0 : 1;
} finally {
  await browser.close();
  for (const child of busy) child.kill();
  await tearDown();
}
