/**
 * A written page as a MusicXML 4.0 score (W3C, partwise): the line with ties, groups, grace notes and degrees as lyrics,
 * chord symbols over it, and a staff of tablature for an instrument with frets.
 */
import { writeHarmony } from '../files/charts/musicxml-harmony.ts';
import { escaped } from '../base/markup.ts';
import type { Key } from '../music/chord.ts';
import { fifthsOf } from '../music/keys.ts';
import { noteName } from '../music/pitch-names.ts';
import { isSilent } from './quantise.ts';
import { TICKS_PER_QUARTER, type Measure, type Written } from './score.ts';
import type { SpelledPitch, WrittenPage } from './written-page.ts';

export interface ScoreNames {
  readonly title: string;
  /** Of the part: the instrument's. */
  readonly part: string;
}

const HEAD =
  '<?xml version="1.0" encoding="UTF-8"?>\n' +
  '<!DOCTYPE score-partwise PUBLIC "-//Recordare//DTD MusicXML 4.0 Partwise//EN" ' +
  '"http://www.musicxml.org/dtds/partwise.dtd">';

/** The score as text, UTF-8 when saved. */
export function writeScore(page: WrittenPage, names: ScoreNames): string {
  const { measures } = page.line;
  const body = measures.map((measure, index) => writeMeasure(page, measure, index));
  return [
    HEAD,
    '<score-partwise version="4.0">',
    `<work><work-title>${escaped(names.title)}</work-title></work>`,
    '<identification><encoding><software>Landfall</software></encoding></identification>',
    `<part-list><score-part id="P1"><part-name>${escaped(names.part)}</part-name></score-part></part-list>`,
    '<part id="P1">',
    ...body,
    '</part>',
    '</score-partwise>',
    '',
  ].join('\n');
}

/** Bars before the first downbeat count down from 0 and are not numbered by readers. */
const measureNumber = (bar: number): string => (bar < 0 ? `X${-bar}" implicit="yes` : String(bar + 1));

function writeMeasure(page: WrittenPage, measure: Measure, index: number): string {
  const { chords, key, chorus } = page.over[index]!;
  const first = index === 0;
  const staves = page.neck === null ? [1] : [1, 2];
  const written = staves.map((staff) =>
    measure.signs.flatMap((sign) => writeSign(page, sign, staff, isSilent(measure))),
  );
  return [
    `<measure number="${measureNumber(measure.bar)}">`,
    ...(first || key !== null ? writeAttributes(page, key, first) : []),
    ...(chorus === null
      ? []
      : [
          `<direction placement="above"><direction-type><rehearsal>${chorus}</rehearsal></direction-type></direction>`,
        ]),
    ...(first ? writeTempo(page) : []),
    ...chords.flatMap(({ chord, atTicks }) => writeHarmony(chord, atTicks)),
    ...written.flatMap((signs, staff) =>
      staff === 0 ? signs : [`<backup><duration>${measure.ticks}</duration></backup>`, ...signs],
    ),
    ...rightBarline(page, index),
    '</measure>',
  ].join('\n');
}

/** The end of the take, or of a chorus. */
function rightBarline({ line, over }: WrittenPage, index: number): readonly string[] {
  const last = index === line.measures.length - 1;
  if (!last && (over[index + 1]?.chorus ?? null) === null) return [];
  const style = last ? 'light-heavy' : 'light-light';
  return [`<barline location="right"><bar-style>${style}</bar-style></barline>`];
}

