/** Plays a recorded take, alone or with its band: from any place, slower at the same pitch, a stretch of it in a loop. */
import { good, type Outcome } from '../../core/base/outcome.ts';
import { fromPcm16, type MonoSamples } from '../../core/base/pcm16.ts';
import type { Along } from './along.ts';
import { heardClockSeconds } from '../../core/take/round-trip.ts';
import { gainOf, rampTo } from '../base/level.ts';
import { playBuffer, playPieces, type SoundingLine } from './line-sources.ts';
import { isSamePassage, makePassage, type Passage, type ReadyPassage } from './passage.ts';
import { createSlowLine, type SlowLine } from './slow-line.ts';

export type { Passage } from './passage.ts';

export interface PlayOrder {
  /** Where to begin, in seconds of the take. */
  readonly fromSeconds: number;
  /** 1 as it was played, 0.5 half as fast at the same pitch. */
  readonly speed: number;
  /** A stretch that is heard by itself; null goes on to the take's end. */
  readonly passage: Passage | null;
}

export interface TakePlayer {
  readonly durationSeconds: number;
  readonly playing: boolean;
  /** Position in the take, as heard now. */
  positionSeconds(): number;
  /** Answers when it sounds, or says why it can't. */
  play(order: PlayOrder): Promise<Outcome<void>>;
  pause(): void;
  /** -60 (silent) to 0. */
  setTakeLevelDb(levelDb: number): void;
  /** Called each time the take, or a stretch that does not loop, has played to its end. */
  onEnded(listener: () => void): void;
  dispose(): void;
}

const fadeSeconds = 0.03;
const startLeadSeconds = 0.1;

interface Run {
  readonly line: SoundingLine;
  readonly band: SoundingLine | null;
  readonly startSeconds: number;
  readonly order: PlayOrder;
}

/** What of an order has to be there before it can sound. */
type Ready =
  | { readonly kind: 'passage'; readonly ready: ReadyPassage }
  | {
      readonly kind: 'slow';
      readonly begin: (start: { atContextSeconds: number; onended(): void }) => SoundingLine;
    }
  | { readonly kind: 'whole'; readonly buffer: AudioBuffer };

/** So many samples are read as floating point at once. */
const PIECE = 1_048_576;

/** A player for mono samples, at whatever rate they were recorded. What plays along stays the caller's. */
export function createTakePlayer(
  context: AudioContext,
  samples: MonoSamples,
  sampleRate: number,
  along: Along | null = null,
  slow: SlowLine | null = null,
): TakePlayer {
  let made: AudioBuffer | null = null;
  // The buffer of an hour takes 636 MB: it is made when the take is first heard, and straight from the samples.
  const buffer = () => {
    if (made !== null) return made;
    const fresh = context.createBuffer(1, Math.max(1, samples.length), sampleRate);
    for (let from = 0; from < samples.length; from += PIECE)
      fresh.copyToChannel(floatCopy(samples.subarray(from, from + PIECE)), 0, from);
    return (made = fresh);
  };
  // The slowed line reads the buffer's own samples, so that an hour is not held twice.
  const own = () =>
    createSlowLine(() => buffer().getChannelData(0), { sampleRate, wantedRate: context.sampleRate });
  const durationSeconds = Math.max(1, samples.length) / sampleRate;
  return createPlayer(context, { durationSeconds, buffer, slow: slow ?? own() }, along);
}

const floatCopy = (samples: MonoSamples): Float32Array<ArrayBuffer> =>
  samples instanceof Int16Array ? fromPcm16(samples) : new Float32Array(samples);

/** A player for a line that is made while it plays. */
export const createLinePlayer = (
  context: AudioContext,
  line: SlowLine,
  durationSeconds: number,
  along: Along | null = null,
): TakePlayer => createPlayer(context, { durationSeconds, buffer: null, slow: line }, along);

interface Line {
  readonly durationSeconds: number;
  /** As it was played; null where that is made piece by piece, as it is at another speed. */
  readonly buffer: (() => AudioBuffer) | null;
  readonly slow: SlowLine;
}

