/** Our own band as a file of somebody else's: its sound, and where its beats really are. */
import { english } from '../../english.ts';
import { arrange } from '../../../src/core/band/arrange.ts';
import { feels } from '../../../src/core/band/feels/table.ts';
import { bandForm } from '../../../src/core/band/form.ts';
import type { FeelName } from '../../../src/core/chart/feel-names.ts';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { renderEvents } from '../../../src/core/sound/render-events.ts';
import type { Synth } from '../../../src/core/sound/synth.ts';

export interface TrackOrder {
  readonly chart: string;
  readonly feel: FeelName;
  /** Tempo that the band has at first, in beats a minute; the drift goes on top. */
  readonly bpm: number;
  readonly seed: number;
  readonly choruses?: number;
  /** Silence before the first downbeat. */
  readonly leadSeconds?: number;
  /** Seconds at which a beat falls, from the first downbeat; a steady tempo where it is left out. */
  readonly secondsAt?: (beat: number) => number;
}

export interface RenderedTrack {
  readonly left: Float32Array<ArrayBuffer>;
  readonly right: Float32Array<ArrayBuffer>;
  readonly mono: Float32Array<ArrayBuffer>;
  readonly sampleRate: number;
  /** Every beat of the form, in seconds from the first sample. */
  readonly beats: readonly number[];
  readonly beatsPerBar: number;
}

/** A beat falls on the frame nearest to its place. Nothing is played before the first downbeat. */
export function renderTrack(synth: Synth, order: TrackOrder): RenderedTrack {
  const { bpm, feel, seed, choruses = 1, leadSeconds = 0.8 } = order;
  const secondsAt = order.secondsAt ?? ((beat: number) => (beat * 60) / bpm);
  const chart = parseChart(order.chart);
  if (!chart.ok) throw new Error(english(chart.problem));
  const form = bandForm(timelineFromTempo(chart.value, { bpm }));
  const settings = { feel, bpm, swing: null, seed, countInBars: 0 };
  const { events, endBeat } = arrange(form, settings, choruses, false);
  // At 60 beats a minute a beat is a second: the events are laid where the drifting tempo has them.
  const laid = events.map((event) => {
    const start = leadSeconds + secondsAt(event.beat);
    const end = leadSeconds + secondsAt(event.beat + event.durationBeats);
    return { ...event, beat: start, durationBeats: end - start };
  });
  const endSeconds = leadSeconds + secondsAt(endBeat);
  const sound = renderEvents(synth, laid, feels[feel].instruments, {
    bpm: 60,
    startBeat: 0,
    endBeat: endSeconds,
  });
  const length = Math.max(...Object.values(sound.stems).map(([left]) => left.length));
  const left = new Float32Array(length);
  const right = new Float32Array(length);
  for (const [l, r] of Object.values(sound.stems)) {
    l.forEach((sample, i) => (left[i]! += sample));
    r.forEach((sample, i) => (right[i]! += sample));
  }
  return {
    left,
    right,
    mono: left.map((sample, i) => (sample + right[i]!) / 2),
    sampleRate: synth.sampleRate,
    beats: Array.from({ length: Math.round(endBeat) }, (_, beat) => leadSeconds + secondsAt(beat)),
    beatsPerBar: form.beatsPerBar,
  };
}

/** A tempo that wanders as players' does: beat by beat, within `share` of the middle, over `periodBeats`. */
export function wanderingSeconds(bpm: number, share: number, periodBeats: number): (beat: number) => number {
  // The integral of 60 / (bpm · (1 + share · sin)) in steps of a hundredth of a beat.
  const steps = 100;
  const at: number[] = [0];
  const until = 4000;
  for (let i = 0; i < until * steps; i++) {
    const beat = (i + 0.5) / steps;
    at.push(at[i]! + 60 / (bpm * (1 + share * Math.sin((2 * Math.PI * beat) / periodBeats))) / steps);
  }
  return (beat) => {
    if (beat < 0) return (beat * 60) / bpm;
    const place = Math.min(beat * steps, until * steps - 1);
    const index = Math.floor(place);
    return at[index]! + (place - index) * (at[index + 1]! - at[index]!);
  };
}

/** F-measure of beats within ±70 ms, one to one (Dixon 2001; Davies, Degara & Plumbley 2009). Both lists rise. */
export function beatFMeasure(found: readonly number[], truth: readonly number[], tolerance = 0.07): number {
  let hits = 0;
  let at = 0;
  for (const beat of truth) {
    while (at < found.length && found[at]! < beat - tolerance) at++;
    if (at < found.length && found[at]! <= beat + tolerance) {
      hits++;
      at++;
    }
  }
  return found.length + truth.length === 0 ? 0 : (2 * hits) / (found.length + truth.length);
}
