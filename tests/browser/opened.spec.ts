/** Lines that were not played here: a recording with its backing, a list of notes; and a MIDI take on the disk. */
import { english } from '../english.ts';
import { en } from '../../src/core/words/en.ts';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { wavBytes } from '../../fixtures/lines/wav.ts';
import { bandInARoom } from '../../fixtures/room/band-in-a-room.ts';
import { readArgs } from '../../src/cli/args.ts';
import { gradeFile } from '../../src/cli/grade-command.ts';
import { readReport, type Report } from '../../src/core/take/schema.ts';
import { noteScore } from '../bench/note-metrics.ts';
import { usualSettings } from '../../src/state/settings.ts';
import { expect, oneVisit, test } from './app.ts';
import { playKeys, withKeyboard } from './fake-midi.ts';
import {
  download,
  expectAccessible,
  gradeOpened,
  openRecording,
  startButton,
  stopButton,
  untilReview,
} from './screens.ts';

const RATE = 16_000;
let folder: string;
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'landfall-opened-'));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));
const wav = (name: string, samples: Float32Array) => {
  const path = join(folder, name);
  writeFileSync(path, wavBytes(samples, RATE));
  return path;
};

const reportIn = (path: string): Report => {
  const read = readReport(JSON.parse(readFileSync(path, 'utf8')));
  if (!read.ok) throw new Error(english(read.problem));
  return read.value;
};
const savedReport = async (page: Page) => reportIn((await download(page, 'Save the report')).path);

