/**
 * From the press on Start to the first sample of the count-in that leaves the page, as an analyser at the page's own
 * output hears it. The output's latency, which the browser tells, is counted in.
 */
import { loadavg } from 'node:os';
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { startButton, stopButton } from './screens.ts';

/** The aim is 300 ms on an idle machine; a machine that shares its cores with other tests is allowed more. */
const AIM_MS = 300;
const BUSY_MS = 1500;

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});
test.afterAll(() => line.dispose());

/** Hears what goes to the speakers, and notes when the first sample came after the press. */
async function listenAtTheOutput(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const heard = { pressedMs: NaN, firstMs: NaN };
    Object.assign(globalThis, { heard });
    const connect = AudioNode.prototype.connect as (this: AudioNode, ...to: unknown[]) => unknown;
    AudioNode.prototype.connect = function (this: AudioNode, ...to: unknown[]) {
      if (to[0] instanceof AudioDestinationNode) watch(this, this.context as AudioContext);
      return connect.apply(this, to);
    } as typeof AudioNode.prototype.connect;
    function watch(node: AudioNode, context: AudioContext) {
      const analyser = context.createAnalyser();
      analyser.fftSize = 2048;
      connect.call(node, analyser);
      const samples = new Float32Array(analyser.fftSize);
      setInterval(() => {
        if (!Number.isNaN(heard.firstMs) || Number.isNaN(heard.pressedMs)) return;
        analyser.getFloatTimeDomainData(samples);
        // What sounded before the press is still in the analyser.
        const since = ((performance.now() - heard.pressedMs) / 1000) * context.sampleRate;
        const at = samples.findIndex((sample, i) => sample !== 0 && samples.length - i < since);
        if (at < 0) return;
        const agoMs = ((samples.length - at) / context.sampleRate) * 1000;
        heard.firstMs = performance.now() - agoMs + 1000 * (context.outputLatency || 0);
      }, 2);
    }
    addEventListener(
      'click',
      () => {
        heard.pressedMs = performance.now();
        heard.firstMs = NaN;
      },
      true,
    );
  });
}

const firstSoundMs = (page: Page) =>
  page.evaluate(() => {
    const { heard } = globalThis as unknown as { heard: { pressedMs: number; firstMs: number } };
    return heard.firstMs - heard.pressedMs;
  });

test('the count-in sounds at once', async ({ openApp }) => {
  const { page } = await openApp({ microphone: { file: line.file }, before: listenAtTheOutput });
  await expect(startButton(page)).toBeEnabled();
  // A player reads and chooses first; the kit is made ready meanwhile.
  await page.waitForTimeout(2500);
  const times: number[] = [];
  for (let go = 0; go < 2; go++) {
    await startButton(page).click();
    await expect(stopButton(page)).toBeVisible();
    await expect.poll(() => firstSoundMs(page)).toBeGreaterThan(0);
    times.push(Math.round(await firstSoundMs(page)));
    await page.keyboard.press('Escape');
    await expect(startButton(page)).toBeVisible();
    // The take before dies away.
    await page.waitForTimeout(600);
  }
  const load = loadavg()[0]!.toFixed(1);
  console.log(`first sound after ${times.join(' and ')} ms (aim ${AIM_MS}; load ${load})`);
  test.info().annotations.push({ type: 'first sound', description: `${times.join(', ')} ms, load ${load}` });
  expect(Math.max(...times)).toBeLessThan(BUSY_MS);
});
