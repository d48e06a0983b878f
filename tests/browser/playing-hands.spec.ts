/** What a player does and needs without a mouse while the band plays: dials, what is read, what is said, a lit display. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { asOnAFirstVisit, expect, oneVisit, test } from './app.ts';
import { knownLine } from './known-line.ts';
import { download, startButton, stopButton, untilReview } from './screens.ts';

/** What the fake microphone plays without a resampler in between. */
const RATE = 44_100;
const app = oneVisit(async () => ({
  microphone: { file: (await knownLine()).file },
  before: withCountedLocks,
}));
const back = () => app().page.getByRole('button', { name: 'Back', exact: true }).click();

const untilCountIn = async (page: Page) => {
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
};
const dial = (page: Page, name: string) =>
  page.getByRole('group', { name: 'Band and time' }).locator('[aria-pressed]').filter({ hasText: name });
const untilPlaying = async (page: Page) => {
  await untilCountIn(page);
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
};

/** Counts how often the display is asked to stay lit, and how often it is let go. */
async function withCountedLocks(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const locks = { asked: 0, released: 0 };
    Object.assign(globalThis, { locks });
    Object.defineProperty(navigator, 'wakeLock', {
      value: {
        request: (kind: string) => {
          if (kind === 'screen') locks.asked += 1;
          return Promise.resolve({ release: () => Promise.resolve((locks.released += 1)) });
        },
      },
    });
  });
}

test('the display stays lit while playing, and may go dark afterwards', async () => {
  const { page } = app();
  const locks = () =>
    page.evaluate(() => (globalThis as unknown as { locks: { asked: number; released: number } }).locks);
  expect(await locks()).toEqual({ asked: 0, released: 0 });
  await untilPlaying(page);
  expect(await locks()).toEqual({ asked: 1, released: 0 });
  await page.waitForTimeout(1500);
  await page.keyboard.press('Space');
  await untilReview(page);
  expect(await locks()).toEqual({ asked: 1, released: 1 });
  await back();
});

test('from the open page to a note of the review and back by keys alone', async () => {
  const { page } = app();
  const focused = () => page.evaluate(() => document.activeElement?.textContent.trim() ?? '');
  const tabTo = async (wanted: (name: string) => boolean, most: number) => {
    for (let i = 0; i < most; i++) {
      await page.keyboard.press('Tab');
      if (wanted(await focused())) return;
    }
    throw new Error(`not reached in ${most} steps`);
  };
  await expect(startButton(page)).toBeEnabled();
  await tabTo((name) => name.startsWith('Start playing'), 8);
  await page.keyboard.press('Enter');
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  await page.waitForTimeout(1500);
  await page.keyboard.press('Space');
  await untilReview(page);
  // A new screen is read from its top.
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('MAIN');
  await page.getByRole('listbox').focus();
  await page.keyboard.press('End');
  await expect(page.getByRole('option', { selected: true })).toHaveCount(1);
  await page.keyboard.press('Escape');
  await expect(startButton(page)).toBeVisible();
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('MAIN');
});

test('landings are said as they happen, and stand still where motion is not wanted', async () => {
  const { page } = app();
  await untilPlaying(page);
  const said = page.locator('[aria-live=polite]').filter({ hasText: /^A 7: / });
  await expect(said).toHaveText(
    /^A 7: (root|third|fifth|seventh|extension|scale tone|blue note|outside|rest)/,
  );
  const mark = page.locator('.form .landing .mark').first();
  await expect(mark).toBeVisible();
  // The test browser asks for reduced motion: a landing is there at once.
  expect(await mark.evaluate((element) => getComputedStyle(element).animationDuration)).toMatch(/^0(ms|s)$/);
  await asOnAFirstVisit(app());
});

