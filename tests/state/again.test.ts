/** A take carries its whole set-up: "again" plays the same, whatever was set in between. */
import { describe, expect, it } from 'vitest';
import { formChart } from '../../src/core/chart/forms.ts';
import { writeChart } from '../../src/core/chart/write-chart.ts';
import { good } from '../../src/core/base/outcome.ts';
import { movedSetup, setupOfTake } from '../../src/state/take-setup.ts';
import { Setup } from '../../src/state/setup.svelte.ts';
import type { TakeDetails } from '../../src/state/take.ts';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { details as plain } from '../storage/fakes.ts';
import { fakeSettings, RATE, world } from './world.ts';

const COUNT_IN = 2;
const line = () =>
  pluckLine(onTheBeat([73, 69, 64, 69, 66, 69, 74, 69], 120, COUNT_IN), RATE, COUNT_IN + 4.5);

async function playedTake(of: Awaited<ReturnType<typeof world>>): Promise<string> {
  await of.session.start();
  await of.play(line());
  await of.session.stop();
  await of.until('review');
  await of.settle();
  return of.library.takes[0]!.id;
}

describe('again', () => {
  it('plays an opened take with its form, key, tempo, aim and practice', async () => {
    const w = await world({ settings: { form: 'minor blues', key: 'A minor', aim: 'guide tones' } });
    w.setup.setPractice({ loop: { fromBar: 9, toBar: 10 }, backbeatClick: true });
    w.setup.setChoruses(3);
    const played = w.setup.settings;
    const id = await playedTake(w);
    w.session.close();
    w.setup.chooseForm('12-bar blues');
    w.setup.chooseKey('C');
    w.setup.setBpm(200);
    w.setup.setChoruses(null);
    w.setup.setPlaying({ aim: 'thirds', instrument: 'flute' });
    await w.session.openTake(id);
    await w.until('review');
    await w.session.again();
    expect(w.session.phase.kind).toBe('counting-in');
    // What is in the hands now stays in the hands.
    expect(w.setup.settings).toEqual({ ...played, instrument: 'flute' });
    w.session.close();
  });

  it('goes on with what was turned under a take that was just played, and with another aim where it is asked for', async () => {
    const w = await world();
    await playedTake(w);
    w.setup.setBpm(90);
    await w.session.again({ aim: 'guide tones', loop: { fromBar: 1, toBar: 1 } });
    expect(w.setup.settings).toMatchObject({ bpm: 90, aim: 'guide tones', ownChart: '| A7 | D7 |' });
    expect(w.setup.settings.practice.loop).toEqual({ fromBar: 1, toBar: 1 });
    w.session.close();
  });

  it('says that the recording of a take is gone, and plays nothing else in its place', async () => {
    const w = await world();
    const id = await playedTake(w);
    const backing = {
      id: 'gone',
      title: 'A song',
      speed: 1,
      cents: 0,
      fromSeconds: 0,
      toSeconds: 4,
      beatSeconds: Array.from({ length: 9 }, (_, i) => i / 2),
    };
    await w.takes.saveReport(id, null, w.library.takes[0]!.summary!, { backing });
    await w.session.openTake(id);
    await w.until('review');
    await w.session.again();
    expect(w.session.phase).toMatchObject({ kind: 'trouble', problem: { code: 'backing.gone' } });
  });
});

