/** Each screen, without a microphone where none is needed: what it shows, and that everyone can use it. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { asOnAFirstVisit, expect, oneVisit, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import {
  demoButton,
  download,
  expectAccessible,
  gradeOpened,
  openRecording,
  startButton,
  stopButton,
  untilReview,
} from './screens.ts';

const fixture = (name: string) => fileURLToPath(new URL(`../../fixtures/audio/${name}`, import.meta.url));
let line: KnownLine;
const app = oneVisit(async () => {
  line = await knownLine();
  return { microphone: 'beeps' };
});
const back = () => app().page.getByRole('button', { name: 'Back', exact: true }).click();

test('the open page, and a demo take that gives a report without a microphone', async () => {
  const { page } = app();
  await expect(startButton(page)).toBeVisible();
  await expectAccessible(page);
  await demoButton(page).click();
  await untilReview(page);
  await expect(page.getByText(/landings? (is|are) on the third/).first()).toBeVisible();
  await expectAccessible(page);
  const { path } = await download(page, 'Save the report');
  const report = JSON.parse(readFileSync(path, 'utf8')) as { notes: unknown[]; landings: unknown[] };
  expect(report.notes.length).toBeGreaterThan(80);
  expect(report.landings.length).toBeGreaterThan(10);
  await page.getByRole('button', { name: 'Hear the take' }).click();
  await expect(page.getByText(/0:0[1-9] \/ 1:0\d/)).toBeVisible();
  await back();
});

test('the playing screen', async () => {
  const { page } = app();
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  await expectAccessible(page);
  // Both hands are on the instrument: the space bar, or a pedal that sends one, stops.
  await page.keyboard.press('Space');
  await untilReview(page);
  await back();
});

test('a recording is opened and graded', async () => {
  const { page } = app();
  await openRecording(page, line.file);
  await gradeOpened(page);
  await untilReview(page);
  const { path } = await download(page, 'Save the report');
  const report = JSON.parse(readFileSync(path, 'utf8')) as { source: { kind: string }; notes: unknown[] };
  expect(report.source.kind).toBe('audio');
  expect(report.notes.length).toBe(16);
  await back();
});

for (const name of ['pluck.mp3', 'pluck.flac', 'pluck.ogg'])
  test(`a recording as ${name.slice(-4)} is read by the decoders in the build`, async () => {
    const { page } = app();
    await openRecording(page, fixture(name));
    await gradeOpened(page);
    await untilReview(page);
    await back();
  });

test('a file that is no recording: a sentence with its name', async () => {
  const { page } = app();
  await openRecording(page, {
    name: 'shopping.wav',
    mimeType: 'audio/wav',
    buffer: Buffer.from('strings, picks, a capo'),
  });
  await expect(page.getByRole('heading', { level: 1 })).toContainText('shopping.wav');
  await back();
});

test('a chart with a bad symbol: said while it is written, and nothing starts', async () => {
  const { page } = app();
  await page.getByRole('radio', { name: /Write a chart/ }).press('Space');
  await page.getByLabel('Your chart, bar by bar').fill('| A7 | Xz7 |');
  await expect(page.locator('.problem')).toContainText('Xz7');
  await expect(startButton(page)).toBeDisabled();
  await expectAccessible(page);
});

test('a chart of the player’s own is kept, listed, taken again, renamed and removed', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await page.getByRole('radio', { name: /Write a chart/ }).press('Space');
  await page.getByLabel('Your chart, bar by bar').fill('| Dm7 | G7 | Cmaj7 | % |');
  await page.getByLabel('Title').fill('Harbour');
  await page.getByRole('button', { name: 'Keep it' }).click();
  await expect(page.getByRole('heading', { name: 'Harbour' })).toBeVisible();
  await page.reload();
  await page.getByText('Blues', { exact: true }).click();
  await page.getByRole('radio', { name: /Minor blues/ }).press('Space');
  await page.getByRole('radio', { name: /Harbour/ }).press('Space');
  await expect(page.getByLabel('Your chart, bar by bar')).toHaveValue('| Dm7 | G7 | Cmaj7 | % |');
  await page.getByLabel('Title').fill('Breakwater');
  await page.getByRole('button', { name: 'Rename' }).click();
  await expect(page.getByRole('radio', { name: /Breakwater/ })).toBeChecked();
  await expectAccessible(page);
  await page.getByRole('button', { name: /^Remove Breakwater/ }).click();
  await expect(page.getByRole('radio', { name: /Breakwater/ })).toHaveCount(0);
});

test('a part of the form is practised', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await page.getByText('Practise a part of it').click();
  await page.getByLabel('From bar').selectOption('9');
  await page.getByLabel('To bar').selectOption('10');
  await page.getByLabel('The chords rest every second chorus').check();
  await expect(page.getByText('Practising: bars 9 to 10, chords every second chorus')).toBeVisible();
  await expectAccessible(page);
});

test('the setup is remembered', async () => {
  const { page } = app();
  const tempo = page.getByLabel('Tempo');
  await tempo.fill('132');
  await tempo.press('Enter');
  await tempo.blur();
  await expect(tempo).toHaveValue('132');
  await page.waitForTimeout(300);
  await page.reload();
  await expect(page.getByLabel('Tempo')).toHaveValue('132');
});
