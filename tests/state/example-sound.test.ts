/** The example of a sheet as it is heard: its notes over the band, at the tempo of the sheet. */
import { describe, expect, it } from 'vitest';
import { failure, good } from '../../src/core/base/outcome.ts';
import { readSheetFile } from '../../src/core/lesson/sheet.ts';
import { problem } from '../../src/core/words/problem.ts';
import { ExampleSound } from '../../src/state/example-sound.svelte.ts';
import type { Accompaniment, NotesToPlay } from '../../src/state/ports.ts';
import { usualSettings } from '../../src/state/settings.ts';
import { THIRDS_SHEET } from '../core/lesson/thirds-sheet.ts';
import { FakePlayer } from './world.ts';

const LEVELS = usualSettings.levels;
function sheetWith(more: object) {
  const sheet = readSheetFile({ ...THIRDS_SHEET, ...more }, 'task');
  if (!sheet.ok) throw new Error('The sheet of this test can’t be read.');
  return sheet.value;
}
const EXAMPLE = {
  notes: [
    [-1, 1, 61],
    [0, 2, 66],
  ],
};

function opened(
  wake = () => Promise.resolve<ReturnType<typeof good<void>> | ReturnType<typeof failure>>(good(undefined)),
) {
  const players: { player: FakePlayer; line: NotesToPlay; band: Accompaniment | null }[] = [];
  const sound = new ExampleSound({
    wake,
    openPlayer: (line, band) => {
      const player = new FakePlayer((line as NotesToPlay).durationSeconds);
      players.push({ player, line: line as NotesToPlay, band });
      return player;
    },
  });
  return { sound, players };
}

describe('the example', () => {
  it('sounds with the band; a pickup has a bar before the first downbeat', async () => {
    const { sound, players } = opened();
    await sound.play(sheetWith({ tempo: 60, example: EXAMPLE, instrument: 'flute' }), LEVELS);
    const [{ line, band, player }] = players as [(typeof players)[number]];
    // At 60 bpm a beat is a second: the downbeat at 4 s, the pickup a second before it.
    expect(line.notes.map(({ onsetSeconds, offsetSeconds }) => [onsetSeconds, offsetSeconds])).toEqual([
      [3, 4],
      [4, 6],
    ]);
    expect(line).toMatchObject({ durationSeconds: 7, instrument: 'flute' });
    expect(band).toMatchObject({
      firstBeatSeconds: 4,
      settings: { bpm: 60, feel: 'straight', countInBars: 0 },
    });
    expect(player.orders).toEqual([{ fromSeconds: 0, speed: 1, passage: null }]);
    expect(sound.sounds).toBe(true);
    sound.stop();
    expect([sound.sounds, player.disposed]).toEqual([false, true]);
  });

  it('is silent where a sheet has none', async () => {
    const { sound, players } = opened();
    await sound.play(sheetWith({}), LEVELS);
    expect([sound.sounds, players.length]).toEqual([false, 0]);
  });

  it('does not sound when it was stopped before the sound was awake', async () => {
    let awake = (): void => undefined;
    const { sound, players } = opened(
      () => new Promise((resolve) => (awake = () => resolve(good(undefined)))),
    );
    const playing = sound.play(sheetWith({ example: EXAMPLE }), LEVELS);
    sound.stop();
    awake();
    await playing;
    expect([sound.sounds, players.length]).toEqual([false, 0]);
  });

  it('says why it does not sound', async () => {
    const { sound } = opened(() => Promise.resolve(failure(problem('listener.stopped'))));
    await sound.play(sheetWith({ example: EXAMPLE }), LEVELS);
    expect([sound.sounds, sound.problem?.code]).toEqual([false, 'listener.stopped']);
  });
});
