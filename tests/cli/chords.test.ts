/** `landfall chords`, and `landfall grade --backing` without a chart: what is found in a band of known chords. */
import { afterAll, describe, expect, it } from 'vitest';
import { wavBytes } from '../../fixtures/lines/wav.ts';
import { findChords } from '../../src/cli/chords-command.ts';
import { foundTimeline } from '../../src/cli/found-timeline.ts';
import { readArgs } from '../../src/cli/args.ts';
import type { GradeOrder } from '../../src/cli/orders.ts';
import { en } from '../../src/core/words/en.ts';
import { random } from '../../fixtures/lines/random.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { renderTrack } from '../core/beats/rendered-track.ts';
import { kitSynth } from '../core/sound/kit-file.ts';
import { english } from '../english.ts';
import { scratch } from './built.ts';

const RATE = 24_000;
const files = scratch();
afterAll(files.dispose);
const track = renderTrack(await kitSynth(RATE), {
  chart: '| Am7 | D7 | Am7 | D7 | Fmaj7 | E7 | Am7 | E7 |',
  feel: 'bossa',
  bpm: 130,
  seed: 62,
  choruses: 2,
});
const backing = files.file('groove.wav', wavBytes(track.mono, RATE));
const noise = files.file(
  'noise.wav',
  wavBytes(
    Float32Array.from({ length: 12 * RATE }, (_, i) => 0.1 * Math.sin(i * i)),
    RATE,
  ),
);
function gradeOrder(...args: readonly string[]): GradeOrder {
  const read = readArgs(args);
  if (!read.ok) throw new Error(english(read.problem));
  if (read.value.command !== 'grade') throw new Error('this is no order to grade');
  return read.value;
}
const quiet = { at: () => undefined, dispose: () => undefined };

describe('landfall chords', () => {
  it('prints tempo, form and chart, and what is unsure', async () => {
    const found = await findChords({ command: 'chords', file: backing, json: false }, quiet, en);
    if (!found.ok) throw new Error(english(found.problem));
    expect(found.value.page).toMatch(
      /^8 bars, 2 choruses, 130 beats a minute, first downbeat at 0\.\d\d s\./,
    );
    expect(found.value.page).toContain('| Am7 | D7 | Am7 | D7 |');
  });

  it('prints the same as one value for other programs', async () => {
    const found = await findChords({ command: 'chords', file: backing, json: true }, quiet, en);
    const value = JSON.parse(found.ok ? found.value.page : '{}') as Record<string, unknown>;
    expect(value).toMatchObject({ format: 'landfall-chords', version: 1, beatsPerBar: 4, choruses: 2 });
    expect(value['bars']).toHaveLength(8);
  });

  it('says in a sentence what it can not do', async () => {
    for (const file of [noise, 'not-there.wav']) {
      const found = await findChords({ command: 'chords', file, json: false }, quiet, en);
      expect(found.ok).toBe(false);
    }
  });
});

describe('landfall grade --backing without a chart', () => {
  const heard = { offsetSeconds: 1.5, driftPpm: 0, removedDb: 12 };
  const source = { kind: 'audio', durationSeconds: 40, sampleRate: RATE, backing: heard } as const;

  it('takes the chords of the backing where it was heard, and says so', async () => {
    const order = gradeOrder('grade', 'take.wav', '--backing', backing);
    expect(order.under).toEqual({ kind: 'found' });
    const found = await foundTimeline(order, source);
    if (!found.ok) throw new Error(english(found.problem));
    const { timeline, warnings } = found.value;
    expect(timeline.beatMap.secondsAt(0)).toBeCloseTo(1.5 + track.beats[0]!, 1);
    expect(timeline.spansBetween(0, 8).map(({ chord }) => chord?.symbol)).toEqual(['Am7', 'D7']);
    expect(warnings.map(({ code }) => code)).toEqual(['cli.chordsFound']);
  });

  it('does not guess where the backing was not heard, or where nothing is sure', async () => {
    const order = gradeOrder('grade', 'take.wav', '--backing', backing);
    const unplaced = await foundTimeline(order, { ...source, backing: null });
    expect(!unplaced.ok && unplaced.problem.code).toBe('cli.backingUnplaced');
    const wild = gradeOrder('grade', 'take.wav', '--backing', noise);
    expect((await foundTimeline(wild, source)).ok).toBe(false);
  });

  it('takes those of the recording itself where a band is in it, and says where one line sounds alone', async () => {
    const order = gradeOrder('grade', backing);
    expect(order).toMatchObject({ under: { kind: 'found' }, backing: null });
    const found = await foundTimeline(order, null);
    if (!found.ok) throw new Error(english(found.problem));
    expect(found.value.timeline.beatMap.secondsAt(0)).toBeCloseTo(track.beats[0]!, 1);
    expect(found.value.timeline.spansBetween(0, 8).map(({ chord }) => chord?.symbol)).toEqual(['Am7', 'D7']);
    const dice = random(33);
    const tones = Array.from({ length: 96 }, () => 57 + dice.whole(0, 19));
    const line = files.file('line.wav', wavBytes(pluckLine(onTheBeat(tones, 120, 0.5), RATE, 49), RATE));
    const alone = await foundTimeline(gradeOrder('grade', line), null);
    expect(!alone.ok && alone.problem.code).toBe('cli.noBand');
    expect(() => gradeOrder('grade', 'one.wav', 'two.wav')).toThrow(/--chart/);
  });

  it('refuses what only a chart gives a meaning', () => {
    expect(() => gradeOrder('grade', 'take.wav', '--backing', backing, '--tempo', '90')).toThrow(/tempo/);
  });
});
