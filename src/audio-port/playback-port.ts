/** Takes that are played back, and lines that are rendered: the demo, and the notes of a take without sound. */
import type { RoundPlayer } from '../audio/backing/round-player.ts';
import { createBandPlayer } from '../audio/band/band-player.ts';
import { wake } from '../audio/base/context.ts';
import { bandAlong, roundAlong, slowedRound, type Along } from '../audio/playback/along.ts';
import { createNotesLine, type NotesToPlay } from '../audio/playback/notes-line.ts';
import { createLinePlayer, createTakePlayer } from '../audio/playback/take-player.ts';
import { demoChart, demoKey, demoProgram, demoSettings, demoStrokes } from '../core/band/demo-line.ts';
import { bandForm } from '../core/band/form.ts';
import { good } from '../core/base/outcome.ts';
import { swingShare } from '../core/chart/swing.ts';
import { toPcm16 } from '../core/base/pcm16.ts';
import type { Accompaniment, AudioPort, BackingRun, BandLevels, DemoTake } from '../state/ports.ts';
import { setBandLevels, setRoundLevels } from './band-port.ts';
import type { OpenAudio } from './open-audio.ts';

/** Silence before the demo's first downbeat, so that an early note would still be on the recording. */
const DEMO_LEAD_IN_BEATS = 2;

export function playbackPort(audio: OpenAudio): Pick<AudioPort, 'openPlayer' | 'renderNotes' | 'renderDemo'> {
  const { context, renderer } = audio;
  return {
    openPlayer: (take, accompaniment) => {
      const companion = accompaniment && openCompanion(audio, accompaniment);
      const along = companion?.along ?? null;
      const player =
        'notes' in take
          ? notesPlayer(audio, take, along)
          : createTakePlayer(context, take.samples, take.sampleRate, along);
      return {
        durationSeconds: player.durationSeconds,
        positionSeconds: () => player.positionSeconds(),
        play: async (order) => {
          const awake = await wake(context);
          return awake.ok ? player.play(order) : awake;
        },
        pause: () => player.pause(),
        setTakeLevelDb: (levelDb) => player.setTakeLevelDb(levelDb),
        setBandLevels: (levels) => companion?.setLevels(levels),
        onEnded: (listener) => player.onEnded(listener),
        dispose: () => {
          player.dispose();
          companion?.dispose();
        },
      };
    },

    renderNotes: async (notes, durationSeconds, instrument) => {
      const samples = await renderer.notes(notes, durationSeconds, instrument);
      return samples.ok ? good({ samples: samples.value, sampleRate: context.sampleRate }) : samples;
    },

    renderDemo: async () => {
      const { bpm } = demoSettings;
      const samples = await renderer.line(demoStrokes, demoProgram, {
        bpm,
        startBeat: -DEMO_LEAD_IN_BEATS,
      });
      return samples.ok ? good(demoTake(samples.value, context.sampleRate)) : samples;
    },
  };
}

function notesPlayer({ context, renderer }: OpenAudio, take: NotesToPlay, along: Along | null) {
  const line = createNotesLine(
    take,
    (notes, seconds, instrument) => renderer.notes(notes, seconds, instrument),
    context.sampleRate,
  );
  return createLinePlayer(context, line, take.durationSeconds, along);
}

function demoTake(samples: Float32Array<ArrayBuffer>, sampleRate: number): DemoTake {
  const { bpm, feel, swing } = demoSettings;
  return {
    title: 'demo',
    chartText: `key: ${demoKey}\n${demoChart}`,
    key: demoKey,
    bpm,
    feel,
    swing: swing ?? swingShare(feel, bpm),
    firstBeatSeconds: (DEMO_LEAD_IN_BEATS * 60) / bpm,
    audio: { samples: toPcm16(samples), sampleRate },
  };
}

/** What plays along with a take that is played back. */
interface Companion {
  readonly along: Along;
  setLevels(levels: BandLevels): void;
  dispose(): void;
}

function openCompanion(audio: OpenAudio, accompaniment: Accompaniment): Companion {
  const { backing } = accompaniment;
  return backing === undefined
    ? bandCompanion(audio, accompaniment)
    : roundCompanion(audio, accompaniment, backing);
}

function bandCompanion(
  { context, renderer }: OpenAudio,
  { timeline, settings, levels, firstBeatSeconds }: Accompaniment,
): Companion {
  const player = createBandPlayer(context, renderer);
  let wanted = levels;
  setBandLevels(player, wanted);
  return {
    along: bandAlong(player, renderer, context.sampleRate, {
      form: bandForm(timeline),
      settings,
      firstBeatSeconds,
      levels: () => wanted,
    }),
    setLevels: (changed) => {
      wanted = changed;
      setBandLevels(player, changed);
    },
    dispose: () => player.dispose(),
  };
}

/** The recording is rendered when it is first played; the levels set until then are kept for it. */
function roundCompanion(
  { context, backings }: OpenAudio,
  { levels, firstBeatSeconds }: Accompaniment,
  backing: BackingRun,
): Companion {
  let player: RoundPlayer | null = null;
  let wanted = levels;
  const open = async (speed: number) => {
    const slower = {
      ...backing,
      order: { ...backing.order, speed: backing.order.speed * speed },
      beatSeconds: slowedRound(backing.beatSeconds, speed),
    };
    const opened = await backings.round(slower, context.destination, () => undefined);
    if (!opened.ok) return opened;
    player = opened.value;
    setRoundLevels(player, wanted);
    return opened;
  };
  return {
    along: roundAlong(open, backing.beatSeconds, firstBeatSeconds),
    setLevels: (changed) => {
      wanted = changed;
      if (player !== null) setRoundLevels(player, changed);
    },
    dispose: () => player?.dispose(),
  };
}
