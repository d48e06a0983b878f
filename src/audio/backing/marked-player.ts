/** Plays a whole recording with clicks on its beats, so that the beats can be judged by ear and tapped along. */
import { heardClockSeconds } from '../../core/take/round-trip.ts';
import { gainOf, rampTo } from '../base/level.ts';
import type { BakedRound } from './backing-messages.ts';
import { Clicks } from './clicks.ts';

/** A beat that clicks; the first of a bar is told apart. */
export interface ClickMark {
  readonly seconds: number;
  readonly accent: boolean;
}

export interface MarkedPlayer {
  play(fromSeconds: number, marks: readonly ClickMark[]): void;
  pause(): void;
  /** Other beats from the next click on. */
  setMarks(marks: readonly ClickMark[]): void;
  /** Where the playing is, as heard now. */
  positionSeconds(): number;
  /** Called when the recording is over. */
  onEnded(listener: () => void): void;
  dispose(): void;
}

const startLeadSeconds = 0.08;
const fadeSeconds = 0.02;
/**
 * How far ahead and how often clicks are scheduled: short, so that a beat that was moved soon clicks at its new place.
 */
const aheadSeconds = 0.35;
const lookEveryMs = 100;
/** The level of the recording, like that of a band that starts; its clicks are a little louder. */
const levelDb = -12;

export function createMarkedPlayer(context: AudioContext, sound: BakedRound): MarkedPlayer {
  const level = context.createGain();
  level.gain.value = gainOf(levelDb);
  level.connect(context.destination);
  const clicks = new Clicks(context, level);
  const frames = Math.max(1, sound.channels[0]?.length ?? 0);
  const buffer = context.createBuffer(Math.max(1, sound.channels.length), frames, sound.sampleRate);
  sound.channels.forEach((channel, i) => buffer.copyToChannel(channel, i));
  let run: {
    readonly source: AudioBufferSourceNode;
    readonly fade: GainNode;
    readonly startSeconds: number;
    readonly fromSeconds: number;
    readonly timer: ReturnType<typeof setInterval>;
  } | null = null;
  let marks: readonly ClickMark[] = [];
  let restSeconds = 0;
  let ended: () => void = () => undefined;
  /** Up to here, in the recording, clicks are scheduled. */
  let clickedTo = 0;

  const look = () => {
    if (!run) return;
    const now = run.fromSeconds + context.currentTime - run.startSeconds;
    const until = now + aheadSeconds;
    const shift = run.startSeconds - run.fromSeconds;
    for (const { seconds, accent } of marks)
      if (seconds >= clickedTo && seconds < until) clicks.at(seconds + shift, accent ? 'accent' : 'plain');
    clickedTo = Math.max(clickedTo, until);
  };

  const player: MarkedPlayer = {
    play: (fromSeconds, given) => {
      player.pause();
      marks = given;
      const from = Math.min(Math.max(0, fromSeconds), buffer.duration);
      const startSeconds = context.currentTime + startLeadSeconds;
      const source = new AudioBufferSourceNode(context, { buffer });
      const fade = context.createGain();
      fade.gain.setValueAtTime(0, startSeconds);
      fade.gain.linearRampToValueAtTime(1, startSeconds + fadeSeconds);
      source.connect(fade).connect(level);
      source.start(startSeconds, from);
      clickedTo = from;
      run = { source, fade, startSeconds, fromSeconds: from, timer: setInterval(look, lookEveryMs) };
      source.onended = () => {
        fade.disconnect();
        if (run?.source !== source) return;
        clearInterval(run.timer);
        run = null;
        restSeconds = 0;
        ended();
      };
      look();
    },
    pause: () => {
      if (!run) return;
      restSeconds = player.positionSeconds();
      const { source, fade, timer } = run;
      run = null;
      clearInterval(timer);
      clicks.stop();
      rampTo(fade.gain, 0, context.currentTime, fadeSeconds);
      source.stop(context.currentTime + fadeSeconds);
    },
    setMarks: (given) => {
      marks = given;
    },
    positionSeconds: () => {
      if (!run) return restSeconds;
      const passed = heardClockSeconds(context) - run.startSeconds;
      return Math.min(buffer.duration, run.fromSeconds + Math.max(0, passed));
    },
    onEnded: (listener) => {
      ended = listener;
    },
    dispose: () => {
      player.pause();
      level.disconnect();
    },
  };
  return player;
}
