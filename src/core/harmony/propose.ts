/** What was heard at each beat → the chart that a player may take as it is: meter, downbeat, form, chords, and how sure each bar is. */
import { findKey } from '../chart/find-key.ts';
import type { Key } from '../music/chord.ts';
import { writeKey } from '../music/keys.ts';
import { parseChord } from '../music/parse-chord.ts';
import { nameInKey } from './chord-names.ts';
import { followLogs } from './changes-model.ts';
import { NO_CHORD } from './chord-types.ts';
import { chordShares, decodeChords, STATES } from './decode.ts';
import { findForm, foldedLogs, type FoundForm } from './find-form.ts';
import { nearestForm } from './nearest-form.ts';
import type { ChartProposal, ProposedBar } from './proposal.ts';

/** What is heard in a recording, kept so that it can be decoded again around what the player sets. */
export interface HeardHarmony {
  /** STATES natural logarithms a beat. */
  readonly logs: Float32Array;
  readonly beats: number;
  readonly tuningCents: number;
  /** Meter and form, where they are known already: they are the same whatever the player sets. */
  readonly form?: FoundForm;
}

/** What the player has set. */
export interface ChartPins {
  /** Number of the chord (chord-types.ts) that a whole bar holds, by bar. */
  readonly bars?: ReadonlyMap<number, number>;
  readonly beatsPerBar?: number;
  readonly downbeat?: number;
  readonly formBars?: number;
}

/** The same with one chord for a whole bar. @param bar from 0 */
export const withBarSet = (pins: ChartPins, bar: number, chord: number): ChartPins => ({
  ...pins,
  bars: new Map(pins.bars).set(bar, chord),
});

/** Of every bar so many other chords are offered, however sure it is: what the player hears may be none that is likely. */
const OTHERS = 4;

/** The chart that explains best what was heard, with what the player has set kept; null where no chord is heard. */
export function proposeChart(heard: HeardHarmony, pins: ChartPins = {}): ChartProposal | null {
  const follow = followLogs();
  const found = heard.form ?? findForm(heard.logs, heard.beats, follow);
  if (found === null) return null;
  const form = withPins(heard, found, pins);
  const { beatsPerBar, bars: count } = form;
  const size = count * beatsPerBar;
  const order = { logs: form.folded, beats: size, beatsPerBar, firstBeatOfBar: 0, follow };
  const { chords } = decodeChords(order);
  // Choruses of one band go wrong together: they are not as many looks as they are choruses.
  const doubt = form.choruses ** -0.5;
  const shares = chordShares({ ...order, logs: form.folded.map((log) => log * doubt) });
  const key = findKey(
    spans(chords, 0, size).map(({ chord, beats }) => ({
      chord: chord === NO_CHORD ? null : parseChord(nameInKey(chord, null)),
      beats,
    })),
  );
  const bars = Array.from({ length: count }, (_, bar): ProposedBar => {
    const from = bar * beatsPerBar;
    const held = spans(chords, from, from + beatsPerBar);
    return {
      chords: held.map(({ chord, beats }) => ({ symbol: nameInKey(chord, key), beats })),
      sure: surenessOf(chords, shares, from, beatsPerBar),
      others: othersOf({ chords, shares, heard: form.unset }, from, beatsPerBar).map((chord) =>
        nameInKey(chord, key),
      ),
    };
  });
  return {
    beatsPerBar,
    downbeat: form.downbeat,
    choruses: form.choruses,
    key,
    bars,
    chart: writeProposal(bars, beatsPerBar, key),
    form: nearestForm(bars, beatsPerBar, key),
    tuningCents: heard.tuningCents,
  };
}

/** The form with what the player has set. */
interface PinnedForm extends FoundForm {
  /** `folded` as it was heard, nothing set in it. */
  readonly unset: Float32Array;
}

function withPins(heard: HeardHarmony, found: FoundForm, pins: ChartPins): PinnedForm {
  const beatsPerBar = pins.beatsPerBar ?? found.beatsPerBar;
  const downbeat = pins.downbeat ?? found.downbeat;
  const left = (heard.beats - downbeat) / beatsPerBar;
  const bars = Math.max(1, pins.formBars ?? Math.min(found.bars, Math.ceil(left)));
  const size = bars * beatsPerBar;
  const unset = foldedLogs(heard.logs, heard.beats, downbeat, size);
  const folded = unset.slice();
  for (const [bar, chord] of pins.bars ?? [])
    for (let b = bar * beatsPerBar; b < Math.min(size, (bar + 1) * beatsPerBar); b++)
      for (let s = 0; s < STATES; s++) folded[b * STATES + s] = s === chord ? 0 : -1000;
  return { beatsPerBar, downbeat, bars, choruses: Math.max(1, Math.round(left / bars)), folded, unset };
}

interface Span {
  readonly chord: number;
  readonly beats: number;
}

function spans(chords: Int16Array, from: number, to: number): readonly Span[] {
  const found: Span[] = [];
  for (let b = from; b < to; b++) {
    const last = found.at(-1);
    if (last?.chord === chords[b]) found[found.length - 1] = { ...last!, beats: last!.beats + 1 };
    else found.push({ chord: chords[b]!, beats: 1 });
  }
  return found;
}

/** The least sure beat of a bar is as sure as the bar. */
function surenessOf(chords: Int16Array, shares: Float32Array, from: number, beats: number): number {
  let least = 1;
  for (let b = from; b < from + beats; b++) least = Math.min(least, shares[b * STATES + chords[b]!]!);
  return least;
}

interface Decoding {
  readonly chords: Int16Array;
  readonly shares: Float32Array;
  /** Logarithms as they were heard. */
  readonly heard: Float32Array;
}

/** The likeliest first; of those that are as good as impossible beside what stands, the ones that sound most like the bar. */
function othersOf({ chords, shares, heard }: Decoding, from: number, beats: number): readonly number[] {
  const likely = new Float64Array(STATES);
  const alike = new Float64Array(STATES);
  const own = new Set<number>();
  for (let b = from; b < from + beats; b++) {
    own.add(chords[b]!);
    for (let s = 0; s < STATES; s++) {
      likely[s]! += shares[b * STATES + s]! / beats;
      alike[s]! += heard[b * STATES + s]!;
    }
  }
  return Array.from(likely.keys())
    .filter((chord) => !own.has(chord))
    .sort((a, b) => likely[b]! - likely[a]! || alike[b]! - alike[a]!)
    .slice(0, OTHERS);
}

/** Our chart text: a heading for the key and for another meter than 4/4, then the bars. */
function writeProposal(bars: readonly ProposedBar[], beatsPerBar: number, key: Key): string {
  const headings = [`key: ${writeKey(key)}`, ...(beatsPerBar === 4 ? [] : [`meter: ${beatsPerBar}/4`])];
  const lines: string[] = [];
  for (let from = 0; from < bars.length; from += 4)
    lines.push(
      `| ${bars
        .slice(from, from + 4)
        .map(writeBar)
        .join(' | ')} |`,
    );
  return [...headings, ...lines].join('\n');
}

const writeBar = ({ chords }: ProposedBar): string =>
  chords.length === 1
    ? chords[0]!.symbol
    : chords.map(({ symbol, beats }) => symbol + ' /'.repeat(beats - 1)).join(' ');
