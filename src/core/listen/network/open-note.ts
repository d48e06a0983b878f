import type { HeardNote } from '../../take/note.ts';
import * as D from './decoding.ts';
import type { Onset } from './onsets.ts';
import { restOf, settledPart } from './rest.ts';
import { DELAY_FRAMES, HOP, INNER_RATE, LOW_MIDI } from './settings.ts';
import { vibratoOf } from './vibrato.ts';

const STEP_SECONDS = HOP / INNER_RATE;

/** A note that is being followed. */
export interface OpenNote {
  readonly onset: Onset;
  readonly struck: boolean;
  readonly peakDb: number;
  /** Its pitch by frame in semitones above LOW_MIDI, by the network and by the autocorrelation; and those frames. */
  readonly path: number[];
  readonly fine: number[];
  readonly frames: number[];
  end: number;
  quiet: number;
  current: number;
  /** The frame before which it must have ended, once the next note is known. */
  limit: number;
  closed: boolean;
  /** Whether it has been handed over as fresh. */
  handed: boolean;
}

/** A soft note that leaps to where it comes to rest begins there; others at their onset. In frames. */
function beginningOf(note: OpenNote, midi: number): number {
  const { onset, frames } = note;
  const path = settledPart(note.path);
  if (path.length < 5 || Math.abs(startOf(note) - midi) <= D.SETTLE_SEMITONES) return onset.at;
  let jump = 0;
  for (let k = 0; k + 1 < Math.min(path.length, D.SETTLE_FRAMES + 2); k++)
    jump = Math.max(jump, Math.abs(path[k + 1]! - path[k]!));
  if (jump < D.SETTLE_JUMP) return onset.at;
  const arrival = path.findIndex((v) => Math.abs(v - midi) <= 0.5);
  if (arrival < 0 || frames[arrival]! - onset.frame > D.SETTLE_FRAMES) return onset.at;
  return Math.max(onset.at, frames[arrival]! - 0.5);
}

function confidenceOf(onset: Onset, seconds: number): number {
  const { always, onset: byOnset, body, length, longSeconds } = D.ODDS;
  const odds =
    always + byOnset * onset.onset + body * onset.body + length * Math.min(1, seconds / longSeconds);
  return 1 / (1 + Math.exp(-odds));
}

/** Where the note began, in semitones; where it went on, if it rose from the octave below. */
function startOf({ onset, path }: OpenNote): number {
  const first = path[0];
  return first !== undefined && Math.abs(first - onset.semitone) > 9 ? first : onset.semitone;
}

/** The note as heard so far. */
export function heardNote(note: OpenNote): HeardNote {
  const { onset, path } = note;
  const start = startOf(note);
  const rest = restOf(path, start);
  const fine = restOf(note.fine, start);
  const semitone = Math.abs(fine - rest) < D.FINE_REACH ? fine : rest;
  const onsetSeconds = (beginningOf(note, rest) - DELAY_FRAMES) * STEP_SECONDS;
  const offsetSeconds = (Math.max(note.end, onset.frame + 1) - DELAY_FRAMES) * STEP_SECONDS;
  const vibrato = vibratoOf(settledPart(note.fine));
  const bend = vibrato ? 0 : semitone - start;
  return {
    onsetSeconds: Math.max(0, onsetSeconds),
    offsetSeconds: Math.max(offsetSeconds, onsetSeconds, 0),
    midi: LOW_MIDI + semitone,
    confidence: confidenceOf(onset, offsetSeconds - onsetSeconds),
    levelDb: note.peakDb,
    attack: note.struck ? 'struck' : 'legato',
    bendSemitones: Math.abs(bend) < D.LEAST_BEND ? 0 : bend,
    vibrato,
    second: null,
  };
}

/** Whether a short unsure note only slides into the next one, from close by. */
export function isScoop(note: OpenNote, next: OpenNote): boolean {
  const semitone = restOf(note.path, startOf(note));
  const away = Math.abs(next.onset.semitone - semitone);
  return (
    next.onset.at - beginningOf(note, semitone) < D.SCOOP_FRAMES &&
    away > D.SCOOP_NEAREST &&
    away < D.SCOOP_FARTHEST &&
    Math.min(note.onset.onset, next.onset.onset) < D.SCOOP_ONSET &&
    note.onset.onset < next.onset.onset + D.SCOOP_LEAD
  );
}
