/**
 * The main job on the built site: a line of which every note is known comes through the microphone, and the
 * report of the app and that of the command line on the same recording name the same notes.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Report } from '../../src/core/take/schema.ts';
import { expect, test } from './app.ts';
import { inOrder, KNOWN_MIDI, knownLine, type KnownLine } from './known-line.ts';
import { download, startButton, stopButton, untilReview } from './screens.ts';

const CLI = fileURLToPath(new URL('../../dist/cli/landfall.js', import.meta.url));
let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

/** Where the cue point of an exported take lies, in seconds: its first downbeat. */
function cueSeconds(wav: Buffer): number {
  const at = wav.lastIndexOf('cue ');
  expect(at, 'the exported take marks its first downbeat').toBeGreaterThan(0);
  return wav.readUInt32LE(at + 16) / wav.readUInt32LE(24);
}

test('the app hears a known line, and the command line hears the same in what it saved', async ({
  openApp,
}) => {
  const { page } = await openApp({ microphone: { file: line.file } });
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  // The microphone was opened before the Stop button stood there.
  await page.waitForTimeout(line.seconds * 1000);
  await stopButton(page).click();
  await untilReview(page);
  const json = await download(page, 'Save the report');
  const sound = await download(page, 'Save the sound');
  expect(sound.name).toMatch(/\.wav$/);
  const app = JSON.parse(readFileSync(json.path, 'utf8')) as Report;

  expect(app.source.kind).toBe('microphone');
  const heard = app.notes.map((note) => Math.round(note.midi));
  // A machine under load leaves out a block of sound now and then, and a note with a hole in it is heard as two:
  // every note must be there and in order, and one more is allowed.
  expect(inOrder(KNOWN_MIDI, heard), `heard ${heard.join(' ')}`).toBe(KNOWN_MIDI.length);
  expect(heard.length).toBeLessThanOrEqual(KNOWN_MIDI.length + 1);

  const cli = JSON.parse(
    execFileSync(
      process.execPath,
      [
        CLI,
        ...['grade', sound.path, '--json', '--chart', app.timeline.chart],
        ...['--tempo', String(app.timeline.bpm), '--swing', String(app.timeline.swing)],
        ...['--first-beat', String(cueSeconds(readFileSync(sound.path))), '--reference', 'auto'],
      ],
      { encoding: 'utf8', maxBuffer: 1 << 26 },
    ),
  ) as Report;
  const facts = ({ notes }: Report) =>
    notes.map(({ name, onsetSeconds, midi, chord, degree, role }) => ({
      name,
      onsetSeconds,
      midi,
      chord,
      degree,
      role,
    }));
  expect(facts(cli)).toEqual(facts(app));
  expect(cli.landings.map(({ role, kind }) => [role, kind])).toEqual(
    app.landings.map(({ role, kind }) => [role, kind]),
  );
});
