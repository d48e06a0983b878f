import { keyAt } from '../chart/keys-through.ts';
import type { ChordSpan } from '../chart/timeline.ts';
import type { Chord } from '../music/chord.ts';
import type { BandEvent } from './events.ts';
import { velocityOf, type Feel } from './feels/feel.ts';
import type { BandForm } from './form.ts';
import { barSigns, patternOf, readBar, sameBeat, spanAfter, type Step } from './pattern.ts';
import { loosen, type Chance } from '../base/random.ts';
import { voiceChords, type Voicing } from './voicing.ts';

/** Chords sit behind the player. */
const softer = 0.82;
/** Steps of velocity within one chord. */
const topFinger = 4;
const innerFingers = -3;
const fingerLoose = 3;
/** A chord that comes early is held over the bar line by this much. */
const earlyHoldBeats = 0.5;

/** One chorus of chords: rhythm from the feel, placings by least motion. */
export function playChords(feel: Feel, form: BandForm, swing: number, chance: Chance): readonly BandEvent[] {
  const voicings = spanVoicings(feel, form);
  const ofBar = patternOf(feel.chords, chance, form.bars);
  const steps = ofBar.flatMap((pattern, bar) => {
    const signs = barSigns(pattern.line, pattern.stepsPerBeat, bar, form.beatsPerBar);
    return readBar(signs, pattern.stepsPerBeat, bar * form.beatsPerBar, swing);
  });
  const chorus = form.bars * form.beatsPerBar;
  const feelChangesAt = (beat: number) =>
    form.feelChanges.some(({ bar }) => Math.abs(bar * form.beatsPerBar - beat) < sameBeat);
  const strokes: { step: Step; voicing: Voicing }[] = [];
  const early = new Set<ChordSpan>();
  for (const span of form.spans) {
    const next = spanAfter(form, span);
    const inside = steps.filter(
      (step) => step.beat > span.startBeat - sameBeat && step.beat < span.endBeat - sameBeat,
    );
    const struck: { step: Step; voicing: Voicing }[] = [];
    const own = voicings.get(span);
    let isHeard = early.has(span);
    for (const step of inside) {
      // A chord that came early is not struck again on the beat it came for.
      if (early.has(span) && step.beat - span.startBeat < sameBeat) continue;
      // An early chord at the very end would belong to a chorus that may not come, one before a change of feel to
      // players who have not begun.
      const isEarly =
        step.sign === '>' &&
        span.chord !== null &&
        step.beat > span.endBeat - 1 &&
        span.endBeat < chorus - sameBeat &&
        !feelChangesAt(span.endBeat);
      const voicing = isEarly && next ? voicings.get(next) : own;
      if (!voicing) continue;
      if (voicing === own) isHeard = true;
      if (isEarly && next) early.add(next);
      const room = span.endBeat - step.beat + (isEarly ? earlyHoldBeats : 0);
      const wanted = isEarly ? room : step.durationBeats;
      struck.push({ step: { ...step, durationBeats: Math.min(wanted, room) }, voicing });
    }
    // Every chord is heard: one that no step falls on, or none but the next chord's early one, is struck as it arrives.
    if (own && !isHeard) {
      const length = Math.min(2, span.endBeat - span.startBeat);
      struck.unshift({ step: { beat: span.startBeat, durationBeats: length, sign: 'x' }, voicing: own });
    }
    strokes.push(...struck);
  }
  return strokes.flatMap(({ step, voicing }, i) => {
    const room = (strokes[i + 1]?.step.beat ?? Infinity) - step.beat;
    return strike({ ...step, durationBeats: Math.min(step.durationBeats, room) }, voicing, feel, chance);
  });
}

function strike(step: Step, voicing: Voicing, feel: Feel, chance: Chance): readonly BandEvent[] {
  const velocity = loosen(Math.round((velocityOf[step.sign] ?? 80) * softer), chance);
  // The top note is the loudest, the inner ones are a little softer, and no two have the same velocity.
  const ofVoice = (i: number) =>
    velocity +
    (i === voicing.length - 1 ? topFinger : innerFingers) +
    Math.round((2 * chance.next() - 1) * fingerLoose);
  return voicing.map((midi, i) => ({
    beat: step.beat,
    durationBeats: step.durationBeats * feel.chordGate,
    part: 'chords' as const,
    midi,
    velocity: Math.min(127, Math.max(1, ofVoice(i))),
  }));
}

/** The placing of every span that has a chord; a chord written again keeps its own. */
export function spanVoicings(feel: Feel, form: BandForm): ReadonlyMap<ChordSpan, Voicing> {
  const sounding = form.spans.filter((span): span is ChordSpan & { chord: Chord } => span.chord !== null);
  const voicings = voiceChords(
    sounding.map((span) => span.chord),
    sounding.map((span) => keyAt(form, span.startBeat)),
    feel.addsNinths,
  );
  return new Map(sounding.map((span, i) => [span, voicings[i]!]));
}