function createPlayer(
  context: AudioContext,
  { durationSeconds, buffer, slow }: Line,
  along: Along | null,
): TakePlayer {
  const level = context.createGain();
  level.connect(context.destination);
  let run: Run | null = null;
  let restSeconds = 0;
  /** Number of the latest play or pause: what an earlier one was waiting for is no longer done. */
  let turn = 0;
  let ended: () => void = () => undefined;
  /** The passage made last: a loop that is paused and played again is not made again. */
  let made: ReadyPassage | null = null;

  const within = (seconds: number) => Math.min(durationSeconds, Math.max(0, seconds));
  const position = (contextSeconds: number) => {
    if (!run) return restSeconds;
    const { startSeconds, order } = run;
    const { fromSeconds, speed, passage } = order;
    const at = fromSeconds + Math.max(0, contextSeconds - startSeconds) * speed;
    if (passage === null) return within(at);
    const long = passage.toSeconds - passage.fromSeconds;
    if (!passage.loops) return Math.min(at, passage.toSeconds);
    return passage.fromSeconds + ((at - passage.fromSeconds) % long);
  };

  const halt = () => {
    if (!run) return;
    restSeconds = position(context.currentTime);
    run.line.stop(fadeSeconds);
    run.band?.stop(fadeSeconds);
    run = null;
    along?.stop(fadeSeconds);
  };

  const prepare = async ({ fromSeconds, speed, passage }: PlayOrder): Promise<Outcome<Ready>> => {
    if (passage !== null) {
      if (made !== null && isSamePassage(made, passage, speed)) return good({ kind: 'passage', ready: made });
      const ready = await makePassage(context, { buffer, slow, along }, passage, speed);
      return ready.ok ? good({ kind: 'passage', ready: (made = ready.value) }) : ready;
    }
    const [ready, first] = await Promise.all([
      along?.prepare(fromSeconds, speed) ?? good(undefined),
      speed === 1 && buffer !== null ? null : firstPiece(slow, fromSeconds, durationSeconds, speed),
    ]);
    if (!ready.ok) return ready;
    if (first === null) return good({ kind: 'whole', buffer: buffer!() });
    if (!first.ok) return first;
    const { piece, next } = first.value;
    return good({ kind: 'slow', begin: (start) => playPieces(context, level, piece, next, start) });
  };

  const begin = (order: PlayOrder, ready: Ready) => {
    const atContextSeconds = context.currentTime + startLeadSeconds;
    const { fromSeconds, passage } = order;
    const own = ++turn;
    const start = {
      atContextSeconds,
      onended: () => {
        if (own !== turn) return;
        run = null;
        restSeconds = passage?.fromSeconds ?? 0;
        along?.stop();
        ended();
      },
    };
    if (ready.kind === 'passage') {
      const offset = (fromSeconds - ready.ready.passage.fromSeconds) / order.speed;
      const how = { ...start, fromSeconds: offset, loops: passage?.loops ?? false };
      const { line, band } = ready.ready;
      const into = along?.output ?? null;
      run = {
        line: playBuffer(context, level, line, how),
        band: band && into && playBuffer(context, into, band, { ...how, onended: () => undefined }),
        startSeconds: atContextSeconds,
        order,
      };
      return;
    }
    along?.start(atContextSeconds, fromSeconds);
    const line =
      ready.kind === 'slow'
        ? ready.begin(start)
        : playBuffer(context, level, ready.buffer, { ...start, fromSeconds, loops: false });
    run = { line, band: null, startSeconds: atContextSeconds, order };
  };

  return {
    durationSeconds,
    get playing() {
      return run !== null;
    },
    positionSeconds: () => position(heardClockSeconds(context)),
    play: async (asked) => {
      halt();
      const own = ++turn;
      const order = placed(asked, durationSeconds);
      restSeconds = order.fromSeconds;
      const ready = await prepare(order);
      if (!ready.ok) return ready;
      if (own === turn) begin(order, ready.value);
      return good(undefined);
    },
    pause: () => {
      turn++;
      halt();
    },
    setTakeLevelDb: (levelDb) => rampTo(level.gain, gainOf(Math.min(0, levelDb)), context.currentTime),
    onEnded: (listener) => {
      ended = listener;
    },
    dispose: () => {
      turn++;
      halt();
      slow.dispose();
      level.disconnect();
    },
  };
}

async function firstPiece(slow: SlowLine, fromSeconds: number, toSeconds: number, speed: number) {
  const next = slow.pieces(fromSeconds, toSeconds, speed);
  const piece = await next();
  return piece.ok ? good({ piece: piece.value, next }) : piece;
}

/** The order inside the take; one that begins outside its passage begins with it. */
function placed({ fromSeconds, speed, passage }: PlayOrder, durationSeconds: number): PlayOrder {
  const within = (seconds: number) => Math.min(durationSeconds, Math.max(0, seconds));
  if (passage === null) return { fromSeconds: within(fromSeconds), speed, passage };
  const from = within(passage.fromSeconds);
  const to = Math.max(from + 0.01, within(passage.toSeconds));
  const inside = fromSeconds >= from && fromSeconds < to ? fromSeconds : from;
  return { fromSeconds: inside, speed, passage: { ...passage, fromSeconds: from, toSeconds: to } };
}
