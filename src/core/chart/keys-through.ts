/** The keys that a chart goes through: palette and key degrees count from the one that stands where a note is played. */
import type { Chord, Key } from '../music/chord.ts';
import type { Chart } from './chart.ts';
import type { PlayedBar } from './play-order.ts';
import type { Timeline } from './timeline.ts';

type Through = Pick<Timeline, 'key' | 'keys' | 'bars' | 'beatsPerBar'>;

/** The key of each section as it is written: its own, or that of the section before. */
export function sectionKeys({ key, sections }: Pick<Chart, 'key' | 'sections'>): readonly Key[] {
  let standing = key;
  return sections.map((section) => (standing = section.key ?? standing));
}

/** What a timeline tells of keys on the way: nothing where the chart stays in one. */
export function keysOnTheWay(chart: Chart, played: readonly PlayedBar[]): Pick<Timeline, 'keys'> {
  if (chart.sections.every((section) => section.key === undefined)) return {};
  const own = sectionKeys(chart);
  const keys = played.map(({ section }, fromBar) => ({ fromBar, key: own[section] ?? chart.key }));
  return { keys: keys.filter(({ key }, bar) => bar === 0 || key !== keys[bar - 1]!.key) };
}

/**
 * The key at a beat, counted from the first downbeat; before it, the first one.
 * @example keyAt(throughTwelve, 48) // the second key of a 12-bar form in four
 */
export function keyAt(timeline: Through, beat: number): Key {
  const { keys, key, bars, beatsPerBar } = timeline;
  if (keys === undefined) return key;
  const bar = Math.floor(Math.max(0, beat) / beatsPerBar + 1e-9) % bars;
  return keys.findLast(({ fromBar }) => fromBar <= bar)?.key ?? key;
}

/** The key in which each chord of a timeline stands. A chord is asked for as the value that the timeline gave. */
export function chordKeys(timeline: Timeline): (chord: Chord) => Key {
  if (timeline.keys === undefined) return () => timeline.key;
  const known = new Map<Chord, Key>();
  for (const { chord, startBeat } of timeline.spansBetween(0, timeline.roundBeats))
    if (chord !== null && !known.has(chord)) known.set(chord, keyAt(timeline, startBeat));
  return (chord) => known.get(chord) ?? timeline.key;
}
