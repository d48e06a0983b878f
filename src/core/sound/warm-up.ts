/**
 * What makes a first rendering slow, done before anyone waits for it: the count-in and two bars are rendered, so that the
 * machine has compiled what it will run. One feel is enough for that: the first stretch of another one then takes a
 * tenth of a second more, as its samples are decoded, and that is while the count-in sounds. All feels and all
 * samples took three times the processor's time, at each visit, a visit without any music too.
 */
import { countIn } from '../band/arrange.ts';
import type { BandForm } from '../band/form.ts';
import { bandInstruments } from '../band/instruments.ts';
import type { BandSettings } from '../band/settings.ts';
import type { Chord } from '../music/chord.ts';
import { renderBand } from './render-job.ts';
import { renderEvents } from './render-events.ts';
import type { Synth } from './synth.ts';

/** Written out, so that the worker need not carry the reader of chord symbols. */
const c7: Chord = {
  symbol: 'C7',
  root: 'C',
  rootPitchClass: 0,
  bass: null,
  tones: [
    { degree: '1', role: 'root', pitchClass: 0, name: 'C' },
    { degree: '3', role: 'third', pitchClass: 4, name: 'E' },
    { degree: '5', role: 'fifth', pitchClass: 7, name: 'G' },
    { degree: 'b7', role: 'seventh', pitchClass: 10, name: 'Bb' },
  ],
};
const f7: Chord = {
  symbol: 'F7',
  root: 'F',
  rootPitchClass: 5,
  bass: null,
  tones: [
    { degree: '1', role: 'root', pitchClass: 5, name: 'F' },
    { degree: '3', role: 'third', pitchClass: 9, name: 'A' },
    { degree: '5', role: 'fifth', pitchClass: 0, name: 'C' },
    { degree: 'b7', role: 'seventh', pitchClass: 3, name: 'Eb' },
  ],
};

/** Two bars, a change in each. */
const form: BandForm = {
  key: { tonic: 'C', tonicPitchClass: 0, mode: 'major' },
  beatsPerBar: 4,
  divisions: 2,
  bars: 2,
  spans: [
    { startBeat: 0, endBeat: 4, chord: c7, bar: 0, chorus: 0 },
    { startBeat: 4, endBeat: 8, chord: f7, bar: 1, chorus: 0 },
  ],
  pickup: [],
  sectionBars: [0],
  feelChanges: [],
};
/** Fast, so that little sound is made. */
const settings: BandSettings = { feel: 'shuffle', bpm: 280, swing: null, seed: 1, countInBars: 1 };
const clickStretch = { bpm: settings.bpm, startBeat: -4, endBeat: 0 };

/**
 * Works a little at each step, so that a job that comes meanwhile waits for one step alone. The count-in first: it is
 * what sounds first.
 */
export function* warmUp(synth: Synth): Generator<void, void> {
  renderEvents(synth, countIn(form, settings), bandInstruments(settings), clickStretch);
  yield;
  for (const startBeat of [0, 4]) {
    renderBand(synth, { form, settings, startBeat, endBeat: startBeat + 4 });
    yield;
  }
}
