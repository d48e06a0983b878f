/** The report as a page of plain text: a teacher's note that fits one screen of a terminal. */
import { percent, several } from '../grade/teach/telling.ts';
import type { AimResult, NextAim, Palette, Report, Share, Shares, Thirds } from '../take/schema.ts';
import { lostSentence } from './lost-sentence.ts';
import { drawForm, FORM_LEGEND } from './text-form.ts';
import { block, rule, wrapText, PAGE_COLUMNS } from './text-lines.ts';

const MARGIN = 10;

/** The page, at most 80 columns wide, without a closing line break. */
export function reportText(report: Report): string {
  return [
    ...wrapText(title(report), PAGE_COLUMNS),
    rule(),
    ...wrapText(report.summary.headline, PAGE_COLUMNS),
    '',
    ...sharesTable(report.shares),
    '',
    ...drawForm(report),
    ...(report.timeline.bars <= 32 && report.landings.length > 0 ? [`   ${FORM_LEGEND}`] : []),
    ...block('Changes', changeSentences(report), MARGIN),
    ...block('Thirds', thirdSentences(report.thirds), MARGIN),
    ...block('Palette', paletteSentences(report.palette), MARGIN),
    ...block('Backing', backingSentences(report.source.backing), MARGIN),
    ...block('Lost', [lostSentence(report.source.lost) ?? []].flat(), MARGIN),
    ...block('Time', report.timing.sentence === null ? [] : [report.timing.sentence], MARGIN),
    ...block('Aims', aimSentences(report), MARGIN),
    ...block(
      'Advice',
      report.advice.map((piece, i) => `${i + 1}. ${piece.sentence}`),
      MARGIN,
    ),
  ].join('\n');
}

function title({ timeline, tuning, settings, summary }: Report): string {
  const { bpm, bars, key, rise, turnBars } = timeline;
  const rising =
    rise === undefined
      ? ''
      : ` and ${rise.byBpm} more every ${rise.everyBars} ${several(rise.everyBars, 'bar')}`;
  const tempo = bpm === null ? '' : `${Math.round(bpm * 10) / 10} bpm${rising}, `;
  const turns = turnBars === undefined ? '' : `, your turns of ${turnBars} ${several(turnBars, 'bar')}`;
  const reference = Math.round(tuning.referenceHz * 10) / 10;
  const estimated = tuning.estimated ? ' (found)' : '';
  const early = Math.round(settings.anticipationBeats * 100) / 100;
  return (
    `${summary.notes} ${several(summary.notes, 'note')} over ${bars} ${several(bars, 'bar')} in ${key.tonic} ${key.mode}, ${tempo}` +
    `A4 ${reference} Hz${estimated}, anticipation ${early} beat${turns}`
  );
}

function sharesTable(shares: Report['shares']): readonly string[] {
  const rows: readonly (readonly [string, Shares])[] = [
    ['landings', shares.landings],
    ['phrase ends', shares.phraseEnds],
    ['strong beats', shares.strongBeats],
    ['all notes', shares.allNotes],
    ['by length', shares.byLength],
  ];
  const columns: readonly (readonly [string, keyof Shares])[] = [
    ['thirds', 'thirds'],
    ['guide tones', 'guideTones'],
    ['chord tones', 'chordTones'],
  ];
  const first = 14;
  const width = 22;
  return [
    ''.padEnd(first) +
      columns
        .map(([name]) => name.padEnd(width))
        .join('')
        .trimEnd(),
    ...rows.map(
      ([name, set]) =>
        name.padEnd(first) +
        columns
          .map(([, key]) => cell(set[key], name === 'by length').padEnd(width))
          .join('')
          .trimEnd(),
    ),
    ...signLegend(rows.flatMap(([, set]) => [set.thirds, set.guideTones, set.chordTones])),
  ];
}

/** Longer counts would not fit their column, and say no more than per cent do. */
const MOST_COUNTED = 1000;

/** "7/12, luck 8 % ▲": counts, chance level, and whether it is more or less than that. */
function cell(share: Share, byLength: boolean): string {
  if (share.share === null) return 'none';
  const counted = byLength || share.of >= MOST_COUNTED ? percent(share.share) : `${share.hits}/${share.of}`;
  const luck = share.chance === null ? '' : `, luck ${percent(share.chance)}`;
  return `${counted}${luck}${VERDICT_SIGNS[share.verdict]}`;
}

const VERDICT_SIGNS: Readonly<Record<Share['verdict'], string>> = {
  'above chance': ' +',
  'at chance': '',
  'below chance': ' −',
  'too short to tell': ' ?',
};

function signLegend(cells: readonly Share[]): readonly string[] {
  const meanings = [
    ['above chance', '+ more than luck'],
    ['below chance', '− less than luck'],
    ['too short to tell', '? too few to tell'],
  ] as const;
  const used = meanings.filter(([verdict]) =>
    cells.some((share) => share.verdict === verdict && share.share !== null),
  );
  return used.length === 0 ? [] : [`   ${used.map(([, meaning]) => meaning).join(', ')}`];
}

