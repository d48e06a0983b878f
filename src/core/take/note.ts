/**
 * A note as it was heard, before it has a name. Times are seconds from the first sample.
 * `midi` is the sounding pitch as a fractional MIDI number against A4 = 440 Hz (ISO 16:1975), whatever the
 * reference: 69 + 12 log2(hz / 440).
 */
export interface HeardNote {
  readonly onsetSeconds: number;
  readonly offsetSeconds: number;
  /** Where the pitch arrives (a bend) or its centre (vibrato). */
  readonly midi: number;
  /** How sure the listener is, 0 to 1; 1 for notes that came as a list. */
  readonly confidence: number;
  /** Loudness of the attack in dBFS, or null where it is not known. */
  readonly levelDb: number | null;
  /** How the note began: struck, or reached from the note before without a new attack. */
  readonly attack: 'struck' | 'legato';
  /** Semitones from where the note starts to where it arrives; 0 for a plain note. */
  readonly bendSemitones: number;
  /** Rate in Hz and half the width in cents, or null for a note without. */
  readonly vibrato: { readonly rateHz: number; readonly depthCents: number } | null;
  /** A second note that sounds with it and is sure, as a fractional MIDI number, else null. */
  readonly second: number | null;
}

/** What the listener hears right now, for the live screen. */
export interface LiveReading {
  readonly timeSeconds: number;
  /** null while nothing pitched sounds. */
  readonly midi: number | null;
  readonly levelDb: number;
}
