import { keyAt } from '../chart/keys-through.ts';
import type { ChordSpan } from '../chart/timeline.ts';
import type { Chord, Key } from '../music/chord.ts';
import type { BandEvent } from './events.ts';
import type { Feel, LinePattern } from './feels/feel.ts';
import type { BandForm } from './form.ts';
import { barSigns, patternOf, readBar, sameBeat, spanAfter, spanAt, type Step } from './pattern.ts';
import { loosen, type Chance } from '../base/random.ts';
import { bassPitchClass, inKey } from './voicing.ts';
import { bassRange, walkingLine } from './walk.ts';

const velocity = { strong: 96, weak: 88, early: 82, skip: 58 } as const;
/** Of the beats that may have a skip behind them. */
const skipShare = 0.14;
/** Roots of patterns lie from here up one octave: F1 to E2, where a bass sounds clearly and thirds fit above. */
const lowestRoot = 29;

/** One chorus of bass. */
export function playBass(feel: Feel, form: BandForm, swing: number, chance: Chance): readonly BandEvent[] {
  const notes =
    feel.bass === 'walk'
      ? walk(form, swing, chance)
      : feel.bass === 'two'
        ? twoFeel(form, chance)
        : patterned(feel.bass, form, swing, chance);
  return notes.map((note) => ({ ...note, durationBeats: note.durationBeats * feel.bassGate }));
}

const event = (beat: number, durationBeats: number, midi: number, velocity: number): BandEvent => ({
  beat,
  durationBeats,
  part: 'bass',
  midi,
  velocity,
});

/** Even quarters that lean on two and four, and now and then a skip: the string brushed before the next beat. */
function walk(form: BandForm, swing: number, chance: Chance): readonly BandEvent[] {
  const line = walkingLine(form, chance);
  return line.flatMap((midi, beat) => {
    if (midi === null) return [];
    const backbeat = (beat % form.beatsPerBar) % 2 === 1;
    const note = event(beat, 1, midi, loosen(backbeat ? velocity.strong : velocity.weak, chance));
    const skips = chance.next() < skipShare && !backbeat && line[beat + 1] !== null;
    if (!skips) return [note];
    return [
      { ...note, durationBeats: swing },
      event(beat + swing, 1 - swing, midi, loosen(velocity.skip, chance)),
    ];
  });
}

/** Half notes out of a walking line; the beat before a change keeps its step. */
function twoFeel(form: BandForm, chance: Chance): readonly BandEvent[] {
  const line = walkingLine(form, chance);
  const starts = new Set(form.spans.map((span) => span.startBeat));
  const isStop = (beat: number) =>
    (beat % form.beatsPerBar) % 2 === 0 || starts.has(beat) || starts.has(beat + 1);
  const stops = line.map((_, beat) => beat).filter(isStop);
  return stops.flatMap((beat, i) => {
    const midi = line[beat];
    const end = stops[i + 1] ?? line.length;
    return midi === null || midi === undefined
      ? []
      : [event(beat, end - beat, midi, loosen(velocity.weak, chance))];
  });
}

function patterned(
  patterns: readonly LinePattern[],
  form: BandForm,
  swing: number,
  chance: Chance,
): readonly BandEvent[] {
  const ofBar = patternOf(patterns, chance, form.bars);
  const steps = ofBar.flatMap((pattern, bar) => {
    const signs = barSigns(pattern.line, pattern.stepsPerBeat, bar, form.beatsPerBar);
    return readBar(signs, pattern.stepsPerBeat, bar * form.beatsPerBar, swing);
  });
  const events: BandEvent[] = [];
  for (const span of form.spans) {
    if (span.chord === null) continue;
    const next = spanAfter(form, span);
    const changes = next?.chord ? next.chord.symbol !== span.chord.symbol : false;
    const inside = steps.filter(
      (step) => step.beat > span.startBeat - sameBeat && step.beat < span.endBeat - sameBeat,
    );
    const root = bassRootOf(span.chord);
    for (const step of shaped(inside, span, changes)) {
      const midi =
        step.sign === 'a' && next?.chord
          ? approach(bassRootOf(next.chord), events.at(-1)?.midi ?? root, keyAt(form, next.startBeat), chance)
          : keyOf(step.sign, span.chord, root);
      const strong = step.beat - span.startBeat < sameBeat ? velocity.strong : velocity.weak;
      const length = Math.min(step.durationBeats, span.endBeat - step.beat);
      events.push(
        event(step.beat, length, midi, loosen(step.sign === 'a' ? velocity.early : strong, chance)),
      );
    }
  }
  return events;
}

