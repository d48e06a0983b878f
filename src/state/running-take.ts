/** The take that is being played: one from the microphone or one by MIDI, as the setup has it. */
import type { Timeline } from '../core/chart/timeline.ts';
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

/** The take ends itself so long after its last chorus: an anticipated note rings, nothing new is landed. */
const BEATS_AFTER_LAST_CHORUS = 0.25;

/** Whether the last of so many choruses is over; a take without a number of choruses ends when it is stopped. */
export const areChorusesOver = (
  beat: number,
  { bars, beatsPerBar }: Pick<Timeline, 'bars' | 'beatsPerBar'>,
  choruses: number | null,
  passes: number,
): boolean => choruses !== null && beat >= (choruses * bars * beatsPerBar) / passes + BEATS_AFTER_LAST_CHORUS;
