/** Notes corrected by hand: by keys alone, by mouse, by touch; marked, undone, and safe when the browser is killed. */
import type { Locator, Page } from '@playwright/test';
import { expect, oneVisit, test } from './app.ts';
import { expectAccessibleInBothLights, gradeOpened, openRecording, untilReview } from './screens.ts';

/** Eight notes a beat apart at 120 bpm, each half a beat long. */
const PITCHES = [69, 73, 76, 73, 74, 78, 81, 78];
const TABLE = ['onset,duration,pitch', ...PITCHES.map((midi, i) => `${(i + 1) / 2},0.25,${midi}`)].join('\n');

async function openLine(page: Page) {
  await openRecording(page, { name: 'line.csv', mimeType: 'text/csv', buffer: Buffer.from(TABLE) });
  await gradeOpened(page, { bpm: 120, firstSeconds: 0.5 });
  await untilReview(page);
}

const line = (page: Page) => page.getByRole('listbox', { name: /^Notes of the take/ });
const bar = (page: Page) => page.getByRole('group', { name: 'Correct by hand' });
const said = (page: Page) => bar(page).getByRole('status');
const verb = (page: Page, name: string) => bar(page).getByRole('button', { name, exact: true });
const notes = (page: Page) => line(page).getByRole('option');

/** The names of the notes in order. */
const names = async (page: Page) =>
  (await notes(page).evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''))).map(
    (label) => /[A-G](?: sharp| flat)? ?-?\d/.exec(label)?.[0],
  );

