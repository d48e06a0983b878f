import type { Ringing } from './ringing.ts';

/** The note that sounds. Its end is still to come. */
export interface OpenNote {
  readonly onsetSeconds: number;
  readonly attack: 'struck' | 'legato';
  /** First frame that belongs to it. */
  readonly from: number;
  /** Last frame with its pitch. */
  last: number;
  /** Centre of the plateau that it stands on, as a fractional MIDI number, and the plateau's first frame. */
  pitch: number;
  plateauFrom: number;
  /** Its loudest frame, dBFS. */
  peakDb: number;
  /** Flux of its own attack in nepers a bin, 0 without one. */
  readonly flux: number;
  /** Its pitch comes from the sound about its attack: the path hears another. */
  readonly pitchFromAttack: boolean;
  /** What may ring on beside it; null without a stroke of its own. */
  readonly ringing: Ringing | null;
  /** It was handed out live, before its end. */
  handedOut: boolean;
  /** Frames that stood a harmonic or more than a hand's reach away from its pitch. */
  framesAway: number;
}
