/** The band heard without a take: it follows what is set, and lets go of everything. */
import { describe, expect, it } from 'vitest';
import { BandAlone } from '../../src/state/band-alone.svelte.ts';
import { world } from './world.ts';

async function bandIn(settings: Parameters<typeof world>[0] = {}) {
  const { setup, audio, open, settle } = await world(settings);
  const asked: { countInBars: number; bpm: number }[] = [];
  const levels: number[] = [];
  let waiting: (() => void) | null = null;
  const band = new BandAlone({
    setup,
    audio: {
      ...audio,
      openBand: async (timeline, band, first, backing) => {
        asked.push(band);
        const opened = await audio.openBand(timeline, band, first, backing);
        return opened.ok
          ? { ...opened, value: { ...opened.value, setLevels: ({ all }) => void levels.push(all) } }
          : opened;
      },
    },
    today: () => new Date('2026-03-01T10:00:00Z'),
    later: (act) => {
      waiting = act;
      return () => (waiting = null);
    },
  });
  return { band, setup, open, settle, asked, levels, wait: () => waiting?.(), waits: () => waiting !== null };
}

describe('the band alone', () => {
  it('sounds from the first bar on, with no microphone, and says where it is', async () => {
    const { band, open, asked } = await bandIn();
    await band.play();
    expect(band.sounds).toBe(true);
    expect(open).toEqual({ microphone: 0, band: 1 });
    expect(asked[0]?.countInBars).toBe(0);
    expect(band.place?.beat).toBeCloseTo(0, 5);
    expect(band.place?.timeline.bars).toBe(2);
    band.stop();
    expect(open.band).toBe(0);
    expect(band.sounds).toBe(false);
    expect(band.place).toBeNull();
  });

  it('takes loudness at once, and a new tempo once the dial rests', async () => {
    const { band, setup, settle, open, asked, levels, wait, waits } = await bandIn();
    await band.play();
    setup.setLevel('all', -30);
    band.follow();
    expect(levels).toEqual([-30]);
    expect(waits()).toBe(false);
    for (const bpm of [130, 140]) {
      setup.setBpm(bpm);
      band.follow();
    }
    expect(asked).toHaveLength(1);
    wait();
    await settle();
    expect(asked.map(({ bpm }) => bpm)).toEqual([120, 140]);
    expect(open.band).toBe(1);
    // Turned away and back again: it plays on.
    setup.setBpm(150);
    band.follow();
    setup.setBpm(140);
    band.follow();
    expect(waits()).toBe(false);
  });

  it('stops where the chart can no longer be read, and is silent until it is asked again', async () => {
    const { band, setup, open } = await bandIn();
    await band.play();
    setup.writeChart('| H9z |');
    band.follow();
    expect(band.sounds).toBe(false);
    expect(open.band).toBe(0);
    await band.play();
    expect(band.problem).not.toBeNull();
  });

  it('a band that opens after it was stopped does not sound', async () => {
    const { band, open, settle } = await bandIn();
    const playing = band.play();
    band.stop();
    await playing;
    await settle();
    expect(open.band).toBe(0);
    expect(band.sounds).toBe(false);
  });
});
