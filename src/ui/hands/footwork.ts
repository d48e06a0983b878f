/**
 * One foot, one switch: what a press means on each screen. A short press starts, stops and starts again; held down in
 * the review it takes the next aim. A second switch takes the next aim at once. Keys and MIDI pedals come here alike.
 */
import type { Pedal } from '../../state/playing-settings.ts';

export type Command = 'go' | 'next aim' | 'back';
export type Screen = 'ready' | 'playing' | 'grading' | 'review' | 'trouble';

/** Longer than a step on the switch, shorter than impatience. */
export const HOLD_MS = 700;

/** The two switches of a pedal, by the keys that it sends. */
const SWITCHES: Readonly<Record<Pedal, readonly [first: readonly string[], second: readonly string[]]>> = {
  space: [[], []],
  pages: [['PageDown'], ['PageUp']],
  arrows: [
    ['ArrowRight', 'ArrowDown'],
    ['ArrowLeft', 'ArrowUp'],
  ],
  enter: [['Enter'], []],
};
const ALL_SWITCHES = Object.values(SWITCHES).flat(2);

/** What stands under the focus: something that takes a press itself, something that takes letters and arrows, or neither. */
export type Under = 'button' | 'field' | null;

export type Press = 'first' | 'second' | 'back' | null;

/**
 * Which switch a key is. While playing there is nothing to scroll and nothing to fill in: every key that any pedal
 * sends is the first. Elsewhere keys keep their usual work, except those of the pedal that was chosen.
 * @param key as `KeyboardEvent.key`
 */
export function pressOf(key: string, screen: Screen, pedal: Pedal, under: Under): Press {
  if (screen === 'playing')
    return key === ' ' || key === 'Escape' || ALL_SWITCHES.includes(key) ? 'first' : null;
  if (key === 'Escape') return screen === 'review' || screen === 'trouble' ? 'back' : null;
  // There it plays the take back and pauses it, as in any player.
  if (screen === 'review' && key === ' ') return null;
  if (under === 'field') return null;
  const [first, second] = SWITCHES[pedal];
  if (second.includes(key)) return 'second';
  if (under === 'button') return first.includes(key) && key !== 'Enter' ? 'first' : null;
  return key === ' ' || first.includes(key) ? 'first' : null;
}

export interface FootworkPorts {
  screen(): Screen;
  act(command: Command): void;
  /** Calls back later; returns a function that cancels it. */
  later(act: () => void, ms: number): () => void;
}

/** Turns presses and releases into commands. */
export class Footwork {
  readonly #ports: FootworkPorts;
  #callOff: (() => void) | null = null;

  constructor(ports: FootworkPorts) {
    this.#ports = ports;
  }

  press(which: Exclude<Press, null>): void {
    if (which === 'back') return this.#ports.act('back');
    if (which === 'second') return this.#ports.act('next aim');
    // Only the review has two answers to a press; everywhere else it must not wait for the foot to rise.
    if (this.#ports.screen() !== 'review') return this.#ports.act('go');
    this.#callOff?.();
    this.#callOff = this.#ports.later(() => {
      this.#callOff = null;
      this.#ports.act('next aim');
    }, HOLD_MS);
  }

  /** The foot rises; a press that began on another screen has been answered. */
  release(): void {
    if (this.#callOff === null) return;
    this.#callOff();
    this.#callOff = null;
    if (this.#ports.screen() === 'review') this.#ports.act('go');
  }

  dispose(): void {
    this.#callOff?.();
    this.#callOff = null;
  }
}
