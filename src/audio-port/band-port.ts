/** What the player plays to: the band, or a recording of the player's own in its place. */
import type { RoundPlayer } from '../audio/backing/round-player.ts';
import { createBandPlayer, type BandPlayer } from '../audio/band/band-player.ts';
import { mixToMono } from '../audio/base/level.ts';
import { bandForm } from '../core/band/form.ts';
import { bandParts } from '../core/band/events.ts';
import type { BandSettings } from '../core/band/settings.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { AudioPort, BackingToPlay, BandLevels, OpenBand } from '../state/ports.ts';
import type { OpenAudio } from './open-audio.ts';

/** The nodes of a band are removed this long after it was stopped: removed at once, its end would click. */
const FADED_AFTER_MS = 1000;

export function bandPort(
  audio: OpenAudio,
): Pick<AudioPort, 'openBand' | 'openBacking' | 'searchChords' | 'prepareBacking'> {
  return {
    openBand: (timeline, settings, levels, backing) =>
      backing === undefined
        ? openBand(audio, timeline, settings, levels)
        : openRound(audio, backing, settings.countInBars, levels),
    openBacking: (source, signal) => audio.backings.open(source, signal),
    searchChords: (source) => audio.backings.search(source),
    prepareBacking: (run) => audio.backings.prepare(run),
  };
}

async function openBand(
  audio: OpenAudio,
  timeline: Timeline,
  settings: BandSettings,
  levels: BandLevels,
): Promise<Outcome<OpenBand>> {
  const player = createBandPlayer(audio.context, audio.renderer);
  setBandLevels(player, levels);
  // Known before the band is rendered, because the microphone may be opened meanwhile and records this bus.
  audio.bandBus = player.bus;
  const prepared = await player.prepare(bandForm(timeline), settings);
  if (!prepared.ok) {
    audio.releaseBandBus(player.bus);
    player.dispose();
    return prepared;
  }
  return good({
    start: () => player.start(),
    setLevels: (changed) => setBandLevels(player, changed),
    playInMono: (mono) => mixToMono(player.bus, mono),
    onFailed: (listener) => player.onFailed(listener),
    dispose: () => {
      audio.releaseBandBus(player.bus);
      player.stop();
      setTimeout(() => player.dispose(), FADED_AFTER_MS);
    },
  });
}

async function openRound(
  audio: OpenAudio,
  { progress, ...run }: BackingToPlay,
  countInBars: number,
  levels: BandLevels,
): Promise<Outcome<OpenBand>> {
  const bus = audio.context.createGain();
  bus.connect(audio.context.destination);
  // Known before the recording is rendered, because the microphone may be opened meanwhile and records this bus.
  audio.bandBus = bus;
  const opened = await audio.backings.round(run, bus, progress);
  if (!opened.ok) {
    audio.releaseBandBus(bus);
    return opened;
  }
  const player = opened.value;
  setRoundLevels(player, levels);
  return good({
    start: () => player.start({ fromBeat: -countInBars * run.beatsPerBar }),
    setLevels: (changed) => setRoundLevels(player, changed),
    playInMono: (mono) => mixToMono(bus, mono),
    onFailed: () => undefined,
    dispose: () => {
      audio.releaseBandBus(bus);
      player.stop();
      setTimeout(() => {
        player.dispose();
        bus.disconnect();
      }, FADED_AFTER_MS);
    },
  });
}

export function setRoundLevels(player: RoundPlayer, levels: BandLevels): void {
  player.setMasterLevelDb(levels.all);
  player.setClickLevelDb(levels.click);
}

export function setBandLevels(player: BandPlayer, levels: BandLevels): void {
  player.setMasterLevelDb(levels.all);
  for (const part of bandParts) player.setPartLevelDb(part, levels[part]);
}
