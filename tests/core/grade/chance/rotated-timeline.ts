/** The same chart begun some bars later, made plainly: what the quick reading of rotated charts is compared with. */
import { timelineOf } from '../../../../src/core/chart/build-timeline.ts';
import type { ChordSpan, Timeline } from '../../../../src/core/chart/timeline.ts';

/**
 * A timeline whose chart starts `bars` bars later and closes on itself; the beats stay where they are, and what lies
 * before the first downbeat has no chord. A list of beats is rotated as one long chart, which is still played once.
 */
export function rotateTimeline(timeline: Timeline, bars: number): Timeline {
  const {
    beatMap,
    beatsPerBar,
    divisions,
    bars: barsInAll,
    roundBeats,
    chart,
    key,
    swing,
    barSwings,
  } = timeline;
  const goesRound = beatMap.bpm !== null;
  const rotated = rotateSpans(timeline.spansBetween(0, roundBeats), bars * beatsPerBar, roundBeats);
  const chorus = goesRound
    ? rotated
    : rotated.map((span, i) => (i === rotated.length - 1 ? endless(span) : span));
  return timelineOf({
    beatMap,
    beatsPerBar,
    divisions,
    bars: barsInAll,
    roundBeats,
    chart,
    key,
    swing,
    ...(barSwings && { barSwings }),
    before: [],
    chorus,
    chorusBeats: goesRound ? roundBeats : null,
  });
}

/** Behind a list of beats its last chord stands on. */
const endless = (span: ChordSpan): ChordSpan => ({ ...span, endBeat: Infinity });

/** Shifts a cycle of spans to the left; the span across the seam is cut there, and no span is left empty. */
function rotateSpans(
  spans: readonly ChordSpan[],
  shiftBeats: number,
  cycleBeats: number,
): readonly ChordSpan[] {
  const pieces = spans.flatMap((span) => {
    const endBeat = Math.min(cycleBeats, span.endBeat);
    const ahead = { ...span, endBeat: Math.min(shiftBeats, endBeat) };
    const behind = { ...span, startBeat: Math.max(shiftBeats, span.startBeat), endBeat };
    return [moved(ahead, cycleBeats - shiftBeats), moved(behind, -shiftBeats)];
  });
  return pieces.filter((span) => span.endBeat > span.startBeat).sort((a, b) => a.startBeat - b.startBeat);
}

const moved = (span: ChordSpan, beats: number): ChordSpan => ({
  ...span,
  startBeat: span.startBeat + beats,
  endBeat: span.endBeat + beats,
});