async function centre(place: Locator) {
  const box = (await place.boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test.describe('a line of eight notes', () => {
  const app = oneVisit(() => ({}));
  test.beforeEach(() => openLine(app().page));
  test.afterEach(() => app().page.getByRole('button', { name: 'Back', exact: true }).click());

  test('by keys alone: chosen, raised, split, joined, deleted, added, undone and taken back', async () => {
    const { page } = app();
    const heard = await names(page);
    expect(heard).toHaveLength(8);
    await line(page).focus();
    await page.keyboard.press('e');
    await expect(bar(page)).toBeVisible();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowUp');
    await expect(said(page)).toHaveText('It is D5 now.');
    await expect.poll(() => names(page)).toEqual(['A4', 'D5', ...heard.slice(2)]);
    await expect(page.getByText('1 note is corrected by hand.')).toBeVisible();
    await expect(notes(page).nth(1)).toHaveAttribute('aria-label', /^corrected: D5/);

    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('x');
    await expect(notes(page)).toHaveCount(9);
    await page.keyboard.press('j');
    await expect(notes(page)).toHaveCount(8);
    await page.keyboard.press('Delete');
    await expect(notes(page)).toHaveCount(7);
    await expect(said(page)).toHaveText('E5 is deleted.');
    await page.keyboard.press('a');
    await expect(notes(page)).toHaveCount(8);
    await page.keyboard.press(',');
    await expect(said(page)).toHaveText(/moved|earlier|room/);
    await page.keyboard.press('c');
    await expect(said(page)).toHaveText(/no longer counts/);

    for (let i = 0; i < 10; i++) await page.keyboard.press('Control+z');
    await expect.poll(() => names(page)).toEqual(heard);
    await expect(page.getByText('corrected by hand.')).toHaveCount(0);
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => names(page)).toEqual(['A4', 'D5', ...heard.slice(2)]);

    // All of it after a question, answered by the keyboard, too.
    await verb(page, 'Back to what was heard').press('Enter');
    await expect(bar(page).getByText('Take back the one correction of this take?')).toBeVisible();
    await page.keyboard.press('Enter');
    await expect.poll(() => names(page)).toEqual(heard);
    await page.keyboard.press('?');
    await expect(page.getByRole('dialog').getByText('Half step up')).toBeVisible();
    await page.keyboard.press('Escape');
    // Closed is not yet gone: the event by which the page hears of it comes a moment later (HTML, "close the dialog").
    await expect(page.locator('dialog[aria-labelledby=keys-of-review]')).toHaveCount(0);
    await page.keyboard.press('e');
    await expect(bar(page)).toHaveCount(0);
  });

  test('by mouse: a note is dragged in time and pitch, its end is stretched', async () => {
    const { page } = app();
    await page.getByRole('button', { name: 'Correct notes (E)' }).click();
    await notes(page).nth(3).click({ force: true });
    const grip = page.locator('.grip.note');
    await expect(grip).toBeVisible();
    const before = await centre(grip);
    await page.mouse.move(before.x, before.y);
    await page.mouse.down();
    await page.mouse.move(before.x + 12, before.y - 30, { steps: 4 });
    await page.mouse.up();
    await expect(page.getByText('1 note is corrected by hand.')).toBeVisible();
    const names1 = await names(page);
    expect(names1[3]).not.toBe('C sharp 5');
    await expect(notes(page).nth(3)).toHaveAttribute('aria-selected', 'true');
    // Sideways the note went on by as much as the pointer.
    expect((await centre(page.locator('.grip.note'))).x - before.x).toBeCloseTo(12, -1);

    const width = async () => (await page.locator('.length').boundingBox())!.width;
    const was = await width();
    const end = await centre(page.locator('.grip.end'));
    await page.mouse.move(end.x, end.y);
    await page.mouse.down();
    await page.mouse.move(end.x + 10, end.y, { steps: 3 });
    await page.mouse.up();
    await expect.poll(width).toBeGreaterThan(was + 5);
    await expect(said(page)).toHaveText(/lasts \d+ ms now/);
    await expectAccessibleInBothLights(page);
  });

  test('by touch on a phone: each target is 44 px, and a drag does not scroll the page', async () => {
    const { page, context } = app();
    await page.setViewportSize({ width: 390, height: 844 });
    await page.getByRole('button', { name: 'Correct notes (E)' }).click();
    for (const button of await bar(page).getByRole('button').all()) {
      const box = (await button.boundingBox())!;
      expect(box.height).toBeGreaterThanOrEqual(44);
      expect(box.width).toBeGreaterThanOrEqual(44);
    }
    await verb(page, 'Half step down').click();
    await expect(said(page)).toHaveText(/^It is .* now\.$/);
    // The take is graded again: the page above grows by a line.
    await expect(page.getByText('1 note is corrected by hand.')).toBeVisible();
    const [first] = await names(page);
    const grip = page.locator('.grip.note');
    // Waits until it stands still and can be touched.
    await grip.click({ trial: true });
    const { x, y } = await centre(grip);
    // Where the bar stands in the window: what grows above it moves the page, but not the bar.
    const barTop = async () => (await bar(page).boundingBox())!.y;
    const top = await barTop();
    const devtools = await context.newCDPSession(page);
    const touch = (type: string, points: readonly { x: number; y: number }[]) =>
      devtools.send('Input.dispatchTouchEvent', { type: type as 'touchStart', touchPoints: [...points] });
    await touch('touchStart', [{ x, y }]);
    for (const step of [10, 25, 40]) await touch('touchMove', [{ x, y: y - step }]);
    expect(await barTop()).toBeCloseTo(top, 0);
    await touch('touchEnd', []);
    await expect.poll(async () => (await names(page))[0]).not.toBe(first);
    await expectAccessibleInBothLights(page);
  });
});

/** "B flat 4" as a MIDI number. */
function midiOf(name: string): number {
  const [, letter, sign, octave] = /^([A-G])(?: (sharp|flat))? ?(-?\d)$/.exec(name)!;
  const step = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 }[letter!]!;
  return 12 * (Number(octave) + 1) + step + (sign === 'sharp' ? 1 : sign === 'flat' ? -1 : 0);
}

test('what is shown as corrected is kept: the browser is killed in mid-edit, three times', async ({
  openApp,
}) => {
  const visit = await openApp();
  let { page } = visit;
  await openLine(page);
  const first = async () => midiOf((await names(page))[0]!);
  let kept = await first();
  for (let kill = 0; kill < 3; kill++) {
    await page.getByRole('button', { name: 'Correct notes (E)' }).click();
    await line(page).focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowUp');
    await expect.poll(first).toBe(kept + 1);
    // One more, which may be lost: the browser is gone before the page can say anything.
    await page.keyboard.press('ArrowUp');
    if (kill > 0) await page.waitForTimeout(40 * kill);
    ({ page } = await visit.killed());
    await page.getByRole('region', { name: 'Earlier takes' }).getByRole('button').first().click();
    await untilReview(page);
    const found = await first();
    expect([kept + 1, kept + 2]).toContain(found);
    await expect(page.getByText('1 note is corrected by hand.')).toBeVisible();
    expect(await notes(page).count()).toBe(8);
    kept = found;
  }
});
