/** The take in hand, whichever way it is heard. */
import type { MidiConnection } from './midi-connection.svelte.ts';
import { MidiTake } from './midi-take.ts';
import type { Setup } from './setup.svelte.ts';
import { MicrophoneTake, type TakeEvents, type TakePlan, type TakePorts } from './microphone-take.ts';

export type RunningTake = MicrophoneTake | MidiTake;

export const createTake = (
  ports: TakePorts & { readonly setup: Setup; readonly midi: MidiConnection },
  plan: TakePlan,
  events: TakeEvents,
): RunningTake =>
  ports.setup.settings.input === 'midi'
    ? new MidiTake(ports, plan, events)
    : new MicrophoneTake(ports, plan, events);