function writeAttributes(page: WrittenPage, key: Key | null, first: boolean): readonly string[] {
  const { line, clef, neck } = page;
  const signature =
    key === null
      ? []
      : [`<key><fifths>${fifthsOf(key.tonic, key.mode)}</fifths><mode>${key.mode}</mode></key>`];
  if (!first) return ['<attributes>', ...signature, '</attributes>'];
  const { beats, beatType } = line.meter;
  const ownClef = clef === 'treble' ? '<sign>G</sign><line>2</line>' : '<sign>F</sign><line>4</line>';
  return [
    '<attributes>',
    `<divisions>${TICKS_PER_QUARTER}</divisions>`,
    ...signature,
    `<time><beats>${beats}</beats><beat-type>${beatType}</beat-type></time>`,
    ...(neck === null ? [] : ['<staves>2</staves>']),
    `<clef number="1">${ownClef}</clef>`,
    ...(neck === null
      ? []
      : [
          '<clef number="2"><sign>TAB</sign><line>5</line></clef>',
          `<staff-details number="2"><staff-lines>${neck.openStrings.length}</staff-lines>`,
          ...neck.openStrings.map(stringTuning),
          ...(neck.capo > 0 ? [`<capo>${neck.capo}</capo>`] : []),
          '</staff-details>',
        ]),
    ...writeTranspose(page),
    '</attributes>',
  ];
}

