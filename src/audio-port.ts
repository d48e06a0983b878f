/** The browser's audio behind the port that the state speaks: one context, one kit, one band at a time. */
import { createBandRenderer, type BandRenderer } from './audio/band/render-client.ts';
import { bandAlong, roundAlong } from './audio/along.ts';
import { BackingSounds } from './audio/backing/backing-sounds.ts';
import type { RoundPlayer } from './audio/backing/round-player.ts';
import { createBandPlayer, type BandPlayer } from './audio/band-player.ts';
import { loadRecorder, openMicrophone } from './audio/capture.ts';
import {
  chooseOutput,
  listDevices,
  microphoneAllowed,
  onDevicesChanged,
  outputCanBeChosen,
  outputName,
} from './audio/devices.ts';
import { heardContextSeconds } from './audio/clock.ts';
import { createAudioContext, wake } from './audio/context.ts';
import kitUrl from './audio/kit/landfall-kit.sf3?url';
import { mixToMono } from './audio/level.ts';
import { midiAllowed } from './audio/midi-input.ts';
import { playSounds } from './audio/play-sounds.ts';
import { createTakePlayer } from './audio/take-player.ts';
import { bandParts } from './core/band/events.ts';
import { bandForm } from './core/band/form.ts';
import { demoChart, demoKey, demoProgram, demoSettings, demoStrokes } from './core/band/demo-line.ts';
import { swingShare } from './core/chart/swing.ts';
import { fromPcm16, toPcm16 } from './core/files/sound/pcm16.ts';
import { good, type Outcome } from './core/base/outcome.ts';
import type {
  Accompaniment,
  AudioPort,
  BackingToPlay,
  BandLevels,
  OpenBand,
  TakeAudio,
} from './state/ports.ts';

/**
 * From the string to the clock no browser says how long it takes. What it says of the output is doubled: input and
 * output buffers of one machine are commonly alike. Chromium on Linux says 10 + 30 ms, so 80 ms are assumed where a
 * true loop took about 90. A sound check measures the truth.
 */
const INPUT_LIKE_OUTPUT = 2;
/** Silence before the demo's first downbeat, so that an early note would still be on the recording. */
const DEMO_LEAD_IN_BEATS = 2;

