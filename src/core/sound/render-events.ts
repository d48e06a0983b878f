/** Events of the band → samples, a stereo stem for each part. The synthesiser is its only state. */
import { bandParts, type BandEvent, type BandPart } from '../band/events.ts';
import type { Instruments } from '../band/feels/feel.ts';
import { programsOf } from '../band/instruments.ts';
import { mixOf } from './mix.ts';
import { addRoom } from './room.ts';
import type { Stereo } from './stereo.ts';
import { drumChannel, type Synth } from './synth.ts';

/** What one stretch of the band sounds like. Frame 0 is `startBeat`; the stems ring on behind `endBeat`. */
export interface BandSound {
  readonly sampleRate: number;
  readonly bpm: number;
  readonly startBeat: number;
  readonly endBeat: number;
  /** Parts that play nothing are left out. */
  readonly stems: Readonly<Partial<Record<BandPart, Stereo>>>;
}

export interface Stretch {
  readonly bpm: number;
  readonly startBeat: number;
  readonly endBeat: number;
}

/** Longest decay after the last note, seconds; a crash cymbal of this kit needs it. */
const longestTailSeconds = 3;
/** Below this level (-80 dBFS) a decay counts as ended. */
const silence = 1e-4;
const fadeOutSeconds = 0.02;

const channelOf: Readonly<Record<BandPart, number>> = {
  bass: 0,
  chords: 1,
  line: 2,
  drums: drumChannel,
  click: drumChannel,
};

/**
 * Renders the events that start in [startBeat, endBeat). An event falls on the frame nearest to its beat: at most
 * half a frame off, 0.01 ms at 48 kHz.
 */
export function renderEvents(
  synth: Synth,
  events: readonly BandEvent[],
  instruments: Instruments,
  stretch: Stretch,
): BandSound {
  const inside = events.filter(
    (event) => event.beat >= stretch.startBeat - 1e-6 && event.beat < stretch.endBeat - 1e-6,
  );
  const stems: Partial<Record<BandPart, Stereo>> = {};
  const programs = programsOf(instruments);
  for (const part of bandParts) {
    const own = inside.filter((event) => event.part === part);
    if (own.length > 0) stems[part] = renderPart(synth, own, part, programs[part], stretch);
  }
  return { sampleRate: synth.sampleRate, ...stretch, stems };
}

interface Command {
  readonly frame: number;
  readonly strike: boolean;
  readonly event: BandEvent;
}

function renderPart(
  synth: Synth,
  events: readonly BandEvent[],
  part: BandPart,
  program: number,
  stretch: Stretch,
): Stereo {
  const framesPerBeat = (60 / stretch.bpm) * synth.sampleRate;
  const frameOf = (beat: number) => Math.round((beat - stretch.startBeat) * framesPerBeat);
  const commands = commandsOf(events, frameOf);
  const channel = channelOf[part];
  const mix = mixOf(part, program);
  synth.reset();
  synth.program(channel, program);
  synth.pan(channel, mix.pan);

  const lastFrame = Math.max(frameOf(stretch.endBeat), commands.at(-1)?.frame ?? 0);
  const length = lastFrame + Math.ceil(longestTailSeconds * synth.sampleRate);
  const stem: Stereo = [new Float32Array(length), new Float32Array(length)];
  let at = 0;
  for (const { frame, strike, event } of commands) {
    synth.render([stem], at, frame);
    at = frame;
    if (strike) synth.strike(channel, event.midi, event.velocity);
    else synth.release(channel, event.midi);
  }
  synth.render([stem], at, length);
  addRoom(stem, mix.room, synth.sampleRate);
  return finished(stem, mix.gain, lastFrame, synth.sampleRate);
}

/** Releases come before strikes on the same frame, so that a repeated key is struck anew. */
function commandsOf(events: readonly BandEvent[], frameOf: (beat: number) => number): readonly Command[] {
  const commands = events.flatMap((event) => [
    { frame: frameOf(event.beat), strike: true, event },
    { frame: frameOf(event.beat + event.durationBeats), strike: false, event },
  ]);
  return commands.toSorted((a, b) => a.frame - b.frame || Number(a.strike) - Number(b.strike));
}

/** Scaled, cut where the tail has died away, and faded over the cut. */
function finished(stem: Stereo, gain: number, lastFrame: number, sampleRate: number): Stereo {
  let end = stem[0].length;
  const quiet = (i: number) =>
    Math.abs(stem[0][i]! * gain) < silence && Math.abs(stem[1][i]! * gain) < silence;
  while (end > lastFrame && quiet(end - 1)) end--;
  const fade = Math.ceil(fadeOutSeconds * sampleRate);
  const length = Math.min(stem[0].length, end + fade);
  return stem.map((side) => {
    const kept = side.slice(0, length);
    for (let i = 0; i < length; i++) kept[i]! *= gain * Math.min(1, (length - i) / fade);
    return kept;
  }) as unknown as Stereo;
}
