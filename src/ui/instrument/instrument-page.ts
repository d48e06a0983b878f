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
import type { Inks } from '../parts/inks.ts';
import { drawKeyboard } from './draw-keyboard.ts';
import { drawNeck } from './draw-neck.ts';
import { drawStaff } from './draw-staff.ts';
import { keysOf, type Keys } from './keyboard.ts';
import { windowOf, type FretWindow } from './neck.ts';
import { middleOf } from './staff.ts';
import { nearestTarget, twelveOf, type Twelve } from './tones.ts';

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
  #palette: ReadonlySet<number>;
  /** In which the moment stands. */
  #key: Key;
  #moment: LiveMoment | null = null;
  #state = '';
  #twelve: Twelve;
  #heard: number | null = null;
  #heardTone: TargetTone | null = null;
  /** Where the hand is, and whether the note just played lies there (not off the neck). */
  #hand: NeckPosition | null = null;
  #onNeck = false;
  #window: FretWindow | null = null;
  #keys: Keys | null = null;
  #register: number;

  /** @param keyAtBeat the key at a beat of the take */
  constructor(settings: PlayingSettings, keyAtBeat: (beat: number) => Key) {
    this.#settings = settings;
    this.#instrument = instrumentAsSet(settings);
    this.#keyAt = keyAtBeat;
    this.#key = keyAtBeat(0);
    this.#palette = palettePitchClasses('both pentatonics', this.#key);
    this.#twelve = twelveOf(null, [], this.#palette);
    this.#register = middleOf(this.#instrument, settings.clef);
  }

  /** Takes the moment in; true where the picture is another one now. */
  follow(live: LiveMoment, width: number, height: number): boolean {
    const played = live.note === null || this.#settings.quiet ? null : Math.round(live.note.midi);
    const key = this.#keyAt(live.beat);
    const state = `${key.tonic}|${live.chordNow?.symbol}|${live.next?.startBeat}|${played ?? this.#heard}|${width}|${height}`;
    if (state === this.#state) return false;
    this.#state = state;
    this.#moment = live;
    if (key !== this.#key) {
      this.#key = key;
      this.#palette = palettePitchClasses('both pentatonics', key);
    }
    this.#twelve = twelveOf(live.chordNow, live.targets, this.#palette);
    if (played !== null && live.note !== null) {
      this.#heard = played;
      const pitchClass = ((played % 12) + 12) % 12;
      this.#heardTone = {
        pitchClass,
        degree: live.note.degree ?? '',
        role: live.note.role ?? 'outside',
        name:
          live.chordNow === null
            ? nameInKey(pitchClass, this.#key)
            : nameOverChord(pitchClass, live.chordNow),
      };
      this.#moveHand(played);
    }
    if (this.#heard !== null && Math.abs(this.#heard - this.#register) > STAFF_FOLLOWS)
      this.#register = this.#heard;
    return true;
  }

  draw(context: CanvasRenderingContext2D, width: number, height: number, inks: Inks): void {
    const { view, frets, leftHanded, clef } = this.#settings;
    const instrument = this.#instrument;
    const targets = this.#moment?.targets ?? [];
    const goal = this.#heard === null ? null : (nearestTarget(this.#heard, targets)?.midi ?? null);
    const label = this.#label;
    const twelve = this.#twelve;
    if (view === 'neck' && instrument.neck !== null) {
      const { neck } = instrument;
      const window = windowOf(neck, frets, width, this.#hand, this.#window);
      this.#window = window;
      drawNeck(context, width, height, inks, {
        instrument,
        neck,
        window,
        leftHanded,
        twelve,
        hand: this.#onNeck ? this.#hand : null,
        goal,
        label,
      });
    } else if (view === 'keyboard') {
      const register = this.#heard ?? (instrument.lowestMidi + instrument.highestMidi) / 2;
      this.#keys = keysOf(width, register, this.#keys);
      drawKeyboard(context, width, height, inks, {
        keys: this.#keys,
        twelve,
        heard: this.#heard,
        goal,
        label,
      });
    } else if (view === 'staff') {
      const now = this.#moment?.chordNow?.tones ?? [];
      const heard =
        this.#heard === null || this.#heardTone === null
          ? null
          : { midi: this.#heard, tone: this.#heardTone };
      drawStaff(context, width, height, inks, {
        instrument,
        clef,
        now,
        targets,
        register: this.#register,
        heard,
        goal,
        label,
      });
    }
  }

  readonly #label = (tone: TargetTone): string =>
    this.#settings.labels === 'degrees' ? tone.degree : tone.name;

  #moveHand(midi: number): void {
    const near = this.#hand === null ? null : nearestPosition(midi, this.#instrument, this.#hand);
    const place = near ?? positionsOf(midi, this.#instrument)[0] ?? null;
    this.#onNeck = place !== null;
    this.#hand = place ?? this.#hand;
  }
}
