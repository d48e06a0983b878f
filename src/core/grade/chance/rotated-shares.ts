/** Shares over all notes, over those on strong beats, and by length: their chance is the mean over all rotations. */
import { chordOfNote, type Anticipation } from '../assign/attribute.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import type { Share, Shares, Verdict } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { splitAtChanges } from '../assign/length-parts.ts';
import { rotateTimeline } from './rotate.ts';
import { eachSet, LEAST_EVENTS } from './shares.ts';
import { effectiveCount, wilsonInterval } from '../../base/statistics.ts';
import { holds, maskReader, toneSets, type ChordMasks, type ToneSet } from '../assign/tone-sets.ts';

/** A note, or a part of one, as it counts in a share. */
interface Counted {
  readonly pitchClass: number;
  readonly chord: Chord;
  /** 1 for a note, seconds for a length. */
  readonly weight: number;
  /** Bar of the take. */
  readonly bar: number;
}

type Kind = 'allNotes' | 'strongBeats' | 'byLength';
type MaskReader = (chord: Chord) => ChordMasks;

/** @param strong one flag a note: whether it stands on a strong beat */
export function rotatedShares(
  notes: readonly GradedNote[],
  strong: readonly boolean[],
  timeline: Timeline,
  anticipation: Anticipation,
  referenceHz: number,
): Readonly<Record<Kind, Shares>> {
  const masks = maskReader();
  const bars = notes.map((note) => Math.floor(note.onsetBeat / timeline.beatsPerBar));
  const countOver = (chart: Timeline): Readonly<Record<Kind, readonly Counted[]>> => {
    const all = notes.map(({ heard, pitchClass }, i) => {
      const { chord } = chordOfNote(heard, chart, anticipation, referenceHz);
      return { pitchClass, chord, weight: 1, bar: bars[i]! };
    });
    const parts = splitAtChanges(notes, chart);
    return {
      allNotes: all.filter(hasChord),
      strongBeats: all.filter((_, i) => strong[i]).filter(hasChord),
      byLength: parts.map(({ note, seconds, ...part }) => ({ ...part, weight: seconds, bar: bars[note]! })),
    };
  };
  const played = countOver(timeline);
  const sums: Record<Kind, Tally[]> = { allNotes: [], strongBeats: [], byLength: [] };
  for (let shift = 0; shift < timeline.bars; shift++) {
    const turned = countOver(rotateTimeline(timeline, shift));
    for (const kind of kinds) sums[kind].push(tally(turned[kind], masks));
  }
  const share = (kind: Kind) => shareOf(played[kind], sums[kind], masks);
  return { allNotes: share('allNotes'), strongBeats: share('strongBeats'), byLength: share('byLength') };
}

const kinds: readonly Kind[] = ['allNotes', 'strongBeats', 'byLength'];

const hasChord = <T extends { readonly chord: Chord | null }>(
  item: T,
): item is T & { readonly chord: Chord } => item.chord !== null;

type Tally = Readonly<Record<ToneSet | 'of', number>>;

function tally(events: readonly Counted[], masks: MaskReader): Tally {
  const sums = { of: 0, thirds: 0, guideTones: 0, chordTones: 0 };
  for (const { pitchClass, chord, weight } of events) {
    sums.of += weight;
    for (const set of toneSets) if (holds(masks(chord)[set], pitchClass)) sums[set] += weight;
  }
  return sums;
}

function shareOf(events: readonly Counted[], rotations: readonly Tally[], masks: MaskReader): Shares {
  const played = tally(events, masks);
  const heard = rotations.filter((rotation) => rotation.of > 0);
  const worth = effectiveCount(events.map((event) => event.weight));
  return eachSet((set): Share => {
    const { of } = played;
    if (of === 0 || heard.length === 0) return NOTHING;
    const share = Math.min(1, played[set] / of);
    const chance = heard.reduce((sum, rotation) => sum + rotation[set] / rotation.of, 0) / heard.length;
    const interval = wilsonInterval(share * worth, worth)!;
    const independent = worthByBars(events, share, worth, (event) =>
      holds(masks(event.chord)[set], event.pitchClass),
    );
    return {
      hits: played[set],
      of,
      share,
      low: interval.low,
      high: interval.high,
      chance,
      expected: chance * of,
      tail: null,
      fairTail: null,
      fairExpected: null,
      chanceBy: 'rotations',
      verdict: worth < LEAST_EVENTS ? 'too short to tell' : verdict(share, chance, independent),
    };
  });
}

const NOTHING: Share = {
  hits: 0,
  of: 0,
  share: null,
  low: null,
  high: null,
  chance: null,
  expected: null,
  tail: null,
  fairTail: null,
  fairExpected: null,
  chanceBy: null,
  verdict: 'too short to tell',
};

/**
 * How many independent events the notes are worth. Notes of one bar go together (a line that walks a scale alternates
 * between chord tones and others, or stays among either), so the spread between bars is asked: where it is wider
 * than that of independent notes, they are worth so much fewer (cluster-robust variance; K.-Y. Liang and S. L.
 * Zeger, Biometrika 73, 1986). Measured on 300 made players who walk the pentatonic at random: 10 % were called
 * better or worse than luck without this.
 */
function worthByBars(
  events: readonly Counted[],
  share: number,
  worth: number,
  hit: (event: Counted) => boolean,
): number {
  const excess = new Map<number, number>();
  let total = 0;
  for (const event of events) {
    const off = event.weight * ((hit(event) ? 1 : 0) - share);
    excess.set(event.bar, (excess.get(event.bar) ?? 0) + off);
    total += event.weight;
  }
  const betweenBars = [...excess.values()].reduce((sum, off) => sum + off * off, 0) / (total * total);
  const ifIndependent = (share * (1 - share)) / worth;
  return betweenBars > ifIndependent ? (worth * ifIndependent) / betweenBars : worth;
}

/** Against the 95 % interval of as many independent events as the notes are worth. */
function verdict(share: number, chance: number, worth: number): Verdict {
  const { low, high } = wilsonInterval(share * worth, worth)!;
  if (chance < low) return 'above chance';
  return chance > high ? 'below chance' : 'at chance';
}
