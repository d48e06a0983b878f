/** Which changes a player always makes and which never, over the choruses. */
import type { Change, Changes, Landing } from '../../take/schema.ts';
import { isChordTone } from '../assign/roles.ts';

/** A habit needs to have been seen this often. */
const LEAST_ARRIVALS = 2;

/**
 * The landings by place in the form and by chord, in the order of their first arrival.
 * @param blueNotes places of the blue thirds
 */
export function gatherChanges(landings: readonly Landing[], blueNotes: ReadonlySet<number>): Changes {
  const gather = gathering(blueNotes);
  // A rest is no change that a guide tone could have made: open changes are no part of the count.
  const judged = landings.filter((landing) => landing.fromChord !== null && landing.kind !== 'open');
  return {
    byBar: gather(
      landings,
      ({ bar, beatOfBar, chord }) => `${bar} ${beatOfBar} ${chord}`,
      ({ bar, beatOfBar }) => ({ bar, beatOfBar }),
    ).sort((a, b) => a.bar! - b.bar! || a.beatOfBar! - b.beatOfBar!),
    byChord: gather(
      landings,
      ({ chord }) => chord,
      () => ({ bar: null, beatOfBar: null }),
    ),
    guideTones: {
      changes: judged.length,
      resolved: judged.filter((landing) => landing.guideTone?.kind === 'resolved').length,
      kept: judged.filter((landing) => landing.guideTone?.kind === 'kept').length,
    },
  };
}

const gathering =
  (blueNotes: ReadonlySet<number>) =>
  (
    landings: readonly Landing[],
    keyOf: (landing: Landing) => string,
    placeOf: (landing: Landing) => Pick<Change, 'bar' | 'beatOfBar'>,
  ): Change[] => {
    const groups = new Map<string, Landing[]>();
    for (const landing of landings) {
      const key = keyOf(landing);
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [landing]);
      else group.push(landing);
    }
    return [...groups.values()].map((group) => {
      const first = group[0]!;
      const open = group.filter((landing) => landing.kind === 'open').length;
      const thirds = group.filter((landing) => landing.role === 'third').length;
      const chordTones = group.filter((landing) => isChordTone(landing.role)).length;
      const leans = group.filter(
        ({ leansInto, note }) => leansInto !== null || (note !== null && blueNotes.has(note)),
      ).length;
      return {
        ...placeOf(first),
        chord: first.chord,
        count: group.length,
        open,
        thirds,
        chordTones,
        habit: habitOf(group.length - open, thirds, chordTones, leans),
      };
    });
  };

/**
 * A landing on the b3 that leans into the 3, or on a blue third, is no chord tone, and no miss either: it speaks against
 * "never".
 */
function habitOf(arrivals: number, thirds: number, chordTones: number, leans: number): Change['habit'] {
  if (arrivals < LEAST_ARRIVALS) return 'seldom';
  if (thirds === arrivals) return 'always the third';
  if (chordTones === arrivals) return 'always a chord tone';
  return chordTones + leans === 0 ? 'never a chord tone' : 'mixed';
}
