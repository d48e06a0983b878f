/** A whole performance as sound, piece after piece, in little memory however long it is. */
import { arrange } from '../band/arrange.ts';
import { chorusBeats, type BandForm } from '../band/form.ts';
import { bandInstruments } from '../band/instruments.ts';
import type { BandSettings } from '../band/settings.ts';
import { beatMapOf, tempoOf } from '../band/tempo.ts';
import { bpmAt, nextTempoBeat } from '../chart/tempo-rise.ts';
import { renderEvents } from './render-events.ts';
import type { Stereo } from './stereo.ts';
import type { Synth } from './synth.ts';

/** Rendered at once; what rings on is carried into the next stretch. */
const stretchBars = 4;

export interface Performance {
  /** Of the first sample: the count-in's first click, or the pickup. */
  readonly startBeat: number;
  /** Pieces that follow one another; the last one rings out. */
  readonly pieces: Generator<Stereo, void>;
}

/** Count-in, `choruses` times the form, an ending. Events fall on the frame nearest to their beat, or one beside it. */
export function renderPerformance(
  synth: Synth,
  form: BandForm,
  settings: BandSettings,
  choruses: number,
): Performance {
  const { events, startBeat, endBeat } = arrange(form, settings, choruses, true);
  const tempo = tempoOf(form, settings);
  const { secondsAt } = beatMapOf(form, settings);
  const frameOf = (beat: number) => Math.round((secondsAt(beat) - secondsAt(startBeat)) * synth.sampleRate);
  function* pieces(): Generator<Stereo, void> {
    let ringing: Stereo = [new Float32Array(0), new Float32Array(0)];
    for (let from = startBeat, to; from < endBeat; from = to) {
      to = Math.min(endBeat, nextTempoBeat(tempo, from), from + stretchBars * form.beatsPerBar);
      // As in the app, a stretch ends with its chorus; what is held across is held in its own stretch.
      const chorusEnd = (Math.floor(from / chorusBeats(form) + 1e-9) + 1) * chorusBeats(form);
      to = Math.min(to, chorusEnd);
      const stretch = { bpm: bpmAt(tempo, from), startBeat: from, endBeat: to };
      const sound = renderEvents(synth, events, bandInstruments(settings), stretch);
      const mix = sum([ringing, ...Object.values(sound.stems)], frameOf(to) - frameOf(from));
      if (to >= endBeat) return yield mix;
      const length = frameOf(to) - frameOf(from);
      yield each(mix, (side) => side.slice(0, length));
      ringing = each(mix, (side) => side.slice(length));
    }
  }
  return { startBeat, pieces: pieces() };
}

const each = (
  [left, right]: Stereo,
  change: (side: Float32Array<ArrayBuffer>) => Float32Array<ArrayBuffer>,
): Stereo => [change(left), change(right)];

/** All of them from the same moment on, at least `leastFrames` long. */
function sum(stems: readonly Stereo[], leastFrames: number): Stereo {
  const frames = Math.max(leastFrames, ...stems.map(([left]) => left.length));
  const mix: Stereo = [new Float32Array(frames), new Float32Array(frames)];
  for (const stem of stems) {
    stem.forEach((side, i) => {
      const into = mix[i]!;
      for (let frame = 0; frame < side.length; frame++) into[frame]! += side[frame]!;
    });
  }
  return mix;
}
