/** What of a take is counted over many days: small enough to be kept beside each take and read without its report. */
import { holds, toneMask } from '../grade/assign/tone-sets.ts';
import type { Chord } from '../music/chord.ts';
import { parseChord } from '../music/parse-chord.ts';
import { midiOfName } from '../music/reading.ts';
import type { Landing, Report } from '../take/schema.ts';
import type { TakeCount } from './trend.ts';

/** Landings on a guide tone, of those that were played; a rest on the change is not counted. */
export interface ChangeCount extends TakeCount {
  /** null where the chord follows no other. */
  readonly from: string | null;
  readonly to: string;
  /** Bar of the form, from 0, in which it comes first. */
  readonly bar: number;
}

export interface TakeCounts {
  /** The aim that the take tried for, its share to reach with it; null without. */
  readonly aim: (TakeCount & { readonly id: string; readonly goal: number }) | null;
  readonly changes: readonly ChangeCount[];
  /** Landings on a guide tone in each chorus, from the first. */
  readonly choruses: readonly TakeCount[];
}

/** Counts a graded take. */
export function countTake({ landings, notes, aims }: Report): TakeCounts {
  const isGuide = guideToneReader();
  const changes = new Map<
    string,
    { from: string | null; to: string; bar: number; hits: number; of: number }
  >();
  const choruses: { hits: number; of: number }[] = [];
  for (const landing of landings) {
    const { note, fromChord: from, chord: to, bar, chorus } = landing;
    while (choruses.length <= chorus) choruses.push({ hits: 0, of: 0 });
    if (note === null) continue;
    const hits = isGuide(landing, notes[note]!.name) ? 1 : 0;
    const id = `${from} ${to}`;
    const change = changes.get(id) ?? { from, to, bar, hits: 0, of: 0 };
    changes.set(id, {
      ...change,
      bar: Math.min(change.bar, bar),
      hits: change.hits + hits,
      of: change.of + 1,
    });
    if (chorus >= 0) choruses[chorus] = { hits: choruses[chorus]!.hits + hits, of: choruses[chorus]!.of + 1 };
  }
  const tried = aims.find((aim) => aim.tried && aim.own === null);
  const aim =
    tried === undefined
      ? null
      : { id: tried.id, hits: tried.result.hits, of: tried.result.of, goal: tried.shareToReach };
  return { aim, changes: [...changes.values()], choruses };
}

/** Whether a landing is on a guide tone of its chord: third and seventh, the fourth in a sus chord. */
function guideToneReader(): (landing: Landing, noteName: string) => boolean {
  const chords = new Map<string, Chord | null>();
  return ({ chord: symbol }, noteName) => {
    const chord = chords.has(symbol) ? chords.get(symbol)! : parseChord(symbol);
    chords.set(symbol, chord);
    return chord !== null && holds(toneMask(chord, 'guideTones'), ((midiOfName(noteName) % 12) + 12) % 12);
  };
}
