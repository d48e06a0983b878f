/** The take in hand, whichever way it is heard. */
import type { MidiDesk } from './midi-desk.svelte.ts';
import { MidiTake } from './midi-take.ts';
import type { Setup } from './setup.svelte.ts';
import { TakeInHand, type TakeEvents, type TakePlan, type TakePorts } from './take-in-hand.ts';

export type AnyTake = TakeInHand | MidiTake;

export const newTake = (
  ports: TakePorts & { readonly setup: Setup; readonly midi: MidiDesk },
  plan: TakePlan,
  events: TakeEvents,
): AnyTake =>
  ports.setup.settings.input === 'midi'
    ? new MidiTake(ports, plan, events)
    : new TakeInHand(ports, plan, events);
