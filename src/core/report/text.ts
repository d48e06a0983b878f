/** The report as a page of plain text: a teacher's note that fits one screen of a terminal. */
import { largest, smallest } from '../base/extremes.ts';
import type { AimResult, Palette, Report, Thirds } from '../take/schema.ts';
import { spelledChord, spelledKey } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';
import { adviceSentence } from './advice-sentence.ts';
import { aimWords } from './aim-words.ts';
import { aimEvidence } from './aim-sentences.ts';
import {
  correctedSentence,
  delaySentence,
  headlineNumbers,
  headlineOf,
  lostSentence,
  suspectedSentence,
  timingSentence,
} from './sentences.ts';
import { goodSentences } from './good-sentences.ts';
import { teacherSentences } from './teacher-sentences.ts';
import { SHARE_ROWS, sharesTable } from './text-shares.ts';
import { drawForm, LONGEST_DRAWN_BARS } from './text-form.ts';
import { block, rule, wrapText, PAGE_COLUMNS } from './text-lines.ts';

const MARGIN = 10;

/**
 * The page, at most 80 columns wide, without a closing line break: the take in a sentence, what to do next, the form with
 * its landings, and then figures. The short page is for a screen of a terminal, and leaves most figures out.
 */
export function reportText(report: Report, words: Words, extent: 'short' | 'full' = 'short'): string {
  const good = goodSentences(report, words);
  if (extent === 'full')
    return [
      ...opening(report, { good, advice: report.advice, extent }, words),
      ...allFigures(report, words),
    ].join('\n');
  // A long form takes the place of the last pieces of advice, and then of praise.
  for (let praise = good.length; ; praise--)
    for (let pieces = report.advice.length; ; pieces--) {
      const said = { good: good.slice(0, praise), advice: report.advice.slice(0, pieces), extent };
      const lines = [...opening(report, said, words), ...shortFigures(report, words)];
      if (lines.length <= SHORT_LINES || (pieces <= 1 && praise <= 1)) return lines.join('\n');
      if (pieces <= 1) break;
    }
}

/** What a screen of a terminal shows. */
const SHORT_LINES = 24;

type Texts = readonly (string | null)[];

const inMargin = (heading: string, texts: Texts): readonly string[] =>
  block(
    heading,
    texts.filter((text) => text !== null),
    MARGIN,
  );

/** What is said before the form. */
interface Said {
  readonly good: readonly string[];
  readonly advice: Report['advice'];
  readonly extent: 'short' | 'full';
}

/** What a player reads first. */
function opening(report: Report, { good, advice, extent }: Said, words: Words): readonly string[] {
  const { headings, form } = words.page;
  return [
    ...wrapText(title(report, extent, words), PAGE_COLUMNS),
    rule(),
    ...inMargin(headings.suspected, [
      ...suspectedTexts(report, words),
      delaySentence(report.suspectedDelay, words),
    ]),
    ...wrapText(headlineOf(report, words), PAGE_COLUMNS),
    ...inMargin(headings.good, good),
    ...inMargin(
      headings.advice,
      advice.map((piece, i) => `${i + 1}. ${adviceSentence(piece, words)}`),
    ),
    ...inMargin(headings.next, [nextInShort(report, words)]),
    ...drawForm(report, words),
    ...(report.timeline.bars <= LONGEST_DRAWN_BARS && report.landings.length > 0
      ? [`   ${form.legend}`]
      : []),
  ];
}

/** Said before everything: the chart fits better elsewhere, and the option that grades it there. */
function suspectedTexts(report: Report, words: Words): Texts {
  const { suspected } = report;
  const sentence = suspectedSentence(report, words);
  if (suspected === null || sentence === null) return [];
  const told = words.page.suspected;
  if (suspected.what === 'key') return [`${sentence} ${told.key({ semitones: suspected.semitones })}`];
  const { bpm, spans } = report.timeline;
  const first = spans.find(({ startBeat }) => startBeat === 0);
  if (bpm === null || first === undefined) return [sentence];
  const firstBeat = first.startSeconds + (suspected.beats * 60) / bpm;
  // Read by the command line, which takes a decimal point in every language.
  return [`${sentence} ${told.place({ firstBeat: firstBeat.toFixed(3) })}`];
}

function nextInShort({ aims, nextAim }: Report, words: Words): string | null {
  const next = aims.find(({ id }) => id === nextAim?.id);
  return next === undefined ? null : words.page.aims.nextInShort(aimWords(next, words));
}

function shortFigures(report: Report, words: Words): readonly string[] {
  const tried = report.aims.filter((aim) => aim.tried);
  return [
    ...sharesTable(report.shares, ['landings'], words),
    ...inMargin(
      words.page.headings.aims,
      tried.map((aim) => triedSentence(aim, words)),
    ),
    ...inMargin(words.page.headings.lost, [lostSentence(report.source.lost, words)]),
    ...inMargin(words.page.headings.corrected, [correctedSentence(report, words)]),
    ...inMargin(words.page.headings.backing, [backingSentence(report.source.backing, words)]),
    words.page.more,
  ];
}

function allFigures(report: Report, words: Words): readonly string[] {
  const { headings } = words.page;
  const heard = teacherSentences(report, words);
  return [
    '',
    ...inMargin(headings.numbers, [headlineNumbers(report, words)]),
    ...sharesTable(report.shares, SHARE_ROWS, words),
    ...inMargin(headings.changes, changeSentences(report, words)),
    ...inMargin(headings.thirds, thirdSentences(report.thirds, words)),
    ...inMargin(headings.palette, paletteSentences(report.palette, words)),
    ...inMargin(headings.space, heard.space),
    ...inMargin(headings.approach, heard.approach),
    ...inMargin(headings.figures, heard.figures),
    ...inMargin(headings.time, [timingSentence(report, words), ...heard.time]),
    ...inMargin(headings.range, heard.range),
    ...inMargin(headings.accents, heard.accents),
    ...inMargin(headings.backing, [backingSentence(report.source.backing, words)]),
    ...inMargin(headings.lost, [lostSentence(report.source.lost, words)]),
    ...inMargin(headings.corrected, [correctedSentence(report, words)]),
    ...inMargin(headings.aims, aimSentences(report, words)),
  ];
}