test('nothing is cut off on a phone, upright or on its side, on a laptop, on a wall', async () => {
  const { page } = app();
  await page.getByRole('radio', { name: /Jazz blues/ }).press('Space');
  await untilPlaying(page);
  for (const [width, height] of [
    [390, 844],
    [844, 390],
    [1280, 800],
    [2560, 1440],
  ] as const) {
    await page.setViewportSize({ width, height });
    await page.waitForTimeout(200);
    const cut = await page.evaluate(() => {
      const seen =
        'header button, .chorus b, .level, .stage .now .set, .stage .next .set, .targets svg, .targets .degree, ' +
        '.when b, .note .degree, .note .scale, .stage canvas, .form [aria-current] .set';
      return [...document.querySelectorAll(seen)]
        .map((element) => ({ element, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0)
        .filter(
          ({ box }) =>
            box.left < -1 || box.top < -1 || box.right > innerWidth + 1 || box.bottom > innerHeight + 1,
        )
        .map(({ element, box }) => `${element.className} ${Math.round(box.left)} ${Math.round(box.top)}`);
    });
    expect(cut, `${width} × ${height}`).toEqual([]);
    // The page does not scroll, and the tones to land on keep off the line beside them.
    expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight + 1)).toBe(true);
    const overlap = await page.evaluate(() => {
      const box = (selector: string) => document.querySelector(selector)?.getBoundingClientRect();
      const [next, now, line] = [box('.stage .coming'), box('.stage .now'), box('.stage .line')];
      const meets = (a?: DOMRect, b?: DOMRect) =>
        a !== undefined &&
        b !== undefined &&
        b.width > 0 &&
        a.left < b.right - 1 &&
        b.left < a.right - 1 &&
        a.top < b.bottom - 1 &&
        b.top < a.bottom - 1;
      return [meets(next, line), meets(now, line), meets(now, next)];
    });
    expect(overlap, `${width} × ${height}`).toEqual([false, false, false]);
  }
});

test('the dials turn by keys: the band with its care, a new tempo counted in again or kept for the next take', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await untilCountIn(page);
  // While counting in nothing has been played: a new tempo begins the count-in again.
  await page.keyboard.press('t');
  await expect(dial(page, 'tempo')).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('+');
  await expect(dial(page, 'tempo')).toContainText('100');
  await expect(page.getByText('Tempo 100: it counts in again.')).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  // While playing the band is heard at once, time holds from the next take on.
  await page.keyboard.press('b');
  await page.keyboard.press('-');
  await expect(dial(page, 'band')).toContainText('−20 dB');
  await expect(page.getByText('loud sound harms hearing')).toBeVisible();
  await page.keyboard.press('s');
  await page.keyboard.press('-');
  await expect(page.getByText(/Swing \d\d %: from the next take on/)).toBeVisible();
  await page.waitForTimeout(2500);
  await page.keyboard.press('Space');
  await untilReview(page);
  // The take is graded at the tempo that it was played at.
  await expect(page.getByText('100 bpm')).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('Tempo')).toHaveValue('100');
});

test('an alto reads a blues in A in F sharp; what is exported is at concert pitch', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await page.getByLabel(/^Instrument/).selectOption('alto-sax');
  await expect(page.getByLabel('Chords and names')).toHaveValue('written');
  await expect(page.getByRole('list', { name: 'Bars of the form' })).toContainText('F sharp 7');
  await untilPlaying(page);
  const stage = page.getByRole('region', { name: 'Chords' });
  await expect(stage).toContainText('F sharp 7');
  // Next comes B7, concert D7: its third and seventh as an alto names them.
  await expect(stage.getByRole('list', { name: 'Tones to land on' })).toContainText('D♯');
  await page.waitForTimeout(6000);
  await page.keyboard.press('Space');
  await untilReview(page);
  await expect(page.getByText('12-bar blues in F♯')).toBeVisible();
  await expect(page.getByRole('list', { name: 'Bars of the form' })).toContainText('F sharp 7');
  const { path } = await download(page, 'Save the report');
  const report = JSON.parse(readFileSync(path, 'utf8')) as {
    timeline: { key: { tonic: string }; spans: { chord: string | null }[] };
    notes: { midi: number }[];
  };
  expect(report.timeline.key.tonic).toBe('A');
  expect(report.timeline.spans.map(({ chord }) => chord)).toContain('A7');
  // Concert pitch: what sounded, between the lowest and the highest of the known line.
  for (const { midi } of report.notes) expect(midi).toBeLessThan(76);
});

test('a silent microphone is told while playing, and the word goes when sound is back', async ({
  openApp,
}) => {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-silence-'));
  const path = join(folder, 'silence.wav');
  // Nothing but zeros for fifteen seconds from the opening on, then a hum.
  const samples = Float32Array.from({ length: 40 * RATE }, (_, i) =>
    i < 15 * RATE ? 0 : 0.2 * Math.sin(i / 20),
  );
  writeFileSync(path, writeWav(toPcm16(samples), RATE));
  const { page } = await openApp({ microphone: { file: path } });
  await untilCountIn(page);
  const told = page.getByRole('status').getByText('nothing but silence');
  await expect(told).toBeVisible();
  await expect(told).toHaveCount(0);
  await page.keyboard.press('Escape');
  rmSync(folder, { recursive: true, force: true });
});
