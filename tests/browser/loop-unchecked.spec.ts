/** No sound check was done, and the band comes back all the same: it is found in the take, truly, over a PulseAudio loop. */
import { readFileSync } from 'node:fs';
import { availableParallelism, loadavg } from 'node:os';
import type { Page } from '@playwright/test';
import type { Report } from '../../src/core/take/schema.ts';
import { expect, test } from './app.ts';
import { KNOWN_MIDI, knownLine } from './known-line.ts';
import { pulseIsHere, pulseLoop } from './pulse-loop.ts';
import { delaysMs } from './steadiness.ts';
import { download, startButton, stopButton, untilReview } from './screens.ts';

/** On a busy machine the browser loses blocks of sound: that often the take is played anew. */
const GOES = 3;
const MOST_SLIP_MS = 1;

const LINE = KNOWN_MIDI.slice(0, 8);
/** What a browser of this kind records at. */
const RATE = 44_100;

/** The loop's delay in the one take that is kept, second by second in ms, told from its sound and its band on the disk. */
async function delaysOf(page: Page): Promise<number[]> {
  const files = await page.evaluate(async () => {
    type Folder = FileSystemDirectoryHandle & { values(): AsyncIterable<FileSystemHandle> };
    const found: Record<string, number[]> = {};
    const walk = async (folder: Folder) => {
      for await (const handle of folder.values()) {
        if (handle.kind === 'directory') await walk(handle as Folder);
        else {
          const file = await (handle as FileSystemFileHandle).getFile();
          found[handle.name] = [...new Int16Array(await file.arrayBuffer())];
        }
      }
    };
    await walk((await navigator.storage.getDirectory()) as Folder);
    return found;
  });
  const isBand = ([name]: readonly [string, number[]]) => name.includes('-band');
  const floats = (samples: readonly number[] = []) => Float32Array.from(samples, (x) => x / 32_768);
  const all = Object.entries(files);
  return delaysMs(floats(all.find((file) => !isBand(file))?.[1]), floats(all.find(isBand)?.[1]), RATE);
}

test('speakers without a sound check: the band is found in the take, and the delay is the loop’s', async ({
  openApp,
}) => {
  test.skip(!pulseIsHere(), 'PulseAudio is not installed: no loop from speaker to microphone');
  const line = await knownLine(LINE);
  let slips = Infinity;
  for (let go = 1; go <= GOES && slips > MOST_SLIP_MS; go++) {
    const loop = await pulseLoop();
    try {
      const { page } = await openApp({ microphone: { pulse: loop.server } });
      await startButton(page).click();
      const refused = page.getByRole('button', { name: 'Try again' });
      await expect(stopButton(page).or(refused)).toBeVisible();
      test.skip(await refused.isVisible(), 'this browser finds no PulseAudio');
      loop.play(line.file);
      await page.waitForTimeout(1000 * line.seconds);
      await stopButton(page).click();
      await untilReview(page);
      const delays = await delaysOf(page);
      slips = delays.length < 5 ? Infinity : Math.max(...delays) - Math.min(...delays);
      if (slips <= MOST_SLIP_MS) await expectBandFound(page, delays[0]!);
      // A page that still sounds when its output goes reports a fault of the audio device.
      await page.goto('about:blank');
    } finally {
      loop.dispose();
    }
  }
  const load = loadavg()[0]!;
  test.skip(
    slips > MOST_SLIP_MS && load > availableParallelism(),
    `this machine has other work (load ${load.toFixed(1)}): its loop slipped in each of ${GOES} takes`,
  );
  expect(slips, 'the loop stood still in a take').toBeLessThanOrEqual(MOST_SLIP_MS);
});

/** The review of a take whose loop stood still at this delay. */
async function expectBandFound(page: Page, delayMs: number): Promise<void> {
  const { path } = await download(page, 'Save the report');
  const report = JSON.parse(readFileSync(path, 'utf8')) as Report;
  const found = report.source.backing;
  // As the correlation of each second alone has it, which the search of the app knows nothing of.
  expect(Math.abs(1000 * (found?.offsetSeconds ?? NaN) - delayMs)).toBeLessThan(3);
  // In eight seconds, with the player at it all the time, little of the path can be learned.
  expect(found?.removedDb).toBeGreaterThan(2);
  const heard = report.notes.map(({ midi }) => Math.round(midi));
  expect(LINE.filter((midi) => heard.includes(midi)).length).toBeGreaterThanOrEqual(LINE.length - 1);
  await expect(page.getByRole('status').getByText(/came back through the microphone/)).toBeVisible();
}