/** A last note that starts so little into another chorus, as a part of one, ends the one before. */
const INTO_NEXT_CHORUS = 0.1;

function title(
  { timeline, tuning, settings, summary, notes }: Report,
  extent: 'short' | 'full',
  words: Words,
): string {
  const { bpm, bars, beatsPerBar, key, rise, turnBars } = timeline;
  const lastBeat = notes.at(-1)?.beat ?? 0;
  return words.page.title({
    notes: summary.notes,
    bars,
    choruses: Math.max(1, Math.ceil(lastBeat / (bars * beatsPerBar) - INTO_NEXT_CHORUS)),
    key: spelledKey(key, words),
    bpm,
    rise: rise ?? null,
    referenceHz: tuning.referenceHz,
    estimated: tuning.estimated,
    anticipationBeats: extent === 'full' ? settings.anticipationBeats : null,
    turnBars: turnBars ?? null,
  });
}

function changeSentences({ changes, timeline }: Report, words: Words): readonly (string | null)[] {
  const told = words.page.changes;
  const asked = timeline.bars <= LONGEST_DRAWN_BARS ? changes.byBar : changes.byChord;
  const placesOf = (habit: (typeof asked)[number]['habit']) =>
    asked
      .filter((place) => place.habit === habit)
      .map(({ bar, chord }) => {
        const name = spelledChord(chord, words);
        return bar === null ? name : told.inBar({ chord: name, bar: bar + 1 });
      });
  const always = placesOf('always the third');
  const never = placesOf('never a chord tone');
  return [
    always.length === 0 ? null : told.alwaysThird({ places: always }),
    never.length === 0 ? null : told.neverChordTone({ places: never }),
    changes.guideTones.changes === 0 ? null : told.guideTones(changes.guideTones),
  ];
}

function thirdSentences(thirds: Thirds, words: Words): readonly (string | null)[] {
  if (thirds.notes === 0) return [];
  const told = words.page.thirds;
  const ways = (['slid', 'hammered', 'bent', 'picked'] as const).flatMap((how) => {
    const count = thirds.leans.filter((lean) => lean.how === how).length;
    return count === 0 ? [] : [told.ways[how]({ count })];
  });
  const blue = thirds.blueNotes.map(({ cents }) => Math.round(cents));
  return [
    told.counted({
      notes: thirds.notes,
      thirds: thirds.thirds,
      flatThirds: thirds.flatThirds,
      leans: thirds.leans.length,
      ways,
      falls: thirds.falls.length,
      leftHanging: thirds.leftHanging.length,
    }),
    blue.length === 0
      ? null
      : told.blue({ count: blue.length, lowCents: smallest(blue), highCents: largest(blue) }),
  ];
}

function backingSentence(backing: Report['source']['backing'], { page }: Words): string | null {
  if (backing === undefined) return null;
  if (backing === null) return page.backing.notHeard;
  return page.backing.heard({
    offsetSeconds: backing.offsetSeconds,
    driftPpm: Math.round(backing.driftPpm),
    removedDb: Math.round(backing.removedDb),
  });
}

/** The chords that the palette is told over: more would not fit the screen. */
const MOST_CHORDS = 3;

function paletteSentences(
  { overall, byChord, thirdOverFour }: Palette,
  words: Words,
): readonly (string | null)[] {
  if (overall.minorOnly === null) return [];
  const told = words.page.palette;
  const mixtureOf = ({ minorOnly, majorOnly, both, neither }: Palette['overall']) =>
    told.mixture({ minor: minorOnly ?? 0, major: majorOnly ?? 0, both: both ?? 0, neither: neither ?? 0 });
  const most = [...byChord].sort((a, b) => b.mixture.seconds - a.mixture.seconds).slice(0, MOST_CHORDS);
  const { notes, seconds, degree } = thirdOverFour;
  return [
    told.overall({ mixture: mixtureOf(overall) }),
    ...(byChord.length > 1
      ? most.map(({ chord, mixture }) =>
          told.chord({ chord: spelledChord(chord, words), mixture: mixtureOf(mixture) }),
        )
      : []),
    notes.length === 0 ? null : told.thirdOverFour({ count: notes.length, seconds, degree: degree ?? '' }),
  ];
}

function aimSentences({ aims, nextAim }: Report, words: Words): readonly (string | null)[] {
  const told = words.page.aims;
  const reached = aims.filter((aim) => !aim.tried && aim.verdict === 'reached');
  const next = aims.find(({ id }) => id === nextAim?.id);
  const nextSentence = () => {
    if (next === undefined) return null;
    const { name, task } = aimWords(next, words);
    // The evidence of an aim that was tried for stands above already.
    return next.tried ? told.stay({ task }) : told.next({ name, evidence: aimEvidence(next, words), task });
  };
  return [
    ...aims.filter(({ tried }) => tried).map((aim) => triedSentence(aim, words)),
    reached.length === 0 ? null : told.reached({ names: reached.map((aim) => aimWords(aim, words).name) }),
    nextSentence(),
  ];
}

const triedSentence = (aim: AimResult, words: Words): string =>
  words.page.aims.tried({
    name: aimWords(aim, words).name,
    verdict: words.report.aims.verdicts[aim.verdict],
    evidence: aimEvidence(aim, words),
  });
