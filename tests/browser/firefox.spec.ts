/**
 * A stock Firefox, where one is installed, on the built site: the demo to its review, a recording that gets the notes of the
 * command line, a take that stays through a kill. Everything else is tested in Chromium. Beside it, what Firefox does
 * otherwise (src/audio/browsers.md), each with a test of its own.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from '@playwright/test';
import type { Report } from '../../src/core/take/schema.ts';
import { findFirefox } from './find-firefox.ts';
import { Firefox } from './firefox.ts';
import { inOrder, KNOWN_MIDI, knownLine } from './known-line.ts';
import { pulseIsHere, pulseLoop } from './pulse-loop.ts';

const CLI = fileURLToPath(new URL('../../dist/cli/landfall.js', import.meta.url));
const NO_OUTPUT = 'unix:/nonexistent/landfall';

const executable = findFirefox();
test.skip(executable === null, 'Firefox is not installed.');

async function withFirefox(pulseServer: string, act: (firefox: Firefox) => Promise<void>): Promise<void> {
  const firefox = new Firefox(executable!, process.env.LANDFALL_URL!, pulseServer);
  try {
    await firefox.open();
    await act(firefox);
    expect(firefox.faults).toEqual([]);
  } finally {
    await firefox.close();
  }
}

test('Firefox: a recording is graded with the notes of the command line; without any output the demo says so', async () => {
  const { file } = await knownLine();
  await withFirefox(NO_OUTPUT, async (firefox) => {
    await firefox.expectText('Start playing');
    await firefox.expectAccessible();

    await firefox.press('Hear the demo take');
    await firefox.expectText('The browser did not start its sound');
    await firefox.expectText(/\b[1-9]\d*\snotes\b/);
    await firefox.press('Back');

    await firefox.giveFile(file);
    await firefox.expectText('Grade it');
    await firefox.fillNumber('Tempo', 120);
    await firefox.fillNumber('The first bar', 3);
    await firefox.press('Grade it');
    await firefox.expectText('Hear the take');
    await firefox.expectAccessible();
    const app = JSON.parse(readFileSync(await firefox.download('Save the report'), 'utf8')) as Report;
    expect(app.notes.map(({ midi }) => Math.round(midi))).toEqual(KNOWN_MIDI);
    const { chart, bpm, swing } = app.timeline;
    const asked = ['--chart', chart, '--tempo', String(bpm), '--swing', String(swing), '--first-beat', '3'];
    const cli = JSON.parse(
      execFileSync(process.execPath, [CLI, 'grade', file, '--json', ...asked], {
        encoding: 'utf8',
        maxBuffer: 1 << 26,
      }),
    ) as Report;
    const facts = ({ notes, landings }: Report) => ({
      notes: notes.map(({ name, chord, degree, role }) => ({ name, chord, degree, role })),
      landings: landings.map(({ role, kind }) => ({ role, kind })),
    });
    expect(facts(app)).toEqual(facts(cli));
    // Firefox computes sines and powers by another library than Node: what follows may differ in the last digits.
    for (const [i, note] of app.notes.entries()) {
      expect(note.onsetSeconds).toBeCloseTo(cli.notes[i]!.onsetSeconds, 3);
      expect(note.midi).toBeCloseTo(cli.notes[i]!.midi, 2);
    }
  });
});

/** The first notes of the known line, which were surely played when the browser is killed. */
const PLAYED = KNOWN_MIDI.slice(0, 10);

test('Firefox: the demo is heard; a take by the microphone stays through a kill and a reload', async () => {
  test.skip(
    !pulseIsHere(),
    'PulseAudio is not installed: Firefox has no microphone, and no clock for its sound.',
  );
  const { file } = await knownLine();
  const pulse = await pulseLoop({ bandStaysOut: true });
  try {
    await withFirefox(pulse.server, async (firefox) => {
      await firefox.press('Hear the demo take');
      // Its clock runs: the count-in is over.
      await firefox.expectText(/\bbar 1\b/i);
      await firefox.press('To the review');
      await firefox.expectText('Hear the take');
      await firefox.press('Back');

      await firefox.press('Start playing');
      await firefox.expectText('Stop');
      pulse.play(file);
      // Three seconds of silence, ten notes of half a second, and what a busy machine needs to begin.
      await new Promise((played) => setTimeout(played, 10_000));
      await firefox.killAndReopen();
      await firefox.expectText('A take was cut off');
      expect(await firefox.privateFiles()).toBeGreaterThan(0);
      await firefox.press('Grade it');
      await firefox.expectText('Hear the take');
      const report = JSON.parse(readFileSync(await firefox.download('Save the report'), 'utf8')) as Report;
      expect(report.source).toMatchObject({ kind: 'microphone' });
      const heard = report.notes.map(({ midi }) => Math.round(midi));
      expect(inOrder(PLAYED, heard), `heard ${heard.join(' ')}`).toBe(PLAYED.length);
      await firefox.press('Back');
      await firefox.reload();
      await firefox.pressFirstIn('Earlier takes');
      await firefox.expectText('Hear the take');
    });
  } finally {
    pulse.dispose();
  }
});