/** Lines of the tablature are counted from the lowest, as the strings of a neck are here. */
function stringTuning(midi: number, index: number): string {
  const [, letter = 'C', sign = '', octave = '4'] = /^([A-G])(#?)(-?\d+)$/.exec(noteName(midi)) ?? [];
  return [
    `<staff-tuning line="${index + 1}"><tuning-step>${letter}</tuning-step>`,
    sign === '' ? '' : '<tuning-alter>1</tuning-alter>',
    `<tuning-octave>${octave}</tuning-octave></staff-tuning>`,
  ].join('');
}

/** From written to sounding: steps of the staff and semitones within an octave, and octaves. */
function writeTranspose({ soundingFromWritten, interval }: WrittenPage): readonly string[] {
  if (soundingFromWritten === 0) return [];
  const octaves = Math.ceil(soundingFromWritten / 12);
  const chromatic = soundingFromWritten - 12 * octaves;
  const diatonic = chromatic === 0 ? 0 : -(Number.parseInt(interval, 10) - 1);
  return [
    '<transpose>',
    `<diatonic>${diatonic}</diatonic><chromatic>${chromatic}</chromatic>`,
    ...(octaves === 0 ? [] : [`<octave-change>${octaves}</octave-change>`]),
    '</transpose>',
  ];
}

function writeTempo({ bpm, swing, line }: WrittenPage): readonly string[] {
  if (bpm === null) return [];
  const compound = line.beatTicks !== TICKS_PER_QUARTER;
  const first = Math.round(swing * 1000);
  const swung =
    swing <= 0.5
      ? ''
      : `<swing><first>${first}</first><second>${1000 - first}</second><swing-type>eighth</swing-type></swing>`;
  const perQuarter = (bpm * line.beatTicks) / TICKS_PER_QUARTER;
  const unit = `<beat-unit>quarter</beat-unit>${compound ? '<beat-unit-dot/>' : ''}`;
  return [
    '<direction placement="above"><direction-type>',
    `<metronome>${unit}<per-minute>${Math.round(bpm)}</per-minute></metronome>`,
    `</direction-type><sound tempo="${perQuarter}">${swung}</sound></direction>`,
  ];
}

function writeSign(page: WrittenPage, sign: Written, staff: number, silent: boolean): readonly string[] {
  const onStaff = { voice: staff, staff: page.neck === null ? null : staff };
  if (sign.note === null) {
    const rest = silent ? '<rest measure="yes"/>' : '<rest/>';
    const hidden = staff === 2 ? ' print-object="no"' : '';
    return [writeNote(`${rest}<duration>${sign.ticks}</duration>`, sign, onStaff, '', '', silent, hidden)];
  }
  const note = page.notes[sign.note]!;
  const graces = sign.graces.flatMap((grace) =>
    heads(page, grace, staff).map(({ chord, pitch, technical }) =>
      [
        '<note><grace slash="yes"/>',
        `${chord}${pitch}<voice>${staff}</voice><type>eighth</type>`,
        onStaff.staff === null ? '' : `<staff>${staff}</staff>`,
        technical === '' ? '' : `<notations>${technical}</notations>`,
        '</note>',
      ].join(''),
    ),
  );
  const ties = [
    ...(sign.tiedFrom ? ['<tie type="stop"/>'] : []),
    ...(sign.tiedOn ? ['<tie type="start"/>'] : []),
  ].join('');
  const lyric =
    staff === 1 && !sign.tiedFrom && note.degree !== null
      ? `<lyric number="1"><syllabic>single</syllabic><text>${withSigns(note.degree)}</text></lyric>`
      : '';
  const main = heads(page, sign.note, staff).map(({ chord, pitch, technical }, i) =>
    writeNote(
      `${chord}${pitch}<duration>${sign.ticks}</duration>${ties}`,
      sign,
      onStaff,
      technical,
      i === 0 ? lyric : '',
    ),
  );
  return [...graces, ...main];
}

/** One note element, in the order that the schema asks for. */
function writeNote(
  sounding: string,
  sign: Written,
  { voice, staff }: { readonly voice: number; readonly staff: number | null },
  technical: string,
  lyric: string,
  silent = false,
  attributes = '',
): string {
  const { tuplet, tiedFrom, tiedOn, note } = sign;
  const isHead = !sounding.startsWith('<chord/>');
  const notations = [
    ...(note !== null && tiedFrom ? ['<tied type="stop"/>'] : []),
    ...(note !== null && tiedOn ? ['<tied type="start"/>'] : []),
    ...(tuplet?.starts && isHead
      ? [
          `<tuplet type="start" bracket="yes"><tuplet-actual><tuplet-number>${tuplet.actual}</tuplet-number>` +
            `<tuplet-type>${tuplet.part}</tuplet-type></tuplet-actual><tuplet-normal><tuplet-number>${tuplet.normal}` +
            `</tuplet-number><tuplet-type>${tuplet.part}</tuplet-type></tuplet-normal></tuplet>`,
        ]
      : []),
    ...(tuplet?.stops && isHead ? ['<tuplet type="stop"/>'] : []),
    technical,
  ].join('');
  return [
    `<note${attributes}>${sounding}<voice>${voice}</voice>`,
    silent ? '' : `<type>${sign.value}</type>${sign.dotted ? '<dot/>' : ''}`,
    tuplet === null
      ? ''
      : `<time-modification><actual-notes>${tuplet.actual}</actual-notes><normal-notes>${tuplet.normal}` +
        `</normal-notes><normal-type>${tuplet.part}</normal-type></time-modification>`,
    staff === null ? '' : `<staff>${staff}</staff>`,
    notations === '' ? '' : `<notations>${notations}</notations>`,
    lyric,
    '</note>',
  ].join('');
}

/**
 * The heads of a note on a staff: those behind the first stand in one chord with it. Frets are counted from the capo, which
 * moves the tuning of the strings (capo element of the standard).
 */
function heads(
  { notes, neck }: WrittenPage,
  note: number,
  staff: number,
): readonly { readonly chord: string; readonly pitch: string; readonly technical: string }[] {
  const { pitches, places, bend } = notes[note]!;
  const capo = neck?.capo ?? 0;
  return pitches.map((pitch, i) => {
    const place = places[i];
    const bent = bend > 0 && i === 0 ? `<bend><bend-alter>${bend}</bend-alter></bend>` : '';
    const technical =
      staff === 2 && place
        ? `<technical><string>${place.string}</string><fret>${place.fret - capo}</fret>${bent}</technical>`
        : '';
    return { chord: i === 0 ? '' : '<chord/>', pitch: writePitch(pitch), technical };
  });
}

const writePitch = ({ letter, alter, octave }: SpelledPitch): string =>
  `<pitch><step>${letter}</step>${alter === 0 ? '' : `<alter>${alter}</alter>`}<octave>${octave}</octave></pitch>`;

const withSigns = (degree: string): string => degree.replaceAll('b', '♭').replaceAll('#', '♯');
