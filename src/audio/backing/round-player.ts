/** Plays a round of a recording again and again on the audio clock, as the band player plays a band. */
import { roundBeatMap } from '../../core/chart/beat-maps.ts';
import type { BandClock } from '../base/clock.ts';
import { gainOf, rampTo } from '../base/level.ts';
import { quietStartDb } from '../band/band-player.ts';
import type { PassageSound } from '../band/band-stretches.ts';
import type { BakedRound } from './backing-messages.ts';
import { Clicks } from './clicks.ts';

/** Between asking for a start and the first sound. */
const startLeadSeconds = 0.1;
/** Fade-in of the recording: long enough not to click, short enough to keep the attack. */
const fadeInSeconds = 0.01;

export interface RoundStart {
  /** Context time of the first sound; as soon as it can sound without. */
  readonly atContextSeconds?: number;
  /** Beat to begin at, from the first downbeat of the first round; below 0 it is counted in. */
  readonly fromBeat: number;
}

export interface RoundPlayer {
  /** The sum, behind the master level. */
  readonly bus: AudioNode;
  /** Returns the clock of this run. */
  start(start: RoundStart): BandClock;
  /** The recording from one beat of the rounds to another, each channel as long as that. */
  passage(fromBeat: number, toBeat: number): PassageSound;
  /** Fades and stops. Safe to call at any time. */
  stop(fadeSeconds?: number): void;
  /** -60 (silent) to 0. */
  setMasterLevelDb(levelDb: number): void;
  setClickLevelDb(levelDb: number): void;
  dispose(): void;
}

/**
 * @param into where it sounds: the loudspeaker, or a bus that is recorded too
 * @param beatSeconds the round's beats as they are played, from its first downbeat
 */
export function createRoundPlayer(
  context: AudioContext,
  into: AudioNode,
  baked: BakedRound,
  beatSeconds: readonly number[],
  beatsPerBar: number,
): RoundPlayer {
  const master = context.createGain();
  master.gain.value = gainOf(quietStartDb);
  master.connect(into);
  const clickLevel = context.createGain();
  clickLevel.connect(master);
  const clicks = new Clicks(context, clickLevel);
  const frames = baked.channels[0]?.length ?? 1;
  const buffer = context.createBuffer(Math.max(1, baked.channels.length), frames, baked.sampleRate);
  baked.channels.forEach((channel, i) => buffer.copyToChannel(channel, i));
  const lengthSeconds = frames / baked.sampleRate;
  let run: { readonly source: AudioBufferSourceNode; readonly fade: GainNode } | null = null;

  const player: RoundPlayer = {
    bus: master,
    start: ({ atContextSeconds, fromBeat }) => {
      player.stop(fadeInSeconds);
      const inRound = roundBeatMap(beatSeconds, 0);
      const begin = Math.max(atContextSeconds ?? 0, context.currentTime + startLeadSeconds);
      // The first downbeat falls on a whole frame, so that nothing is interpolated.
      const first =
        Math.round((begin - inRound.secondsAt(fromBeat)) * context.sampleRate) / context.sampleRate;
      const map = roundBeatMap(beatSeconds, first);
      for (let beat = Math.ceil(fromBeat); beat < 0; beat++)
        clicks.at(map.secondsAt(beat), beat % beatsPerBar === 0 ? 'accent' : 'plain');

      // The buffer begins the lead before the downbeat, so that no attack is faded in.
      const earliest = fromBeat <= 0 ? Math.max(first - baked.leadSeconds, context.currentTime) : begin;
      const when = Math.max(earliest, first - baked.leadSeconds);
      // Rounding must not ask for a place before the first sample.
      const offset = Math.max(0, when - first + baked.leadSeconds) % lengthSeconds;
      const fade = context.createGain();
      fade.gain.setValueAtTime(0, when);
      fade.gain.linearRampToValueAtTime(1, when + fadeInSeconds);
      fade.connect(master);
      const source = new AudioBufferSourceNode(context, { buffer, loop: true });
      source.connect(fade);
      source.start(when, offset);
      run = { source, fade };
      return {
        firstBeatContextSeconds: first,
        beatAt: (seconds) => map.beatAt(seconds),
        contextSecondsAt: (beat) => map.secondsAt(beat),
      };
    },
    passage: (fromBeat, toBeat) => {
      const map = roundBeatMap(beatSeconds, 0);
      const first = Math.round((map.secondsAt(fromBeat) + baked.leadSeconds) * baked.sampleRate);
      const last = Math.round((map.secondsAt(toBeat) + baked.leadSeconds) * baked.sampleRate);
      // Before the first downbeat only the take is heard.
      const silent = Math.round(baked.leadSeconds * baked.sampleRate);
      const side = (from: Float32Array) =>
        Float32Array.from({ length: Math.max(1, last - first) }, (_, i) =>
          first + i < silent ? 0 : from[(first + i) % frames]!,
        );
      const [left, right = left] = baked.channels;
      return { channels: [side(left!), side(right!)], sampleRate: baked.sampleRate };
    },
    stop: (fadeSeconds = 0.15) => {
      clicks.stop();
      if (!run) return;
      const { source, fade } = run;
      run = null;
      rampTo(fade.gain, 0, context.currentTime, fadeSeconds);
      source.stop(context.currentTime + fadeSeconds);
      source.onended = () => fade.disconnect();
    },
    setMasterLevelDb: (levelDb) => rampTo(master.gain, gainOf(Math.min(0, levelDb)), context.currentTime),
    setClickLevelDb: (levelDb) => rampTo(clickLevel.gain, gainOf(levelDb), context.currentTime),
    dispose: () => {
      player.stop(0.01);
      clickLevel.disconnect();
      master.disconnect();
    },
  };
  return player;
}
