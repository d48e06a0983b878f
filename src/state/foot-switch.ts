/**
 * A foot switch that sends MIDI, of any make: which message it sends when it is pressed, and what that means. Switches
 * send a controller, a program change or a note; pressed may be a high or a low value; some also send the release, others
 * change their value at each press (MIDI 1.0: a switch is on from 64; the rest is common practice).
 */
import * as v from 'valibot';

/** Which messages are the switch's. */
interface Source {
  readonly kind: 'controller' | 'program' | 'note';
  /** From 0. */
  readonly channel: number;
  /** Of the controller, the program or the key. */
  readonly number: number;
}

/** A switch that was learned from a press. */
export interface LearnedFoot extends Source {
  /** Down is low: the plug of the pedal is the other way round. */
  readonly inverted: boolean;
  /** The switch sends nothing when it is released: every message is a press. */
  readonly pressesOnly: boolean;
}

export const learnedFoot: v.GenericSchema<unknown, LearnedFoot> = v.object({
  kind: v.picklist(['controller', 'program', 'note']),
  channel: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(15)),
  number: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(127)),
  inverted: v.boolean(),
  pressesOnly: v.boolean(),
});

/** A press without a release is both at once. */
export type Step = 'down' | 'up' | 'press';

/** Status bytes without their channel. */
const NOTE_OFF = 0x80;
const NOTE_ON = 0x90;
const CONTROL = 0xb0;
const PROGRAM = 0xc0;
const SWITCH_ON = 64;
/** Damper, sostenuto, soft: what a foot switch is wired to where nothing was learned. */
const PEDALS: readonly number[] = [64, 66, 67];
/** Controllers that no foot sends by itself: bank and parameter numbers, and the channel's modes. */
const NO_SWITCH: readonly number[] = [0, 32, 6, 38, 96, 97, 98, 99, 100, 101];
const CHANNEL_MODES = 120;
/** A switch is not held longer than this: a later message is the next press of a switch that flips. */
const LONGEST_HOLD_SECONDS = 3;

/** A message as a switch would send it: from where, and whether it is high; a program change is neither. */
interface Sent {
  readonly source: Source;
  readonly high: boolean | null;
}

function sentBy(message: Uint8Array): Sent | null {
  const [status = 0, number = -1, value = 0] = message;
  const channel = status & 0x0f;
  if (number < 0) return null;
  switch (status & 0xf0) {
    case CONTROL:
      if (number >= CHANNEL_MODES || NO_SWITCH.includes(number)) return null;
      return { source: { kind: 'controller', channel, number }, high: value >= SWITCH_ON };
    case PROGRAM:
      return { source: { kind: 'program', channel, number }, high: null };
    case NOTE_ON:
      // A note-on without velocity is a note-off (MIDI 1.0).
      return { source: { kind: 'note', channel, number }, high: value > 0 };
    case NOTE_OFF:
      return { source: { kind: 'note', channel, number }, high: false };
    default:
      return null;
  }
}

const same = (one: Source, other: Source): boolean =>
  one.kind === other.kind && one.channel === other.channel && one.number === other.number;

/** Reads the presses of one switch out of all messages; without a learned one, of any damper, sostenuto or soft pedal. */
export class FootSwitch {
  readonly #learned: LearnedFoot | null;
  /** Of switches that were not learned. The first message of each is taken for a press. */
  readonly #inverted = new Map<string, boolean>();
  #down: { readonly key: string; readonly atSeconds: number } | null = null;

  constructor(learned: LearnedFoot | null) {
    this.#learned = learned;
  }

  /** @returns what the foot did; null for a message that is not the switch's, or that changes nothing */
  hears(message: Uint8Array, atSeconds: number): Step | 'nothing new' | null {
    const sent = sentBy(message);
    if (sent === null || !this.#isMine(sent.source)) return null;
    if (this.#learned?.pressesOnly === true || sent.high === null)
      return sent.source.kind === 'note' && sent.high === false ? 'nothing new' : 'press';
    const key = `${sent.source.channel} ${sent.source.number}`;
    const down = sent.high !== this.#isInverted(key, sent.high);
    const before = this.#down?.key === key ? this.#down : null;
    if (down) {
      if (before !== null) return 'nothing new';
      this.#down = { key, atSeconds };
      return 'down';
    }
    if (before === null) return 'nothing new';
    this.#down = null;
    return atSeconds - before.atSeconds > LONGEST_HOLD_SECONDS && this.#learned === null ? 'press' : 'up';
  }

  #isMine(source: Source): boolean {
    if (this.#learned !== null) return same(source, this.#learned);
    return source.kind === 'controller' && PEDALS.includes(source.number);
  }

  #isInverted(key: string, high: boolean): boolean {
    if (this.#learned !== null) return this.#learned.inverted;
    const known = this.#inverted.get(key) ?? !high;
    this.#inverted.set(key, known);
    return known;
  }
}

/** Learns a switch from one press that is let go again. */
export class FootLearning {
  #first: Sent | null = null;

  /** @returns the switch as soon as it is known; null while it has yet to be let go */
  hears(message: Uint8Array): LearnedFoot | null {
    const sent = sentBy(message);
    if (sent === null) return null;
    const first = this.#first;
    if (first === null) {
      // A key that is let go was pressed before anybody asked.
      if (sent.source.kind === 'note' && sent.high === false) return null;
      this.#first = sent;
      return sent.high === null ? this.#found(sent, true) : null;
    }
    return same(first.source, sent.source) && sent.high !== first.high ? this.#found(first, false) : null;
  }

  /** Whether it was pressed. */
  get pressed(): boolean {
    return this.#first !== null;
  }

  /** It was released long ago: a switch that sent nothing then sends nothing when it is released. */
  finish(): LearnedFoot | null {
    return this.#first === null ? null : this.#found(this.#first, true);
  }

  #found({ source, high }: Sent, pressesOnly: boolean): LearnedFoot {
    return { ...source, inverted: !pressesOnly && high === false, pressesOnly };
  }
}