export function audioPort(): AudioPort {
  let context: AudioContext | null = null;
  let renderer: BandRenderer | null = null;
  /** The band that is open: its bus is recorded beside the microphone. */
  let band: Pick<BandPlayer, 'bus'> | null = null;
  const backings = new BackingSounds(() => theContext());

  const theContext = () => (context ??= createAudioContext());
  const theRenderer = () => (renderer ??= createBandRenderer(kitUrl, theContext().sampleRate));
  // The kit and the recorder are loaded while the player still chooses, so that a take can start at once.
  theRenderer();
  void loadRecorder(theContext());
  const outputSeconds = ({ baseLatency, outputLatency }: AudioContext) =>
    (Number.isFinite(baseLatency) ? baseLatency : 0) + (Number.isFinite(outputLatency) ? outputLatency : 0);

  /** A round of a recording in the band's place. */
  const openRound = async (
    { progress, ...run }: BackingToPlay,
    countInBars: number,
    levels: BandLevels,
  ): Promise<Outcome<OpenBand>> => {
    // A microphone that is opened while it is rendered is to have its bus.
    const bus = theContext().createGain();
    bus.connect(theContext().destination);
    const own = { bus };
    band = own;
    const opened = await backings.round(run, bus, progress);
    if (!opened.ok) {
      if (band === own) band = null;
      return opened;
    }
    const player = opened.value;
    setRoundLevels(player, levels);
    return good({
      start: () => player.start({ fromBeat: -countInBars * run.beatsPerBar }),
      setLevels: (changed: BandLevels) => setRoundLevels(player, changed),
      playInMono: (mono: boolean) => mixToMono(bus, mono),
      onFailed: () => undefined,
      dispose: () => {
        if (band === own) band = null;
        player.stop();
        setTimeout(() => {
          player.dispose();
          bus.disconnect();
        }, 1000);
      },
    });
  };

  /** What plays along with a take, its levels, and the verb that lets it go. */
  const openAlong = ({ timeline, settings, levels, firstBeatSeconds, backing }: Accompaniment) => {
    if (backing === undefined) {
      const player = createBandPlayer(theContext(), theRenderer());
      setLevels(player, levels);
      return {
        along: bandAlong(player, bandForm(timeline), settings, firstBeatSeconds),
        setLevels: (changed: BandLevels) => setLevels(player, changed),
        dispose: () => player.dispose(),
      };
    }
    let player: RoundPlayer | null = null;
    let wanted = levels;
    const open = async () => {
      const opened = await backings.round(backing, theContext().destination, () => undefined);
      if (!opened.ok) return opened;
      player = opened.value;
      setRoundLevels(player, wanted);
      return opened;
    };
    return {
      along: roundAlong(open, backing.beatSeconds, firstBeatSeconds),
      setLevels: (changed: BandLevels) => {
        wanted = changed;
        if (player !== null) setRoundLevels(player, changed);
      },
      dispose: () => player?.dispose(),
    };
  };

  return {
    openBacking: (source) => backings.open(source),
    prepareBacking: (run) => backings.prepare(run),
    wake: () => wake(theContext()),
    heardSeconds: () => heardContextSeconds(theContext()),
    assumedRoundTripSeconds: () => INPUT_LIKE_OUTPUT * outputSeconds(theContext()),

    openMicrophone: ({ onHop, onLost, onSilent, onSoundBack }, deviceId) =>
      openMicrophone(theContext(), {
        ...(deviceId === null ? {} : { deviceId }),
        onHop,
        onLost,
        onSilent,
        ...(onSoundBack && { onSoundBack }),
        ...(band === null ? {} : { bandBus: band.bus }),
      }),

    devices: async () => ({
      inputs: await listDevices('audioinput'),
      outputs: outputCanBeChosen(theContext()) ? await listDevices('audiooutput') : [],
    }),
    onDevicesChanged,
    mayOpen: async (input) => {
      if (!(await (input === 'midi' ? midiAllowed() : microphoneAllowed()))) return 'closed';
      // Without a touch of the page no browser starts its sound, and none would listen.
      return theContext().state === 'running' || navigator.userActivation?.hasBeenActive ? 'yes' : 'asleep';
    },
    chooseOutput: (deviceId) => chooseOutput(theContext(), deviceId),
    outputName,
    playSounds: (sounds, gapSeconds) => playSounds(theContext(), sounds, gapSeconds),

    openBand: async (timeline, settings, levels, backing) => {
      if (backing !== undefined) return openRound(backing, settings.countInBars, levels);
      const player = createBandPlayer(theContext(), theRenderer());
      setLevels(player, levels);
      // A microphone that is opened meanwhile is to have its bus.
      band = player;
      const prepared = await player.prepare(bandForm(timeline), settings);
      if (!prepared.ok) {
        if (band === player) band = null;
        player.dispose();
        return prepared;
      }
      return good({
        start: () => player.start(),
        setLevels: (changed: BandLevels) => setLevels(player, changed),
        playInMono: (mono: boolean) => mixToMono(player.bus, mono),
        onFailed: (listener: (sentence: string) => void) => player.onFailed(listener),
        dispose: () => {
          if (band === player) band = null;
          // Cut off at once it would click: the nodes go when the fade is over.
          player.stop();
          setTimeout(() => player.dispose(), 1000);
        },
      });
    },

    openPlayer: (audio, accompaniment) => {
      const along = accompaniment && openAlong(accompaniment);
      const player = createTakePlayer(
        theContext(),
        floatSamples(audio),
        audio.sampleRate,
        along?.along ?? null,
      );
      return {
        durationSeconds: player.durationSeconds,
        positionSeconds: () => player.positionSeconds(),
        play: async (fromSeconds) => {
          const awake = await wake(theContext());
          return awake.ok ? player.play(fromSeconds) : awake;
        },
        pause: () => player.pause(),
        setTakeLevelDb: (levelDb) => player.setTakeLevelDb(levelDb),
        setBandLevels: (levels) => along?.setLevels(levels),
        onEnded: (listener) => player.onEnded(listener),
        dispose: () => {
          player.dispose();
          along?.dispose();
        },
      };
    },

    renderNotes: async (notes, durationSeconds) => {
      const samples = await theRenderer().notes(notes, durationSeconds);
      return samples.ok ? good({ samples: samples.value, sampleRate: theContext().sampleRate }) : samples;
    },

    renderDemo: async () => {
      const { bpm, feel } = demoSettings;
      const samples = await theRenderer().line(demoStrokes, demoProgram, {
        bpm,
        startBeat: -DEMO_LEAD_IN_BEATS,
      });
      if (!samples.ok) return samples;
      return good({
        title: 'Demo take',
        chartText: `key: ${demoKey}\n${demoChart}`,
        key: demoKey,
        bpm,
        feel,
        swing: demoSettings.swing ?? swingShare(feel, bpm),
        firstBeatSeconds: (DEMO_LEAD_IN_BEATS * 60) / bpm,
        audio: { samples: toPcm16(samples.value), sampleRate: theContext().sampleRate },
      });
    },
  };
}

function setRoundLevels(player: RoundPlayer, levels: BandLevels): void {
  player.setMasterLevelDb(levels.all);
  player.setClickLevelDb(levels.click);
}

function setLevels(player: BandPlayer, levels: BandLevels): void {
  player.setMasterLevelDb(levels.all);
  for (const part of bandParts) player.setPartLevelDb(part, levels[part]);
}

const floatSamples = ({ samples }: TakeAudio): Float32Array<ArrayBuffer> =>
  samples instanceof Int16Array ? fromPcm16(samples) : new Float32Array(samples);