/** A span opens on its root and, before a change, leaves on a step into the next root. */
function shaped(steps: readonly Step[], span: ChordSpan, changes: boolean): readonly Step[] {
  const length = span.endBeat - span.startBeat;
  const first = steps[0];
  const opens = first !== undefined && first.beat - span.startBeat < sameBeat;
  const opening: Step = {
    beat: span.startBeat,
    durationBeats: opens ? first.durationBeats : Math.min(1, (first?.beat ?? span.endBeat) - span.startBeat),
    sign: 'R',
  };
  const middle = (opens ? steps.slice(1) : steps).map((step) =>
    step.sign === 'a' && !changes ? { ...step, sign: '5' } : step,
  );
  if (!changes || length < 2)
    return [opening, ...middle.map((step) => (step.sign === 'a' ? { ...step, sign: '5' } : step))];
  const lastBeat = span.endBeat - 1;
  const last = middle.at(-1);
  if (last && last.beat > lastBeat - sameBeat)
    return [opening, ...middle.slice(0, -1), { ...last, sign: 'a' }];
  const trimmed = [opening, ...middle].map((step) =>
    step.beat + step.durationBeats > lastBeat ? { ...step, durationBeats: lastBeat - step.beat } : step,
  );
  return [...trimmed, { beat: lastBeat, durationBeats: 1, sign: 'a' }];
}

/** The key a pattern's bass takes for a chord's root, or for the note behind its slash. */
export const bassRootOf = (chord: Chord): number =>
  lowestRoot + ((((bassPitchClass(chord) - lowestRoot) % 12) + 12) % 12);

/** Semitones above the root, where the chord does not say otherwise. */
const plainDegrees: Readonly<Record<string, number>> = { '3': 4, '5': 7, '6': 9, '7': 10 };

function keyOf(sign: string, chord: Chord, root: number): number {
  // Over a slash chord the bass note is the point of it: stay there.
  if (sign === 'R' || chord.bass !== null) return root;
  if (sign === '8') return root + 12;
  const role = { '3': 'third', '5': 'fifth', '7': 'seventh' }[sign];
  const minor = chord.tones.some((tone) => tone.role === 'third' && tone.degree === 'b3');
  const named = chord.tones.find((tone) => tone.role === (sign === '6' && minor ? 'seventh' : role));
  if (!named) return root + (sign === '7' ? 12 : sign === '3' ? 7 : (plainDegrees[sign] ?? 0));
  return root + ((((named.pitchClass - chord.rootPitchClass) % 12) + 12) % 12);
}

/** A half or whole step from the next root, on the side the line comes from, in the key where it can be. */
function approach(target: number, from: number, key: Key, chance: Chance): number {
  const side = from === target ? (chance.next() < 0.5 ? -1 : 1) : Math.sign(from - target);
  const [half, whole] = [target + side, target + 2 * side];
  const wholeFits = inKey(((whole % 12) + 12) % 12, key);
  const chosen = wholeFits && chance.next() < 0.5 ? whole : half;
  return chosen < bassRange.lowest ? target + 1 : chosen;
}

/** The root under a beat, for an ending. */
export function bassRootAt(form: BandForm, beat: number): number | null {
  const chord = spanAt(form, beat)?.chord;
  return chord ? bassRootOf(chord) : null;
}
