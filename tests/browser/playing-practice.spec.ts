/** What is practised is seen and heard: turns that are traded, a tempo that rises, keys that go round, a drone. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { Listener } from '../../src/core/listen.ts';
import { asOnAFirstVisit, expect, oneVisit, test } from './app.ts';
import { knownLine } from './known-line.ts';
import { download, expectAccessible, startButton, stopButton, untilReview } from './screens.ts';

const app = oneVisit(async () => ({ microphone: { file: (await knownLine()).file }, before: withEar }));

interface Told {
  readonly timeline: {
    readonly turnBars?: number;
    readonly rise?: { readonly byBpm: number };
    readonly keys?: readonly { readonly tonic: string }[];
  };
  readonly landings: readonly { readonly bar: number; readonly chorus: number }[];
}
const reportOf = async (page: Page) =>
  JSON.parse(readFileSync((await download(page, 'Report as JSON')).path, 'utf8')) as Told;

/** A fast loop of the first bars, to be practised. */
async function practise(page: Page, toBar: string, bpm = 160): Promise<void> {
  await page.getByLabel('Tempo').fill(String(bpm));
  await page.getByLabel('Tempo').press('Enter');
  await page.getByText('Practise a part of it').click();
  await page.getByLabel('To bar').selectOption(toBar);
}
const start = async (page: Page) => {
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
};

test('traded turns: the stage says whose turn it is, and only the player’s bars are graded', async () => {
  const { page } = app();
  await practise(page, '4', 200);
  await page.getByLabel(/^Turns/).selectOption('2');
  await start(page);
  const whose = page.locator('header').locator('.whose');
  await expect(whose).toHaveText('you');
  await expect(page.getByText('Your turn.')).toBeAttached();
  await expect(page.locator('.stage .turn')).toHaveCount(0);
  await expect(page.locator('.form .tacet')).toHaveCount(2);
  await expect(whose).toHaveText('band');
  // The rest of two bars, as large as the chord that comes: more than 18 px for each 100 of the window's height.
  const sizeOfCount = () =>
    page.evaluate(() => {
      const count = document.querySelector('.stage .turn b');
      return count?.textContent === '2' ? parseFloat(getComputedStyle(count).fontSize) / innerHeight : null;
    });
  await expect.poll(sizeOfCount).toBeGreaterThan(0.1);
  await expect(page.getByText('The band’s turn: listen.')).toBeAttached();
  await expectAccessible(page);
  await expect(page.getByText('get ready')).toBeVisible();
  await expect(whose).toHaveText('you');
  await page.keyboard.press('Space');
  await untilReview(page);
  const { timeline, landings } = await reportOf(page);
  expect(timeline.turnBars).toBe(2);
  expect(landings.length).toBeGreaterThan(0);
  for (const { bar } of landings) expect(bar).toBeLessThan(2);
});

test('a rising tempo, through the keys: both stand on the page as they change', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await practise(page, '1');
  await page.getByLabel('Faster by').fill('20');
  await page.getByLabel('Faster by').press('Enter');
  await page.getByLabel('Keys').selectOption('fourths');
  await start(page);
  const header = page.locator('header');
  await expect(header).toContainText('160');
  for (const [tempo, key] of [
    ['180', 'in D'],
    ['200', 'in G'],
  ] as const) {
    await expect(header.locator('.pace')).toContainText(tempo);
    await expect(header.locator('.chorus')).toContainText(key);
  }
  await page.keyboard.press('Space');
  await untilReview(page);
  const { timeline } = await reportOf(page);
  expect(timeline.rise).toEqual({ byBpm: 20, everyBars: 1 });
  expect(timeline.keys?.slice(0, 3).map(({ tonic }) => tonic)).toEqual(['A', 'D', 'G']);
});

/** What goes to the speakers is heard by the test too. */
async function withEar(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const connect = Object.getOwnPropertyDescriptor(AudioNode.prototype, 'connect')!.value as (
      ...to: unknown[]
    ) => unknown;
    AudioNode.prototype.connect = function (this: AudioNode, ...to: unknown[]) {
      if (to[0] instanceof AudioDestinationNode) {
        const ear = new AnalyserNode(this.context, { fftSize: 32_768 });
        connect.call(this, ear);
        Object.assign(globalThis, { ear });
      }
      return connect.apply(this, to);
    } as typeof AudioNode.prototype.connect;
  });
}
/** The last two thirds of a second. */
const heardNow = (page: Page) =>
  page.evaluate(() => {
    const { ear } = globalThis as unknown as { ear: AnalyserNode };
    const samples = new Float32Array(ear.fftSize);
    ear.getFloatTimeDomainData(samples);
    return { sampleRate: ear.context.sampleRate, samples: [...samples] };
  });

test('a drone sounds on the root, and the take over it is graded', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await practise(page, '4');
  await page.getByLabel(/^Over/).selectOption('root');
  await expect(page.getByText(/^Practising: .*drone/)).toBeVisible();
  await page.getByText('Levels of the parts').click();
  await page.getByLabel('Drums').fill('-60');
  await start(page);
  // Where the part begins again the line lands, however late a busy machine is.
  await expect(page.locator('header .chorus')).toHaveText(/chorus 2/i);
  await page.waitForTimeout(1000);
  const { sampleRate, samples } = await heardNow(page);
  await page.keyboard.press('Space');
  await untilReview(page);
  // An A, in whatever octave.
  const listener = new Listener({ sampleRate });
  listener.push(Float32Array.from(samples));
  expect(Math.round(listener.reading.midi ?? NaN) % 12).toBe(9);
  expect((await reportOf(page)).landings.length).toBeGreaterThan(0);
});

test('the band is heard without a take, follows the key, and gives way to a take', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  const bars = page.getByRole('list', { name: 'Bars of the form' });
  const place = bars.locator('[aria-current]');
  // By the keyboard alone.
  await page.getByRole('button', { name: 'Listen to the band' }).focus();
  await page.keyboard.press('Enter');
  await expect(place).toHaveCount(1);
  await expectAccessible(page);
  await page.getByRole('button', { name: 'a half step up' }).click();
  await expect(page.getByRole('button', { name: 'Undo the last change' })).toBeVisible();
  await expect(place).toHaveCount(1);
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Undo the last change' })).toHaveCount(0);
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Listen to the band' })).toBeVisible();
  await expect(place).toHaveCount(0);
});
