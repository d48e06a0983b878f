/** One instrument view through a take: follows the moment, keeps the hand and the page, and draws when something changed. */
import type { Key } from '../../core/music/chord.ts';
import { instrumentOf, INSTRUMENTS, withCapo, type Instrument } from '../../core/music/instruments.ts';
import { nameInKey, nameOverChord } from '../../core/music/pitch-names.ts';
import { pitchedIn, readingOf } from '../../core/music/reading.ts';
import { nearestPosition, positionsOf, type NeckPosition } from '../../core/music/where-it-lies.ts';
import { palettePitchClasses } from '../../core/grade/assign/scales.ts';
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { PlayingSettings } from '../../state/playing-settings.ts';
import type { LiveMoment } from '../../state/session.svelte.ts';
import { middleOf } from './staff.ts';
import { nearestTarget, twelveOf, type Twelve } from './tones.ts';
import type { InstrumentView, Surface } from './view.ts';
import { viewsFor } from './view-choice.ts';
import { viewOf } from './views.ts';

/** How far the register leads the staff's page before it is turned, in semitones. */
const STAFF_FOLLOWS = 7;

/**
 * The instrument as it is set: with its capo, where it has a neck to lay one on. The moment comes as the player reads
 * it; for a transposing instrument nothing is left to transpose.
 */
export function instrumentAsSet({ instrument, capo, pitch }: PlayingSettings): Instrument {
  const known = instrumentOf(instrument) ?? INSTRUMENTS[0]!;
  if (known.neck !== null) return withCapo(known, Math.min(capo, known.neck.frets - 1));
  if (pitchedIn(known) === null) return known;
  const { semitones } = readingOf(known, pitch);
  return {
    ...known,
    soundingFromWritten: 0,
    lowestMidi: known.lowestMidi + semitones,
    highestMidi: known.highestMidi + semitones,
  };
}

export class InstrumentPage {
  readonly #settings: PlayingSettings;
  readonly #instrument: Instrument;
  readonly #keyAt: (beat: number) => Key;
  readonly #noteName: (name: string) => string;
  /** null where no view was chosen, or one that does not suit the instrument. */
  readonly #draw: ReturnType<InstrumentView['open']> | null;
  #palette: ReadonlySet<number>;
  /** In which the moment stands. */
  #key: Key;
  #moment: LiveMoment | null = null;
  #state = '';
  #twelve: Twelve;
  /** The note played last, its whole sounding MIDI number and what it was in its chord. */
  #played: { readonly midi: number; readonly tone: TargetTone } | null = null;
  /** Where the hand is, and whether the note just played lies there (not off the neck). */
  #hand: NeckPosition | null = null;
  #onNeck = false;
  #register: number;

  /**
   * @param keyAtBeat the key at a beat of the take
   * @param noteName a note name as the player's language spells it
   */
  constructor(
    settings: PlayingSettings,
    keyAtBeat: (beat: number) => Key,
    noteName: (name: string) => string,
  ) {
    this.#settings = settings;
    this.#instrument = instrumentAsSet(settings);
    this.#keyAt = keyAtBeat;
    this.#noteName = noteName;
    const view = viewOf(settings.view);
    const suits = viewsFor(this.#instrument).some((id) => id === settings.view);
    this.#draw = view !== null && suits ? view.open() : null;
    this.#key = keyAtBeat(0);
    this.#palette = palettePitchClasses('both pentatonics', this.#key);
    this.#twelve = twelveOf(null, [], this.#palette);
    this.#register = middleOf(this.#instrument, settings.clef);
  }

  /** Takes the moment in; true where the picture is another one now. */
  follow(live: LiveMoment, width: number, height: number): boolean {
    const played = live.note === null || this.#settings.quiet ? null : Math.round(live.note.midi);
    const key = this.#keyAt(live.beat);
    const state = `${key.tonic}|${live.chordNow?.symbol}|${live.next?.startBeat}|${played ?? this.#played?.midi}|${width}|${height}`;
    if (state === this.#state) return false;
    this.#state = state;
    this.#moment = live;
    if (key !== this.#key) {
      this.#key = key;
      this.#palette = palettePitchClasses('both pentatonics', key);
    }
    this.#twelve = twelveOf(live.chordNow, live.targets, this.#palette);
    if (played !== null && live.note !== null) {
      const pitchClass = ((played % 12) + 12) % 12;
      const name =
        live.chordNow === null ? nameInKey(pitchClass, this.#key) : nameOverChord(pitchClass, live.chordNow);
      const { degree, role } = live.note;
      this.#played = {
        midi: played,
        tone: { pitchClass, degree: degree ?? '', role: role ?? 'outside', name },
      };
      this.#moveHand(played);
    }
    if (this.#played !== null && Math.abs(this.#played.midi - this.#register) > STAFF_FOLLOWS)
      this.#register = this.#played.midi;
    return true;
  }

  draw(surface: Surface): void {
    const targets = this.#moment?.targets ?? [];
    const played = this.#played;
    this.#draw?.(surface, {
      instrument: this.#instrument,
      settings: this.#settings,
      twelve: this.#twelve,
      now: this.#moment?.chordNow?.tones ?? [],
      targets,
      played,
      hand: this.#hand,
      playedOnNeck: this.#onNeck,
      goal: played === null ? null : (nearestTarget(played.midi, targets)?.midi ?? null),
      register: this.#register,
      label: (tone) => (this.#settings.labels === 'degrees' ? tone.degree : this.#noteName(tone.name)),
    });
  }

  #moveHand(midi: number): void {
    const near = this.#hand === null ? null : nearestPosition(midi, this.#instrument, this.#hand);
    const place = near ?? positionsOf(midi, this.#instrument)[0] ?? null;
    this.#onNeck = place !== null;
    this.#hand = place ?? this.#hand;
  }
}
