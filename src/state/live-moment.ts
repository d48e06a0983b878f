/** The moment as the playing screen shows it. */
import { keyAt } from '../core/chart/keys-through.ts';
import type { ChordSpan, Timeline } from '../core/chart/timeline.ts';
import { roleOf } from '../core/grade/assign/roles.ts';
import { palettePitchClasses } from '../core/grade/assign/scales.ts';
import type { TargetTone } from '../core/grade/aims/targets.ts';
import type { Chord, Key } from '../core/music/chord.ts';
import { degreeOver, nameInKey, nameOverChord, noteName } from '../core/music/pitch-names.ts';
import type { LiveReading } from '../core/take/note.ts';
import type { Role } from '../core/take/schema.ts';
import { nameNote } from '../core/music/name-note.ts';

export interface LiveNote {
  /** "F#4". */
  readonly name: string;
  readonly cents: number;
  /** As the player reads it, fractional, against A4 = 440 Hz. */
  readonly midi: number;
  /** From the chord of the moment; null where no chord sounds. */
  readonly degree: string | null;
  readonly role: Role | null;
}

/** Bars and choruses count from 0, and are negative during the count-in. */
export interface LiveMoment {
  /** From the first downbeat; negative during the count-in. */
  readonly beat: number;
  readonly beatInBar: number;
  readonly bar: number;
  readonly chorus: number;
  readonly chordNow: Chord | null;
  /** The next change, and how far off it is. */
  readonly next: ChordSpan | null;
  readonly beatsToNext: number | null;
  /** Tones of the next chord to land on, by the player's aim. */
  readonly targets: readonly TargetTone[];
  /** Whether those are the tones that the aim in hand asks for there; else they only help. */
  readonly targetsAreAim: boolean;
  /** Tones of the chord now that the aim in hand asks for while it lasts; none where it asks as a chord arrives. */
  readonly aimNow: readonly TargetTone[];
  readonly note: LiveNote | null;
  readonly levelDb: number;
}

/** What the aim in hand asks for over a chord, and when. */
export interface AimTones {
  /** As a chord arrives, or while it lasts. */
  readonly onArrival: boolean;
  readonly over: (chord: Chord) => readonly TargetTone[];
}

const NONE: readonly TargetTone[] = [];
const NO_AIM: AimTones = { onArrival: true, over: () => NONE };

/**
 * @param timeline as the player reads it
 * @param beat as heard now
 * @param reading the listener's newest answer, null before there is one
 * @param targetsOver the tones to land on over a chord
 * @param semitones from what sounds to what the player reads
 */
export function liveMomentAt(
  timeline: Timeline,
  beat: number,
  reading: LiveReading | null,
  referenceHz: number,
  targetsOver: (chord: Chord) => readonly TargetTone[],
  semitones = 0,
  aim: AimTones = NO_AIM,
): LiveMoment {
  const { beatsPerBar, bars } = timeline;
  const bar = Math.floor(beat / beatsPerBar);
  const chorus = Math.floor(bar / bars);
  const chordNow = timeline.chordAt(beat);
  const next = timeline.nextChange(beat);
  const midi = reading?.midi ?? null;
  return {
    beat,
    beatInBar: beat - bar * beatsPerBar,
    bar: chorus < 0 ? bar : bar - chorus * bars,
    chorus,
    chordNow,
    next,
    beatsToNext: next === null ? null : next.startBeat - beat,
    targets: next?.chord ? targetsOver(next.chord) : [],
    targetsAreAim: aim.onArrival && next?.chord ? aim.over(next.chord).length > 0 : false,
    aimNow: aim.onArrival || chordNow === null ? NONE : aim.over(chordNow),
    note: midi === null ? null : liveNote(midi + semitones, chordNow, keyAt(timeline, beat), referenceHz),
    levelDb: reading?.levelDb ?? -Infinity,
  };
}

const palettes = new WeakMap<Chord, { readonly key: Key; readonly tones: ReadonlySet<number> }>();

/** The palette over a chord in a key, worked out once: the display asks at every frame. */
function paletteOf(chord: Chord, key: Key): ReadonlySet<number> {
  const known = palettes.get(chord);
  if (known?.key === key) return known.tones;
  const tones = palettePitchClasses('both pentatonics', key, chord);
  palettes.set(chord, { key, tones });
  return tones;
}

/**
 * The same timeline, for a display that asks for the next change at every frame: it is looked for once, and again when
 * it has come or the beat has gone back.
 */
export function cachingNextChange(timeline: Timeline): Timeline {
  let askedAt = Infinity;
  let found: ChordSpan | null = null;
  return {
    ...timeline,
    nextChange(beat) {
      if (beat < askedAt || (found !== null && beat >= found.startBeat)) {
        askedAt = beat;
        found = timeline.nextChange(beat);
      }
      return found;
    },
  };
}

function liveNote(midi: number, chord: Chord | null, key: Key, referenceHz: number): LiveNote {
  const named = nameNote(midi, referenceHz);
  const pitchClass = ((named.nearestMidi % 12) + 12) % 12;
  return {
    name: noteName(
      named.nearestMidi,
      chord === null ? nameInKey(pitchClass, key) : nameOverChord(pitchClass, chord),
    ),
    cents: named.cents,
    midi,
    degree: chord && degreeOver(pitchClass, chord),
    role: chord && roleOf(pitchClass, chord, paletteOf(chord, key)),
  };
}
