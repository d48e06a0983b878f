/** The built-in form that a proposed chart is, wholly or nearly. */
import { FORMS } from '../chart/form-data.ts';
import { formChart } from '../chart/forms.ts';
import { writeChart } from '../chart/write-chart.ts';
import { parseChart } from '../chart/parse-chart.ts';
import { playedBars } from '../chart/play-order.ts';
import type { Key } from '../music/chord.ts';
import { keyOn, writeKey } from '../music/keys.ts';
import { soundingType } from './changes-model.ts';
import { numberOfSymbol } from './chord-names.ts';
import { NO_CHORD, rootOf, TYPES, typeOf } from './chord-types.ts';
import type { NearForm, ProposedBar } from './proposal.ts';

/** A form that shares less than this with what was heard is another form. */
const LEAST_ALIKE = 0.8;

/** Chords beat by beat, as numbers; null where a chord is none that we can hear. */
function beatsOf(
  text: string,
): { readonly beats: readonly (number | null)[]; readonly beatsPerBar: number } | null {
  const chart = parseChart(text);
  if (!chart.ok) return null;
  const beats = playedBars(chart.value).flatMap(({ bar }) =>
    bar.chords.flatMap(({ chord, beats: length }) => {
      const type = chord === null ? null : soundingType(chord);
      const number = chord === null ? NO_CHORD : type === null ? null : chord.rootPitchClass * TYPES + type;
      return new Array<number | null>(Math.max(1, Math.round(length))).fill(number);
    }),
  );
  return { beats, beatsPerBar: chart.value.meter.beatsPerBar };
}

/** Major, minor, and what else a chord is, with the seventh left aside: 0 major, 1 minor, 2 diminished, 3 suspended. */
const FAMILIES = [0, 1, 0, 0, 1, 2, 2, 3] as const;

/** 1 for the same chord, half for the same root and third; a triad fits the seventh chord on it. */
function alikeness(a: number, b: number): number {
  if (a === b) return 1;
  if (a === NO_CHORD || b === NO_CHORD || rootOf(a) !== rootOf(b)) return 0;
  if (FAMILIES[typeOf(a)] !== FAMILIES[typeOf(b)]) return 0;
  return typeOf(a) < 2 || typeOf(b) < 2 ? 0.9 : 0.5;
}

/** The form that is most alike, in any key; null where none is alike enough. */
export function nearestForm(bars: readonly ProposedBar[], beatsPerBar: number, key: Key): NearForm | null {
  const heard = bars.flatMap(({ chords }) =>
    chords.flatMap(({ symbol, beats }) => new Array<number | null>(beats).fill(numberOfSymbol(symbol))),
  );
  let best: NearForm | null = null;
  let most = LEAST_ALIKE;
  for (const form of FORMS) {
    const written = beatsOf(form.text);
    if (written === null || written.beatsPerBar !== beatsPerBar || written.beats.length !== heard.length)
      continue;
    for (let up = 0; up < 12; up++) {
      let sum = 0;
      heard.forEach((chord, b) => {
        const other = written.beats[b]!;
        if (chord === null || other === null) return;
        sum += alikeness(chord, other === NO_CHORD ? other : (other + up * TYPES) % (12 * TYPES));
      });
      const alike = sum / heard.length;
      if (alike < most || (alike === most && up !== key.tonicPitchClass)) continue;
      most = alike;
      best = { name: form.name, key: keyOn(up, form.mode), alike };
    }
  }
  return best;
}

/** The form's chart in its key, as text. */
export function nearFormText({ name, key }: NearForm): string {
  const chart = formChart(name, writeKey(key));
  if (!chart.ok) throw new Error(`the form "${name}" can't be written in ${writeKey(key)}`);
  return writeChart(chart.value);
}