describe('the set-up of an earlier take', () => {
  const blues = formChart('12-bar blues', 'D');
  const earlier: TakeDetails = {
    ...plain,
    title: '12-bar blues in D',
    chartText: blues.ok ? writeChart(blues.value) : '',
    key: 'D',
    bpm: 96,
    feel: 'shuffle',
    swing: 2 / 3,
  };

  it('is found from its chords: the form that has them, in its key, with the feel’s own swing', () => {
    expect(setupOfTake(earlier)).toMatchObject({ form: '12-bar blues', key: 'D', bpm: 96, swing: null });
    expect(setupOfTake(earlier)).not.toHaveProperty('ownChart');
  });

  it('is that of the demo: its chart, in its key and tempo', () => {
    const demo = {
      ...earlier,
      source: 'demo' as const,
      title: 'Demo take',
      chartText: 'key: D\n| D7 | G7 | Em7 |',
    };
    expect(setupOfTake(demo)).toMatchObject({
      form: null,
      ownChart: demo.chartText,
      ownTitle: null,
      key: 'D',
    });
  });

  it('keeps the title of a chart of the player’s own, and a rise by its choruses', () => {
    const own = { ...earlier, title: 'My tune', chartText: '| D7 | G7 |', rise: { byBpm: 4, everyBars: 4 } };
    expect(setupOfTake(own)).toMatchObject({ form: null, ownTitle: 'My tune' });
    expect(setupOfTake(own).practice?.rise).toEqual({ byBpm: 4, everyChoruses: 2 });
  });

  it('moves with the take where that is graded in another key', () => {
    const moved = movedSetup({ form: null, key: 'D', ownChart: '| D7 | G7 |', bpm: 96 }, -2);
    expect(moved).toMatchObject({ form: null, key: 'C', bpm: 96 });
    expect(moved['ownChart']).toContain('| C7 | F7 |');
    expect(movedSetup({ form: 'minor blues', key: 'A minor', ownChart: '' }, 5)).toMatchObject({
      key: 'D minor',
    });
  });

  it('leaves out what can’t be read, field by field', () => {
    const read = setupOfTake({
      ...earlier,
      setup: { bpm: 120, feel: 'a feel of tomorrow', key: 'D', form: 'jazz blues' },
    });
    expect(read).toEqual({ bpm: 120, key: 'D', form: 'jazz blues' });
  });
});

describe('a chart of the player’s own', () => {
  it('keeps its title through another key and through edits, until its text gives another', async () => {
    const setup = new Setup({ settings: fakeSettings() });
    await setup.load();
    setup.writeChart('| G7 | C7 |', 'My tune');
    expect(setup.title).toBe('My tune');
    setup.chooseKey('Bb');
    expect(setup.title).toBe('My tune');
    setup.writeChart(`${setup.chartText} G7 |`);
    expect(setup.title).toBe('My tune');
    setup.writeChart(`title: Another\n${setup.chartText}`);
    expect(setup.title).toBe('Another');
    setup.nameChart('  Mine again ');
    expect(setup.title).toBe('Mine again');
    setup.chooseForm('jazz blues');
    expect(setup.title).toBe('jazz blues in Bb');
    expect(setup.ownTitle).toBe('Mine again');
    setup.writeChart('');
    expect(setup.ownTitle).toBeNull();
  });
});

describe('an empty take', () => {
  it('is graded and not kept, and that is said', async () => {
    const w = await world();
    await w.session.start();
    await w.play(new Float32Array(RATE * (COUNT_IN + 2)));
    await w.session.stop();
    await w.until('review');
    await w.settle();
    expect(w.session.phase).toMatchObject({ kind: 'review', review: { id: null } });
    expect(w.session.notices).toContainEqual({ code: 'take.emptyNotKept' });
    expect(w.library.takes).toEqual([]);
    expect(await w.takes.unfinished()).toEqual([]);
  });
});

describe('a take in review', () => {
  it('is named and starred, there and among the others', async () => {
    const w = await world();
    const id = await playedTake(w);
    w.session.mark({ name: 'The slow one' });
    w.session.mark({ starred: true });
    await w.settle();
    expect(w.session.phase).toMatchObject({ review: { details: { name: 'The slow one', starred: true } } });
    expect(w.library.takes).toMatchObject([{ id, name: 'The slow one', starred: true }]);
    w.session.save('report');
    expect(w.saved[0]?.fileName).toBe('landfall 2026-03-01 10-15 The slow one.json');
    expect(await w.takes.mark(id, { name: '' })).toEqual(good(undefined));
  });
});
