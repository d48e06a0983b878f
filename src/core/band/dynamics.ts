/**
 * How loud a band plays as the form goes by: a phrase grows to its end, a chorus grows into the next, and the first
 * choruses leave room for later ones. *Common practice*; small on purpose, the player is to be heard.
 */
import type { BandEvent } from './events.ts';
import type { BandForm } from './form.ts';
import { sameBeat } from './pattern.ts';

const phraseBars = 4;
/** Steps of MIDI velocity; one is about a seventh of a decibel in the middle. */
const overPhrase = [-3, -1, 0, 3] as const;
const overChorus = 3;
const eachChorus = 2;
const mostChoruses = 3;

/** The event as loud as its place in the form has it; the click keeps its own. `chorus` counts from 0. */
export function swelled(event: BandEvent, form: BandForm, chorus: number): BandEvent {
  if (event.part === 'click') return event;
  const bar = Math.floor((event.beat + sameBeat) / form.beatsPerBar);
  const lift =
    overPhrase[bar % phraseBars]! +
    (overChorus * bar) / Math.max(1, form.bars) +
    eachChorus * Math.min(mostChoruses, chorus);
  return { ...event, velocity: Math.min(127, Math.max(1, Math.round(event.velocity + lift))) };
}
