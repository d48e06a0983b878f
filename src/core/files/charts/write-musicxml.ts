/**
 * A chart as a MusicXML 4.0 score (W3C): one part of whole-bar rests with the chord symbols over them, repeats,
 * endings, jumps, sections as rehearsal marks, key, meter, tempo, swing.
 */
import { writtenBars, type Chart, type ChartBar } from '../../chart/chart.ts';
import { endOfEnding } from '../../chart/play-order.ts';
import { jumpWords } from '../../chart/read-signs.ts';
import { fifthsOf } from '../../music/keys.ts';
import { writeHarmony } from './musicxml-harmony.ts';
import { escaped } from '../../base/markup.ts';

/** Parts of a quarter note: 2, 3, 5 and their products divide it. */
const DIVISIONS = 480;
const HEAD =
  '<?xml version="1.0" encoding="UTF-8"?>\n' +
  '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" ' +
  '"http://www.musicxml.org/dtds/partwise.dtd">';

/** The score as text, UTF-8 when saved. `readMusicXml` reads it back to the same chart. */
export function writeMusicXml(chart: Chart): string {
  const { meter } = chart;
  const divisionsOf = (beats: number) => Math.round((beats * DIVISIONS * meter.divisions) / 2);
  const measures: string[] = [];
  const measure = (bar: ChartBar, head: readonly string[], implicit: boolean, last: boolean) => {
    const number = implicit ? '0" implicit="yes' : String(measures.length + (chart.pickup ? 0 : 1));
    const beats = bar.chords.reduce((sum, chord) => sum + chord.beats, 0);
    let at = 0;
    const harmonies = bar.chords.flatMap((chord) => {
      const written = writeHarmony(chord.chord, divisionsOf(at));
      at += chord.beats;
      return written;
    });
    measures.push(
      [
        `<measure number="${number}">`,
        ...leftBarline(bar),
        ...head,
        ...signsBefore(bar),
        ...harmonies,
        `<note><rest measure="yes"/><duration>${divisionsOf(beats)}</duration><voice>1</voice></note>`,
        ...signsBehind(bar),
        ...rightBarline(bar, endingOver(chart, bar), last),
        '</measure>',
      ].join('\n'),
    );
  };
  const opening = [...attributes(chart), ...openingDirections(chart)];
  if (chart.pickup) measure(chart.pickup, opening, true, false);
  chart.sections.forEach((section, s) => {
    section.bars.forEach((bar, b) => {
      const first = measures.length === 0 ? opening : [];
      const words = b === 0 ? sectionDirections(section.name, section.feel) : [];
      const last = s === chart.sections.length - 1 && b === section.bars.length - 1;
      measure(bar, [...first, ...words], false, last);
    });
  });
  return [
    HEAD,
    '<score-partwise version="4.0">',
    ...(chart.title === null ? [] : [`<work><work-title>${escaped(chart.title)}</work-title></work>`]),
    '<part-list><score-part id="P1"><part-name>Chords</part-name></score-part></part-list>',
    '<part id="P1">',
    ...measures,
    '</part>',
    '</score-partwise>',
    '',
  ].join('\n');
}

function attributes({ key, meter }: Chart): readonly string[] {
  const [beats, beatType] = meter.written.split('/');
  return [
    '<attributes>',
    `<divisions>${DIVISIONS}</divisions>`,
    `<key><fifths>${fifthsOf(key.tonic, key.mode)}</fifths><mode>${key.mode}</mode></key>`,
    `<time><beats>${beats}</beats><beat-type>${beatType}</beat-type></time>`,
    '<clef><sign>G</sign><line>2</line></clef>',
    '</attributes>',
  ];
}

function openingDirections({ bpm, swing, feel, meter }: Chart): readonly string[] {
  const words = feel === null ? [] : [direction(`<words>${escaped(feel)}</words>`)];
  if (bpm === null && swing === null) return words;
  const first = Math.round((swing ?? 0.5) * 1000);
  const ratio =
    swing === null
      ? ''
      : `<swing><first>${first}</first><second>${1000 - first}</second><swing-type>eighth</swing-type></swing>`;
  if (bpm === null) return [...words, `<sound>${ratio}</sound>`];
  const dot = meter.divisions === 3 ? '<beat-unit-dot/>' : '';
  const mark = `<metronome><beat-unit>quarter</beat-unit>${dot}<per-minute>${bpm}</per-minute></metronome>`;
  return [...words, direction(mark, `<sound tempo="${(bpm * meter.divisions) / 2}">${ratio}</sound>`)];
}

const sectionDirections = (name: string | null, feel: string | null): readonly string[] => [
  ...(name === null ? [] : [direction(`<rehearsal>${escaped(name)}</rehearsal>`)]),
  ...(feel === null ? [] : [direction(`<words>${escaped(feel)}</words>`)]),
];

const direction = (type: string, sound = ''): string =>
  `<direction placement="above"><direction-type>${type}</direction-type>${sound}</direction>`;

const signsBefore = ({ signs }: ChartBar): readonly string[] => [
  ...(signs?.segno ? [direction('<segno/>', '<sound segno="segno"/>')] : []),
  ...(signs?.coda ? [direction('<coda/>', '<sound coda="coda"/>')] : []),
];

/** Behind the notes of the bar, where the jump is made. */
const signsBehind = ({ signs }: ChartBar): readonly string[] => [
  ...(signs?.toCoda ? [direction('<words>To Coda</words>', '<sound tocoda="coda"/>')] : []),
  ...(signs?.fine ? [direction('<words>Fine</words>', '<sound fine="yes"/>')] : []),
  ...(signs?.jump
    ? [
        direction(
          `<words>${jumpWords(signs.jump)}</words>`,
          signs.jump.to === 'start' ? '<sound dacapo="yes"/>' : '<sound dalsegno="segno"/>',
        ),
      ]
    : []),
];

const endingElement = (passes: readonly number[], type: 'start' | 'stop' | 'discontinue') =>
  `<ending number="${passes.join(',')}" type="${type}"/>`;

function leftBarline(bar: ChartBar): readonly string[] {
  if (!bar.repeatStart && bar.endings.length === 0) return [];
  return [
    '<barline location="left">',
    ...(bar.repeatStart ? ['<bar-style>heavy-light</bar-style>'] : []),
    ...(bar.endings.length > 0 ? [endingElement(bar.endings, 'start')] : []),
    ...(bar.repeatStart ? ['<repeat direction="forward"/>'] : []),
    '</barline>',
  ];
}

/** The ending that is over with this bar, or none. */
function endingOver(chart: Chart, bar: ChartBar): readonly number[] {
  const bars = writtenBars(chart);
  const index = bars.indexOf(bar);
  const from = bars.findLastIndex((one, i) => i <= index && one.endings.length > 0);
  return from >= 0 && endOfEnding(bars, from) === index + 1 ? (bars[from]?.endings ?? []) : [];
}

function rightBarline(bar: ChartBar, ending: readonly number[], last: boolean): readonly string[] {
  const repeats = bar.repeatTimes > 0;
  if (!repeats && ending.length === 0 && !last) return [];
  const times = bar.repeatTimes > 2 ? ` times="${bar.repeatTimes}"` : '';
  return [
    '<barline location="right">',
    ...(repeats || last ? ['<bar-style>light-heavy</bar-style>'] : []),
    ...(ending.length > 0 ? [endingElement(ending, repeats ? 'stop' : 'discontinue')] : []),
    ...(repeats ? [`<repeat direction="backward"${times}/>`] : []),
    '</barline>',
  ];
}