function changeSentences({ changes, timeline }: Report): readonly string[] {
  const places = timeline.bars <= 32 ? changes.byBar : changes.byChord;
  const named = (habit: (typeof places)[number]['habit']) =>
    places
      .filter((place) => place.habit === habit)
      .map(({ bar, chord }) => (bar === null ? chord : `${chord} in bar ${bar + 1}`));
  const always = named('always the third');
  const never = named('never a chord tone');
  const { changes: count, resolved, kept } = changes.guideTones;
  return [
    ...(always.length > 0 ? [`Always the third: ${always.join(', ')}.`] : []),
    ...(never.length > 0 ? [`Never a chord tone: ${never.join(', ')}.`] : []),
    ...(count === 0 ? [] : [guideToneSentence(count, resolved, kept)]),
  ];
}

function guideToneSentence(changes: number, resolved: number, kept: number): string {
  const stayed = kept === 0 ? '' : `, and stayed at ${kept}`;
  return `A guide tone moved by step into the next chord at ${resolved} of ${changes} ${several(changes, 'change')}${stayed}.`;
}

function thirdSentences(thirds: Thirds): readonly string[] {
  if (thirds.notes === 0) return [];
  const ways = (['slid', 'hammered', 'bent', 'picked'] as const).flatMap((how) => {
    const count = thirds.leans.filter((lean) => lean.how === how).length;
    return count === 0 ? [] : [`${count} ${how}`];
  });
  const leans = thirds.leans.length === 0 ? 'never' : `${times(thirds.leans.length)} (${ways.join(', ')})`;
  const blue = thirds.blueNotes.map(({ cents }) => Math.round(cents));
  return [
    `Of ${thirds.notes} ${several(thirds.notes, 'note')} over chords with a major third ${thirds.thirds} are the 3, ${thirds.flatThirds} the b3. ` +
      `b3 into 3: ${leans}; 3 back to b3: ${times(thirds.falls.length)}; b3 left hanging: ${times(thirds.leftHanging.length)}.`,
    ...(blue.length === 0
      ? []
      : [
          `Blue thirds between the two: ${blue.length}, ${span(blue)} cents above the b3. They are no wrong notes.`,
        ]),
  ];
}

function backingSentences(backing: Report['source']['backing']): readonly string[] {
  if (backing === undefined) return [];
  if (backing === null) return ['Not heard in the take, so nothing was taken out.'];
  const { offsetSeconds, driftPpm, removedDb } = backing;
  const drift = Math.round(driftPpm);
  return [
    `Heard from ${offsetSeconds.toFixed(3)} s on${drift === 0 ? '' : `, ${Math.abs(drift)} ppm ${drift > 0 ? 'fast' : 'slow'}`}; ` +
      `taken out by ${Math.round(removedDb)} dB before listening.`,
  ];
}

const times = (count: number): string => ['never', 'once', 'twice'][count] ?? `${count} times`;

const span = (values: readonly number[]): string => {
  const low = Math.min(...values);
  const high = Math.max(...values);
  return low === high ? `${low}` : `${low} to ${high}`;
};

/** The chords that the palette is told over: more would not fit the screen. */
const MOST_CHORDS = 3;

function paletteSentences({ overall, byChord, thirdOverFour }: Palette): readonly string[] {
  if (overall.minorOnly === null) return [];
  const mix = ({ minorOnly, majorOnly, both, neither }: Palette['overall']) =>
    `minor ${percent(minorOnly ?? 0)}, major ${percent(majorOnly ?? 0)}, both ${percent(both ?? 0)}, neither ${percent(neither ?? 0)}`;
  const most = [...byChord].sort((a, b) => b.mixture.seconds - a.mixture.seconds).slice(0, MOST_CHORDS);
  const clash = thirdOverFour.notes.length;
  return [
    `${mix(overall)} of the time.`,
    ...(byChord.length > 1 ? most.map(({ chord, mixture }) => `${chord}: ${mix(mixture)}.`) : []),
    ...(clash === 0
      ? []
      : [
          `The key’s major third sounded over the IV ${times(clash)}, ${Math.round(thirdOverFour.seconds * 10) / 10} s in all: ` +
            `there it is the ${thirdOverFour.degree ?? ''} and clashes.`,
        ]),
  ];
}

function aimSentences({ aims, nextAim }: Report): readonly string[] {
  const tried = aims.filter((aim) => aim.tried);
  const reached = aims.filter((aim) => !aim.tried && aim.verdict === 'reached');
  return [
    ...tried.map(aimSentence),
    ...(reached.length > 0 ? [`Reached: ${reached.map((aim) => aim.name).join('; ')}.`] : []),
    ...(nextAim === null ? [] : [nextSentence(nextAim, tried)]),
  ];
}

/** An aim tried for and not reached stays the next one: its evidence has been told then. */
const nextSentence = ({ id, name, task, because }: NextAim, tried: readonly AimResult[]): string =>
  tried.some((aim) => aim.id === id) ? `Next: stay with it. ${task}` : `Next: ${name}. ${because} ${task}`;

const aimSentence = ({ name, verdict, evidence }: AimResult): string => `${name}: ${verdict}. ${evidence}`;
