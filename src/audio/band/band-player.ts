import { bandParts, type BandPart } from '../../core/band/events.ts';
import type { BandForm } from '../../core/band/form.ts';
import type { BandSettings } from '../../core/band/settings.ts';
import { beatMapOf } from '../../core/band/tempo.ts';
import { slowedBeatMap } from '../../core/chart/beat-maps.ts';
import { good, type Outcome } from '../../core/base/outcome.ts';
import type { BandRenderer } from './render-client.ts';
import { stretchFrom } from './band-stretches.ts';
import type { BandSound } from '../../core/sound/render-events.ts';
import { bandClock, type BandClock } from '../base/clock.ts';
import type { Problem } from '../../core/words/problem.ts';
import { gainOf, rampTo, silentDb } from '../base/level.ts';

/** The band starts quiet, and the player turns it up. */
export const quietStartDb = -18;
const loudestPartDb = 6;
/** Time from the request to the first sound: enough to schedule it, too short to be noticed. */
const startLeadSeconds = 0.05;
/** Seconds that are rendered and scheduled ahead, so that a busy machine does not run out of sound. */
const aheadSeconds = 20;
const lookEveryMs = 250;
/** The first stretch is short, to sound soon; later ones are longer, to render less often. */
const barsOf = { firstStretch: 2, stretch: 4 } as const;

export interface BandStart {
  /** Context time of the first sound (the count-in); default: as soon as it can sound. */
  readonly atContextSeconds?: number;
  /** Beat to begin at; default: the count-in. Used to play along with a take. */
  readonly fromBeat?: number;
}

/** Plays a band by the audio clock. One player plays one arrangement at a time. */
export interface BandPlayer {
  /** The band's sum, behind all levels: connect it to a capture worklet to take it out of the microphone. */
  readonly bus: AudioNode;
  /** Of the run that is playing, else null. */
  readonly clock: BandClock | null;
  /**
   * Renders the count-in, or the bars from `fromBeat`; the rest follows while it plays.
   * Stops what is playing.
   * @param speed 1 as the settings say, 0.5 half as fast
   */
  prepare(form: BandForm, settings: BandSettings, fromBeat?: number, speed?: number): Promise<Outcome<void>>;
  /** Needs `prepare`. Returns the clock of this run. */
  start(options?: BandStart): BandClock;
  /** Fades and stops. Safe to call at any time. */
  stop(fadeSeconds?: number): void;
  /** 0 dB is the part's own balance; clamped to -60 (silent) .. +6. Takes effect while playing, with a soft ramp. */
  setPartLevelDb(part: BandPart, levelDb: number): void;
  setPartMuted(part: BandPart, muted: boolean): void;
  /** -60 (silent) to 0. Starts at `quietStartDb`. */
  setMasterLevelDb(levelDb: number): void;
  /** Called once when the band falls silent by itself: its renderer failed while playing. */
  onFailed(listener: (problem: Problem) => void): void;
  dispose(): void;
}

interface Prepared {
  readonly form: BandForm;
  readonly settings: BandSettings;
  readonly speed: number;
  /** What is rendered already, in order. */
  readonly sounds: readonly BandSound[];
}

/** One run from start to stop. */
interface Run {
  readonly clock: BandClock;
  readonly firstSoundSeconds: number;
  readonly sources: Set<AudioBufferSourceNode>;
  /** One a part: this run fades while the next one may already sound. */
  readonly fades: Readonly<Record<BandPart, GainNode>>;
  timer: ReturnType<typeof setInterval> | undefined;
  nextBeat: number;
  asking: boolean;
}

