import type { BandEvent } from './events.ts';
import type { BandForm } from './form.ts';
import { drumKeys, velocityOf, type DrumName, type DrumPattern, type Feel } from './feels/feel.ts';
import { barSigns, patternOf, readBar, sameBeat } from './pattern.ts';
import { loosen, type Chance } from '../base/random.ts';

/** Drums ignore note-off; the length is for the written page. */
const hitBeats = 0.25;
/** Fills before a section inside the chorus, and at its end. */
const fillShare = { section: 0.45, chorus: 0.85 } as const;
/** Crash on the first beat of a chorus that a fill led into; softer and rarer at a section. */
const crash = { chorus: { share: 0.7, velocity: 84 }, section: { share: 0.3, velocity: 68 } } as const;
/** A crash takes the place of the cymbal that keeps time. */
const timekeepers: ReadonlySet<number> = new Set([drumKeys.hat, drumKeys.ride, drumKeys.shaker]);

/** One chorus of drums. `chorus` counts from 0; the first one opens without a crash. */
export function playDrums(
  feel: Feel,
  form: BandForm,
  swing: number,
  chorus: number,
  chance: Chance,
): readonly BandEvent[] {
  const patterns = patternOf(feel.drums, chance, form.bars);
  const events: BandEvent[] = [];
  for (let bar = 0; bar < form.bars; bar++) {
    const last = bar === form.bars - 1;
    const beforeSection = form.bars >= 4 && (last || form.sectionBars.includes(bar + 1));
    const fills = beforeSection && chance.next() < (last ? fillShare.chorus : fillShare.section);
    const pattern = fills ? chance.pick(feel.fills) : patterns[bar]!;
    events.push(...playBar(pattern, form, bar, swing, chance));
  }
  return withCrashes(events, form, chorus, chance);
}

function playBar(
  pattern: DrumPattern,
  form: BandForm,
  bar: number,
  swing: number,
  chance: Chance,
): BandEvent[] {
  const lines = Object.entries(pattern.lines) as [DrumName, string][];
  return lines.flatMap(([drum, line]) => {
    const signs = barSigns(line, pattern.stepsPerBeat, bar, form.beatsPerBar);
    return readBar(signs, pattern.stepsPerBeat, bar * form.beatsPerBar, swing).map((step) => ({
      beat: step.beat,
      durationBeats: hitBeats,
      part: 'drums' as const,
      midi: drumKeys[drum],
      velocity: loosen(velocityOf[step.sign] ?? 80, chance),
    }));
  });
}

function withCrashes(
  events: readonly BandEvent[],
  form: BandForm,
  chorus: number,
  chance: Chance,
): readonly BandEvent[] {
  const starts = form.bars < 4 ? [] : form.sectionBars.filter((bar) => bar > 0 || chorus > 0);
  const crashes = starts.flatMap((bar) => {
    const { share, velocity } = bar === 0 ? crash.chorus : crash.section;
    if (chance.next() >= share) return [];
    return [
      {
        beat: bar * form.beatsPerBar,
        durationBeats: 1,
        part: 'drums' as const,
        midi: drumKeys.crash,
        velocity: loosen(velocity, chance),
      },
    ];
  });
  const taken = (event: BandEvent) =>
    timekeepers.has(event.midi) && crashes.some((hit) => Math.abs(hit.beat - event.beat) < sameBeat);
  return [...events.filter((event) => !taken(event)), ...crashes];
}
