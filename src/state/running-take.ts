/** The take that is being played: one from the microphone or one by MIDI, as the setup has it. */
import { MicrophoneTake, type TakePorts } from './microphone-take.ts';
import type { MidiConnection } from './midi-connection.svelte.ts';
import { MidiTake } from './midi-take.ts';
import type { Setup } from './setup.svelte.ts';
import type { TakeEvents, TakePlan } from './take-plan.ts';

export type RunningTake = MicrophoneTake | MidiTake;

export const createTake = (
  ports: TakePorts & { readonly setup: Setup; readonly midi: MidiConnection },
  plan: TakePlan,
  events: TakeEvents,
): RunningTake =>
  ports.setup.settings.input === 'midi'
    ? new MidiTake(ports, plan, events)
    : new MicrophoneTake(ports, plan, events);
