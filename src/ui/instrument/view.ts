/** What an instrument view is: something that draws where the tones lie, and what it is given to draw. */
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { Instrument } from '../../core/music/instruments.ts';
import type { NeckPosition } from '../../core/music/where-it-lies.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { Inks } from '../parts/inks.ts';
import type { Twelve } from './tones.ts';

/** A canvas, its size in CSS pixels and the colours to draw in. */
export interface Surface {
  readonly context: CanvasRenderingContext2D;
  readonly width: number;
  readonly height: number;
  readonly inks: Inks;
}

/** The same facts for every view; each takes what it needs. MIDI numbers are whole and sounding. */
export interface Picture {
  /** As it is set, with its capo. */
  readonly instrument: Instrument;
  readonly settings: Pick<PlayingSettings, 'frets' | 'leftHanded' | 'clef'>;
  readonly twelve: Twelve;
  /** The tones of the chord that sounds. */
  readonly now: readonly TargetTone[];
  /** The tones to land on next. */
  readonly targets: readonly TargetTone[];
  /** The note played last and what it is in the chord, or null before there was one. */
  readonly played: { readonly midi: number; readonly tone: TargetTone } | null;
  /** Where the fretting hand is, or null before it is known or where there is no neck. */
  readonly hand: NeckPosition | null;
  /** Whether the note played last lies on the neck at all. */
  readonly playedOnNeck: boolean;
  /** The target nearest to the note played last, or null. */
  readonly goal: number | null;
  /** The pitch round which the player plays. */
  readonly register: number;
  readonly label: (tone: TargetTone) => string;
}

export interface InstrumentView {
  /** Begins a view for one take; what it answers with draws, and remembers which part it showed last. */
  open(): (surface: Surface, picture: Picture) => void;
}