test('a recording loses its backing as at the command line', async ({ openApp }) => {
  const scene = { instrument: 'clean', seconds: 10, seed: 753, delaySeconds: 0.06, bandDb: 0 };
  const heard = await bandInARoom({ ...scene, sampleRate: RATE });
  const line = wav(
    'mine.wav',
    heard.microphone.map((x) => x / 2),
  );
  const backing = wav('trio.wav', heard.band);
  const silence = wav('nothing.wav', new Float32Array(RATE));

  const { page } = await openApp();
  // Two files at once: the player says which is which.
  await openRecording(page, [line, backing]);
  await expect(page.getByRole('dialog', { name: 'In which of the two do you play?' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'mine.wav' }).click();
  await gradeOpened(page);
  await untilReview(page);
  await expect(page.getByText(/^trio\.wav begins .* it was made \d+ dB quieter\.$/)).toBeVisible();
  await expectAccessible(page);
  const app = await savedReport(page);
  expect(app.source.backing?.offsetSeconds).toBeCloseTo(0.06, 2);
  expect(app.source.backing?.removedDb).toBeGreaterThan(8);

  // The very words that the page gives, typed.
  await page.getByText('Grade it at the command line').click();
  const words = await page.locator('pre code').innerText();
  const quoted = [...words.matchAll(/'([^']*)'|(\S+)/g)].map(([, text, bare]) => text ?? bare!);
  expect(quoted.slice(0, 5)).toEqual(['npx', 'landfall', 'grade', 'mine.wav', '--backing']);
  const typed = quoted.slice(2).map((word) => (word.endsWith('.wav') ? join(folder, word) : word));
  const order = readArgs([...typed, '--json']);
  if (!order.ok || order.value.command !== 'grade') throw new Error(`not understood: ${words}`);
  const graded = await gradeFile(order.value, { at: () => undefined, dispose: () => undefined }, en);
  if (!graded.ok) throw new Error(english(graded.problem));
  const elsewhere = JSON.parse(graded.value.page) as Report;
  // To the last digit it is the same where both run on one machine's arithmetic (tests/analysis/backing.test.ts).
  expect(noteScore(elsewhere.notes, app.notes).f1).toBeGreaterThan(0.95);
  expect(app.source.backing?.removedDb).toBeCloseTo(elsewhere.source.backing!.removedDb, 0);
  expect(app.timeline.chart).toBe(elsewhere.timeline.chart);

  // Another backing, which does not fit; then the recording as it is.
  await page.locator('.backing input[type=file]').setInputFiles(silence);
  await untilReview(page);
  await expect(page.getByRole('status').getByText('nothing.wav is silent')).toBeVisible();
  await page.getByRole('button', { name: 'Leave it in' }).click();
  await untilReview(page);
  await expect(page.getByText('Is a backing in it too?')).toBeVisible();
  const plain = await savedReport(page);
  expect(plain.source).not.toHaveProperty('backing');
  const f1 = ({ notes }: Report) => noteScore(heard.truth, notes).f1;
  // 0.92 against 0.86 when this was written: a band beside the line costs the listener little by now.
  expect(f1(app)).toBeGreaterThan(f1(plain) + 0.05);
});

test.describe('lists of notes', () => {
  const app = oneVisit(() => ({}));
  // Grading in another key changes the set-up: that test is the last.
  const back = () => app().page.getByRole('button', { name: 'Back', exact: true }).click();

  test('files let fall on the page are opened', async () => {
    const { page } = app();
    await expect(startButton(page)).toBeEnabled();
    const rows = [61, 64, 67, 66].map((midi, i) => `${i / 2},0.4,${midi}`);
    await page.evaluate(
      (text) => {
        const carried = new DataTransfer();
        carried.items.add(new File([text], 'line.csv'));
        window.dispatchEvent(
          new DragEvent('drop', { dataTransfer: carried, cancelable: true, bubbles: true }),
        );
      },
      ['onset,duration,pitch', ...rows].join('\n'),
    );
    await gradeOpened(page);
    await untilReview(page);
    await expect(page.getByText(/\b4\snotes\b/).first()).toBeVisible();
    // A line that is written down has no sound: the kit plays it.
    await page.getByRole('button', { name: 'Hear the take' }).click();
    await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
    await expect.poll(() => page.getByLabel('Place in the take').inputValue()).not.toBe('0');
    await back();
  });

  test('a note is taken out of the grade and put back, by key and by button', async () => {
    const { page } = app();
    const rows = [61, 64, 67, 66].map((midi, i) => `${i / 2},0.4,${midi}`);
    const buffer = Buffer.from(['onset,duration,pitch', ...rows].join('\n'));
    await openRecording(page, { name: 'line.csv', mimeType: 'text/csv', buffer });
    await gradeOpened(page);
    await untilReview(page);
    const notes = page.getByRole('listbox', { name: /^Notes of the take/ });
    await notes.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Delete');
    await expect(notes.getByRole('option', { name: /^taken out: E4,/ })).toBeVisible();
    await expect(page.getByText('You took this note out, so it counts in no share.')).toBeVisible();
    // On a phone the words about it have the whole width, not what the large sign leaves.
    await page.setViewportSize({ width: 390, height: 844 });
    const words = page.getByText('You took this note out, so it counts in no share.');
    await expect.poll(async () => (await words.boundingBox())?.width).toBeGreaterThan(300);
    await page.setViewportSize({ width: 1280, height: 720 });
    await expect(page.getByText(/\b3\snotes\b/).first()).toBeVisible();
    await expectAccessible(page);
    const report = await savedReport(page);
    expect(report.notes.map(({ midi }) => midi)).toEqual([61, 67, 66]);
    expect(report.doubtful).toMatchObject([{ midi: 64, takenOut: true }]);
    await page.getByRole('button', { name: 'As it was heard' }).click();
    await expect(page.getByRole('button', { name: 'Take it out' })).toBeFocused();
    await expect(page.getByText(/\b4\snotes\b/).first()).toBeVisible();
    await back();
  });

  test('a player of a transposing instrument is told where key and chords stand at concert pitch', async () => {
    const { page } = app();
    const note = page.getByText('Key and chords stand here at concert pitch.');
    const rows = [61, 64, 67, 66].map((midi, i) => `${i / 2},0.4,${midi}`);
    const buffer = Buffer.from(['onset,duration,pitch', ...rows].join('\n'));
    const open = () => openRecording(page, { name: 'line.csv', mimeType: 'text/csv', buffer });
    await open();
    await expect(page.getByRole('button', { name: 'Grade it' })).toBeVisible();
    await expect(note).toBeHidden();
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByLabel(/^Instrument/).selectOption('alto-sax');
    await open();
    await expect(note).toBeVisible();
    await gradeOpened(page);
    await untilReview(page);
    // A blues in A is written in F# for an alto in E flat (common practice), as the chords of the review are.
    await expect(page.getByText('Graded over 12-bar blues in F♯')).toBeVisible();
    await back();
    await page.getByLabel(/^Instrument/).selectOption('guitar');
  });

  test('a line in another key than the chart is graded in its own by one press', async () => {
    const { page } = app();
    await expect(startButton(page)).toBeEnabled();
    // The page opens on a blues in A; this is one in B: third, root, fifth and seventh of each bar.
    const roots = [11, 11, 11, 11, 4, 4, 11, 11, 6, 4, 11, 11];
    const midis = [...roots, ...roots].flatMap((root) => [4, 0, 7, 10].map((step) => 48 + root + step));
    const { bpm } = usualSettings;
    const rows = midis.map((midi, i) => `${(i * 60) / bpm},${48 / bpm},${midi}`);
    const buffer = Buffer.from(['onset,duration,pitch', ...rows].join('\n'));
    await openRecording(page, { name: 'line.csv', mimeType: 'text/csv', buffer });
    await gradeOpened(page);
    await untilReview(page);
    await expect(page.getByText('This fits B major better than A major')).toBeVisible();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Grade it in B major' }).click();
    await untilReview(page);
    await expect(page.getByText('This fits B major better than A major')).toBeHidden();
    expect((await savedReport(page)).timeline.key).toEqual({ tonic: 'B', mode: 'major' });
  });
});

test('a take played by MIDI outlives its tab, is heard, and leaves as MIDI', async ({ openApp }) => {
  const { page, context, url } = await openApp({ before: withKeyboard });
  await page.getByLabel('Heard by').selectOption('midi');
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  await playKeys(page, [61, 64, 67, 69]);
  await page.close({ runBeforeUnload: false });

  const next = await context.newPage();
  await next.goto(url);
  await expect(next.getByText('A take was cut off')).toBeVisible();
  await next.getByRole('button', { name: 'Grade it' }).click();
  await untilReview(next);
  const report = await savedReport(next);
  expect(report.notes.map(({ midi }) => midi)).toEqual([61, 64, 67, 69]);
  await next.getByRole('button', { name: 'Hear the take' }).click();
  await expect.poll(() => next.getByLabel('Place in the take').inputValue()).not.toBe('0');
  const { name, path } = await download(next, 'Save the notes');
  expect(name).toMatch(/\.mid$/);
  await next.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(next.getByRole('region', { name: 'Earlier takes' }).getByRole('button').first()).toBeVisible();
  // What left comes in again as a recording would.
  const bytes = readFileSync(path);
  await openRecording(next, { name, mimeType: 'audio/midi', buffer: bytes });
  await gradeOpened(next);
  await untilReview(next);
  await expect(next.getByText(/\b4\snotes\b/).first()).toBeVisible();
});