/** Sounds through `context.destination`. The renderer must work at the context's sample rate; it stays the caller's. */
export function createBandPlayer(context: AudioContext, renderer: BandRenderer): BandPlayer {
  const master = context.createGain();
  master.gain.value = gainOf(quietStartDb);
  master.connect(context.destination);
  const parts = perPart(() => {
    const node = context.createGain();
    node.connect(master);
    return { node, levelDb: 0, muted: false };
  });
  let prepared: Prepared | null = null;
  let run: Run | null = null;
  let failed: (problem: Problem) => void = () => undefined;

  const setPart = (part: BandPart) => {
    const { node, levelDb, muted } = parts[part];
    rampTo(node.gain, muted ? 0 : gainOf(levelDb), context.currentTime);
  };

  const schedulePart = (sound: BandSound, part: BandPart, into: Run) => {
    const stem = sound.stems[part];
    if (!stem) return;
    const [left, right] = stem;
    const due = wholeFrame(into.clock.contextSecondsAt(sound.startBeat), context.sampleRate);
    const earliest = Math.max(into.firstSoundSeconds, context.currentTime);
    const when = due > earliest - 1 / context.sampleRate ? due : earliest;
    const buffer = context.createBuffer(2, left.length, sound.sampleRate);
    buffer.copyToChannel(left, 0);
    buffer.copyToChannel(right, 1);
    if (when - due >= buffer.duration) return;
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(into.fades[part]);
    source.start(when, when - due);
    into.sources.add(source);
    source.onended = () => {
      source.disconnect();
      into.sources.delete(source);
    };
  };

  const goOn = async (current: Run, { form, settings, speed }: Prepared) => {
    const needed = current.clock.contextSecondsAt(current.nextBeat) < context.currentTime + aheadSeconds;
    if (current.asking || !needed) return;
    current.asking = true;
    const bars = current.nextBeat <= 0 ? barsOf.firstStretch : barsOf.stretch;
    const stretch = stretchFrom(form, settings, current.nextBeat, bars);
    const sound = await renderer.band({ form, settings, speed, ...stretch });
    if (run !== current) return;
    if (!sound.ok) {
      player.stop();
      failed(sound.problem);
      return;
    }
    current.nextBeat = stretch.endBeat;
    for (const part of bandParts) {
      schedulePart(sound.value, part, current);
      // One part in each task: copying all of them at once would delay the next frame of the screen.
      await nextTask();
      if (run !== current) return;
    }
    current.asking = false;
    await goOn(current, { form, settings, speed, sounds: [] });
  };

  const player: BandPlayer = {
    bus: master,
    get clock() {
      return run?.clock ?? null;
    },
    prepare: async (form, settings, fromBeat = -settings.countInBars * form.beatsPerBar, speed = 1) => {
      player.stop();
      prepared = null;
      // The count-in alone is rendered quickly; the first bars are rendered while it sounds.
      const firstBar = Math.floor(fromBeat / form.beatsPerBar);
      const first =
        fromBeat < 0
          ? { startBeat: fromBeat, endBeat: 0 }
          : stretchFrom(form, settings, firstBar * form.beatsPerBar, barsOf.firstStretch);
      const sound = await renderer.band({ form, settings, speed, ...first });
      if (!sound.ok) return sound;
      prepared = { form, settings, speed, sounds: [sound.value] };
      return good(undefined);
    },
    start: ({ atContextSeconds, fromBeat } = {}) => {
      if (!prepared) throw new Error('start needs a successful prepare first');
      const { form, settings, speed, sounds } = prepared;
      player.stop(0.01);
      const firstBeat = fromBeat ?? sounds[0]?.startBeat ?? 0;
      const firstSoundSeconds = Math.max(atContextSeconds ?? 0, context.currentTime + startLeadSeconds);
      const beats = slowedBeatMap(beatMapOf(form, settings), speed);
      const clock = bandClock(firstSoundSeconds - beats.secondsAt(firstBeat), beats);
      const rendered = sounds.filter((sound) => sound.endBeat > firstBeat);
      const nextBeat =
        rendered.at(-1)?.endBeat ?? Math.floor(firstBeat / form.beatsPerBar) * form.beatsPerBar;
      const fades = perPart((part) => {
        const node = context.createGain();
        node.connect(parts[part].node);
        return node;
      });
      const current: Run = {
        clock,
        firstSoundSeconds,
        sources: new Set(),
        fades,
        timer: undefined,
        nextBeat,
        asking: false,
      };
      run = current;
      for (const sound of rendered) for (const part of bandParts) schedulePart(sound, part, current);
      const look = () => void goOn(current, { form, settings, speed, sounds });
      current.timer = setInterval(look, lookEveryMs);
      look();
      return clock;
    },
    stop: (fadeSeconds = 0.15) => {
      if (!run) return;
      const now = context.currentTime;
      clearInterval(run.timer);
      for (const { gain } of Object.values(run.fades)) rampTo(gain, 0, now, fadeSeconds);
      for (const source of run.sources) source.stop(now + fadeSeconds);
      run = null;
    },
    setPartLevelDb: (part, levelDb) => {
      parts[part].levelDb = Math.min(loudestPartDb, Math.max(silentDb, levelDb));
      setPart(part);
    },
    setPartMuted: (part, muted) => {
      parts[part].muted = muted;
      setPart(part);
    },
    setMasterLevelDb: (levelDb) => rampTo(master.gain, gainOf(Math.min(0, levelDb)), context.currentTime),
    onFailed: (listener) => {
      failed = listener;
    },
    dispose: () => {
      player.stop(0.01);
      for (const { node } of Object.values(parts)) node.disconnect();
      master.disconnect();
    },
  };
  return player;
}

const nextTask = () => new Promise<void>((go) => setTimeout(go));

/** A start between two frames would be interpolated: the stems begin on whole frames. */
const wholeFrame = (seconds: number, sampleRate: number) => Math.round(seconds * sampleRate) / sampleRate;

const perPart = <T>(make: (part: BandPart) => T) =>
  Object.fromEntries(bandParts.map((part) => [part, make(part)])) as Record<BandPart, T>;
