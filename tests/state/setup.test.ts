import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { listForms } from '../../src/core/chart/forms.ts';
import { areChorusesOver } from '../../src/state/running-take.ts';
import { Setup } from '../../src/state/setup.svelte.ts';
import { fakeSettings } from './world.ts';

async function setupWith(first: Parameters<typeof fakeSettings>[0] = {}) {
  const settings = fakeSettings(first);
  const setup = new Setup({ settings });
  await setup.load();
  return { setup, settings };
}

const symbols = (setup: Setup) =>
  setup.timeline.ok
    ? setup.timeline.value
        .spansBetween(0, setup.timeline.value.bars * setup.timeline.value.beatsPerBar)
        .map((span) => span.chord?.symbol)
    : [];

describe('Setup', () => {
  it('is playable from the first moment', async () => {
    const { setup } = await setupWith();
    expect(setup.title).toBe('12-bar blues in A');
    expect(symbols(setup)[0]).toBe('A7');
    expect(setup.timeline.ok && setup.timeline.value.beatMap.bpm).toBe(96);
  });

  it('plays every built-in form, in the mode that the form is in', async () => {
    const { setup } = await setupWith();
    for (const form of listForms()) {
      setup.chooseForm(form.name);
      expect(setup.timeline.ok, form.name).toBe(true);
      expect(setup.chart.ok && setup.chart.value.key).toMatchObject({ tonic: 'A', mode: form.mode });
    }
    expect(() => setup.chooseForm('no such form')).toThrow(RangeError);
  });

  it('takes the feel and the tempo of the form that is chosen, and not its own swing', async () => {
    const { setup } = await setupWith();
    setup.setSwing(0.6);
    setup.chooseForm('12/8 blues');
    expect(setup.settings).toMatchObject({ feel: 'slow-blues', bpm: 60, swing: null });
    for (const { name, feel, bpm } of listForms()) {
      setup.chooseForm(name);
      expect(setup.settings).toMatchObject({ feel, bpm });
    }
  });

  it('counts choruses by passes through the form, whatever keys it goes through, and three keys are enough', async () => {
    const { setup } = await setupWith();
    const over = (beat: number, choruses: number) =>
      setup.timeline.ok && areChorusesOver(beat, setup.timeline.value, choruses, setup.passes);
    setup.setPractice({ keys: 'fourths', keyCount: 3 });
    expect(setup.passes).toBe(3);
    expect(setup.timeline.ok && setup.timeline.value.bars).toBe(36);
    expect(new Set(symbols(setup).filter((_, i) => i % 12 === 0))).toEqual(new Set(['A7', 'D7', 'G7']));
    expect(over(2 * 48 + 0.1, 2)).toBe(false);
    expect(over(2 * 48 + 0.3, 2)).toBe(true);
    setup.setPractice({ keys: null });
    expect(over(2 * 48 + 0.3, 2)).toBe(true);
    expect(setup.passes).toBe(1);
  });

  it('undoes every change of the chart: form, key, feel, a tempo as it was before it was turned, a text as it was before it was typed', async () => {
    const { setup } = await setupWith();
    const seen = [setup.settings];
    setup.chooseForm('jazz blues');
    seen.push(setup.settings);
    setup.chooseKey('C');
    seen.push(setup.settings);
    for (const bpm of [100, 101, 102]) setup.setBpm(bpm);
    seen.push(setup.settings);
    setup.chooseFeel('bossa');
    seen.push(setup.settings);
    setup.writeChart('| G7 | C7 |', 'Mine');
    seen.push(setup.settings);
    for (const text of ['| G7 | C7 ', '| G7 | C', '| G7 | D7 |']) setup.writeChart(text);
    seen.push(setup.settings);
    setup.chooseKey('Bb');
    // A level is no part of the chart.
    setup.setLevel('bass', -3);
    for (const before of seen.reverse()) {
      expect(setup.canUndo).toBe(true);
      setup.undo();
      const { levels, ...chart } = before;
      expect(setup.settings).toMatchObject(chart);
      expect(levels.bass).toBe(0);
    }
    expect(setup.canUndo).toBe(false);
    setup.undo();
    expect(setup.settings.levels.bass).toBe(-3);
  });

  it('undoes how the chart was practised, and counts nothing that changes nothing', async () => {
    const { setup } = await setupWith();
    setup.setPractice({ loop: { fromBar: 9, toBar: 10 } });
    setup.setPractice({ loop: { fromBar: 9, toBar: 10 } });
    setup.setPractice({ chordsRest: true });
    setup.undo();
    expect(setup.settings.practice).toMatchObject({ loop: { fromBar: 9, toBar: 10 }, chordsRest: false });
    setup.undo();
    expect(setup.settings.practice.loop).toBeNull();
    expect(setup.canUndo).toBe(false);
  });

  it('moves a form and an own chart to another key', async () => {
    const { setup } = await setupWith();
    setup.chooseKey('Bb');
    expect(symbols(setup)[0]).toBe('Bb7');
    setup.writeChart('| Dm7 | G7 | Cmaj7 | % |');
    expect(setup.settings.key).toBe('C');
    setup.chooseKey('Eb');
    expect(symbols(setup)).toEqual(['Fm7', 'Bb7', 'Ebmaj7', 'Ebmaj7']);
    expect(setup.settings.key).toBe('Eb');
    expect(setup.chartText).toContain('Fm7');
  });

  it('practises a part of the form, and grades what is practised', async () => {
    const { setup } = await setupWith();
    setup.setPractice({ loop: { fromBar: 9, toBar: 10 }, chordsRest: true });
    expect(symbols(setup)).toEqual(['E7', 'D7']);
    const timeline = setup.timeline;
    if (!timeline.ok) throw new Error(english(timeline.problem));
    const plan = setup.planTake(timeline.value, new Date(0));
    expect(plan.band).toMatchObject({ chordsRest: true, backbeatClick: false });
    expect(plan.details.chartText).toContain('| E7 | D7 |');
    expect(plan.details.key).toBe('A');
    setup.setPractice({ keys: 'fourths' });
    expect(symbols(setup).slice(0, 4)).toEqual(['E7', 'D7', 'A7', 'G7']);
    setup.chooseForm('minor blues');
    expect(symbols(setup)).toHaveLength(144);
  });

  it('keeps an own chart while a form is chosen', async () => {
    const { setup } = await setupWith();
    setup.writeChart('| G7 | C7 |');
    expect(setup.title).toBe('G7 C7');
    setup.chooseForm('minor blues');
    expect(setup.settings.ownChart).toBe('| G7 | C7 |');
    setup.writeChart(setup.settings.ownChart);
    expect(symbols(setup)).toEqual(['G7', 'C7']);
  });

  it('says what can’t be read, and goes on with the last key', async () => {
    const { setup } = await setupWith();
    setup.writeChart('| A7 | H7 |');
    expect(setup.chart.ok).toBe(false);
    expect(!setup.timeline.ok && english(setup.timeline.problem)).toContain('H7');
    expect(setup.settings.key).toBe('A');
    setup.chooseKey('C');
    expect(setup.settings.key).toBe('A');
  });

  it('swings as the feel does at the tempo, or as it is told', async () => {
    const { setup } = await setupWith({ feel: 'shuffle', bpm: 96 });
    expect(setup.swing).toBeCloseTo(2 / 3, 6);
    setup.chooseFeel('straight');
    expect(setup.swing).toBe(0.5);
    setup.setSwing(0.6);
    expect(setup.timeline.ok && setup.timeline.value.swing).toBe(0.6);
    setup.setSwing(0.9);
    expect(setup.swing).toBe(0.75);
  });

  it('holds what is set within its range, and remembers each change', async () => {
    const { setup, settings } = await setupWith();
    setup.setBpm(1000);
    setup.setReference(10);
    setup.setLevel('bass', 40);
    setup.setChoruses(0);
    expect(setup.settings).toMatchObject({
      bpm: 280,
      reference: 380,
      choruses: 1,
      levels: { bass: 6, drums: 0 },
    });
    expect(settings.saved).toHaveLength(4);
    expect(settings.saved.at(-1)).toEqual(setup.settings);
  });

  it('plans a take: all that is needed to grade it later stands in its details', async () => {
    const { setup } = await setupWith();
    if (!setup.timeline.ok) throw new Error(english(setup.timeline.problem));
    const { details, band } = setup.planTake(setup.timeline.value, new Date('2026-03-01T10:15:00Z'));
    expect(details).toMatchObject({
      title: '12-bar blues in A',
      startedAt: '2026-03-01T10:15:00.000Z',
      key: 'A',
      bpm: 96,
      feel: 'shuffle',
    });
    expect(details.chartText).toContain('| A7 |');
    expect(band).toMatchObject({ feel: 'shuffle', bpm: 96, countInBars: 1 });
  });
});
