/** What the player chose for the playing screen: instrument, view, aim, how it is run without hands. */
import * as v from 'valibot';
import { USUAL_AIM } from '../core/grade/aims/aim-choices.ts';
import { INSTRUMENTS } from '../core/music/instruments.ts';
import { learnedFoot, type LearnedFoot } from './foot-switch.ts';

/** All frets, the stretch where the hand is, or five frets from one on. */
export type Frets = 'all' | 'hand' | number;

/** Which keys a foot pedal sends; a space bar always works. */
export const pedals = ['space', 'pages', 'arrows', 'enter'] as const;
export type Pedal = (typeof pedals)[number];

export interface PlayingSettings {
  /** Id of an instrument. */
  readonly instrument: string;
  /** Id of an instrument view (`ui/instrument/views.ts`); "none" and what is not known show none. */
  readonly view: string;
  /** Fret the capo lies on; 0 without. */
  readonly capo: number;
  readonly leftHanded: boolean;
  readonly labels: 'degrees' | 'names';
  /** Chords and names as they are written for a transposing instrument, or as they sound. */
  readonly pitch: 'written' | 'concert';
  readonly frets: Frets;
  readonly clef: 'treble' | 'bass';
  /** Id of an aim choice. */
  readonly aim: string;
  /** Shows landings and no live note, so that the player listens and does not read. */
  readonly quiet: boolean;
  /** Whether a screen reader says each landing. */
  readonly speakLandings: boolean;
  /** A take that ended by itself starts again after a look at its page. */
  readonly repeat: boolean;
  /** Three low notes start a take from the open page, and stop it. */
  readonly playedSignal: boolean;
  readonly pedal: Pedal;
  readonly input: 'microphone' | 'midi';
  /** A MIDI pedal runs the screen; else it is the instrument's own. */
  readonly midiPedal: boolean;
  /** The switch that was learned; null: any damper, sostenuto or soft pedal. */
  readonly foot: LearnedFoot | null;
}

export const MOST_CAPO = 12;
export const HIGHEST_WINDOW = 20;

const wholeWithin = (lowest: number, highest: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(lowest), v.maxValue(highest));

export const playingFields: {
  readonly [K in keyof PlayingSettings]: v.GenericSchema<unknown, PlayingSettings[K]>;
} = {
  instrument: v.picklist(INSTRUMENTS.map(({ id }) => id)),
  view: v.string(),
  capo: wholeWithin(0, MOST_CAPO),
  leftHanded: v.boolean(),
  labels: v.picklist(['degrees', 'names']),
  pitch: v.picklist(['written', 'concert']),
  frets: v.union([v.picklist(['all', 'hand']), wholeWithin(1, HIGHEST_WINDOW)]),
  clef: v.picklist(['treble', 'bass']),
  aim: v.string(),
  quiet: v.boolean(),
  speakLandings: v.boolean(),
  repeat: v.boolean(),
  playedSignal: v.boolean(),
  pedal: v.picklist(pedals),
  input: v.picklist(['microphone', 'midi']),
  midiPedal: v.boolean(),
  // Kept before there was one.
  foot: v.optional(v.nullable(learnedFoot), null),
};

/**
 * Five frets round the hand can be read at two metres, a whole neck cannot. A riff on the lowest string must not end a take: the
 * played signal is off until it is asked for.
 */
export const usualPlaying: PlayingSettings = {
  instrument: 'guitar',
  view: 'neck',
  capo: 0,
  leftHanded: false,
  labels: 'degrees',
  pitch: 'written',
  frets: 'hand',
  clef: 'treble',
  aim: USUAL_AIM,
  quiet: false,
  speakLandings: true,
  repeat: false,
  playedSignal: false,
  pedal: 'space',
  input: 'microphone',
  midiPedal: false,
  foot: null,
};
