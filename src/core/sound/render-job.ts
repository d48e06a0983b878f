/** What a worker is asked to render, and the rendering: the worker only passes messages. */
import { eventsBetween } from '../band/arrange.ts';
import type { BandForm } from '../band/form.ts';
import { bandInstruments } from '../band/instruments.ts';
import type { Stroke } from '../band/line.ts';
import type { BandSettings } from '../band/settings.ts';
import type { HeardNote } from '../take/note.ts';
import { tempoOf } from '../band/tempo.ts';
import { bpmAt } from '../chart/tempo-rise.ts';
import { renderEvents, type BandSound } from './render-events.ts';
import { renderLine } from './render-line.ts';
import { renderNotes } from './render-notes.ts';
import type { Synth } from './synth.ts';

/** A stretch of the performance, in beats from the first downbeat, at the tempo of its start; see `eventsBetween`. */
export interface BandJob {
  readonly kind: 'band';
  readonly form: BandForm;
  readonly settings: BandSettings;
  readonly startBeat: number;
  readonly endBeat: number;
  /** 1 as it is played, 0.5 half as fast: the same events, farther apart. */
  readonly speed?: number;
}

/** A line, mono. */
export interface LineJob {
  readonly kind: 'line';
  readonly strokes: readonly Stroke[];
  readonly program: number;
  readonly bpm: number;
  readonly startBeat: number;
}

/** Notes that were played or written down, mono, from second 0 on. */
export interface NotesJob {
  readonly kind: 'notes';
  readonly notes: readonly HeardNote[];
  readonly durationSeconds: number;
  /** Id of an instrument, for the sound that comes nearest; the guitar's where it is left out. */
  readonly instrument?: string;
}

export type RenderJob = BandJob | LineJob | NotesJob;

export function renderBand(
  synth: Synth,
  { form, settings, startBeat, endBeat, speed = 1 }: Omit<BandJob, 'kind'>,
): BandSound {
  const events = eventsBetween(form, settings, startBeat, endBeat);
  const stretch = { bpm: speed * bpmAt(tempoOf(form, settings), startBeat), startBeat, endBeat };
  return renderEvents(synth, events, bandInstruments(settings), stretch);
}

export function runJob(synth: Synth, job: RenderJob): BandSound | Float32Array<ArrayBuffer> {
  switch (job.kind) {
    case 'band':
      return renderBand(synth, job);
    case 'line':
      return renderLine(synth, job.strokes, job.program, job);
    case 'notes':
      return renderNotes(synth, job.notes, job.durationSeconds, job.instrument);
  }
}

/** The buffers of a result, to be transferred instead of copied. */
export function buffersOf(result: BandSound | Float32Array<ArrayBuffer>): ArrayBuffer[] {
  if (result instanceof Float32Array) return [result.buffer];
  return Object.values(result.stems).flatMap((stem) => stem.map((side) => side.buffer));
}
