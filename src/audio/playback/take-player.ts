/** Plays a recorded take, alone or with its band, from any place. */
import { good, type Outcome } from '../../core/base/outcome.ts';
import type { Along } from './along.ts';
import { heardClockSeconds } from '../../core/take/round-trip.ts';
import { gainOf, rampTo } from '../base/level.ts';

export interface TakePlayer {
  readonly durationSeconds: number;
  readonly playing: boolean;
  /** Position in the take, as heard now. */
  positionSeconds(): number;
  /** Goes on from where it is, or from a place. Answers when it sounds, or says why it can't. */
  play(fromSeconds?: number): Promise<Outcome<void>>;
  pause(): void;
  /** Jumps; goes on playing if it was. */
  seek(seconds: number): Promise<Outcome<void>>;
  /** -60 (silent) to 0. */
  setTakeLevelDb(levelDb: number): void;
  /** Called each time the take has played to its end. */
  onEnded(listener: () => void): void;
  dispose(): void;
}

const fadeSeconds = 0.03;
const startLeadSeconds = 0.1;

/** A player for mono samples, at whatever rate they were recorded. What plays along stays the caller's. */
export function createTakePlayer(
  context: AudioContext,
  samples: Float32Array<ArrayBuffer>,
  sampleRate: number,
  along: Along | null = null,
): TakePlayer {
  const buffer = context.createBuffer(1, Math.max(1, samples.length), sampleRate);
  buffer.copyToChannel(samples, 0);
  const level = context.createGain();
  level.connect(context.destination);
  let run: {
    source: AudioBufferSourceNode;
    fade: GainNode;
    startSeconds: number;
    fromSeconds: number;
  } | null = null;
  let restSeconds = 0;
  /** Number of the latest play, pause or seek: what an earlier one was waiting for is no longer done. */
  let turn = 0;
  let ended: () => void = () => undefined;

  const within = (seconds: number) => Math.min(buffer.duration, Math.max(0, seconds));
  const position = (contextSeconds: number) =>
    run ? within(run.fromSeconds + Math.max(0, contextSeconds - run.startSeconds)) : restSeconds;

  const halt = () => {
    if (!run) return;
    restSeconds = position(context.currentTime);
    const { source, fade } = run;
    run = null;
    source.onended = () => fade.disconnect();
    rampTo(fade.gain, 0, context.currentTime, fadeSeconds);
    source.stop(context.currentTime + fadeSeconds);
    along?.stop(fadeSeconds);
  };

  const begin = (fromSeconds: number) => {
    const startSeconds = context.currentTime + startLeadSeconds;
    along?.start(startSeconds, fromSeconds);
    const source = new AudioBufferSourceNode(context, { buffer });
    const fade = context.createGain();
    source.connect(fade).connect(level);
    source.start(startSeconds, fromSeconds);
    run = { source, fade, startSeconds, fromSeconds };
    source.onended = () => {
      fade.disconnect();
      if (run?.source !== source) return;
      run = null;
      restSeconds = 0;
      along?.stop();
      ended();
    };
  };

  const player: TakePlayer = {
    durationSeconds: buffer.duration,
    get playing() {
      return run !== null;
    },
    positionSeconds: () => position(heardClockSeconds(context)),
    play: async (fromSeconds) => {
      halt();
      const own = ++turn;
      const from = within(fromSeconds ?? restSeconds);
      restSeconds = from;
      if (along) {
        const ready = await along.prepare(from);
        if (!ready.ok) return ready;
        if (own !== turn) return good(undefined);
      }
      begin(from);
      return good(undefined);
    },
    pause: () => {
      turn++;
      halt();
    },
    seek: async (seconds) => {
      if (run) return player.play(seconds);
      restSeconds = within(seconds);
      return good(undefined);
    },
    setTakeLevelDb: (levelDb) => rampTo(level.gain, gainOf(Math.min(0, levelDb)), context.currentTime),
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
