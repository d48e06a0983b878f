/** Everything that Landfall says, in German. */
import {
  type ChordHint,
  type ForeignFile,
  type FoundValue,
  type OggCodec,
  type WantedValue,
  isArchive,
  isConvertible,
  chordRootAscii,
  joinWith,
  type NoteName,
  withoutMinusZero,
} from './entry.ts';
import type { en } from './en.ts';
import type { Words } from './words.ts';

/** Mit so vielen Stellen. Was zu null gerundet wird, hat kein Minus. */
const decimal = (value: number, digits: number): string =>
  withoutMinusZero(value, digits).toFixed(digits).replace('.', ',');
/** Platz auf einem Datenträger: „5,5 MB“, „340 MB“, „12,3 GB“. */
const diskRoom = (megabytes: number): string =>
  megabytes < 1000
    ? `${decimal(megabytes, megabytes < 10 ? 1 : 0)} MB`
    : `${decimal(megabytes / 1000, 1)} GB`;
const several = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;
const percent = (share: number): string => `${Math.round(share * 100)} %`;
/** Mit so vielen Stellen höchstens. */
const trimmed = (value: number, digits = 2): string =>
  String(Number(value.toFixed(digits))).replace('.', ',');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const noun = (count: number, one: string, many: string): string => (count === 1 ? one : many);
const times = (count: number): string => ['nie', 'einmal', 'zweimal'][count] ?? `${count}-mal`;
const inBrackets = (items: readonly string[]): string => (items.length === 0 ? '' : ` (${items.join(', ')})`);

type Facts<Entry> = Entry extends (facts: infer F) => string ? F : never;
type Report = (typeof en)['report'];
type AdviceFacts = Facts<Report['advice']['landing']>;
type AimEvents = Facts<Report['aims']['evidence']['none']>;
type LandedFacts = Omit<Facts<Report['headline']['judged']>, 'verdict' | 'moreChoruses'>;
type VerdictCode = Facts<Report['headline']['judged']>['verdict'];

const VERDICTS: Readonly<Record<VerdictCode, string>> = {
  'above chance': 'mehr als Zufall',
  'at chance': 'nicht mehr als Zufall',
  'below chance': 'weniger, als der Zufall ergibt',
  'too short to tell': 'zu kurz für ein Urteil',
};

function luck(expected: number | null): string {
  if (expected === null) return 'was der Zufall ergäbe, ist nicht bekannt';
  if (expected === 0) return 'der Zufall ergibt keine';
  if (expected < 0.5) return 'der Zufall ergibt weniger als eine';
  return `der Zufall ergibt etwa ${Math.round(expected)}`;
}

const countedLandings = ({ hits, of, tones }: LandedFacts): string =>
  `${hits} von ${several(of, 'Landung', 'Landungen')} ${hits === 1 || of === 1 ? 'liegt' : 'liegen'} auf ` +
  (tones === 'thirds' ? 'der Terz' : 'einem Guide Tone (hier hat kein Akkord eine Terz)');

function moreShows(count: number | 'many'): string {
  if (count === 'many') return 'ein längerer Take wird es zeigen';
  return count === 1 ? 'ein weiterer Chorus wird es zeigen' : `${count} weitere Chorusse werden es zeigen`;
}

function bars(count: number): string {
  const rounded = count < 1 ? Math.round(count * 4) / 4 : Math.round(count * 2) / 2;
  if (rounded <= 0.25) return 'ein Viertel eines Taktes';
  if (rounded < 1) return rounded === 0.5 ? 'einen halben Takt' : 'drei Viertel eines Taktes';
  return rounded === 1 ? 'einen Takt' : `${trimmed(rounded)} Takte`;
}

function pValue(tail: number): string {
  if (tail < 0.001) return 'p < 0,001';
  return `p = ${decimal(tail, tail < 0.01 ? 3 : 2)}`;
}

const AIM_EVENTS: Readonly<Record<AimEvents['events'], readonly [one: string, several: string]>> = {
  landings: ['Landung', 'Landungen'],
  'phrase ends': ['Phrasenende', 'Phrasenenden'],
  'strong beats': ['betonter Schlag', 'betonte Schläge'],
  notes: ['Ton', 'Töne'],
  'flat thirds': ['kleine Terz', 'kleine Terzen'],
  changes: ['Akkordwechsel', 'Akkordwechsel'],
  bars: ['Takt', 'Takte'],
  choruses: ['Chorus', 'Chorusse'],
};
/** „von 8 Takten“: der Dativ der Mehrzahl. */
const AIM_EVENTS_OF: Readonly<Record<AimEvents['events'], readonly [one: string, several: string]>> = {
  ...AIM_EVENTS,
  'strong beats': ['betonten Schlag', 'betonten Schlägen'],
  notes: ['Ton', 'Tönen'],
  changes: ['Akkordwechsel', 'Akkordwechseln'],
  bars: ['Takt', 'Takten'],
  choruses: ['Chorus', 'Chorussen'],
};

const overDegrees = (over: readonly string[]): string =>
  over.length === 0 ? '' : ` über ${noun(over.length, 'der', 'den')} ${joinWith(over, 'und')}`;
const aimEventsOf = (events: AimEvents['events'], count: number, over: readonly string[]): string =>
  `${AIM_EVENTS_OF[events][count === 1 ? 0 : 1]}${overDegrees(over)}`;

const timesAfter = (count: number): string => (count === 1 ? '' : `, ${times(count)}`);

function adviceStep({ semitones, resolve, resolveDegree, where }: AdviceFacts, from?: string): string {
  const step = `Einen ${Math.abs(semitones) === 1 ? 'Halbton' : 'Ganzton'} ${semitones > 0 ? 'höher' : 'tiefer'}`;
  const start = from === undefined ? '' : ` als ${from}`;
  return `${step}${start} liegt ${resolve}, seine ${resolveDegree}${where === null ? '' : ` (${where})`}`;
}

function lateness(ms: number): string {
  const rounded = Math.round(Math.abs(ms));
  return rounded < 10 ? 'pünktlich' : `${rounded} ms zu ${ms < 0 ? 'früh' : 'spät'}`;
}

function inCents(cents: number): string {
  const rounded = Math.round(cents);
  return rounded === 0 ? 'sauber' : `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)} Cent`;
}
/** Eine ganze Zahl mit einem echten Minuszeichen. */
const signed = (value: number): string => `${value < 0 ? '−' : ''}${Math.abs(value)}`;

/**
 * German note names: H for B, B for B flat, -is for a sharp, -es for a flat, but As and Es.
 * The names are those of the LilyPond Notation Reference, "Note names in other languages" (deutsch).
 */
function noteName({ letter, alteration, octave }: NoteName): string {
  const base = letter === 'B' ? 'H' : letter;
  const sharps = 'is'.repeat(Math.max(0, alteration));
  const name = alteration < 0 ? flatName(base, -alteration) : `${base}${sharps}`;
  return `${name}${octave ?? ''}`;
}

function flatName(base: string, flats: number): string {
  if (base === 'H' && flats === 1) return 'B';
  if (base === 'A') return `As${'as'.repeat(flats - 1)}`;
  return base === 'E' ? `Es${'es'.repeat(flats - 1)}` : `${base}${'es'.repeat(flats)}`;
}

/** In a chord symbol only B and B flat have other names; F# and Eb stay, as German lead sheets have them. */
function chordRoot(name: NoteName): string {
  if (name.letter !== 'B') return chordRootAscii(name);
  return name.alteration === -1 ? 'B' : chordRootAscii({ ...name, letter: 'H' });
}

const barOrPickup = (bar: number | null): string => (bar === null ? 'Der Auftakt' : `Takt ${bar}`);
const decimalOf = (value: number): string => String(value).replace('.', ',');

const MODES = { major: 'Dur', minor: 'Moll' } as const;

function chordHint(hint: ChordHint): string {
  if (hint.kind === 'capital') return `ein Grundton ist ein großer Buchstabe: Schreib ${hint.write}`;
  if (hint.kind === 'beginning')
    return `nur ${hint.readable} davon ist zu lesen: Sieh nach, was folgt, etwa in Am7/G oder Bb7(b9)`;
  return 'ein Akkord ist ein Grundton von A bis G (englisch: B für H, Bb für B) und seine Art, etwa C7, F#m7b5, Bbmaj7, Eb6/9 oder G7/B';
}

type ChartNumber = Facts<(typeof en)['problems']['chart.number']>['word'];
const CHART_NUMBERS: Readonly<Record<ChartNumber, string>> = {
  tempo: 'Schläge in der Minute',
  swing: 'des Schlags für seine erste Achtel',
  pickup: 'Schläge vor dem ersten Takt',
};

const READABLE_FILES =
  'Landfall liest Klang als WAV, MP3, FLAC und Ogg Vorbis, MIDI-Dateien und Tabellen mit der Kopfzeile onset,duration,pitch';

const FOREIGN_FILES: Readonly<Record<ForeignFile, string>> = {
  mp4: 'eine MP4- oder M4A-Datei',
  aiff: 'eine AIFF-Datei',
  caf: 'eine Core-Audio-Datei',
  rifx: 'eine WAV-Datei in umgekehrter Bytefolge',
  wma: 'eine Windows-Media-Datei',
  webm: 'eine WebM- oder Matroska-Datei',
  ape: 'eine Monkey’s-Audio-Datei',
  wavpack: 'eine WavPack-Datei',
  au: 'eine AU-Datei',
  aac: 'ein AAC-Strom',
  avi: 'ein Video (AVI)',
  webp: 'ein Bild (WebP)',
  png: 'ein Bild (PNG)',
  jpeg: 'ein Bild (JPEG)',
  gif: 'ein Bild (GIF)',
  bmp: 'ein Bild (BMP)',
  pdf: 'ein PDF-Dokument',
  zip: 'ein Zip-Archiv',
  gzip: 'ein Gzip-Archiv',
  '7z': 'ein 7z-Archiv',
  program: 'ein Programm',
};

function foreignAdvice(kind: ForeignFile): string {
  if (isArchive(kind)) return 'pack das Archiv aus und nimm eine Aufnahme daraus';
  return isConvertible(kind)
    ? 'speichere den Klang als WAV, FLAC, MP3 oder Ogg Vorbis und versuch es noch einmal'
    : 'nimm eine Aufnahme';
}

const OGG_CODECS: Readonly<Record<OggCodec, string>> = {
  opus: 'Opus',
  flac: 'FLAC in Ogg',
  speex: 'Speex',
  theora: 'Theora-Video',
};

type AimForm = Facts<(typeof en)['problems']['aim.form']>['form'];
const AIM_FORMS: Readonly<Record<AimForm, string>> = {
  words: 'ein paar Wörter',
  id: 'kleine Buchstaben, Ziffern und Bindestriche',
  'degree of the key': 'eine Stufe wie "I", "IV" oder "bVII"',
  tone: 'eine Rolle wie "third", eine Stufe wie "b3" oder eine der Tonart wie "key 3"',
  tones: 'mindestens einen Ton',
};

/** Was ein Feld einer Datei enthalten muss, hinter „schreib“. */
const WANTED: Readonly<Record<Exclude<WantedValue['kind'], 'one of' | 'at least' | 'at most'>, string>> = {
  text: 'einen Text',
  number: 'eine Zahl',
  integer: 'eine ganze Zahl',
  boolean: 'true oder false',
  list: 'eine Liste',
  object: 'ein Objekt mit benannten Feldern',
  other: 'einen anderen Wert',
};

function wantedWords(wanted: WantedValue): string {
  if (wanted.kind === 'one of') return joinWith(wanted.values, 'oder');
  if (wanted.kind === 'at least') return `mindestens ${trimmed(wanted.limit)}`;
  return wanted.kind === 'at most' ? `höchstens ${trimmed(wanted.limit)}` : WANTED[wanted.kind];
}

const FOUND = { nothing: 'nichts', list: 'eine Liste', object: 'ein Objekt mit benannten Feldern' } as const;

const foundWords = (found: FoundValue): string => (found.kind === 'value' ? found.json : FOUND[found.kind]);

const quoted = (texts: readonly string[]): readonly string[] => texts.map((text) => `„${text}“`);

const OPTION_UNITS: Readonly<Record<Facts<(typeof en)['problems']['cli.number']>['unit'], string>> = {
  bpm: ' Schlägen in der Minute',
  beat: ' des Schlags',
  bars: ' Takten',
  seconds: ' Sekunden',
  hz: ' Hz',
  beats: ' Schlägen',
  choruses: ' Chorussen',
  halfSteps: ' Halbtönen',
  ms: ' Millisekunden',
  none: '',
};

const TIME_UNITS = { milliseconds: 'Millisekunden', samples: 'Abtastwerten' } as const;

type DiskReason = Facts<(typeof en)['problems']['disk.read']>['reason'];
function diskReason(reason: DiskReason, system: string): string {
  const told: Readonly<Record<DiskReason, string>> = {
    missing: 'Es gibt sie nicht',
    notAllowed: 'Du darfst es nicht',
    full: 'Der Datenträger ist voll',
    readOnly: 'Auf diesen Datenträger kann nichts geschrieben werden',
    inUse: 'Ein anderes Programm benutzt die Datei',
    folder: 'Es ist ein Ordner; nenn eine Datei darin',
    tooManyOpen: 'Es sind zu viele Dateien offen',
    disk: 'Der Datenträger ist fehlerhaft',
    nameTooLong: 'Der Dateiname ist zu lang',
    oddName: 'Ihr Name enthält Zeichen, die kein Text in UTF-8 sind; nenn sie anders',
    linkLoop: 'Es ist ein Verweis, der auf sich selbst führt',
    nothingThere: 'Dort ist nichts angeschlossen',
    other: `Das System lässt es nicht zu (sein Grund ist ${system}); versuch es mit einem anderen Ordner`,
  };
  return told[reason];
}

export const de: Words = {
  name: 'Deutsch',
  tag: 'de',

  numbers: {
    decimal: ({ value, digits }) => decimal(value, digits),
    percent: ({ share }) => percent(share),
    and: ({ items }) => joinWith(items, 'und'),
    or: ({ items }) => joinWith(items, 'oder'),
  },

  music: {
    note: noteName,
    chordRoot,
    key: ({ tonic, mode }) =>
      mode === 'minor' ? `${tonic.charAt(0).toLowerCase()}${tonic.slice(1)}-Moll` : `${tonic}-Dur`,
    roles: {
      root: 'Grundton',
      third: 'Terz',
      fifth: 'Quinte',
      seventh: 'Septime',
      extension: 'Erweiterung',
      colour: 'Skalenton',
      blue: 'Blue Note',
      outside: 'außerhalb',
    },
  },

  // Was von einem Bericht gesagt wird. Namen von Tönen und Akkorden kommen schon deutsch geschrieben.
  report: {
    headline: {
      noNotes: 'Über keinem Akkord war ein Ton zu hören: Es gibt noch nichts zu bewerten.',
      noLandings: 'Während du gespielt hast, hat kein Akkord gewechselt: Es gibt keine Landung zu bewerten.',
      judged: ({ verdict, moreChoruses, ...counted }) =>
        `${countedLandings(counted)}; ${luck(counted.expected)}: ${VERDICTS[verdict]}.` +
        `${moreChoruses === null ? '' : ` ${capital(moreShows(moreChoruses))}.`}`,
      numbers: ({ low, high, tail }) =>
        `95-%-Intervall ${Math.round(low * 100)} bis ${Math.round(high * 100)} %, ${pValue(tail)}.`,
    },

    good: {
      landings: ({ hits, of, tones }) =>
        `${hits} von ${of} Landungen liegen auf ${tones === 'chordTones' ? 'Akkordtönen' : 'Guide Tones'}: mehr als Zufall.`,
      strongBeats: ({ hits, of }) =>
        `${hits} von ${of} Tönen auf betonten Schlägen sind Akkordtöne: mehr als Zufall.`,
      putRight: ({ count, of }) =>
        `${count} von ${of} Landungen außerhalb des Akkords werden im Schritt in einen Akkordton aufgelöst.`,
    },

    suspected: {
      key: ({ here, there, shareHere, shareThere }) =>
        `Das passt besser zu ${there} als zu ${here}: ${percent(shareThere)} der Töne wären Akkordtöne, hier sind es ${percent(shareHere)}. Falsche Tonart gewählt?`,
      place: ({ beats, shareHere, shareThere }) =>
        `Das passt besser, wenn der Chart ${several(Math.abs(beats), 'Schlag', 'Schläge')} ${beats > 0 ? 'später' : 'früher'} beginnt: ` +
        `${percent(shareThere)} der Töne wären Akkordtöne, hier sind es ${percent(shareHere)}. Falscher erster Schlag?`,
    },

    hears: {
      space: ({ rest, phraseBars, runBars }) =>
        `Du machst ${percent(rest)} der Zeit Pause. Eine Phrase dauert etwa ${bars(phraseBars)}; am längsten spielst du ${bars(runBars)} ohne Pause.`,
      starts: ({ count, of, beat }) => `${count} von ${of} Phrasen beginnen auf Schlag ${beat}.`,
      approach: ({ landings, ways }) =>
        `So erreichst du ${several(landings, 'Landung', 'Landungen')} auf Akkordtönen: ${joinWith(ways, 'und')}.`,
      ways: {
        halfBelow: ({ count }) => `${count} vom Halbton darunter`,
        halfAbove: ({ count }) => `${count} vom Halbton darüber`,
        wholeStep: ({ count }) => `${count} mit einem Ganztonschritt`,
        enclosure: ({ count }) => `${count} von beiden Seiten (eine Umspielung)`,
        leap: ({ count }) => `${count} mit einem Sprung`,
        sameNote: ({ count }) => `${count} auf demselben Ton`,
      },
      figure: ({ notes, more, count, bar, changes }) =>
        `Eine Figur kommt wieder: ${notes.join(' ')}${more > 0 ? ` und ${more} weitere` : ''}, ${times(count)}${bar === null ? '' : `, zuerst in Takt ${bar}`}` +
        `${changes.length === 0 ? '' : ` (${changes.join(', ')})`}.`,
      figureChanges: {
        movedInBar: ({ count }) => `${times(count)} an anderer Stelle im Takt`,
        otherOctave: ({ count }) => `${times(count)} in einer anderen Oktave`,
        otherChord: ({ count }) => `${times(count)} mit Ende über einem anderen Akkord`,
        otherEnd: ({ count }) => `noch ${times(count)} mit anderem letzten Ton`,
      },
      beat: ({ medianMs, spreadMs }) =>
        `Auf den Schlägen bist du ${Math.round(medianMs) === 0 ? 'pünktlich' : `${Math.abs(Math.round(medianMs))} ms zu ${medianMs < 0 ? 'früh' : 'spät'}`}, plus oder minus ${Math.round(spreadMs)} ms.`,
      swing: ({ played, asked }) =>
        `Deine erste Achtel dauert ${percent(played)} des Schlags; das Feel verlangt ${percent(asked)}.`,
      range: ({ lowest, highest, semitones }) =>
        `Von ${lowest} bis ${highest}, ${several(semitones, 'Halbton', 'Halbtöne')}.`,
      shapes: ({ shapes }) => `Phrasen: ${shapes.join(', ')}.`,
      shape: {
        rising: ({ count }) => several(count, 'steigt', 'steigen'),
        falling: ({ count }) => several(count, 'fällt', 'fallen'),
        arched: ({ count }) =>
          several(count, 'geht hinauf und kommt zurück', 'gehen hinauf und kommen zurück'),
        level: ({ count }) => `${several(count, 'bleibt', 'bleiben')} auf einer Höhe`,
      },
      accents: ({ db }) =>
        `Töne auf betonten Schlägen sind ${Math.abs(Math.round(db))} dB ${db > 0 ? 'lauter' : 'leiser'} als die anderen.`,
    },

    suspectedDelay: {
      known: ({ ms, isLate, spreadMs, notes }) =>
        `Deine Töne liegen etwa ${ms} ms ${isLate ? 'hinter' : 'vor'} dem Schlag (${notes} Töne, plus oder minus ${spreadMs} ms). Das ist mehr als üblich: Die Verzögerung ist wahrscheinlich etwa ${ms} ms zu ${isLate ? 'kurz' : 'lang'} eingestellt.`,
      unclear: ({ ms, isLate, spreadMs, notes }) =>
        `Deine Töne verfehlen die Schläge, alle um etwa dieselbe Zeit (${notes} Töne, plus oder minus ${spreadMs} ms) und um mehr als üblich: Sie liegen etwa ${ms} ms ${isLate ? 'hinter' : 'vor'} den Schlägen oder noch weiter ${isLate ? 'davor' : 'dahinter'}. Die Verzögerung ist wahrscheinlich falsch. Die Töne allein zeigen nicht, um wie viel: Miss sie neu.`,
    },

    timing: {
      ahead: ({ ms }) => `Du spielst etwa ${ms} ms vor dem Schlag; an der Bewertung ändert das nichts.`,
      behind: ({ ms }) =>
        `Du spielst etwa ${ms} ms hinter dem Schlag; die Töne werden bewertet, als lägen sie darauf.`,
    },

    /** Was von Hand berichtigt ist. */
    corrected: ({ notes, added, deleted, leftOut }) => {
      const parts = [
        ...(added === 0 ? [] : [`${added} hinzugefügt`]),
        ...(deleted === 0 ? [] : [`${deleted} gelöscht`]),
      ];
      const told =
        notes === 0
          ? []
          : [
              `${notes === 1 ? '1 Ton ist' : `${notes} Töne sind`} von Hand berichtigt${parts.length === 0 ? '' : ` (${parts.join(', ')})`}.`,
            ];
      const left =
        leftOut === 0
          ? []
          : [
              leftOut === 1
                ? '1 Berichtigung passt nicht mehr zu den Tönen und gilt nicht.'
                : `${leftOut} Berichtigungen passen nicht mehr zu den Tönen und gelten nicht.`,
            ];
      return [...told, ...left].join(' ');
    },
    lost: {
      countIn: 'beim Einzählen',
      bar: ({ bar, chorus }) => (chorus === 1 ? `in Takt ${bar}` : `in Takt ${bar} von Chorus ${chorus}`),
      more: ({ bars }) => `in ${bars} weiteren ${noun(bars, 'Takt', 'Takten')}`,
      told: ({ ms, places }) =>
        `Dem Browser fehlen ${ms} ms der Aufnahme, ${joinWith(places, 'und')}; was du dort gespielt hast, steht nicht im Bericht.`,
    },

    aims: {
      verdicts: {
        reached: 'erreicht',
        'not yet': 'noch nicht',
        'too short to tell': 'zu kurz für ein Urteil',
        'not in this chart': 'nicht in diesem Chart',
      },
      answer: {
        reached: ({ hits, of, events, over }) =>
          `Geschafft: ${hits} von ${of} ${aimEventsOf(events, of, over)}.`,
        share: ({ hits, of, needed, events, over }) =>
          `Noch nicht: ${hits} von ${of} ${aimEventsOf(events, of, over)}; ${needed} würden reichen.`,
        luck: ({ hits, of, events, over }) =>
          `${hits} von ${of} ${aimEventsOf(events, of, over)}, aber der Zufall kann ebenso viele ergeben.`,
        tooShort: ({ hits, of, more, events, over }) =>
          `Bisher ${hits} von ${of} ${aimEventsOf(events, of, over)}. ${capital(moreShows(more))}.`,
      },
      evidence: {
        notInChart: ({ over }) =>
          over.length === 0
            ? 'Der Chart hat keinen solchen Akkord.'
            : `Der Chart hat keine ${joinWith(over, 'oder')}.`,
        none: ({ events, over }) => `In diesem Take: 0 ${AIM_EVENTS[events][1]}${overDegrees(over)}.`,
        few: ({ hits, of, least, events, over }) =>
          `${hits} von ${of} ${aimEventsOf(events, of, over)}; für ein Urteil sind mindestens ${least} nötig.`,
        notUsed: ({ hits, of, events, over }) =>
          `${hits} von ${of} ${aimEventsOf(events, of, over)}, aber du spielst diesen Ton auch sonst kaum: Dass du ihn meidest, ist damit noch nicht gezeigt.`,
        counted: ({ hits, of, toReach, expected, onlyLuck, moreChoruses, events, over }) =>
          `${hits} von ${of} ${aimEventsOf(events, of, over)}; das Ziel ist ${percent(toReach)}` +
          `${expected === undefined ? '' : `, ${luck(expected)}`}${onlyLuck ? ': genug, aber nicht mehr, als der Zufall ergeben kann' : ''}` +
          `${moreChoruses === null ? '' : `; ${moreShows(moreChoruses)}`}.`,
      },
      house: {
        'guide-tones': {
          name: 'Terzen und Septimen',
          task: 'Lande auf der Terz oder der Septime jedes Akkords, wenn er kommt.',
        },
        thirds: { name: 'Terzen', task: 'Lande auf der Terz jedes Akkords, wenn er kommt.' },
        'chord-tones': {
          name: 'Alle Akkordtöne',
          task: 'Lande auf irgendeinem Ton jedes Akkords, wenn er kommt.',
        },
        'third-over-one': {
          name: 'Die Terz über der I',
          task: 'Lass in jedem zweiten Takt, den du über der I spielst, die Terz hören.',
        },
        'flat-third-into-third': {
          name: 'Die b3 in die 3',
          task: 'Führe über einem Akkord mit großer Terz jede zweite b3 innerhalb eines halben Schlags hinauf in die 3.',
        },
        'add-the-sixth': {
          name: 'Die Sexte dazu',
          task: 'Bring die Sexte in jeden dritten Takt, den du über der I spielst.',
        },
        'add-the-ninth': {
          name: 'Die None dazu',
          task: 'Bring die None in jeden dritten Takt, den du über der I spielst.',
        },
        'third-sixth-ninth': {
          name: 'Terz, Sexte und None in einem Chorus',
          task: 'Bring über der I die Terz, die Sexte und die None in einen Chorus, und das in jedem zweiten.',
        },
        'third-on-arrival': {
          name: 'Die Terz jedes Akkords, wenn er kommt',
          task: 'Lande bei jedem zweiten Akkordwechsel auf der Terz des neuen Akkords.',
        },
        'guide-tones-by-step': {
          name: 'Guide Tones im Schritt',
          task: 'Geh bei jedem dritten Akkordwechsel von einem Guide Tone des alten Akkords im Schritt zum nächsten Guide Tone des neuen.',
        },
        'phrases-end-on-chord-tones': {
          name: 'Phrasen auf Akkordtönen beenden',
          task: 'Beende drei von vier Phrasen auf einem Ton des Akkords, der darunter liegt.',
        },
        'off-the-third-over-four': {
          name: 'Keine große Terz der Tonart über der IV',
          task: 'Spiel über der IV die b3 oder die 4 der Tonart, wo du ihre große Terz gespielt hättest.',
        },
      },
    },

    advice: {
      bars: ({ bars, more }) => {
        if (bars.length === 1 && more === 0) return `Takt ${bars[0]}`;
        return `Takte ${joinWith([...bars.map(String), ...(more > 0 ? [`${more} weitere`] : [])], 'und')}`;
      },
      landing: (told) =>
        `${told.bars}: Wenn ${told.chord} kommt, ${told.held ? 'hältst du' : 'landest du auf'} ${told.played} (seine ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'third over four': (told) =>
        `${told.bars}: Über ${told.chord} spielst du ${told.played}, die große Terz der Tonart (seine ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'phrase end': (told) =>
        `${told.bars}: Über ${told.chord} endet eine Phrase auf ${told.played} (seine ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'hanging b3': (told) =>
        `${told.bars}: Über ${told.chord} wird die b3, ${told.played}, nicht aufgelöst${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'third near': (told) =>
        `${told.bars}: In ${told.chord} hinein gehst du von ${told.from} zu ${told.played} (seine ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told, told.from)}.`,
      neck: ({ string, fret, open }) => (open ? `${string}. Saite leer` : `${string}. Saite, ${fret}. Bund`),
      written: ({ name }) => `notiert ${name}`,
    },

    explain: {
      beforeFirstBar: 'vor dem ersten Takt',
      place: ({ bar, beat, chorus }) =>
        `Takt ${bar}, Schlag ${beat}${chorus === 1 ? '' : `, Chorus ${chorus}`}`,
      role: {
        root: ({ chord }) => `der Grundton von ${chord}`,
        third: ({ chord }) => `die Terz von ${chord}`,
        fifth: ({ chord }) => `die Quinte von ${chord}`,
        seventh: ({ chord }) => `die Septime von ${chord}`,
        extension: ({ chord }) => `eine Erweiterung, die ${chord} nennt`,
        colour: ({ chord }) => `ein Skalenton über ${chord}`,
        blue: ({ chord }) => `eine Blue Note über ${chord}`,
        outside: ({ chord }) => `außerhalb von ${chord} und den Skalen`,
      },
      noChord: 'kein Akkord darunter',
      degrees: ({ degree, keyDegree, key }) =>
        degree === null ? `${keyDegree} in ${key}.` : `${degree} des Akkords, ${keyDegree} in ${key}.`,
      tuning: ({ cents, offsetMs }) =>
        `${capital(inCents(cents))}${offsetMs === null ? '' : `, ${lateness(offsetMs)}`}.`,
      doubtful: ({ confidence }) =>
        `Ob dieser Ton gespielt wurde, ist nicht sicher (Sicherheit ${percent(confidence)}); er zählt in keinem Anteil.`,
      takenOut: 'Du hast diesen Ton herausgenommen; er zählt in keinem Anteil.',
      chosen: ({ confidence }) =>
        `Ob dieser Ton gespielt wurde, war nicht sicher (Sicherheit ${percent(confidence)}); er zählt, weil du es so willst.`,
      second: ({ name }) => `${name} klingt mit.`,
      manner: ({ bend, legato, vibrato }) => {
        const ways = [
          ...(bend === null ? [] : [`um ${decimal(bend, 1)} Halbtöne gezogen`]),
          ...(legato ? ['gebunden'] : []),
          ...(vibrato ? ['mit Vibrato'] : []),
        ];
        return `${capital(ways.join(', '))}.`;
      },
      weight: ({ weight }) => `Gewicht ${decimal(weight, 2)} nach der Länge.`,
      standing: ({ strongBeat, phraseEnd }) => {
        const facts = [
          ...(strongBeat ? ['auf einem betonten Schlag'] : []),
          ...(phraseEnd ? ['beendet die Phrase'] : []),
        ];
        return facts.length === 0 ? '' : `${capital(facts.join(', '))}.`;
      },
      rule: {
        onset: ({ chord }) => `Wenn er beginnt, klingt ${chord}.`,
        anticipation: ({ beats, chord }) =>
          `Er beginnt ${trimmed(beats)} ${beats === 1 ? 'Schlag' : 'Schläge'} vor ${chord}, dauert, bis dieser Akkord kommt, und ist einer seiner Töne.`,
        onTheChange: ({ chord }) =>
          `Er beginnt so knapp vor ${chord}, dass er als auf dem Wechsel gespielt gilt.`,
        noChord: 'Wenn er beginnt, klingt kein Akkord.',
      },
      function: {
        passing: ({ notes }) =>
          notes.length > 1
            ? `Er ist ein Durchgang: im Schritt und in einer Richtung zwischen zwei Akkordtönen${inBrackets(notes)}.`
            : `Er geht im Schritt weiter${inBrackets(notes)}.`,
        neighbour: ({ notes }) =>
          notes.length > 1
            ? `Er ist eine Wechselnote: einen Schritt weg von einem Akkordton und zurück${inBrackets(notes)}.`
            : `Er kehrt im Schritt um${inBrackets(notes)}.`,
        approach: ({ notes }) => `Er führt mit einem Halbtonschritt in einen Akkordton${inBrackets(notes)}.`,
        enclosure: ({ notes }) =>
          `Er ist die Hälfte einer Umspielung: zwei Töne, je einer auf jeder Seite des Akkordtons, den sie erreichen${inBrackets(notes)}.`,
        appoggiatura: ({ notes }) =>
          notes.length > 1
            ? `Er ist ein freier Vorhalt: im Sprung erreicht, im Schritt in einen Akkordton verlassen${inBrackets(notes)}.`
            : `Er ist ein freier Vorhalt: Er beginnt die Phrase und geht im Schritt in einen Akkordton${inBrackets(notes)}.`,
        escape: ({ notes }) =>
          `Er ist eine abspringende Note: verlassen im Sprung gegen den Schritt, der zu ihm führte${inBrackets(notes)}.`,
        suspension: ({ notes }) =>
          `Er ist ein Vorhalt: vom Akkord davor gehalten, dann im Schritt aufgelöst${inBrackets(notes)}.`,
        anticipation: ({ notes }) => `Er nimmt den nächsten Akkord voraus${inBrackets(notes)}.`,
        free: ({ notes }) =>
          `Er wird nicht im Schritt verlassen und führt darum zu keinem anderen Ton${inBrackets(notes)}.`,
      },
      landing: ({ chord, degree, offsetMs }) =>
        `Die Landung beim Wechsel zu ${chord}: ${degree}, ${lateness(offsetMs)}`,
      anticipated: ({ chord, degree }) =>
        `Die Landung beim Wechsel zu ${chord}: ${degree}, eine Achtel früher, als Vorausnahme`,
      putRight: ({ name, beats }) =>
        `; die Linie löst sie im Schritt auf, zu ${name}, ${beats < 0.05 ? 'sofort' : `${trimmed(beats)} ${beats === 1 ? 'Schlag' : 'Schläge'} später`}`,
      blueThird: ({ cents }) =>
        `Er ist eine Blue Note, ${Math.round(cents)} Cent über der b3: So wird Blues gespielt.`,
      held: ({ chord, degree }) => `Gehalten über den Wechsel zu ${chord}, wo er die ${degree} ist`,
      guideTone: {
        kept: ({ from, to }) => `; der Guide Tone ${from} bleibt als ${to} liegen`,
        resolved: ({ from, to }) => `; der Guide Tone ${from} geht im Schritt zur ${to}`,
      },
      open: ({ chord, bar, chorus }) =>
        `Pause: Beim Wechsel zu ${chord} in Takt ${bar}${chorus === 1 ? '' : `, Chorus ${chorus},`} klingt kein Ton.`,
      emptyBar: ({ bar, chorus }) =>
        `In Takt ${bar}${chorus === null ? '' : ` von Chorus ${chorus}`} wurde nichts gespielt.`,
    },
  },

  // Die Seite, die die Kommandozeile ausgibt, 80 Spalten breit.
  page: {
    title: ({
      notes,
      bars,
      choruses: rounds,
      key,
      bpm,
      rise,
      referenceHz,
      estimated,
      anticipationBeats,
      turnBars,
    }) => {
      const rising =
        rise === null
          ? ''
          : ` und ${rise.byBpm} mehr alle ${rise.everyBars} ${noun(rise.everyBars, 'Takt', 'Takte')}`;
      const tempo = bpm === null ? '' : `${trimmed(bpm, 1)} bpm${rising}, `;
      const turns =
        turnBars === null ? '' : `, ihr wechselt euch alle ${turnBars} ${noun(turnBars, 'Takt', 'Takte')} ab`;
      return (
        `${notes} ${noun(notes, 'Ton', 'Töne')} über ${rounds > 1 ? `${rounds} Chorusse zu ` : ''}${bars} ${rounds > 1 ? noun(bars, 'Takt', 'Takten') : noun(bars, 'Takt', 'Takte')} in ${key}, ${tempo}` +
        `A4 ${trimmed(referenceHz, 1)} Hz${estimated ? ' (gefunden)' : ''}${anticipationBeats === null ? '' : `, Vorausnahme ${trimmed(anticipationBeats)} Schlag`}${turns}`
      );
    },
    rows: {
      landings: 'Landungen',
      phraseEnds: 'Phrasenenden',
      strongBeats: 'betont',
      allNotes: 'alle Töne',
      byLength: 'nach Länge',
    },
    columns: { thirds: 'Terzen', guideTones: 'Guide Tones', chordTones: 'Akkordtöne' },
    none: 'keine',
    luck: ({ share }) => `Zufall ${percent(share)}`,
    signs: {
      'above chance': 'mehr als Zufall',
      'below chance': 'weniger als Zufall',
      'too short to tell': 'zu wenige',
    },
    form: {
      legend: 'Chorus für Chorus: b3>3 b3 in die 3, ~ gehalten, ( ) akkordfremd, · Pause',
      chord: ({ thirds, landed, chordTones, open }) =>
        `${thirds} von ${landed} auf der Terz, ${chordTones} auf einem Akkordton${open === 0 ? '' : `, ${several(open, 'Pause', 'Pausen')}`}`,
      more: ({ chords }) => `und ${chords} ${noun(chords, 'weiterer Akkord', 'weitere Akkorde')}`,
    },
    headings: {
      suspected: 'Zuerst',
      next: 'Nächstes',
      numbers: 'Zahlen',
      space: 'Pausen',
      approach: 'Wege',
      figures: 'Figuren',
      range: 'Umfang',
      accents: 'Akzente',
      changes: 'Wechsel',
      thirds: 'Terzen',
      palette: 'Skalen',
      backing: 'Backing',
      lost: 'Verloren',
      corrected: 'Von Hand',
      time: 'Timing',
      aims: 'Ziele',
      advice: 'Rat',
      good: 'Gut',
    },
    changes: {
      inBar: ({ chord, bar }) => `${chord} in Takt ${bar}`,
      alwaysThird: ({ places }) => `Immer die Terz: ${places.join(', ')}.`,
      neverChordTone: ({ places }) => `Nie ein Akkordton: ${places.join(', ')}.`,
      guideTones: ({ changes, resolved, kept }) =>
        `Ein Guide Tone ging bei ${resolved} von ${changes} ${noun(changes, 'Wechsel', 'Wechseln')} im Schritt in den nächsten Akkord` +
        `${kept === 0 ? '' : ` und blieb bei ${kept} liegen`}.`,
    },
    thirds: {
      counted: ({ notes, thirds, flatThirds, leans, ways, falls, leftHanging }) =>
        `Von ${notes} ${noun(notes, 'Ton', 'Tönen')} über Akkorden mit großer Terz ${thirds === 1 ? 'ist' : 'sind'} ${thirds} die 3 und ${flatThirds} die b3. ` +
        `b3 in die 3: ${times(leans)}${inBrackets(ways)}; 3 zurück zur b3: ${times(falls)}; b3 nicht aufgelöst: ${times(leftHanging)}.`,
      ways: {
        slid: ({ count }) => `${count} per Slide`,
        hammered: ({ count }) => `${count} per Hammer-on`,
        bent: ({ count }) => `${count} gezogen`,
        picked: ({ count }) => `${count} angeschlagen`,
      },
      blue: ({ count, lowCents, highCents }) =>
        `Blue Notes zwischen den beiden Terzen: ${count}, ${lowCents === highCents ? lowCents : `${lowCents} bis ${highCents}`} Cent über der b3. Sie sind keine falschen Töne.`,
    },
    palette: {
      mixture: ({ minor, major, both, neither }) =>
        `Moll ${percent(minor)}, Dur ${percent(major)}, beide ${percent(both)}, keine ${percent(neither)}`,
      overall: ({ mixture }) => `${mixture} der Zeit.`,
      chord: ({ chord, mixture }) => `${chord}: ${mixture}.`,
      thirdOverFour: ({ count, seconds, degree }) =>
        `Die große Terz der Tonart klang über der IV ${times(count)}, zusammen ${trimmed(Math.max(0.1, seconds), 1)} s: Dort ist sie die ${degree} und reibt sich.`,
    },
    backing: {
      notHeard: 'Im Take nicht zu hören; es wurde nichts herausgenommen.',
      heard: ({ offsetSeconds, driftPpm, removedDb }) =>
        `Zu hören ab ${decimal(offsetSeconds, 3)} s` +
        `${driftPpm === 0 ? '' : `, ${Math.abs(driftPpm)} ppm zu ${driftPpm > 0 ? 'schnell' : 'langsam'}`}; ${removedDb === 0 ? 'sie ließ sich nicht leiser machen' : `vor dem Hören um ${removedDb} dB leiser gemacht`}.`,
    },
    suspected: {
      key: ({ semitones }) => `Bewerte es noch einmal mit --transpose ${semitones}.`,
      place: ({ firstBeat }) => `Bewerte es noch einmal mit --first-beat ${firstBeat}.`,
    },
    more: 'Mehr: --full nennt alle Zahlen, --explain TAKT die Gründe.',
    aims: {
      tried: ({ name, verdict, evidence }) => `${name}: ${verdict}. ${evidence}`,
      reached: ({ names }) => `Erreicht: ${names.join('; ')}.`,
      stay: ({ task }) => `Nächstes Ziel: Bleib bei diesem. ${task}`,
      next: ({ name, evidence, task }) => `Nächstes Ziel: ${name}. ${evidence} ${task}`,
      nextInShort: ({ name, task }) => `${name}. ${task}`,
    },
  },

  // Probleme: gleiche Schlüssel und Gruppen wie in en.ts.
  problems: {
    // ── charts ──
    'chart.tooLong': ({ characters }) =>
      `Der Chart ist länger als ${characters} Zeichen: Kürze ihn, oder bewerte ihn in Teilen.`,
    'chart.noBars':
      'Der Chart hat keine Takte: Schreib Akkorde zwischen Taktstriche, etwa | G7 | C7 | G7 | D7 |.',
    'chart.repeatOpen': ({ line }) =>
      `Zeile ${line} beginnt eine Wiederholung, die nicht endet: Schreib :| hinter ihren letzten Takt.`,
    'chart.signsAtEnd': 'Hinter einem Segno oder Coda-Zeichen am Ende steht kein Takt.',
    'chart.endingWithoutRepeat': ({ bar }) =>
      `Takt ${bar} beginnt eine Klammer, aber kein Wiederholungszeichen :| schließt sie.`,
    'chart.chorusTooLong': ({ bars }) =>
      `Der Chart ist mit seinen Wiederholungen länger als ${bars} Takte: Kürze ihn.`,
    'chart.chordsInBar': ({ bar, most }) =>
      `${bar === null ? 'Der Auftakt' : `Takt ${bar}`} hat mehr als ${most} Akkorde und Schlagzeichen; das kann niemand spielen: Verteil sie auf mehr Takte.`,
    'chart.tooManyChords': ({ most }) => `Der Chart hat mehr als ${most} Akkorde: Kürze ihn.`,
    'chart.noBarLines': ({ line }) =>
      `Zeile ${line} hat Akkorde, aber keine Taktstriche: Schreib sie zwischen Taktstriche, etwa | C7 | F7 |.`,
    'chart.headingTooLate': ({ line, word }) =>
      `Zeile ${line}: ${word} gehört vor den ersten Takt; nur feel und key dürfen später wechseln.`,
    'chart.headingEmpty': ({ line, word }) =>
      `Zeile ${line}: Hinter ${word} steht nichts; schreib einen Wert dahinter oder lösch die Zeile.`,
    'chart.sectionName': ({ line, name }) =>
      `Zeile ${line}: So kann kein Teil heißen: „${name}“; schreib Buchstaben und Wörter in eckige Klammern, etwa [A] oder [Bridge].`,
    'chart.chordWithoutBarLines': ({ name }) =>
      `${name} steht ohne Taktstriche: Ein Takt davon ist | ${name} |.`,
    'chart.sectionEmpty': ({ name, feel }) =>
      `Der Teil ${name ?? (feel === null ? 'in einer anderen Tonart' : `mit dem Feel ${feel}`)} hat keine Takte: Schreib welche dahinter oder lösch seine Zeile.`,
    'chart.noHeading': ({ line, text }) =>
      `Zeile ${line}: „${text}“ ist keine Angabe; schreib das Wort, einen Doppelpunkt und den Wert.`,
    'chart.unknownHeading': ({ line, word, known }) =>
      `Zeile ${line}: „${word}“ ist keine Angabe eines Charts; es gibt ${known.join(', ')}.`,
    'chart.barEmpty': ({ bar }) =>
      `${barOrPickup(bar)} ist leer: Schreib %, um den Takt davor zu wiederholen, oder N.C. für keinen Akkord.`,
    'chart.signWithoutBar': ({ line, signs }) => `Zeile ${line}: Vor ${signs} steht kein Takt.`,
    'chart.endingWithoutChord': ({ bar }) =>
      `${barOrPickup(bar)} beginnt eine Klammer, hat aber keinen Akkord.`,
    'chart.pickupTooLong': ({ beats, meter }) =>
      `Ein Auftakt ist kürzer als ein Takt: ${decimalOf(beats)} Schläge passen nicht vor ${meter}.`,
    'chart.pickupRepeated': 'Der Auftakt wird einmal gespielt: Setz Wiederholungen und Zeichen dahinter.',
    'chart.repeatInRepeat': ({ bar }) =>
      `${barOrPickup(bar)} beginnt eine Wiederholung in einer Wiederholung: Schließ die erste vorher mit :|.`,
    'chart.repeatWithoutBar': ({ line }) =>
      `Zeile ${line}: Hier endet eine Wiederholung, in der kein Takt steht.`,
    'chart.repeatTimes': ({ bar, times: count, most }) =>
      `Takt ${bar} hat x${count}; schreib, wie oft er insgesamt erklingt, x2 bis x${most}.`,
    'chart.repeatsNothing': ({ bar }) =>
      `${barOrPickup(bar)} wiederholt mit % den Takt davor, aber es gibt keinen: Schreib den Akkord.`,
    'chart.markFirst': ({ bar }) =>
      `${barOrPickup(bar)} beginnt mit einem Schlagzeichen, aber davor steht kein Akkord: Schreib zuerst den Akkord.`,
    'chart.noBeats': ({ bar, word, symbol }) =>
      `${barOrPickup(bar)}: ${word} dauert 0 Schläge; schreib, wie viele, etwa ${symbol}:2.`,
    'chart.percentBesideChords': ({ bar }) =>
      `${barOrPickup(bar)}: % wiederholt einen ganzen Takt und steht darin allein; um einen Akkord einen Schlag zu halten, schreib /.`,
    'chart.chord': ({ bar, symbol, hint }) =>
      `${barOrPickup(bar)}: „${symbol}“ ist nicht als Akkord zu lesen; ${chordHint(hint)}.`,
    'chart.someBeats': ({ bar }) =>
      `${barOrPickup(bar)} hat nur hinter einigen Akkorden Schläge: Schreib sie hinter alle, etwa C7:3 F7:1, und lass die Schlagzeichen weg.`,
    'chart.beatSum': ({ bar, written, holds }) =>
      `In ${bar === null ? 'den Auftakt' : `Takt ${bar}`} passen ${trimmed(holds, 3)} ${noun(holds, 'Schlag', 'Schläge')}, geschrieben sind ${trimmed(written, 3)}: Jeder Akkord und jedes / ist ein Schlag.`,
    'chart.meter': ({ line, value, known }) =>
      `Zeile ${line}: „${value}“ ist keine Taktart, die gespielt werden kann; schreib eine von ${known.join(', ')}.`,
    'chart.key': ({ line, value }) =>
      `Zeile ${line}: „${value}“ ist keine Tonart; schreib den Grundton auf Englisch und für Moll minor dahinter: Bb, F# minor.`,
    'chart.number': ({ line, word, value, least, most }) =>
      `Zeile ${line}: ${word} „${value}“ liegt außerhalb; schreib eine Zahl von ${least} bis ${most} (${CHART_NUMBERS[word]}).`,
    'chart.endingNumber': ({ bar }) =>
      `${barOrPickup(bar)}: Klammern werden ab 1 gezählt, etwa [1 oder [1-3.`,
    'chart.noCoda': ({ bar }) =>
      `Takt ${bar} geht zur Coda, aber es gibt keine: Schreib Coda vor ihren ersten Takt oder nenn einen Teil [Coda].`,
    'chart.noSegno': ({ bar, jump }) =>
      `In Takt ${bar} steht ${jump}, aber es gibt kein Segno: Schreib Segno vor den Takt, zu dem es zurückgeht.`,
    'chart.noFine': ({ bar, jump }) =>
      `In Takt ${bar} steht ${jump}, aber es gibt kein Fine: Schreib Fine hinter den Takt, mit dem es endet.`,
    'chart.noToCoda': ({ bar, jump }) =>
      `In Takt ${bar} steht ${jump}, aber kein Takt geht dorthin: Schreib To Coda hinter den Takt vor dem Sprung.`,
    'form.unknown': ({ name, known }) => `Es gibt keine Form „${name}“; die Formen sind ${known.join(', ')}.`,
    'form.key': ({ key, form }) =>
      `„${key}“ ist keine Tonart für ${form}; schreib ihren Grundton auf Englisch, etwa Bb oder F#.`,
    'form.mode': ({ form, mode, tonic, asked }) =>
      `${form} steht in ${MODES[mode]}, nicht in ${tonic} ${asked}; lass Dur oder Moll weg, oder nimm eine andere Form.`,
    'beats.tooFew': ({ rows }) =>
      `Die Liste der Schläge hat ${rows === 0 ? 'keine Zeile' : 'eine Zeile'}: Für ein Tempo sind mindestens zwei Schläge nötig.`,
    'beats.noTime': ({ row }) => `Zeile ${row} der Schläge hat keine Zeit: Schreib Sekunden, etwa 2.45.`,
    'beats.order': ({ row, seconds, before }) =>
      `Zeile ${row} der Schläge, bei ${decimalOf(seconds)} s, kommt nicht nach der Zeile davor, bei ${decimalOf(before)} s: Bring die Schläge in die richtige Reihenfolge.`,
    'beats.chord': ({ row, symbol, hint }) =>
      `Zeile ${row} der Schläge: „${symbol}“ ist nicht als Akkord zu lesen; ${chordHint(hint)}.`,

    // ── files ──
    'file.empty': ({ name }) => `${name} ist leer; nimm eine Aufnahme oder eine Liste von Tönen.`,
    'file.tagOnly': ({ name }) =>
      `${name} enthält ein Tag, aber keinen Klang; die Datei ist vielleicht abgeschnitten.`,
    'file.foreign': ({ name, kind }) =>
      `${name} ist ${FOREIGN_FILES[kind]} und kann nicht bewertet werden; ${foreignAdvice(kind)}.`,
    'file.zeros': ({ name }) =>
      `${name} enthält nur Nullen und keine Aufnahme; die Datei wurde vielleicht nicht vollständig gespeichert.`,
    'file.readerNotLoaded': ({ name }) =>
      `${name} lässt sich jetzt nicht öffnen: Der Teil von Landfall, der solche Dateien liest, wurde nicht geladen. Starte den Server, von dem diese Seite kam, lade sie neu und versuch es noch einmal.`,
    'file.unknown': ({ name }) => `${name} ist keine Datei, die bewertet werden kann. ${READABLE_FILES}.`,
    'file.text': ({ name }) => `${name} ist Text, kein Klang und keine Liste von Tönen. ${READABLE_FILES}.`,
    'file.beats': ({ name }) =>
      `${name} ist eine Liste von Schlägen und nicht von Tönen: Sie gehört zu einer Linie (auf der Kommandozeile hinter --beats); nimm eine Aufnahme oder eine Liste von Tönen.`,
    'file.notesNoSound': ({ name }) =>
      `${name} ist eine Liste von Tönen und enthält keinen Klang; nimm eine Aufnahme.`,
    'file.tooLongForWhole': ({ name, minutes }) =>
      `${name} ist länger als ${minutes} Minuten; teil die Datei in Takes oder bewerte sie auf der Kommandozeile.`,
    'take.tooLongWithBacking': ({ name, minutes }) =>
      `${name} ist länger als ${minutes} Minuten, zu lang, um die Begleitung herauszunehmen; teil die Datei in Takes.`,
    'file.tooLongToPlay': ({ name, minutes }) =>
      `${name} ist länger als ${minutes} Minuten: Behalte nur die Stelle, zu der du spielst.`,
    'file.listTooLong': ({ name }) => `${name} ist zu lang für eine Liste von Tönen; teil sie in Takes.`,
    'file.takeTooLong': ({ name, hours }) =>
      `${name} geht über ${hours} Stunden hinaus, länger als ein Take sein darf: Teil die Datei in Takes, oder such eine falsche Zeit.`,
    'file.tooLarge': ({ name, megabytes }) =>
      `${name} ist größer als ${megabytes} MB, zu groß für das, was die Datei hier sein soll.`,
    'file.tooManyNotes': ({ name, most }) => `${name} hat mehr als ${most} Töne; teil die Datei in Takes.`,
    'file.tooManyBeats': ({ name, most }) => `${name} hat mehr als ${most} Schläge; teil die Datei in Takes.`,
    'notes.unit': ({ name, unit }) =>
      `${name} hat die Zeiten wohl in ${TIME_UNITS[unit]}; gebraucht werden Sekunden: Teil onset und duration durch ${unit === 'samples' ? 'die Abtastrate' : '1000'}.`,
    'beats.unit': ({ name, unit }) =>
      `${name} hat die Zeiten wohl in ${TIME_UNITS[unit]}; gebraucht werden Sekunden: Teil sie durch ${unit === 'samples' ? 'die Abtastrate' : '1000'}.`,
    'sound.manyBlocks': ({ name, most }) =>
      `${name} hat mehr als ${most} Blöcke vor dem Klang und ist beschädigt: Speichere oder exportiere die Datei noch einmal.`,
    'sound.noNumber': ({ name }) =>
      `${name} hat keinen einzigen Abtastwert, der Klang sein kann: Alle sind keine Zahlen, unendlich oder viel zu groß; speichere oder exportiere die Datei noch einmal.`,
    'file.notAllText': ({ name }) =>
      `${name} ist nicht durchweg Text; speichere die Tabelle als UTF-8 und versuch es noch einmal.`,
    'file.notText': ({ name }) =>
      `${name} ist kein Text; speichere die Datei als UTF-8-Text und versuch es noch einmal.`,
    'file.noSound': ({ name }) =>
      `${name} enthält keinen lesbaren Klang; vielleicht ist die Datei beschädigt: Speichere oder exportiere sie noch einmal.`,
    'table.longRow': ({ name, line, most }) =>
      `${name}: Die Zeile ${line} hat mehr als ${most} Zeichen; such ein Anführungszeichen, das nie geschlossen wird.`,
    'table.columns': ({ name, missing, wanted }) =>
      `${name} hat in der ersten Zeile keine Spalte ${quoted(missing).join(', ')}; beginn die Tabelle mit der Kopfzeile ${wanted.join(',')}.`,
    'notes.cell': ({ name, line, column, cell, highest }) => {
      const range = {
        onset: 'keine Zahl von Sekunden',
        duration: 'keine Zahl von Sekunden ab 0',
        pitch: `keine MIDI-Nummer von 0 bis ${highest}`,
      };
      return `${name}, Zeile ${line}: „${cell}“ in der Spalte ${column} ist ${range[column]}; korrigiere die Zeile.`;
    },
    'notes.none': ({ name }) =>
      `${name} hat eine Kopfzeile und keine Töne darunter; schreib für jeden Ton eine Zeile.`,
    'beats.cell': ({ name, line, cell }) =>
      `${name}, Zeile ${line}: Die Zeit „${cell}“ ist keine Zahl von Sekunden; korrigiere die Zeile.`,
    'beats.fileOrder': ({ name, line, seconds, before }) =>
      `${name}, Zeile ${line}: Der Schlag bei ${decimalOf(seconds)} s kommt nicht nach dem davor, bei ${decimalOf(before)} s; bring die Schläge in die richtige Reihenfolge, jeden auf eine eigene Zeile.`,
    'beats.fileTooFew': ({ name, beats }) =>
      `${name} hat ${beats === 0 ? 'keine Schläge' : 'nur einen Schlag'}; es müssen zwei oder mehr sein.`,
    'midiFile.damaged': ({ name }) =>
      `${name} ist eine beschädigte MIDI-Datei; speichere sie noch einmal als Standard-MIDI-Datei.`,
    'midiFile.format': ({ name, format }) =>
      `${name} ist eine MIDI-Datei im Format ${format}; speichere sie im Format 0 oder 1.`,
    'midiFile.noNotes': ({ name }) =>
      `${name} enthält keine Töne (Schlagzeug zählt nicht); nimm eine Datei mit einer Linie.`,
    'midiFile.noPart': ({ name, parts, part }) =>
      `${name} hat ${parts} ${noun(parts, 'Stimme', 'Stimmen')} mit Tönen und keine Stimme ${part}.`,
    'midiFile.noTempo': ({ name }) =>
      `${name} zählt Bilder statt Schläge; speichere die Datei mit einem Tempo.`,
    'midiFile.meterChanges': ({ name, from, to }) =>
      `${name} wechselt die Taktart von ${from} zu ${to}; ein Chart hat eine Taktart: Teil die Datei dort.`,
    'midiFile.meter': ({ name, meter }) =>
      `${name} steht im ${meter}-Takt; in dieser Taktart kann hier kein Chart stehen.`,
    'midiFile.noChords': ({ name }) =>
      `${name} hat unter den Markern und Texten keine Akkordsymbole; nimm einen Chart oder eine MIDI-Datei mit Akkordsymbolen.`,
    'score.notXml': ({ name }) =>
      `${name} ist kein wohlgeformtes XML; speichere die Noten noch einmal als MusicXML.`,
    'score.timewise': ({ name }) =>
      `${name} ist Takt für Takt geschrieben (score-timewise); speichere die Noten nach Stimmen (partwise).`,
    'score.otherXml': ({ name }) => `${name} ist XML, enthält aber keine MusicXML-Noten.`,
    'score.overfull': ({ name }) =>
      `${name} hat mehr Elemente, als ein Notenblatt braucht; exportiere nur die Stimme mit den Akkordsymbolen.`,
    'score.chordsInBar': ({ name, bar, most }) =>
      `${name}: Takt ${bar} hat mehr als ${most} Akkordsymbole; das kann niemand spielen: Verteil sie auf mehr Takte.`,
    'score.endingNumber': ({ name, ending }) =>
      `${name} hat eine Klammer für Durchgang ${ending}; hier gehen sie von 1 bis 9: Nummeriere sie neu, oder schreib die Wiederholung aus.`,
    'score.noChords': ({ name }) => `${name} enthält keine Akkordsymbole (keine harmony-Elemente).`,
    'score.meter': ({ name, bar, meter }) =>
      `${name}: Takt ${bar} steht im ${meter}-Takt; in dieser Taktart kann hier kein Chart stehen.`,
    'score.meterChanges': ({ name, bar, meter }) =>
      `${name}: In Takt ${bar} wechselt die Taktart zu ${meter}; ein Chart hat eine Taktart: Teil die Noten dort.`,
    'chartFile.tooLong': ({ name }) => `${name} ist zu lang für einen Chart.`,
    'chartFile.unreadable': ({ name, cause }) => `${name} ist nicht als Chart zu lesen: ${cause}`,
    'chartFile.noScore': ({ name }) => `${name} ist ein Zip-Archiv, enthält aber keine MusicXML-Noten.`,
    'chartFile.damagedArchive': ({ name }) =>
      `${name} ist ein beschädigtes Archiv; speichere die Noten noch einmal als MusicXML.`,
    'archive.cutShort': ({ name }) =>
      `${name} endet zu früh oder ist kein Zip-Archiv; kopiere die Datei noch einmal von dort, woher sie kam.`,
    'archive.manyParts': ({ name, most }) =>
      `${name} hat mehr als ${most} Teile, so viele hat keine Datei von Landfall; nichts wurde übernommen.`,
    'archive.partTwice': ({ name, part }) =>
      `${name} hat zwei Teile mit dem Namen ${part}; nichts wurde übernommen.`,
    'archive.partName': ({ name }) =>
      `${name} hat einen Teil, dessen Name aus dem Archiv hinausführt oder unlesbar ist; nichts wurde übernommen.`,
    'archive.encrypted': ({ name, part }) =>
      `${name} ist verschlüsselt (${part}); entpacke es mit seinem Passwort und packe es ohne Passwort wieder ein.`,
    'archive.packing': ({ name, part }) =>
      `${part} in ${name} ist auf eine Art gepackt, die Landfall nicht liest; packe es neu als gewöhnliches Zip-Archiv.`,
    'archive.damaged': ({ name, part }) =>
      `${part} in ${name} ist beschädigt; kopiere die Datei noch einmal von dort, woher sie kam.`,
    'archive.bomb': ({ name, part }) =>
      `${part} in ${name} wird beim Entpacken viel zu groß; nichts wurde übernommen.`,
    'takeFile.none': ({ name }) =>
      `${name} ist ein Zip-Archiv, aber kein Take von Landfall: Der Teil take.json fehlt.`,
    'takeFile.newer': ({ name, version }) =>
      `${name} wurde von einem neueren Landfall gespeichert (Fassung ${version} der Datei); lade die Seite neu, um es zu bekommen.`,
    'takeFile.notJson': ({ name, part }) => `${part} in ${name} ist kein JSON; nichts wurde übernommen.`,
    'takeFile.field': ({ name, part, field }) =>
      `${part} in ${name} ist nicht so, wie Landfall es schreibt${field === '' ? '' : `: siehe ${field}`}; nichts wurde übernommen.`,
    'takeFile.chart': ({ name, cause }) => `Die Akkordfolge in ${name} ist nicht zu gebrauchen: ${cause}`,
    'takeFile.tooLong': ({ name, hours }) =>
      `${name} ist länger als ${hours === 1 ? 'eine Stunde' : `${hours} Stunden`}; so lang kann ein Take nicht sein.`,
    'takeFile.sound': ({ name, part, sampleRate }) =>
      `${part} in ${name} passt nicht zu take.json: Es muss WAV sein, ein Kanal, 16 Bit, ${sampleRate} Hz, und so lang, wie dort steht.`,
    'takeFile.noLine': ({ name }) => `${name} hat weder Klang noch Noten; darin ist nichts zu bewerten.`,
    'sound.noChannel': ({ name }) =>
      `${name} hat laut Dateikopf keinen Kanal; der Kopf ist beschädigt: Speichere die Datei noch einmal.`,
    'sound.sampleRate': ({ name, hz, lowest, highest }) =>
      `${name} hat eine Abtastrate von ${hz} Hz; sie muss zwischen ${lowest} und ${highest} Hz liegen: Speichere die Datei mit 44100 oder 48000.`,
    'flac.header': ({ name }) =>
      `${name} ist eine FLAC-Datei mit beschädigtem Kopf; kodiere sie noch einmal.`,
    'flac.empty': ({ name }) =>
      `${name} ist eine FLAC-Datei ohne Klang; vielleicht ist sie abgeschnitten, kodiere sie noch einmal.`,
    'mp3.empty': ({ name }) =>
      `${name} enthält keinen MP3-Klang; vielleicht ist die Datei beschädigt, speichere sie noch einmal.`,
    'wav.header': ({ name }) =>
      `${name} ist eine WAV-Datei mit beschädigtem Kopf; speichere sie noch einmal.`,
    'wav.samples': ({ name, format, bits }) =>
      `${name} ist eine WAV-Datei mit Werten, die nicht zu lesen sind (${bits !== null ? `${bits} Bit` : typeof format === 'number' ? `Format ${format}` : format}); speichere sie als PCM mit 16 oder 24 Bit und versuch es noch einmal.`,
    'wav.noFormat': ({ name }) =>
      `${name} ist eine WAV-Datei, die nicht angibt, wie ihr Klang geschrieben ist; speichere sie noch einmal.`,
    'wav.empty': ({ name }) =>
      `${name} ist eine WAV-Datei ohne Klang; vielleicht ist sie abgeschnitten, oder es wurde nichts aufgenommen.`,
    'ogg.codec': ({ name, codec }) =>
      `${name} enthält ${OGG_CODECS[codec]}, und das ist nicht zu lesen; speichere die Datei als WAV, FLAC, MP3 oder Ogg Vorbis.`,
    'ogg.noVorbis': ({ name }) =>
      `${name} ist eine Ogg-Datei ohne Vorbis-Klang; speichere sie noch einmal als WAV oder FLAC.`,

    // ── aims and reports ──
    'sheetLink.tooLong': ({ characters, most }) =>
      `Mit ${characters} Zeichen ist der Link zu lang: ${most} dürfen es sein. Speichere das Aufgabenblatt stattdessen als Datei, oder kürze seinen Text, seine Akkorde oder sein Beispiel.`,
    'sheetLink.damaged':
      'Der Link enthält kein ganzes Aufgabenblatt: Er wurde unterwegs abgeschnitten oder verändert. Kopiere ihn noch einmal, oder lass dir das Blatt als Datei schicken.',
    'sheet.example': ({ most }) =>
      `Dieser Take kann kein Beispiel sein: Er hat keine Töne, die zählen, oder mehr als ${most}.`,
    'answer.noTake': ({ title, student }) =>
      `Die Antwort gilt „${title}“${student === '' ? '' : ` von ${student}`}, und dieser Take ist hier nicht aufbewahrt. Öffne die Antwort auf dem Gerät, auf dem er gespielt wurde, oder öffne zuerst die Datei des Takes.`,
    'sheet.tooLong': ({ name, most }) =>
      `${name} ist länger als ${most} Zeichen: das ist kein Aufgabenblatt.`,
    'sheet.notJson': ({ name }) =>
      `${name} ist kein Aufgabenblatt: es ist kein JSON. Speichere das Blatt dort noch einmal, wo es geschrieben wurde.`,
    'sheet.notSheet': ({ name }) =>
      `${name} ist kein Aufgabenblatt: sein "format" ist nicht "landfall-sheet".`,
    'sheet.version': ({ name, found }) =>
      `${name} ist ein Aufgabenblatt der Version ${found}, und dieses Landfall liest Version 1: Nimm ein neueres Landfall.`,
    'sheet.field': ({ name, field }) =>
      `${name}: „${field}“ fehlt oder ist nicht lesbar. landfall schema sheet zeigt, was dort stehen darf.`,
    'class.noSheet': ({ name }) =>
      `Zu ${name} fehlt ein Aufgabenblatt: Gib das Blatt dazu, nach dem bewertet werden soll.`,
    'answer.tooLong': ({ name, most }) =>
      `${name} ist länger als ${most} Zeichen: das ist keine Antwort einer Lehrkraft.`,
    'answer.notJson': ({ name }) =>
      `${name} ist keine Antwort einer Lehrkraft: es ist kein JSON. Lass sie dir noch einmal als Datei schicken.`,
    'answer.notAnswer': ({ name }) =>
      `${name} ist keine Antwort einer Lehrkraft: ihr "format" ist nicht "landfall-answer".`,
    'answer.version': ({ name, found }) =>
      `${name} ist eine Antwort der Version ${found}, und dieses Landfall liest Version 1: Nimm ein neueres Landfall.`,
    'answer.field': ({ name, field }) =>
      `${name}: „${field}“ fehlt oder ist nicht lesbar. landfall schema answer zeigt, was dort stehen darf.`,
    'aim.field': ({ field, found, wanted }) =>
      found.kind === 'nothing' && field !== null
        ? `Dem Ziel fehlt das Feld „${field}“; ein Beispiel steht in src/pages/aims.md.`
        : `${field === null ? 'Das Ziel' : `Das Feld „${field}“ des Ziels`} ist nicht lesbar: Gefunden wurde ${foundWords(found)}, schreib ${wantedWords(wanted)}.`,
    'aim.form': ({ field, found, form }) =>
      `Das Feld „${field}“ des Ziels ist nicht lesbar: Gefunden wurde ${foundWords(found)}, schreib ${AIM_FORMS[form]}.`,
    'aim.test': ({ test, events, tests }) =>
      `Das Ziel ist nicht lesbar: Sein Test „${test}“ passt nicht zu „${events}“; schreib ${joinWith(quoted(tests), 'oder')}.`,
    'report.unreadable': ({ field, wanted, found }) =>
      `${field === null ? 'Das' : `Sein Feld „${field}“`} passt nicht zu einem Bericht von Landfall (gefunden wurde ${foundWords(found)}, ein Bericht hat dort ${wantedWords(wanted)}). ` +
      'Bewerte den Take noch einmal, dann gibt es einen neuen Bericht.',

    // ── room and beats ──
    'beatFinder.tooShort': ({ seconds }) =>
      `Die Aufnahme dauert weniger als ${seconds} Sekunden: zu kurz, um darin einen Schlag zu finden.`,
    'beatFinder.silent': 'Die Aufnahme ist still: Öffne eine andere Datei.',
    'beatFinder.none':
      'In dieser Aufnahme ist kein gleichmäßiger Schlag zu finden: Tipp die Schläge mit, während du sie hörst.',
    'sweep.silent':
      'Während des Messtons kam vom Mikrofon nur Stille: Sieh nach, ob es stummgeschaltet ist, und versuch es noch einmal.',
    'sweep.tooLoud':
      'Der Messton war zu laut für das Mikrofon: Stell die Lautsprecher oder den Eingang leiser und versuch es noch einmal.',
    'sweep.playing': 'Während der Messtöne wurde gespielt: Dämpf die Saiten, und versuch es noch einmal.',
    'sweep.noisyRoom':
      'Der Raum ist zu laut, um den Messton zu hören: Warte, bis es ruhiger ist, oder stell die Lautsprecher etwas lauter.',
    'sweep.nothingRecorded': 'Während des Messtons wurde nichts aufgenommen: Versuch es noch einmal.',
    'sweep.spread': ({ ms }) =>
      `Die Verzögerung lag von einem Messton zum anderen um ${ms} ms auseinander: Schließ andere Programme, warte, bis es ruhig ist, und versuch es noch einmal.`,

    // ── audio, storage, analysis, state ──
    'microphone.insecure':
      'Browser öffnen das Mikrofon nur über https oder localhost: Öffne die Seite unter einer solchen Adresse.',
    'microphone.unsupported':
      'In diesem Browser können Webseiten kein Mikrofon benutzen: Nimm einen aktuellen Chrome, Edge, Firefox oder Safari.',
    'microphone.blocked':
      'Das Mikrofon ist gesperrt: Erlaube es dieser Seite in der Adresszeile und in den Systemeinstellungen, dann versuch es noch einmal.',
    'microphone.blockedByPage':
      'Die Einstellungen dieser Seite sperren das Mikrofon: Öffne die Seite für sich allein, dann versuch es noch einmal.',
    'microphone.notFound': 'Kein Mikrofon gefunden: Schließ eines an, dann versuch es noch einmal.',
    'microphone.removed': 'Dieses Mikrofon ist nicht mehr angeschlossen: Wähle ein anderes.',
    'microphone.busy':
      'Das Mikrofon ist angeschlossen, liefert aber keinen Ton: Vielleicht benutzt es ein anderes Programm. Schließ dieses Programm, dann versuch es noch einmal.',
    'microphone.stopped': 'Das Mikrofon wurde beim Öffnen unterbrochen: Versuch es noch einmal.',
    'microphone.failed':
      'Das Mikrofon ließ sich nicht öffnen: Prüfe, ob es angeschlossen ist, dann versuch es noch einmal.',
    'microphone.lost':
      'Das Mikrofon ist weg: Es wurde getrennt oder angehalten. Was du bis jetzt gespielt hast, bleibt erhalten; schließ es an und öffne es neu.',
    'microphone.silent':
      'Vom Mikrofon kommt nur Stille: Such einen Stummschalter, und sieh nach, welcher Eingang im System gewählt ist.',
    'microphone.paused':
      'Der Browser hat den Ton angehalten; das tut auch ein Gerät, das schläft. Was du gespielt hast, bleibt, und der Take geht weiter, sobald der Ton zurück ist.',
    'microphone.otherRate':
      'Die Tongeräte haben sich geändert, seit diese Seite geladen wurde: Lade sie neu und versuch es noch einmal. Deine Takes bleiben.',
    'microphone.recorder':
      'Der Programmteil, der aufnimmt, ließ sich nicht laden. Lade die Seite neu und versuch es noch einmal.',
    'output.asleep':
      'Der Browser hat seinen Ton nicht gestartet: Klick noch einmal, und prüfe, ob ein Ausgang angeschlossen ist.',
    'output.removed': 'Dieser Ausgang ist nicht mehr angeschlossen: Wähle einen anderen.',
    'midi.unsupported':
      'Dieser Browser hat kein Web MIDI; Chrome, Edge und Firefox haben es. Das Mikrofon geht trotzdem.',
    'midi.refused':
      'Der Browser durfte MIDI nicht benutzen. Erlaube es neben der Adresse, dann wähle es noch einmal; das Mikrofon geht trotzdem.',
    'playback.workerGone':
      'Der Take lässt sich nicht verlangsamen: Lade die Seite neu und versuch es noch einmal.',
    'playback.notSlowed': ({ reason }) =>
      `Der Take lässt sich nicht verlangsamen (${reason}). Im vollen Tempo spielt er wie bisher.`,
    'band.failed': ({ reason }) =>
      `Die Band kann nicht spielen${reason === null ? '' : ` (${reason})`}. Lade die Seite neu und versuch es noch einmal.`,
    'backing.failed': ({ reason }) =>
      `Die Aufnahme ließ sich nicht bearbeiten (${reason}). Lade die Seite neu und versuch es noch einmal.`,
    'backing.workerGone':
      'Die Aufnahme ließ sich nicht bearbeiten: Lade die Seite neu und versuch es noch einmal.',
    'backing.superseded':
      'Die Einstellungen der Aufnahme haben sich inzwischen geändert: Drück noch einmal auf „Spielen“.',
    'backing.notOpen': 'Es ist keine Aufnahme offen: Öffne zuerst eine.',
    'backing.tooShort': ({ name, seconds }) =>
      `${name} dauert weniger als ${seconds} Sekunden: zu kurz, um darüber zu spielen. Öffne eine längere Aufnahme.`,
    'backing.silent': ({ name }) => `${name} ist von Anfang bis Ende still: Öffne eine andere Datei.`,
    'backing.takeAlone': ({ cause }) => `${cause} Drück noch einmal, um den Take allein zu hören.`,
    'backing.noWholeBar': ({ title }) =>
      `„${title}“ hat nach der ersten Eins keinen ganzen Takt: Setz die Eins weiter nach vorn.`,
    'backing.tooFewTaps': ({ least }) => `Tippe mindestens ${least} Schläge mit, während die Aufnahme läuft.`,
    'backing.beatOrder': 'Die Schläge der Aufnahme stehen nicht in ihrer Reihenfolge: Setz sie neu.',
    'backing.gone': 'Diese Aufnahme ist nicht mehr auf diesem Gerät: Öffne ihre Datei noch einmal.',
    'backing.noSpace':
      'Auf diesem Gerät ist kein Platz für die Aufnahme: Sie lässt sich jetzt spielen, wird aber nicht gespeichert. Lösche Takes oder Aufnahmen, die du nicht mehr brauchst.',
    'backing.recordsUnreadable':
      'Die Angaben zu einer Aufnahme ließen sich nicht lesen; die anderen Aufnahmen sind unverändert.',
    'site.partMissing':
      'Der Rest von Landfall war nicht zu laden: Der Server antwortet nicht. Nichts ist verloren. Versuche es noch einmal, wenn er antwortet: Dann wird diese Seite neu geladen.',
    'site.otherWindow':
      'Landfall ist noch in einem anderen Fenster offen, und dort läuft vielleicht ein Take. Schließe das andere Fenster und drücke dann noch einmal.',
    'storage.newer':
      'Die Takes auf diesem Gerät hat ein neueres Landfall geschrieben. Lade die Seite neu, um es zu bekommen.',
    'storage.none':
      'Dieser Browser speichert für diese Seite nichts (vielleicht ist es ein privates Fenster). Du kannst spielen; exportiere einen Take, um ihn zu behalten.',
    'storage.soundNeeded':
      'Die Töne dieses Takes wurden nicht mit ihm behalten; sein Klang wird für die Bewertung gebraucht und bleibt.',
    'storage.diskFull':
      'Der Speicher ist voll: Der Rest dieses Takes liegt nur im Arbeitsspeicher. Er wird bewertet; exportiere ihn, bevor du die Seite schließt.',
    'storage.unreachable':
      'Der Browser kam nicht an seinen Speicher. Lade die Seite neu; was auf dem Bildschirm steht, lässt sich noch exportieren.',
    'storage.settingsUnreadable': 'Die Einstellungen ließen sich nicht lesen; es gelten die üblichen.',
    'storage.settingUnreadable': ({ fields }) =>
      `Eine gespeicherte Einstellung ließ sich nicht lesen (${fields.join(', ')}); es gilt die übliche.`,
    'storage.chartUnreadable': 'Ein gespeicherter Chart ließ sich nicht lesen; die anderen sind unverändert.',
    'take.gone': 'Dieser Take ist nicht mehr auf diesem Gerät.',
    'take.unreadable': ({ id }) =>
      `Die Angaben zu Take ${id} lassen sich nicht lesen; seine Aufnahme bleibt erhalten, die anderen Takes sind unverändert.`,
    'take.calledOff': 'Der Take wurde abgebrochen, bevor er begann.',
    'take.notesHaveNoBacking': ({ name }) =>
      `${name} ist keine Aufnahme: Es gibt darin keine Begleitung, die man herausnehmen könnte.`,
    'take.backingIsNotes': ({ name }) =>
      `${name} ist eine Liste von Tönen und keine Aufnahme einer Begleitung: Wähle eine andere Datei.`,
    'take.soundLost':
      'Dem Browser fehlen Stücke der Aufnahme, und die Töne darin fehlen mit. Schließ andere Programme.',
    'take.slipped': ({ ms, time, late }) =>
      `Die Aufnahme ist bei ${time} um ${ms} ms gesprungen: Die Töne danach stehen ${ms} ms zu ${late ? 'spät' : 'früh'}. Schließ andere Programme.`,
    'listener.failed': ({ reason }) =>
      `Die Tonerkennung ist ausgefallen (${reason}). Die Aufnahme ist unverändert: Bewerte sie noch einmal.`,
    'listener.notLoaded':
      'Die Tonerkennung wurde nicht geladen: Der Server, von dem diese Seite kam, antwortet nicht. Starte ihn, lade die Seite neu und versuch es noch einmal. Deine Takes bleiben.',
    'listener.stopped':
      'Die Tonerkennung hat von selbst aufgehört. Was gespielt wurde, ist erhalten: Bewerte es noch einmal.',
    'listener.sampleRate': ({ hz }) =>
      `Das Mikrofon läuft mit ${hz} Hz; Landfall hört 8000 bis 192000 Hz. Wähle einen anderen Eingang.`,
    'listener.notOpen': 'Die Tonerkennung läuft nicht. Starte zuerst einen Take.',
    'order.tempo': ({ bpm, slowest, fastest }) =>
      `Das Tempo ist ${decimalOf(bpm)}; möglich sind ${slowest} bis ${fastest} Schläge in der Minute.`,
    'order.swing': ({ swing, straight, widest }) =>
      `Der Swing ist ${decimalOf(swing)}; möglich ist ${decimalOf(straight)} (gerade) bis ${decimalOf(widest)}.`,
    'soundCheck.left': 'Der Soundcheck wurde geschlossen, bevor er fertig war.',
    'soundCheck.clicksHeard':
      'Die Klicks selbst kamen durch das Mikrofon zurück, die Anschläge ließen sich nicht von ihnen trennen: Nimm bei Lautsprechern die Messtöne; stell mit Kopfhörern den Klick leiser und schlag erst nach dem Einzählen an.',
    'soundCheck.strokesApart': ({ asked }) =>
      `Anschläge und Klicks waren nicht zusammen: Warte die vier tiefen Klicks ab, dann schlag die gedämpften Saiten zu jedem der ${asked} hohen einmal an, so laut, wie du spielst.`,
    'soundCheck.strokesLost':
      'Dem Browser fehlen Stücke der Aufnahme mit den Klicks, die Anschläge lassen sich darum nicht messen: Schließ andere Programme, und spiel sie noch einmal.',
    'soundCheck.soundLost':
      'Dem Browser fehlen Stücke der Aufnahme in jedem der Messtöne: Schließ andere Programme, und versuch es noch einmal.',

    // ── command line ──
    'cli.language': ({ given, known }) =>
      `--language muss ${joinWith(known, 'oder')} sein, nicht „${given}“.`,
    'cli.noCommand': 'Es ist kein Befehl angegeben.',
    'cli.unknownCommand': ({ command }) => `Es gibt keinen Befehl „${command}“.`,
    'cli.noFileWanted': ({ command }) => `landfall ${command} nimmt keine Datei.`,
    'cli.noFile': 'Es ist keine Datei angegeben: Nenn die Datei, die bewertet werden soll.',
    'cli.explainsOneFile': '--explain gilt für eine Datei: Nenne eine einzige.',
    'cli.backingOfOneFile': '--backing gilt für eine Datei: Bewerte jede mit ihrem eigenen Playback.',
    'cli.noTakes': ({ folders }) =>
      `In ${joinWith(folders, 'und')} ist keine Aufnahme und keine Liste von Tönen.`,
    'cli.tooManyTakes': ({ found, most }) =>
      `Es sind ${found} Dateien, und ${most} sind das Höchste in einem Aufruf: Nenne ihre Ordner einzeln.`,
    'cli.idleForChords': ({ option }) => `--${option} hat bei landfall chords keine Bedeutung.`,
    'cli.idleWithFound': ({ option }) =>
      `--${option} braucht einen Chart: Nenn ihn mit --chart, oder lass --${option} weg; dann gelten die Akkorde der Begleitung.`,
    'cli.chordsUnsure': ({ name, unsure, bars }) =>
      `Die Akkorde von ${name} sind zu unsicher, um danach zu bewerten: ${unsure} von ${bars === 1 ? 'einem Takt' : `${bars} Takten`} ${unsure === 1 ? 'ist' : 'sind'} unsicher. Sieh sie mit landfall chords an und nenn den Chart mit --chart und --tempo.`,
    'cli.backingUnplaced': ({ name }) =>
      `${name} ist im Take nicht zu hören, deshalb ist nicht bekannt, wo die Akkorde liegen: Nenn den Chart mit --chart und --tempo und seine erste Eins mit --first-beat.`,
    'cli.noBand': ({ name }) =>
      `In ${name} ist keine Band mit gleichmäßigem Schlag zu hören, also sind darin keine Akkorde zu finden: Nenn sie mit --chart und --tempo oder mit --beats.`,
    'cli.chordsFile': 'Es ist keine Aufnahme angegeben: Nenne die Datei, deren Akkorde gesucht sind.',
    'cli.chordsOneFile': ({ word }) => `landfall chords nimmt eine Aufnahme; „${word}“ ist eine zu viel.`,
    'harmony.noChords': 'In dieser Aufnahme ist kein Akkord zu hören: Schreibe den Chart von Hand.',
    'cli.idleForClass': ({ option }) =>
      `--${option} hat bei landfall class keine Bedeutung: Das Aufgabenblatt sagt, wie bewertet wird.`,
    'cli.classFolder': 'Es ist kein Ordner angegeben: Nenne den Ordner mit den Takes.',
    'cli.classSheet': 'Es ist kein Aufgabenblatt angegeben: Nenne es mit --sheet.',
    'cli.classOnly': ({ option }) => `--${option} ist für landfall class.`,
    'cli.oneOutput': 'Gib nur eines von --csv, --json und --html an.',
    'cli.noSuchSchema': ({ asked, known }) =>
      `Es gibt kein Schema „${asked}“: landfall schema gibt das von ${joinWith(known, 'oder')} aus.`,
    'cli.jsonOrExplain': 'Gib --json oder --explain an, nicht beides.',
    'cli.chorusOfNoBar':
      '--chorus wählt einen Chorus des Takts, der erklärt wird: Gib --explain TAKT dazu an.',
    'cli.chartOrBeats': 'Gib --chart oder --beats an, nicht beides.',
    'cli.idleWithBeats': ({ option }) =>
      `--${option} hat mit --beats keinen Sinn: In der Liste steht, wann jeder Schlag kommt.`,
    'cli.noChords': 'Es sind keine Akkorde angegeben: Nenn sie mit --chart und --tempo oder mit --beats.',
    'cli.idleForTakeFile': ({ option }) =>
      `--${option} hat für eine Datei mit einem Take keinen Sinn: In ihr steht, wonach sie bewertet wird.`,
    'cli.takeFileHasChords': ({ name }) =>
      `${name} ist eine Datei mit einem Take und hat eigene Akkorde: Bewerte sie ohne --chart und --beats.`,
    'cli.noTempo': 'Der Chart hat kein eigenes Tempo; gib --tempo an.',
    'cli.capoWithoutNeck': '--capo braucht ein --instrument mit einem Griffbrett.',
    'cli.capoFret': ({ most, fret }) => `--capo muss ein Bund von 1 bis ${most} sein, nicht ${fret}.`,
    'cli.idleForBand': ({ option }) => `--${option} hat für landfall band keinen Sinn.`,
    'cli.bandTakesNoFile': ({ word }) =>
      `landfall band nimmt keine Datei, „${word}“ hat darum keinen Sinn; ein Chart muss in Anführungszeichen stehen.`,
    'cli.bandChart': 'Es ist kein Chart angegeben: Nenn ihn mit --chart.',
    'cli.bandOut': 'Es ist keine Ausgabedatei angegeben: Nenn sie mit --out band.wav oder --out band.mid.',
    'cli.bandOutKind': ({ file }) => `--out muss auf .wav, .mid oder .musicxml enden, nicht „${file}“.`,
    'cli.bandOnly': ({ option }) => `--${option} gehört zu landfall band.`,
    'cli.bandTempo': ({ lowest, highest, bpm }) =>
      `Die Band spielt ${lowest} bis ${highest} Schläge in der Minute, nicht ${decimalOf(bpm)}.`,
    'cli.wavTooLong': ({ file }) =>
      `${file} würde länger, als eine WAV-Datei sein kann; verlange weniger Chorusse.`,
    'cli.bandTooLong': ({ file, hours }) =>
      `${file} würde länger als ${hours} Stunden; verlange weniger Chorusse.`,
    'cli.unknownOption': ({ option }) => `Es gibt keine Option ${option}.`,
    'cli.takesNoValue': ({ option }) => `--${option} nimmt keinen Wert.`,
    'cli.valueMissing': ({ option }) => `--${option} braucht einen Wert dahinter.`,
    'cli.givenTwice': ({ option }) => `--${option} ist zweimal angegeben.`,
    'cli.number': ({ option, lowest, highest, unit, auto, given }) =>
      `--${option} muss eine Zahl von ${decimalOf(lowest)} bis ${decimalOf(highest)}${OPTION_UNITS[unit]} sein${auto ? ' oder auto' : ''}, nicht „${given}“.`,
    'cli.wholeNumber': ({ option, lowest, highest, given }) =>
      `--${option} muss eine ganze Zahl von ${lowest} bis ${highest} sein, nicht „${given}“.`,
    'cli.fromOneUp': ({ option, given }) => `--${option} muss eine Zahl ab 1 sein, nicht „${given}“.`,
    'cli.rise': ({ most, given }) =>
      `--rise muss bis zu ${most} Schläge in der Minute nennen und hinter einem Schrägstrich Takte, wenn das Tempo nicht nach jedem Chorus steigt, etwa 4/24; nicht „${given}“.`,
    'cli.oneOf': ({ option, choices, given }) =>
      `--${option} muss eines von ${choices.join(', ')} sein, nicht „${given}“.`,
    'cli.key': ({ given }) =>
      `--key muss eine Tonart auf Englisch sein, etwa Bb oder "F# minor", nicht „${given}“.`,
    'cli.instrument': ({ given }) =>
      `--instrument muss eines sein, das landfall --help nennt, nicht „${given}“.`,
    'cli.unknownAim': ({ name }) =>
      `„${name}“ ist weder eine Datei noch ein eingebautes Ziel; landfall --help nennt die Ziele.`,
    'cli.aimNotJson': ({ name }) =>
      `${name} ist kein JSON, in dem ein Ziel geschrieben wird; ein Beispiel steht in src/pages/aims.md.`,
    'cli.inFile': ({ name, cause }) => `${name}: ${cause}`,
    'cli.noSuchBar': ({ bars, bar }) =>
      `Die Form hat ${bars} ${noun(bars, 'Takt', 'Takte')} und darum keinen Takt ${bar}.`,
    'cli.neitherFileNorChart': ({ given }) =>
      `„${given}“ ist weder eine Datei noch ein Chart; schreib Takte wie "| G7 | C7 |" oder nenn eine Form, etwa "form:minor blues in A" (landfall forms zählt sie auf).`,
    'cli.fault': ({ reason }) =>
      `Das ist ein Fehler von Landfall und nicht deiner Eingabe (${reason}); bitte melde ihn.`,
    'disk.read': ({ name, reason, system }) =>
      `${name} ist nicht zu lesen: ${reason === 'missing' ? 'Es gibt keine solche Datei' : diskReason(reason, system)}.`,
    'disk.longPipe': ({ name, megabytes }) =>
      `${name} geht über ${megabytes} MB hinaus und ist keine Datei; speichere die Daten als Datei und nimm diese.`,
    'disk.slowPipe': ({ name, seconds }) =>
      `${name} war nach ${seconds} s nicht zu Ende; speichere die Daten als Datei und nimm diese.`,
    'disk.write': ({ name, reason, system }) =>
      `${name} ist nicht zu schreiben: ${reason === 'missing' ? 'Es gibt keinen solchen Ordner' : diskReason(reason, system)}.`,
  },

  // Hinweise: gleiche Schlüssel und Gruppen wie in en.ts.
  notices: {
    'cli.chordsFound': ({ name, bars, bpm, unsure, chart }) =>
      `Die Akkorde sind die, die in ${name} gefunden wurden: ${bars === 1 ? 'ein Takt' : `${bars} Takte`}, Tempo ${bpm}${unsure === 0 ? '' : `, davon ${unsure} unsicher`}, ${chart}`,
    'sheet.waits': ({ title }) =>
      `Das Aufgabenblatt „${title}“ wartet, bis du wieder auf der ersten Seite bist.`,
    'library.cameIn': ({ fresh, sounds, here }) =>
      [
        ...(fresh > 0 ? [`${several(fresh, 'Take', 'Takes')} geholt`] : []),
        ...(sounds > 0 ? [`${several(sounds, 'Take hat', 'Takes haben')} den Klang zurück`] : []),
        ...(here > 0
          ? [
              `${several(here, 'Take war', 'Takes waren')} schon da und ${here === 1 ? 'blieb, wie er war' : 'blieben, wie sie waren'}`,
            ]
          : []),
      ].join('; ') + '.',
    'library.wentOut': ({ takes }) => `${several(takes, 'Take ist', 'Takes sind')} in der Datei.`,
    // ── of the core ──
    'sound.cut': ({ name, promisedSeconds, heldSeconds }) =>
      `${name} ist abgeschnitten oder beschädigt: Laut Dateikopf dauert es ${decimal(promisedSeconds, 1)} s, vorhanden sind ${decimal(heldSeconds, 1)} s; was da ist, wurde genommen.`,
    'sound.cutStream': ({ name }) =>
      `${name} ist abgeschnitten: Der Klang hört vor seinem Ende auf; was da ist, wurde genommen.`,
    'sound.damaged': ({ name, places, silence }) =>
      `${name} ist ${places === null ? '' : `an ${places === 1 ? 'einer Stelle' : `${places} Stellen`} `}beschädigt; ${silence ? 'dort steht nun Stille' : 'was zu lesen ist, wurde genommen'}.`,
    'sound.channelTaken': ({ name, channel }) =>
      `Die Kanäle von ${name} löschen sich beim Mischen fast aus; nur Kanal ${channel} wurde genommen.`,
    'sound.notNumbers': ({ name, samples }) =>
      `${name} hat ${samples} ${noun(samples, 'Wert, der keine brauchbare Zahl ist', 'Werte, die keine brauchbaren Zahlen sind')} (NaN oder unendlich); dort steht nun Stille.`,
    'midiFile.cut': ({ name }) => `${name} ist abgeschnitten; die Töne, die da sind, wurden genommen.`,
    'midiFile.partTaken': ({ name, parts, part, title, track, channel }) => {
      const place = channel === null ? `Spur ${track ?? 1}` : `Kanal ${channel}`;
      return `${name} hat ${parts} ${noun(parts, 'Stimme', 'Stimmen')} mit Tönen; genommen wurde ${title === null ? place : `„${title}“ (${place})`}, Stimme ${part}.`;
    },
    'midiFile.unread': ({ name, texts }) =>
      `${name}: ${quoted(texts).join(', ')} wurde nicht als Akkord gelesen.`,
    'score.lostJumps': ({ name }) =>
      `${name}: Die Sprünge (D.C., D.S., Coda) haben kein Ziel; die Takte werden in der Reihenfolge gespielt, in der sie dastehen.`,
    'score.unreadChord': ({ name, bar, what }) =>
      `${name}: In Takt ${bar} ist ${what === null ? 'ein Akkord ohne Grundton' : `„${what}“`} nicht als Akkord zu lesen; der Akkord davor gilt weiter.`,
    'score.repeatAfterJump': ({ name }) =>
      `${name}: Wiederholungen, die nach einem D.C. oder D.S. gespielt werden sollen, werden dort nicht gespielt.`,
    'removal.silent': ({ name }) =>
      `${name} ist still, es gibt nichts herauszunehmen; der Take wird bewertet, wie er ist.`,
    'removal.notHeard': ({ take, backing }) =>
      `${backing} ist in ${take} innerhalb von 10 Sekunden um den Anfang nicht zu hören: Vielleicht ist es eine andere Aufnahme oder ein anderes Tempo, oder Kopfhörer hielten sie vom Mikrofon fern; der Take wird bewertet, wie er ist.`,
    'removal.wandering':
      'Die Band ist im Take zu hören, sprang aber mehrmals in der Zeit und ließ sich nicht herausnehmen: Einige Töne können von der Band sein. Schließ andere Programme, und mach vor dem nächsten Take einen Soundcheck.',
    'removal.slipped': ({ ms, time, more, late }) =>
      `Die Band sprang bei ${time} um ${ms} ms${more > 0 ? ` und danach noch ${times(more)}` : ''}: Sie wurde davor und danach herausgenommen, aber die Töne danach liegen ${ms} ms zu ${late ? 'spät' : 'früh'}.`,

    'band.unknownFeel': ({ feel }) =>
      `Die Band kann das Feel „${feel}“ nicht spielen; sie spielt diese Takte wie die übrigen oder im Feel von --feel.`,

    // ── of the app ──
    'microphone.processing': ({ echo, noise, gain }) => {
      const kept = [
        echo && 'Echounterdrückung',
        noise && 'Rauschunterdrückung',
        gain && 'automatische Aussteuerung',
      ];
      const names = kept.filter((name) => name !== false);
      return `Der Browser hat ${joinWith(names, 'und')} eingeschaltet gelassen; dadurch gehen Töne verloren. Schalte es in den Toneinstellungen des Systems aus.`;
    },
    'microphone.telephone':
      'Dieses Headset liefert nur Telefonqualität: Nimm ein Mikrofon mit Kabel oder das im Laptop.',
    'take.emptyNotKept': 'Es war kein Ton zu hören, darum wird dieser Take nicht gespeichert.',
    'midi.nothingPlugged':
      'Noch ist kein MIDI-Instrument angeschlossen; sobald eines da ist, wird es gehört.',
    'devices.notChecked':
      'Du spielst über andere Geräte als beim letzten Soundcheck: Mach mit diesen einen Soundcheck, er dauert eine halbe Minute.',
    'band.cameBack': ({ ms, placedByIt }) =>
      `Die Band kam ${ms} ms später durch das Mikrofon zurück: Sie wurde herausgenommen` +
      `${placedByIt ? ', und deine Töne sind nach dieser Verzögerung gesetzt' : ''}. Nach einem Soundcheck geschieht das schon beim Spielen.`,
  },

  // Der Bildschirm vor einem Take.
  ready: {
    opening: {
      microphone: 'Mikrofon wird geöffnet …',
      band: 'Band wird geladen …',
      backing: 'Aufnahme wird geöffnet …',
      sound: 'Ton wird gestartet …',
      midi: 'MIDI wird geöffnet …',
      take: 'Take wird geöffnet …',
      demo: 'Beispiel-Take wird geladen …',
      program: 'Der Rest von Landfall wird geladen …',
      rendering: ({ share }) => `Aufnahme wird berechnet: ${percent(share)} …`,
      file: ({ name }) => `${name} wird geöffnet …`,
    },
    language: 'Sprache',
    headline: 'Lande auf dem Akkord, wenn er kommt.',
    about:
      'Du improvisierst über die Form. Landfall benennt jeden Ton nach seinem Akkord und zeigt dir, wo deine Linie bei ' +
      'jedem Wechsel landet.',
    start: 'Spielen',
    demo: 'Beispiel-Take anhören',
    soundCheck: 'Soundcheck',
    startWithMidi: '„Spielen“ hört deine Töne über MIDI.',
    startWithMicrophone: '„Spielen“ fragt nach dem Mikrofon, um deine Töne zu hören.',
    howItGoes:
      'Nichts verlässt diesen Rechner. Ein Takt wird eingezählt. „Stopp“ oder die Leertaste beendet den Take, und du ' +
      'siehst, wo du gelandet bist. Spielst du über Lautsprecher, mach einmal den Soundcheck.',

    // Das Licht der Seite.
    light: 'Licht',
    lights: { auto: 'Auto', day: 'Tag', night: 'Nacht' },

    // Dateien zum Öffnen.
    openRecording: 'Aufnahme öffnen',
    undo: 'Letzte Änderung zurücknehmen',
    hearBand: { band: 'Band anhören', backing: 'Backing anhören' },
    stopBand: 'Nicht mehr anhören',
    halfStepDown: 'Einen Halbton tiefer',
    halfStepUp: 'Einen Halbton höher',
    tooManyFiles:
      'Öffne eine Aufnahme oder zwei Dateien: die Aufnahme und die Begleitung, die darin zu hören ist.',
    whichIsYou: 'In welcher der beiden spielst du?',
    otherIsBacking:
      'Die andere Datei gilt als Begleitung. Sie wird aus deiner Aufnahme entfernt, bevor deine Linie gehört wird.',
    neither: 'Keine: schließen',

    // Drei tiefe Töne starten die Band.
    startByNotes: {
      listening: 'Hört zu: Spiel nach einer Pause dreimal denselben tiefen Ton, und die Band beginnt.',
      closed: ({ input }) =>
        `Drei tiefe Töne starten die Band, sobald der Browser ${input === 'midi' ? 'MIDI' : 'das Mikrofon'} erlaubt: Drück dieses erste Mal auf „Spielen“.`,
      asleep: 'Berühre die Seite oder drück eine Taste, dann hört sie auf drei tiefe Töne.',
      stop: 'Nicht mehr zuhören',
    },

    // Die Setlist und das Blatt.
    setList: 'Setlist',
    ownCharts: 'Eigene',
    ownBacking: ({ length }) => `eigene Begleitung, ${length}`,
    inKey: ({ key }) => `in ${key}`,
    writeChart: 'Eigenen Chart schreiben',
    ownChanges: 'deine eigenen Akkorde, Takt für Takt',
    sheet: 'Das Blatt',
    ownChart: 'Dein Chart',
    form: 'Form',
    bars: 'Takte der Form',
    concertPitchChart: ({ pitch }) => `Schreib klingend. Die Seite zeigt es notiert in ${pitch}.`,
    feel: 'Feel',
    tempo: 'Tempo',
    key: 'Tonart',
    choruses: 'Chorusse',
    untilStopped: 'bis ich aufhöre',
    feels: {
      shuffle: 'Shuffle',
      swing: 'Swing',
      straight: 'gerade',
      'slow-blues': 'langsamer Blues',
      funk: 'Funk',
      bossa: 'Bossa',
      rock: 'Rock',
      ballad: 'Ballade',
    },

    // Eigene Akkorde.
    chart: {
      label: 'Dein Chart, Takt für Takt',
      example: '| A7 | D7 | A7 | % |',
      twoChords: 'Akkorde hier auf Englisch: B statt H, Bb statt B. Zwei Akkorde in einem Takt:',
      repeat: 'wiederholt einen Takt,',
      noChord: 'ist kein Akkord,',
      bass: 'setzt E in den Bass.',
      title: 'Titel',
      keep: 'Behalten',
      keepOver: 'Statt des alten behalten',
      rename: 'Umbenennen',
      remove: 'Entfernen',
      removeNamed: ({ title }) => `${title} aus deinen eigenen Charts entfernen`,
      open: 'Chart öffnen',
      save: 'Als MusicXML speichern',
      file: 'Ein Chart als Text, MusicXML oder MIDI',
    },

    // Wer spielt.
    player: {
      name: 'Wer spielt',
      landOn: 'Landen auf',
      instrument: 'Instrument',
      pitch: 'Akkorde und Namen',
      written: ({ pitch }) => `notiert in ${pitch}`,
      concert: 'klingend',
      input: 'Gehört über',
      microphone: 'das Mikrofon',
      midi: 'MIDI',
      view: 'Gezeigt auf',
      noView: 'keinem Instrument',
      midiFrom: ({ names }) => `MIDI: ${names.join(', ')}.`,
      midiNone:
        'MIDI: Noch ist nichts angeschlossen. Vielleicht fragt der Browser, bevor eine Seite MIDI benutzen darf.',
      more: 'Anzeige und Bedienung ohne Hände',
    },
    views: { neck: 'dem Griffbrett', keyboard: 'einer Klaviatur', staff: 'einem Notensystem' },
    instruments: {
      guitar: 'Gitarre',
      'guitar-24': 'Gitarre, 24 Bünde',
      'guitar-drop-d': 'Gitarre, Drop D',
      'guitar-half-down': 'Gitarre, einen Halbton tiefer',
      'guitar-open-g': 'Gitarre, offenes G',
      'guitar-dadgad': 'Gitarre, D A D G A D',
      'guitar-7': 'Gitarre, 7 Saiten',
      'guitar-8': 'Gitarre, 8 Saiten',
      bass: 'E-Bass',
      'bass-5': 'E-Bass, 5 Saiten',
      violin: 'Geige',
      flute: 'Querflöte',
      clarinet: 'B-Klarinette',
      trumpet: 'B-Trompete',
      'soprano-sax': 'Sopransaxofon (B)',
      'alto-sax': 'Altsaxofon (Es)',
      'tenor-sax': 'Tenorsaxofon (B)',
      'baritone-sax': 'Baritonsaxofon (Es)',
      trombone: 'Posaune',
      piano: 'Klavier',
      voice: 'Stimme',
    },

    // Was der Bildschirm beim Spielen zeigt.
    display: {
      tonesBy: 'Töne als',
      byDegree: 'Stufe',
      byName: 'Name',
      frets: 'Bünde',
      allFrets: 'alle',
      fretsAtHand: 'wo meine Hand ist',
      fiveFrom: ({ fret }) => `fünf ab ${fret}`,
      capo: 'Kapodaster',
      noCapo: 'keiner',
      capoAt: ({ fret }) => `${fret}. Bund`,
      clef: 'Schlüssel',
      treble: 'Violinschlüssel',
      bassClef: 'Bassschlüssel',
      leftHanded: 'Linkshändig',
      leftHandedWhy: 'das Griffbrett wird gespiegelt',
      quiet: 'Stille Seite',
      quietWhy: 'zeigt nur Landungen, keinen gespielten Ton: hören statt schauen',
      speak: 'Landungen ansagen',
      speakWhy: 'für Screenreader',
    },

    // Bedienung, wenn beide Hände am Instrument sind.
    handsFree: {
      learnedFoot: ({ kind, number, channel, how }) => {
        const what = { controller: 'Controller', program: 'Programm', note: 'Note' }[kind];
        const note = {
          plain: '',
          inverted: ', gedrückt sendet er den niedrigen Wert',
          'presses only': ', er meldet nur Tritte',
        }[how];
        return `${what} ${number} auf Kanal ${channel}${note}`;
      },
      pedal: 'Fußschalter sendet',
      pedals: {
        space: 'Leertaste',
        pages: 'Bild ab, Bild auf',
        arrows: 'Pfeiltasten',
        enter: 'Eingabetaste',
      },
      repeat: 'Automatisch wiederholen',
      repeatWhy: 'nach dem letzten Chorus siehst du das Ergebnis, dann wird neu eingezählt',
      midiPedal: 'Ein MIDI-Pedal bedient den Bildschirm',
      midiPedalWhy: 'Start, Stopp, noch einmal; nach einem Take gehalten: das nächste Ziel',
      playedSignal: 'Drei tiefe Töne starten und stoppen',
      playedSignalWhy:
        'nach einer Pause dreimal derselbe tiefe Ton, gleichmäßig, in zwei Sekunden; diese Seite hört dafür ständig zu',
      pressSwitch: 'Drück den Schalter und lass ihn los.',
      letGo: 'Lass ihn los.',
      switchIs: ({ foot }) => `Der Schalter ist ${foot}.`,
      anyPedal: 'Der Schalter ist jedes Halte-, Sostenuto- oder Leisepedal, auf jedem Kanal.',
      neverMind: 'Abbrechen',
      learn: 'Anderen Schalter lernen',
      forget: 'Diesen Schalter vergessen',
      keysBefore: 'Beim Spielen wählen',
      keysBetween: 'Band, Tempo, Swing und Einzähler;',
      keysAnd: 'und',
      keysAfter: 'verändern sie.',
      foot: ({ kind, number, channel, how }) => `${kind} ${number} auf Kanal ${channel}${how}`,
    },

    // Wie die Form geübt wird.
    practice: {
      closed: 'Einen Teil davon üben',
      inUse: ({ parts }) => `Du übst: ${parts.join(', ')}`,
      fromBar: 'Von Takt',
      toBar: 'Bis Takt',
      keys: 'Tonarten',
      oneKey: 'nur diese',
      cycles: {
        fourths: 'jeden Chorus eine Quarte höher',
        'half steps': 'jeden Chorus einen Halbton höher',
        random: 'zufällig',
      },
      keyCount: 'Wie viele Tonarten',
      faster: 'Schneller um, bpm',
      every: 'alle',
      turns: 'Abwechselnd',
      noTurns: 'nein, ich spiele durch',
      turnsOf: ({ bars }) => `je ${several(bars, 'Takt', 'Takte')}, ich beginne`,
      over: 'Über',
      band: 'Bass und Akkorde',
      drones: {
        root: 'einen Bordun auf dem Grundton',
        'root and fifth': 'einen Bordun auf Grundton und Quinte',
      },
      chordsRest: 'Die Akkorde setzen jeden zweiten Chorus aus',
      click: 'Ein Klick auf 2 und 4',
      turnsNote:
        'Ist die Band dran, spielt sie ein Beispiel mit den Tönen, auf denen du landen willst. Bewertet wird nur, was du spielst.',
      sameBars:
        'Du bist jedes Mal in denselben Takten dran: Wiederhole andere Takte, um den Rest zu spielen.',
      droneNote:
        'Die Akkorde der Form schweigen, aber du wirst nach ihnen bewertet. Um über einen einzigen Akkord zu üben, schreib einen Chart mit einem Akkord.',
      chorusCount: ({ count }) => several(count, 'Chorus', 'Chorusse'),
      bars: ({ from, to }) => `Takte ${from} bis ${to}`,
      throughKeys: 'durch die Tonarten',
      fasterEvery: ({ bpm, choruses }) =>
        `${choruses === 1 ? 'jeden Chorus' : `alle ${choruses} Chorusse`} ${bpm} bpm schneller`,
      turnsEach: ({ bars }) => `abwechselnd je ${several(bars, 'Takt', 'Takte')}`,
      overDrone: 'über einem Bordun',
      chordsEverySecond: 'Akkorde nur jeden zweiten Chorus',
      clickOn: 'Klick auf 2 und 4',
    },

    // Der Klang der Band.
    sound: {
      band: 'Band',
      parts: { drums: 'Schlagzeug', bass: 'Bass', chords: 'Akkorde', line: 'Ihre Soli', click: 'Klick' },
      silent: 'stumm',
      decibels: ({ level }) => `${level} Dezibel`,
      care:
        'Sie beginnt leise: Dreh nur auf, bis du die Wechsel hörst. Laute Kopfhörer schaden dem Gehör. Mach Pause, wenn ' +
        'eine Hand schmerzt oder kribbelt; bleibt es, geh in eine Praxis mit Erfahrung in Musikermedizin.',
      more: 'Lautstärke der Stimmen, Swing, Einzähler, Stimmung',
      swing: 'Swing',
      straight: 'gerade',
      swingShare: ({ percent }) => `${percent} Prozent`,
      countIn: 'Einzähler',
      bars: ({ bars }) => several(bars, 'Takt', 'Takte'),
      tunedTo: 'Gestimmt auf',
      asPlayed: 'was ich spiele',
      reference: ({ hz }) => `A = ${hz} Hz`,
    },

    // Frühere Takes.
    takes: {
      heading: 'Frühere Takes',
      cutOff: 'Ein Take brach ab:',
      kept: ({ length }) => `${length} davon ist erhalten.`,
      grade: 'Bewerten',
      throwAway: 'Wegwerfen',
      remove: 'Entfernen',
      removeNamed: ({ title }) => `${title} entfernen`,
      removeForGood: 'Endgültig entfernen',
      heldOnly: 'Nur die mit Stern',
      keep: 'Behalten',
      saveAll: 'Alle Takes in einer Datei speichern',
      size: ({ megabytes }) => diskRoom(megabytes),
      room: ({ megabytes, freeMegabytes }) =>
        `Der Klang aller Takes braucht ${diskRoom(megabytes)}${freeMegabytes === null ? '' : `; ${diskRoom(freeMegabytes)} sind frei`}.`,
      roomIsShort: ({ takes, megabytes }) =>
        `Der Datenträger ist fast voll. Der Klang ${takes === 1 ? 'des ältesten Takes' : `der ${takes} ältesten Takes`} ohne Stern braucht ${diskRoom(megabytes)}; Bewertungen und Töne bleiben, wenn er entfernt wird.`,
      removeOldSound: 'Diesen Klang entfernen',
      bringIn: 'Takes aus Dateien holen',
      comingIn: ({ done, of }) => `Wird geholt: ${done} von ${of}`,
      goingOut: ({ done, of }) => `Wird gespeichert: ${done} von ${of}`,
      recording: 'Aufnahme',
      notGraded: 'noch nicht bewertet',
      noLandings: 'keine Landungen',
      thirds: ({ thirds, landings }) => `Terz bei ${thirds} von ${several(landings, 'Landung', 'Landungen')}`,
    },

    // Die eingebauten Formen.
    formGroups: {
      'one or two chords': 'Ein oder zwei Akkorde',
      blues: 'Blues',
      cadences: 'Kadenzen',
      chains: 'Ketten',
      'other meters': 'Andere Taktarten',
      tunes: 'Stücke',
    },
    forms: {
      'one-chord vamp': {
        title: 'Vamp auf einem Akkord',
        trains: 'Ein Dominantakkord, so lange du willst: Such seine Terz und seine kleine Septime.',
      },
      'minor one-chord vamp': {
        title: 'Vamp auf einem Mollakkord',
        trains: 'Ein Mollakkord, so lange du willst: Such seine Terz und seine Septime.',
      },
      'two-chord vamp': {
        title: 'Vamp auf zwei Akkorden',
        trains: 'I und IV, je zwei Takte: Die Terz der I fällt einen Halbton zur Septime der IV.',
      },
      'minor two-chord vamp': {
        title: 'Vamp auf zwei Akkorden in Moll',
        trains: 'Die Molltonika und die Dominante eine Quarte darüber, je ein Takt.',
      },
      '12-bar blues': {
        title: 'Blues mit 12 Takten',
        trains: 'Drei Dominantakkorde mit Zeit auf jedem: Hör, wie sich die Terz von der I zur IV ändert.',
      },
      'quick-change blues': {
        title: 'Blues mit schnellem Wechsel',
        trains: 'Die IV kommt schon in Takt 2: Sei gleich bereit.',
      },
      'jazz blues': {
        title: 'Jazzblues',
        trains:
          'Der Blues mit einer ii–V zur IV, einem verminderten Durchgangsakkord und einem Turnaround mit zwei Akkorden im Takt.',
      },
      'minor blues': {
        title: 'Mollblues',
        trains: 'Molltonika und Moll-IV, dann der Akkord auf der kleinen Sexte, der zur Dominante fällt.',
      },
      '8-bar blues': {
        title: 'Blues mit 8 Takten',
        trains: 'Die kurze Form: Die V kommt schon in Takt 2.',
      },
      '16-bar blues': {
        title: 'Blues mit 16 Takten',
        trains: 'Die lange Form: acht Takte auf der I vor dem ersten Wechsel.',
      },
      'major ii-V-I': {
        title: 'ii–V–I in Dur',
        trains: 'Die häufigste Kadenz im Jazz: Die Septime jedes Akkords fällt zur Terz des nächsten.',
      },
      'minor ii-V-I': {
        title: 'ii–V–I in Moll',
        trains: 'Die Kadenz in Moll: halbvermindert, eine Dominante mit kleiner None, Moll mit Sexte.',
      },
      turnaround: {
        title: 'Turnaround',
        trains: 'Zwei Akkorde im Takt: alle zwei Schläge eine andere Terz.',
      },
      'minor line': {
        title: 'Fallende Linie in Moll',
        trains:
          'Ein Mollakkord, dessen Mittelstimme in Halbtönen fällt: Grundton, große Septime, kleine Septime, Sexte.',
      },
      'plagal cadence': {
        title: 'Plagale Kadenz',
        trains:
          'Die IV wechselt von Dur nach Moll: Ihre Terz fällt einen Halbton. Die Dominante auf der kleinen Septime führt zurück zur I.',
      },
      'chain of dominants': {
        title: 'Dominantkette',
        trains: 'Jede Septime fällt einen Halbton zur nächsten Terz, jede Terz zur nächsten Septime.',
      },
      'descending ii-Vs': {
        title: 'Fallende ii–V-Folgen',
        trains: 'In jedem Takt eine ii–V, jede einen Schritt tiefer: Die Guide Tones fallen im Schritt.',
      },
      'diatonic circle': {
        title: 'Diatonischer Quintfall',
        trains: 'Die sieben Akkorde einer Molltonart in fallenden Quinten, der Leitton erst am Ende.',
      },
      'side step': {
        title: 'Seitenschritt',
        trains:
          'Ein Mollakkord, dann derselbe einen Halbton höher: Alle Töne rücken hinauf und wieder zurück.',
      },
      '3/4 blues': {
        title: 'Blues im 3/4-Takt',
        trains: 'Der Blues im Dreiertakt: Der betonte Schlag kommt alle drei Schläge.',
      },
      '12/8 blues': {
        title: 'Blues im 12/8-Takt',
        trains: 'Langsam, drei Achtel auf jeden Schlag, eine None in jedem Akkord: Zeit, jede Terz zu hören.',
      },
      '5/4 vamp': {
        title: 'Vamp im 5/4-Takt',
        trains: 'Drei Schläge Molltonika, zwei Schläge Dominante: Hör, wo die Dominante beginnt.',
      },
      '6/8 ballad': {
        title: 'Ballade im 6/8-Takt',
        trains:
          'Zwei langsame Schläge im Takt, Dreiklänge über bewegtem Bass: Nur die Terz unterscheidet Dur und Moll.',
      },
      '32-bar AABA': {
        title: 'AABA mit 32 Takten',
        trains:
          'Zwei Akkorde im Takt um die Tonika, dann eine Bridge aus Dominanten, die je zwei Takte dauern.',
      },
      '16-bar minor tune': {
        title: 'Stück in Moll mit 16 Takten',
        trains:
          'Eine Molltonart, in der Mitte eine ii–V–I zur Durparallele und zurück: zwei Grundtonarten zum Hören.',
      },
    },
  },

  // Der Bildschirm während eines Takes.
  playing: {
    title: 'Beim Spielen',
    beatsInBar: ({ beats }) => `${beats} Schläge im Takt`,
    you: 'du',
    theBand: 'Band',
    turnFor: 'noch',
    countIn: 'Einzähler',
    chorus: 'Chorus',
    keyOf: ({ key, of }) => `, Tonart ${key} von ${of}`,
    ofChoruses: ({ choruses }) => ` von ${choruses}`,
    inKey: 'in',
    tempo: 'Tempo',
    stop: 'Stopp',
    stopKey: 'Leertaste',
    toReview: 'Zur Auswertung',
    demo: 'Beispiel-Take',
    microphoneLevel: 'Pegel des Mikrofons',
    microphone: 'Mikro',
    listening: 'hört zu',
    next: 'Danach:',
    inBeats: 'in',
    beats: ({ beats }) => (beats === 1 ? 'Schlag' : 'Schlägen'),
    aims: {
      'guide-tones': 'Terzen und Septimen',
      'chord-tones': 'Akkordtöne beim Wechsel',
      'third-over-one': 'die Terz über der I',
      'flat-third-into-third': 'die b3 in die 3',
      'add-the-sixth': 'die Sexte über der I',
      'add-the-ninth': 'die None über der I',
      'third-sixth-ninth': 'Terz, Sexte und None in einem Chorus',
      'third-on-arrival': 'Terzen beim Wechsel',
      'guide-tones-by-step': 'Leittöne im Schritt',
      'phrases-end-on-chord-tones': 'Phrasenenden auf Akkordtönen',
      'off-the-third-over-four': 'ohne die große Terz der Tonart über der IV',
    },
    aimInHand: 'Das Ziel dieses Takes',
    aimSoFar: ({ hits, of }) => `bisher ${hits} von ${of}`,
    aimNow: 'jetzt',
    legend: {
      name: 'Was die Zeichen heißen',
      landHere: 'hier landest du als Nächstes',
      inChordNow: 'im Akkord von jetzt',
      fits: 'passt auch',
      heavyLine: 'deine Linie, im Akkord',
      lightLine: 'nicht im Akkord',
    },
    tonesToLandOn: 'Töne zum Landen',
    stays: 'bleibt',
    chords: 'Akkorde',
    form: 'Die Form',
    yourTurn: 'Du bist dran.',
    bandsTurn: 'Die Band ist dran: Hör zu.',
    youIn: 'du in',
    getReady: 'gleich du',
    listen: 'hör zu',

    // Band, Tempo, Swing und Einzähler beim Spielen.
    dials: {
      name: 'Band und Zeit',
      names: { band: 'Band', tempo: 'Tempo', swing: 'Swing', 'count-in': 'Einzähler' },
      less: {
        band: 'Band leiser',
        tempo: 'Tempo langsamer',
        swing: 'Swing gerader',
        'count-in': 'Einzähler kürzer',
      },
      more: {
        band: 'Band lauter',
        tempo: 'Tempo schneller',
        swing: 'mehr Swing',
        'count-in': 'Einzähler länger',
      },
      silent: 'stumm',
      straight: 'gerade',
      bars: ({ bars }) => several(bars, 'Takt', 'Takte'),
      bandCare: ({ level }) =>
        `Band ${level}. Lass sie so leise, dass du darüber reden kannst: Laute Musik schadet dem Gehör.`,
      tempoSet: ({ value, countingIn }) =>
        `Tempo ${value}: ${countingIn ? 'Es wird neu eingezählt' : 'gilt ab dem nächsten Take'}.`,
      swingSet: ({ value, countingIn }) =>
        `Swing ${value}: ${countingIn ? 'Es wird neu eingezählt' : 'gilt ab dem nächsten Take'}.`,
      countInSet: ({ value, countingIn }) =>
        `Einzähler ${value}: ${countingIn ? 'Es wird neu eingezählt' : 'gilt ab dem nächsten Take'}.`,
    },
  },

  // Die Hilfe. Was die Zeichen bedeuten, steht unter `parts`.
  help: {
    title: 'Was es bedeutet',
    open: 'Was es bedeutet',
    close: 'Schließen',
    whatIsThis: 'Was bedeutet das?',
    aboutMarks:
      'Jedes Zeichen sagt, was ein Ton zum Akkord ist, der gerade klingt. Ein volles Zeichen ist ein Akkordton, ein leeres nicht. Die Zahl daneben zählt vom Grundton aus.',
    sections: {
      marks: 'Die Zeichen',
      stage: 'Beim Spielen',
      landing: 'Landungen',
      result: 'Nach dem Take',
      sound: 'Klang und Zeit',
    },
    entries: {
      chords: {
        word: 'die beiden Akkorde',
        says: 'Der große Akkord klingt jetzt. Der rechte kommt als nächster; die Zahl sagt, in wie vielen Schlägen.',
      },
      targetStroke: {
        word: 'der Strich unter einem Ton',
        says: 'Auf diesem Ton kann deine Linie landen. Der Strich markiert die Töne, die dein Ziel beim nächsten Akkord verlangt.',
      },
      instrument: {
        word: 'Zeichen auf dem Instrument',
        says: 'Ein großes Zeichen auf einem Strich: ein Ton, auf dem du beim nächsten Akkord landen kannst. Ein kleines: ein Ton des Akkords, der jetzt klingt. Eine winzige Raute: ein Skalenton, der auch passt. Der Ring ist der Ton, den du spielst; der Bogen führt von ihm zum nächstgelegenen Ton zum Landen.',
      },
      liveLine: {
        word: 'deine Linie',
        says: 'Die Linie zeigt die Tonhöhe, die du spielst: kräftig, wo der Ton zum Akkord gehört, dünn, wo nicht. Bei jedem Wechsel beginnt die Zeichnung neu.',
      },
      note: {
        word: 'der Ton links',
        says: 'Der Ton, den du gerade spielst: sein Zeichen, seine Stufe über dem Akkord, sein Name, und um wie viele Cent er zu hoch oder zu tief ist.',
      },
      aim: {
        word: 'Ziel',
        says: 'Worum es in diesem Take geht. Beim Spielen steht dabei, wie oft es gelang und bei wie vielen Gelegenheiten. Erreicht ist es, wenn es oft genug gelingt, und öfter, als es durch Zufall gelänge.',
      },
      turns: {
        word: 'abwechselnd',
        says: 'Du und die Band spielt abwechselnd gleich viele Takte. Bewertet werden nur deine.',
      },
      form: {
        word: 'die Form',
        says: 'Alle Takte eines Chorus. Der kräftige Strich zeigt, wo du bist; die Zeichen sind deine Landungen.',
      },
      change: {
        word: 'Wechsel',
        says: 'Die Stelle, an der ein Akkord den anderen ablöst, und der allererste Akkord. Derselbe Akkord über einem anderen Bass ist kein Wechsel.',
      },
      landing: {
        word: 'Landung',
        says: 'Dein erster Ton auf einem neuen Akkord: der erste von einer Achtel vor dem Wechsel bis einen Schlag danach, oder ein Ton, den du hineinhältst.',
      },
      chordTone: {
        word: 'Akkordton',
        says: 'Ein Ton, den das Symbol nennt: Grundton, Terz, Quinte, Septime, und 9, 11 oder 13, wo sie dabeistehen.',
      },
      guideTone: {
        word: 'Guide Tone',
        says: 'Die Terz oder die Septime: An diesen beiden hört man, welcher Akkord es ist. Im Sus-Akkord steht die Quarte für die Terz.',
      },
      earlyLate: {
        word: 'zu früh, zu spät',
        says: 'Wie weit vom Wechsel die Landung begann. Ein Unterschied von weniger als etwa 10 ms ist nicht zu hören.',
      },
      anticipation: {
        word: 'eine Achtel vorgezogen',
        says: 'Eine Landung, die mit Absicht eine Achtel vor dem Wechsel kommt, gehört zum neuen Akkord. Sie ist kein Fehler.',
      },
      chorus: { word: 'Chorus', says: 'Einmal durch die Form.' },
      luck: {
        word: 'Zufall',
        says: 'Was dieselben Töne erreichten, wenn man sie an zufälligen Stellen über die Akkorde verteilte. Nur was deutlich darüber liegt, ist dein Verdienst.',
      },
      tooShort: {
        word: 'ein weiterer Chorus wird es zeigen',
        says: 'So wenige Landungen können Zufall sein, im Guten wie im Schlechten. Spiel weiter, dann reichen sie für eine Antwort.',
      },
      doubt: {
        word: 'der dicke Strich',
        says: 'Dein Anteil ist von Take zu Take etwas verschieden. Dein wahrer Anteil liegt wahrscheinlich irgendwo auf dem Strich; je mehr du spielst, desto kürzer wird er.',
      },
      phrase: {
        word: 'Phrase',
        says: 'Töne zwischen zwei Pausen von einem Schlag oder mehr. Ihr letzter Ton ist das Phrasenende.',
      },
      strongBeat: {
        word: 'betonter Schlag',
        says: 'Schlag 1 und 3 im Vierertakt, 1 im Dreiertakt: die Schläge, auf denen man einen Akkord am deutlichsten hört.',
      },
      palette: {
        word: 'Skalenton',
        says: 'Ein Ton der Dur- oder Mollpentatonik der Tonart, der nicht im Akkord ist: Er passt, ist aber keine Landung auf dem Akkord.',
      },
      figure: {
        word: 'Figur',
        says: 'Ein paar Töne, die in derselben Reihenfolge wiederkommen. So oft die Figur auch kommt: Beim Vergleich mit dem Zufall zählt sie einmal.',
      },
      trend: {
        word: 'wird besser, kein Trend',
        says: 'Ein guter Tag ist noch kein Fortschritt. „Wird besser“ steht nur da, wo deine Takes mehr steigen, als sie von Tag zu Tag schwanken.',
      },
      due: {
        word: 'für heute',
        says: 'Ein Wechsel, der schlecht ging, ist am nächsten Tag dran. Einer, der gut ging, nach zwei Tagen, dann nach vier, und so weiter.',
      },
      delay: {
        word: 'Verzögerung',
        says: 'Die Zeit vom Lautsprecher zu deinem Ohr und vom Mikrofon in den Rechner. Sie wird abgezogen, damit zu früh und zu spät stimmen.',
      },
      soundCheck: {
        word: 'Soundcheck',
        says: 'Er misst den Pegel, die Verzögerung, und wie die Band ins Mikrofon zurückkommt. Einmal für jedes Paar von Geräten.',
      },
      bandOut: {
        word: 'ohne die Band',
        says: 'Spielt die Band über Lautsprecher, hört das Mikrofon sie mit. Sie wird abgezogen, bevor deine Töne benannt werden.',
      },
      cents: { word: 'Cent', says: 'Hundertstel eines Halbtons, von der Tonhöhe aus, auf die du stimmst.' },
    },
  },

  // Die Seite über die Tage.
  progress: {
    title: 'Von Tag zu Tag',
    back: 'Zurück',
    open: 'Was heute üben?',
    nothingYet:
      'Spiel einen Take: Am nächsten Tag stehen hier die Wechsel, die am schlechtesten gingen. Komm wieder, wenn du gespielt hast.',
    counted: ({ takes, days }) =>
      `${several(takes, 'Take', 'Takes')} an ${several(days, 'Tag', 'Tagen')}. Es zählt, wenn du beim Wechsel auf der Terz oder der Septime des Akkords landest; bei einem Ziel das, was das Ziel verlangt.`,
    today: 'Für heute',
    why: 'Die schwächsten Wechsel, die dran sind. Was gut geht, kommt nach längerer Zeit wieder, was nicht gut geht, morgen.',
    nothingDue: 'Heute ist nichts dran: Spiel, was du magst.',
    change: ({ from, to }) => `${from} nach ${to}`,
    met: ({ hits, of }) => `Terz oder Septime: ${hits} von ${several(of, 'Mal', 'Malen')}.`,
    lastPlayed: ({ days }) =>
      days <= 0 ? 'Heute gespielt.' : days === 1 ? 'Gestern gespielt.' : `Vor ${days} Tagen gespielt.`,
    practise: 'Jetzt üben',
    practiseNamed: ({ change }) => `Jetzt üben: ${change}`,
    byAim: 'Ziele',
    byForm: 'Formen',
    byChord: 'Akkorde',
    byKey: 'Tonarten',
    columns: { what: 'Was', course: 'Tag für Tag', counts: 'Insgesamt, und der Trend' },
    directions: {
      rising: 'wird besser',
      falling: 'geht zurück',
      steady: 'kein Trend zu erkennen',
      'too few': 'zu wenige Takes',
    },
    twoTakes: 'Zwei Takes nebeneinander',
    takeChoice: { first: 'Erster Take', second: 'Zweiter Take' },
    openTake: 'Öffnen',
    chorus: ({ chorus }) => `Chorus ${chorus}`,
    wholeTake: 'Insgesamt',
    differences: {
      better: 'Der zweite Take landet besser als der erste, und das ist mehr als Zufall.',
      worse: 'Der zweite Take landet schlechter als der erste, und das ist mehr als Zufall.',
      'no difference': 'Sie unterscheiden sich nicht mehr, als es zwei Takes vom selben Tag meistens tun.',
      'too few': 'In einem der beiden sind zu wenige Landungen, um etwas zu sagen.',
    },
  },

  // Der Bildschirm nach einem Take.
  review: {
    unsaved: {
      title: 'Dieser Take ist nirgends gespeichert',
      text: 'Auf dem Datenträger war kein Platz für ihn. Wenn du ihn jetzt verlässt, ist er verloren.',
      save: 'Als Datei speichern, dann verlassen',
      lose: 'Ohne ihn verlassen',
      stay: 'Bleiben',
    },
    thisTake: 'Dieser Take',
    back: 'Zurück',
    saveReport: 'Bericht speichern',
    saveSound: 'Klang speichern',
    saveNotes: 'Töne speichern',
    inASentence: 'In einem Satz',
    goOn: { again: 'Noch einmal spielen', yourself: 'Selbst spielen', bars: 'Diese Takte noch einmal' },
    nextAim: ({ name }) => `Nächstes Ziel: ${name}`,
    againIn: 'weiter in',
    stayHere: 'Hier bleiben',
    landings: 'Landungen',
    yourAim: 'Dein Ziel:',
    good: 'Gut',
    toTry: 'Versuch',
    inTime: 'Timing',
    numbers: 'Die Zahlen',
    barsOfForm: 'Takte der Form',
    line: 'Die Linie',
    lostIsHatched: 'Auf der Linie sind diese Stellen schraffiert.',
    correctedIsWaved: 'Unter jedem steht eine Welle; was gehört wurde, ist blass dahinter gezeichnet.',
    heard: 'Was noch zu hören ist',
    gradeThere: 'Von dort an bewerten',
    gradeInKey: ({ key }) => `In ${key} bewerten`,

    facts: {
      bpm: ({ bpm }) => `Tempo ${bpm}`,
      notes: ({ count }) => (count === 1 ? '1 Ton' : `${count} Töne`),
      bandTakenOut: ({ db }) => (db === 0 ? 'Band nicht herausgenommen' : `Band um ${db} dB leiser gemacht`),
      reference: ({ hz, estimated }) => `Kammerton ${decimal(hz, estimated ? 1 : 0)} Hz`,
    },

    zoom: 'Vergrößerung',
    closer: 'Näher',
    wider: 'Weiter',
    notesList:
      'Töne des Takes: Die Pfeiltasten gehen von einem zum nächsten, Entf nimmt einen heraus oder lässt ihn zählen',
    spokenDoubtful: ({ note }) => `zweifelhaft: ${note}`,
    spokenTakenOut: ({ note }) => `herausgenommen: ${note}`,
    notCounted: ({ doubtful, takenOut }) =>
      [
        ...(doubtful === 0
          ? []
          : [
              doubtful === 1
                ? '1 Ton ist zweifelhaft (ein gestrichelter Ring auf der Linie) und zählt in keinem Anteil.'
                : `${doubtful} Töne sind zweifelhaft (gestrichelte Ringe auf der Linie) und zählen in keinem Anteil.`,
            ]),
        ...(takenOut === 0
          ? []
          : [
              takenOut === 1
                ? 'Du hast 1 Ton herausgenommen (ein durchkreuzter Ring).'
                : `Du hast ${takenOut} Töne herausgenommen (durchkreuzte Ringe).`,
            ]),
      ].join(' '),

    // Töne von Hand berichtigen.
    edit: {
      bar: 'Von Hand berichtigen',
      open: 'Töne berichtigen (E)',
      close: 'Fertig berichtigt (E)',
      hint: 'Wähle einen Ton auf der Linie. Zieh ihn, um ihn in Zeit und Höhe zu verschieben; zieh an seinem Ende, um ihn zu dehnen.',
      verbs: {
        up: 'Halbton höher',
        down: 'Halbton tiefer',
        earlier: 'Früher',
        later: 'Später',
        shorter: 'Kürzer',
        longer: 'Länger',
        split: 'Hier teilen',
        join: 'Mit nächstem verbinden',
        add: 'Ton hinzufügen',
        delete: 'Löschen',
        undo: 'Rückgängig',
        redo: 'Wiederholen',
      },
      groups: { pitch: 'Höhe', time: 'Zeit', note: 'Ton', history: 'Schritte' },
      allBack: 'Zurück zum Gehörten',
      askAllBack: ({ count }) =>
        count === 1
          ? 'Die eine Berichtigung dieses Takes zurücknehmen?'
          : `Alle ${count} Berichtigungen dieses Takes zurücknehmen?`,
      yes: 'Zurücknehmen',
      no: 'Behalten',
      noNote: 'Wähle zuerst einen Ton.',
      nothingTo: { undo: 'Es gibt nichts rückgängig zu machen.', redo: 'Es gibt nichts zu wiederholen.' },
      said: {
        pitch: ({ name }) => `Jetzt ist es ${name}.`,
        moved: ({ name, ms }) =>
          ms === null
            ? `${name} ist verschoben.`
            : ms === 0
              ? `${name} beginnt, wo der Ton gehört wurde.`
              : `${name} beginnt ${Math.abs(ms)} ms ${ms < 0 ? 'früher' : 'später'}, als der Ton gehört wurde.`,
        lasts: ({ name, ms }) => `${name} dauert jetzt ${ms} ms.`,
        split: ({ name }) => `${name} ist jetzt zwei Töne.`,
        joined: ({ name }) => `${name} ist jetzt ein Ton mit dem nächsten.`,
        added: ({ name }) => `${name} ist hinzugefügt.`,
        deleted: ({ name }) => `${name} ist gelöscht.`,
        counts: ({ name }) => `${name} zählt jetzt.`,
        countsNot: ({ name }) => `${name} zählt nicht mehr.`,
        asHeard: ({ name }) => `${name} ist, wie der Ton gehört wurde.`,
        undo: ({ left }) =>
          `Rückgängig gemacht. ${left === 0 ? 'Keine Berichtigung bleibt' : left === 1 ? '1 Berichtigung bleibt' : `${left} Berichtigungen bleiben`}.`,
        redo: ({ left }) => `Wiederholt: ${left === 1 ? '1 Berichtigung' : `${left} Berichtigungen`}.`,
        allBack:
          'Alle Töne sind, wie sie gehört wurden. „Wiederholen“ bringt die Berichtigungen eine nach der anderen zurück.',
      },
      refused: {
        'no note': 'Diesen Ton gibt es nicht mehr.',
        'no next note': 'Danach kommt kein Ton.',
        'too short': 'Ein Ton würde zu kurz: Er braucht 50 ms.',
        together: 'Da ist kein Platz: Dort klingt ein anderer Ton.',
        'too many': 'Mehr Berichtigungen fasst dieser Take nicht. Mach zuerst einige rückgängig.',
      },
      countKey: 'Ton zählen lassen oder nicht',
      inLine:
        'Beim Berichtigen schließt E die Leiste, die Pfeile hinauf und hinunter auf der Linie ändern die Höhe, und Strg+Z macht rückgängig.',
      spokenCorrected: ({ note }) => `berichtigt: ${note}`,
    },

    pause: 'Anhalten',
    hearTake: 'Take anhören',
    placeInTake: 'Stelle im Take',
    speed: 'Tempo',
    speeds: { 1: 'voll', 0.75: '¾', 0.5: 'halb' },
    mix: 'Hören',
    mixes: { both: 'Linie und Band', line: 'Linie', band: 'Band' },
    loop: 'Diese Takte wiederholen',
    looped: ({ fromBar, toBar }) =>
      fromBar === toBar
        ? `Takt ${fromBar} wird wiederholt`
        : `Takt ${fromBar} bis ${toBar} werden wiederholt`,
    showKeys: 'Tasten (?)',
    keysTitle: 'Tasten',
    keysInLine:
      'Auf der Linie selbst gehen die Pfeiltasten von Ton zu Ton. Zieh über die Akkordnamen, um ihre Takte zu wiederholen.',
    closeKeys: 'Schließen',
    keyNames: {
      ArrowUp: '↑',
      ArrowDown: '↓',
      Delete: 'Entf',
      ' ': 'Leertaste',
      ArrowLeft: '←',
      ArrowRight: '→',
      Home: 'Pos 1',
    },
    keys: {
      play: 'abspielen, anhalten',
      'bar back': 'einen Takt zurück',
      'bar on': 'einen Takt weiter',
      start: 'zum Anfang',
      loop: 'diese Takte wiederholen, oder nicht mehr',
      'loop starts': 'die Wiederholung beginnt hier',
      'loop ends': 'die Wiederholung endet hier',
      speed: 'volles Tempo, drei Viertel, halbes',
      mix: 'Linie und Band, Linie, Band',
      note: 'den gewählten Ton hören',
      correct: 'Töne von Hand berichtigen, oder nicht mehr',
      keys: 'diese Liste',
    },

    // Eine Verzögerung, die dem Take nach falsch ist.
    takeDelay: ({ ms, isLate, stays }) =>
      `Die Töne ${ms} ms ${isLate ? 'früher' : 'später'} zählen${stays ? ', jetzt und mit diesen Geräten' : ''}`,
    openSoundCheck: 'Den Soundcheck öffnen',
    nothingHeard: 'Das Mikrofon hat keinen Ton gehört. Der Soundcheck zeigt in Sekunden, ob es dich hört.',

    firstBeatBefore: 'Der erste Takt des Charts beginnt bei',
    firstBeatAfter: 'Sekunden',
    takePlaybackPlace: 'Stelle der Wiedergabe übernehmen',
    gradeAgain: 'Neu bewerten',

    askForBacking:
      'Ist auch eine Begleitung darin? Gib ihre Datei an, dann wird sie herausgenommen, bevor deine Linie gehört wird.',
    giveBacking: 'Begleitung angeben',
    giveOtherBacking: 'Andere Begleitung angeben',
    leaveBackingIn: 'Nicht herausnehmen',
    backingNotFound: ({ name }) =>
      `${name} war darin nicht zu hören; herausgenommen wurde nichts: siehe den Hinweis unten.`,
    backingTakenOut: ({ name, offsetSeconds, atOnce, driftPpm, db }) => {
      const exact = `${decimal(Math.abs(offsetSeconds), 2)} s`;
      const begins = atOnce
        ? `beginnt mit der Aufnahme (auf ${exact} genau)`
        : offsetSeconds > 0
          ? `beginnt ${exact} nach dem Anfang der Aufnahme`
          : `lief schon ${exact}, als die Aufnahme begann`;
      const clock =
        driftPpm === 0
          ? ''
          : `, läuft ${Math.abs(driftPpm)} Millionstel zu ${driftPpm > 0 ? 'schnell' : 'langsam'}`;
      return `${name} ${begins}${clock}; ${db === 0 ? 'sie ließ sich nicht leiser machen' : `sie wurde um ${db} dB leiser gemacht`}.`;
    },

    advice: 'Beim nächsten Mal',
    to: 'nach',
    showNote: 'Ton zeigen',
    hearYours: 'Deins anhören',
    hearResolved: 'Aufgelöst anhören',
    tryBars: ({ fromBar, toBar }) =>
      fromBar === toBar
        ? `Takt ${fromBar} wiederholen und neu versuchen`
        : `Takte ${fromBar} bis ${toBar} wiederholen und neu versuchen`,
    notTried: {
      recording:
        'Um diese Takte zu wiederholen, spiel den Chart mit der Band: Dein Backing läuft, wie es ist.',
      keys: 'Um diese Takte zu wiederholen, spiel die Form in einer Tonart: Dieser Take geht durch mehrere.',
    },

    // Takte, die noch einmal versucht wurden, neben dem Take, aus dem sie sind.
    beside: 'Beim ersten Mal und jetzt',
    besideCounts: ({ asked, fromBar, toBar, first, now }) => {
      const tone = { thirds: 'der Terz', guideTones: 'Terz oder Septime', chordTones: 'einem Akkordton' }[
        asked
      ];
      const told = ({ hits, of }: { hits: number; of: number }) =>
        of === 0 ? 'nichts gespielt' : `${hits} von ${of}`;
      const where = fromBar === toBar ? `in Takt ${fromBar}` : `in Takt ${fromBar} bis ${toBar}`;
      return `Auf ${tone} ${where}: beim ersten Mal ${told(first)}, jetzt ${told(now)}.`;
    },
    besideVerdicts: {
      more: 'Das ist mehr als Zufall.',
      fewer: 'Das ist weniger als zuvor, und nicht durch Zufall.',
      'too early':
        'Noch zu wenig, um von einem Unterschied zu sprechen: Ein weiterer Versuch wird es zeigen.',
    },
    besideFirst: 'Erstes Mal',
    besideNow: 'Jetzt',
    besideHear: { first: 'Anhören: erstes Mal', now: 'Anhören: jetzt' },
    besideChange: ({ bar, chord }) => `Takt ${bar}, ${chord}`,
    besideRest: 'eine Pause',
    besideAim: 'Das Ziel',
    wholeForm: 'Die ganze Form noch einmal',

    noteBefore: 'Ton davor',
    noteAfter: 'Ton danach',
    hearNote: 'Anhören',
    stopHearing: 'Anhalten',
    letCount: 'Zählen lassen',
    takeOut: 'Herausnehmen',
    asHeard: 'So lassen, wie es gehört wurde',
    noNote: 'In diesem Take war kein Ton zu hören.',
    chooseNote: 'Wähle einen Ton, um zu sehen, was er war und welche Regel entschied.',

    aims: 'Ziele',
    next: 'Als Nächstes',
    playForIt: 'Jetzt darauf spielen',

    shares: 'Wie viel, und ist es Zufall?',
    sharesKey:
      'Der Notenkopf steht bei deinem Anteil. Der Strich zeigt, wie weit der Anteil nach so wenigen Tönen von deinem wahren ' +
      'abweichen kann. Die Welle zeigt, was dieselben Töne erreichten, wenn man sie zufällig über den Chart verstreute.',
    sharesMore: 'Phrasenenden, betonte Schläge, alle Töne, nach Länge',
    events: {
      landings: 'Landungen',
      phraseEnds: 'Phrasenenden',
      strongBeats: 'Betonte Schläge',
      allNotes: 'Alle Töne',
      byLength: 'Nach Länge',
    },
    tones: { thirds: 'Terzen', guideTones: 'Guide Tones', chordTones: 'Akkordtöne' },
    none: 'keine',
    nothingToCount: 'In diesem Take gibt es nichts zu zählen.',
    secondsOf: ({ hits, of }) => `${decimal(hits, 1)} von ${decimal(of, 1)} s`,
    share: ({ share, low, high, chance, verdict }) => {
      const range =
        low === null || high === null ? null : `irgendwo von ${percent(low)} bis ${percent(high)}`;
      const parts = [share === null ? null : percent(share), range].filter((part) => part !== null);
      const told = parts.join(', ');
      const luck = {
        'above chance': 'Mehr als Zufall.',
        'at chance': 'Nicht mehr als Zufall.',
        'below chance': 'Weniger, als der Zufall ergibt.',
        'too short to tell': 'Zu kurz für ein Urteil.',
      }[verdict];
      const by = chance === null ? '' : `; der Zufall ergibt ${percent(chance)}`;
      return `${told.charAt(0).toUpperCase()}${told.slice(1)}${by}. ${luck}`;
    },

    palette: 'Terzen und Skalen',
    all: 'Alle',
    mixtures: {
      minorOnly: 'nur Mollpentatonik',
      both: 'in beiden',
      majorOnly: 'nur Durpentatonik',
      neither: 'in keiner',
    },
    mixture: ({ share, name }) => `${percent(share)} ${name}`,
    thirds: ({ thirds, flatThirds }) =>
      `Über Akkorden mit großer Terz spielst du diese Terz ${times(thirds)} und die kleine, die ♭3, ${times(flatThirds)}.`,
    noLeans: 'Keine ♭3 ging in die 3.',
    leans: ({ count, ways }) =>
      `Die ♭3 ging ${times(count)} in die 3${ways.length === 0 ? '' : ` (${ways.join(', ')})`}.`,
    leanWays: { slid: 'per Slide', hammered: 'per Hammer-on', bent: 'gezogen', picked: 'angeschlagen' },
    leanWay: ({ count, way }) => `${count} ${way}`,
    falls: ({ count }) => `Die 3 fiel ${times(count)} zur ♭3 zurück.`,
    leftHanging: ({ count }) => `Eine ♭3 wurde ${times(count)} nicht aufgelöst.`,
    blueNotes: ({ count }) => `Eine Blue Note zwischen den beiden Terzen klang ${times(count)}.`,

    takeAlong: 'Dateien dieses Takes',
    wholeTake: 'Der ganze Take',
    wholeTakeWhy:
      'Eine Datei mit Klang, Tönen, Bewertung und Einstellungen. Öffne sie hier oder in einem anderen Browser, und der Take ist wieder da; auch die Kommandozeile bewertet sie.',
    lineAsNotes: 'Töne als MIDI, mit Bendings und Akkorden',
    notesAsTable: 'Töne als Tabelle',
    formAsImage: 'Form als Bild',
    reportAsJson: 'Bericht als JSON',
    lineAsWav: 'Linie als WAV',
    lineAsMidi: 'Linie als MIDI',
    beatsAsTable: 'Schläge als Tabelle',
    bandAsWav: 'Band als WAV',
    commandLine: 'Auf der Kommandozeile bewerten',
    files: { own: 'deiner Datei', line: 'der Linie', beats: 'den Schlägen', band: 'der Band' },
    commandFolder: ({ files, band }) =>
      `Im Ordner mit ${files.join(', ')}:` +
      (band
        ? ' Die Band wird dort in der Linie gesucht und neu herausgenommen; einzelne Töne können deshalb anders gehört werden.'
        : ''),
    copy: 'Kopieren',
    copied: 'Kopiert',
  },

  notation: {
    title: 'Ausgeschrieben',
    back: 'Zurück zum Take',
    thisPage: 'Diese Seite',
    score: 'Partitur (MusicXML)',
    picture: 'Bild (SVG)',
    print: 'Drucken',
    degrees: 'Stufen',
    degreesWhy: 'Unter jedem Ton, was er zu seinem Akkord ist.',
    tab: 'Tabulatur',
    tabWhy: 'Saiten und Bünde, für die sich die Hand am wenigsten bewegt.',
    capo: ({ fret }) => `Kapodaster im ${fret}. Bund; die Bünde zählen von ihm an.`,
    chorus: ({ chorus }) => `Chorus ${chorus}`,
    bars: ({ from, to }) => (from === to ? `Takt ${from}` : `Takt ${from} bis ${to}`),
    noNotes:
      'Es gibt keinen Ton zu schreiben: In diesem Take wurde keiner sicher genug gehört, um zu zählen.',
    quantised: 'Der Rhythmus ist auf Lesbares gerundet; geswingte Achtel stehen gerade.',
  },

  // Der Soundcheck.
  soundCheck: {
    title: 'Soundcheck',
    back: 'Zurück',
    microphone: 'Mikrofon',
    output: 'Ausgang',
    systemDevice: 'Wie im System gewählt',
    deviceNumber: ({ kind, number }) => `${kind} ${number}`,
    listenAgain: 'Noch einmal zuhören',
    level: 'Spiel etwas Lautes',
    levels: { silent: 'Noch nichts', 'turn up': 'Lauter drehen', good: 'Gut', 'too hot': 'Zu laut' },
    notOpen: 'Das Mikrofon ist nicht offen.',
    levelFacts: ({ peakDb, floorDb, clipped }) =>
      `Am lautesten ${signed(peakDb)} dB, der Raum allein ${signed(floorDb)} dB, bezogen auf die Vollaussteuerung.` +
      (clipped ? ' Es übersteuert: Dreh den Eingang leiser, oder geh weiter weg.' : ''),
    strings: 'Leere Saiten, eine nach der anderen',
    notPlayed: 'nicht gespielt',
    letRing: 'Lass jede eine Sekunde klingen.',
    againstStandard: 'Gemessen an A = 440 Hz, bis mehr Saiten zu hören waren.',
    agreeOn: ({ hz }) => `Zusammen ergeben sie A = ${decimal(hz, 1)} Hz.`,
    room: 'Der Raum',
    caution:
      'Es erklingen drei kurze Messtöne, jeder etwas lauter als der vorige, höchstens so laut wie leises Sprechen. Stell ' +
      'die Lautstärke so ein, wie du spielen wirst, und so leise, dass man darüber sprechen kann: Laute Musik schadet dem ' +
      'Gehör. Nimm Kopfhörer dafür ab, und dämpfe die Saiten.',
    playSweeps: 'Messtöne spielen',
    sweeping: 'Bitte still: drei Messtöne …',
    delayUnknown:
      'Die Verzögerung ließ sich nicht messen, weil nichts zurückkam; stattdessen gilt, was der Browser dazu angibt.',
    delay: ({ ms, spreadMs }) =>
      `Vom Lautsprecher zum Mikrofon dauert es ${ms} ms, ` +
      `${spreadMs === null ? 'jedes Mal gleich' : `von Messton zu Messton auf ${decimal(spreadMs, 1)} ms genau`}.`,
    headphones: 'Kopfhörer: Es gibt keine Band herauszunehmen.',
    speakers: ({ db }) =>
      db === 0
        ? 'Lautsprecher: Die Band lässt sich aus dem, was das Mikrofon hört, nicht herausnehmen.'
        : `Lautsprecher: Die Band wird in dem, was das Mikrofon hört, um ${db} dB leiser gemacht.`,
    leak: ({ db }) =>
      db === 0
        ? 'Sie kommt so laut zurück, wie sie gespielt wird.'
        : `Sie kommt ${Math.abs(db)} dB ${db < 0 ? 'leiser' : 'lauter'} zurück, als sie gespielt wird.`,
    delayTitle: 'Die Verzögerung',
    byStrokes: ({ ms, spreadMs, strokes }) =>
      `Mit Anschlägen gemessen: ${strokes} kamen ${ms} ms nach ihren Klicks, die Hälfte davon auf ${spreadMs} ms genau. Wenn du zu frühem oder spätem Spiel neigst, steckt das mit darin.`,
    delaySet: ({ ms }) => `Von Hand gesetzt: ${ms} ms.`,
    delayAssumed: ({ ms }) => `Nicht gemessen: Es gilt, was der Browser dazu angibt, ${ms} ms.`,
    strokesTask:
      'Bei Kopfhörern hört das Mikrofon die Messtöne nicht. Dämpf die Saiten, drück den Knopf, warte vier tiefe Klicks ab und schlag ' +
      'dann zu jedem der acht hohen einmal an.',
    strokesNotForSpeakers:
      'Bei Lautsprechern nimm die Messtöne: Klicks aus einem Lautsprecher lassen sich nicht von Anschlägen trennen.',
    strike: 'Zum Klick anschlagen',
    striking: 'Vier zum Einzählen, dann acht Anschläge …',
    delayField: 'Die Verzögerung in ms',
    delayLimits: ({ least, most }) => `Eine ganze Zahl von ${least} bis ${most}.`,
    takeMeasured: 'Den gemessenen Wert nehmen',
    takeAssumed: 'Den Wert des Browsers nehmen',
  },

  recording: {
    title: 'Worüber hast du gespielt?',
    reading: 'Die Aufnahme wird gelesen und nach ihrem Tempo abgehört …',
    fromPulse: ({ bpm, seconds }) =>
      `Die Aufnahme hat ${trimmed(bpm, 1)} Schläge in der Minute, der erste liegt bei ${decimal(seconds, 2)} s. Hör hinein und schau, ob die Takte passen.`,
    wanders: ({ bpm, seconds }) =>
      `Die Aufnahme hat etwa ${trimmed(bpm, 1)} Schläge in der Minute, ab ${decimal(seconds, 2)} s, aber das Tempo schwankt: Die Takte können nicht von Anfang bis Ende passen.`,
    fromLine: ({ bpm, seconds }) =>
      `Nur deine Linie verrät das Tempo: wahrscheinlich ${trimmed(bpm, 1)}, ab ${decimal(seconds, 2)} s. Wenn das nicht stimmt, tippe es mit.`,
    noTempo:
      'Es war kein gleichmäßiges Tempo zu finden. Schreib es hin oder tippe es beim Hören mit, und sag, wo der erste Takt beginnt.',
    chords: 'Akkorde der Aufnahme',
    gradeByThis: 'Stimmt, danach bewerten',
    playToIt: 'Es ist eine Begleitung: dazu spielen',
    noChords: {
      alone: 'Es wurden keine Akkorde gefunden: Eine Linie klingt allein.',
      stopped: 'Die Suche nach Akkorden wurde beendet.',
    },
    chartStays: ({ chart, bars }) =>
      `Bewertet wird nach dem Chart auf dem Pult: ${chart}, ${several(bars, 'Takt', 'Takte')}.`,
    anotherChart: ({ chart, bars }) =>
      `Bewertet wird nach ${chart}, ${several(bars, 'Takt', 'Takte')}, nicht nach den gefundenen Akkorden.`,
    chart: 'Dein Chart',
    begins: 'Wo der erste Takt beginnt',
    beatEarlier: 'Einen Schlag früher',
    beatLater: 'Einen Schlag später',
    listen: 'Anhören',
    pause: 'Anhalten',
    place: 'Stelle in der Aufnahme',
    placeAt: ({ seconds }) => `${decimal(seconds, 1)} Sekunden`,
    grade: 'Bewerten',
    later: 'Das alles lässt sich nachher noch ändern. Eine Kopie bleibt bei deinen Takes, auf diesem Gerät.',
    gradedBy: ({ chart, bpm, seconds }) =>
      `Bewertet über ${chart} bei ${trimmed(bpm, 1)} bpm, erster Takt bei ${decimal(seconds, 2)} s.`,
    change: 'Das ändern',
    leave: 'So lassen',
  },

  // Der Bildschirm einer Begleitaufnahme und ihrer Schläge.
  backing: {
    title: 'Setz die Schläge deiner Begleitung.',
    open: 'Eigene Begleitung öffnen',
    back: 'Zurück',
    throwAway: 'Verwerfen',
    goOn: 'Weiter bearbeiten',
    fallen: ({ name }) => `${name} statt dieser Begleitung öffnen?`,
    keep: 'Diese Begleitung nehmen',
    saveBeats: 'Schläge als Tabelle speichern',
    busy: {
      reading: 'Die Begleitung wird gelesen …',
      listening: 'Ihre Schläge werden gesucht …',
      'finding chords': 'Ihre Schläge und Akkorde werden gesucht …',
    },
    found: {
      heading: 'Akkorde deiner Begleitung',
      ask: ({ bars, bpm, choruses }) =>
        `${several(bars, 'Takt', 'Takte')}, Tempo ${bpm}, ${several(choruses, 'Chorus', 'Chorusse')}: Stimmt das?`,
      right: 'Stimmt, spielen',
      nothing: 'Es wurden keine Akkorde gefunden: Schreib den Chart unten auf.',
      allSure: 'Jeder Takt ist sicher.',
      unsure: ({ bars, of }) =>
        `${bars} von ${several(of, 'Takt', 'Takten')} ${bars === 1 ? 'ist' : 'sind'} nicht sicher: Sieh dir die mit einem Fragezeichen an.`,
      bar: ({ bar, chords, sure }) => `Takt ${bar}: ${chords}${sure ? '' : ', nicht sicher'}`,
      instead: ({ bar }) => `Takt ${bar} stattdessen:`,
      press: 'Drück auf einen Takt, um ihn zu ändern.',
      length: 'Takte der Form',
      form: ({ title, key, alike }) =>
        alike > 0.995 ? `Das ist „${title}“ in ${key}.` : `Das ist fast „${title}“ in ${key}.`,
      takeForm: 'Diese Form nehmen',
      takeFound: 'Die gefundenen Akkorde nehmen',
      again: 'Akkorde noch einmal suchen',
      overBeats: 'Akkorde über diesen Schlägen suchen',
      stop: 'Suche beenden',
      done: 'Wie viel der Suche getan ist',
    },
    help:
      'Die Leertaste spielt ab und tippt Schläge. Zieh einen Schlag oder beweg ihn mit den Pfeiltasten; die Nachbarn folgen. ' +
      'Drück zweimal zwischen zwei Schläge, um einen einzufügen.',
    beats: 'Schläge',
    facts: 'Name, Taktart, Stimmung und Chart',

    // Die Schläge über dem Klang.
    noBeatChosen: 'Kein Schlag gewählt',
    beatBefore: ({ beats, time }) => `${several(beats, 'Schlag', 'Schläge')} vor Takt 1, bei ${time}`,
    beatAt: ({ bar, beat, time }) => `Takt ${bar}, Schlag ${beat}, bei ${time}`,
    setByHand: ({ beat }) => `${beat}, von Hand gesetzt`,
    wave: 'Schläge der Begleitung. Auf und ab wählen einen Schlag, links und rechts bewegen ihn um 10 Millisekunden',
    inSight: 'Sichtbarer Teil der Begleitung',
    inSightFrom: ({ seconds }) => `ab ${seconds === 1 ? '1 Sekunde' : `${seconds} Sekunden`}`,

    // Abspielen und tippen.
    pause: 'Anhalten',
    tap: 'Schlag tippen',
    play: 'Mit Klicks abspielen',
    taps: ({ taps, bpm }) =>
      `${taps} ${taps === 1 ? 'Schlag' : 'Schläge'} getippt${bpm === null ? '' : `, ${bpm} in der Minute`}`,
    useTaps: 'Getippte Schläge übernehmen',
    forgetTaps: 'Getippte Schläge löschen',
    findAgain: 'Schläge neu suchen',
    wide: 'Gezeigte Länge',
    seconds: ({ seconds }) => several(seconds, 'Sekunde', 'Sekunden'),

    // Was mit den Schlägen geschehen kann.
    noBeats: 'Noch keine Schläge.',
    tempoAndBars: ({ bars }) => `Schläge in der Minute im Mittel, ${several(bars, 'Takt', 'Takte')}.`,
    otherTempos: 'Anders gezählt:',
    countOther: ({ level, bpm }) =>
      `${{ 'a third': 'Ein Drittel', half: 'Halb', twice: 'Doppelt', 'three times': 'Dreifach' }[level]} zählen: ${bpm} Schläge in der Minute`,
    chosenBeat: 'Der gewählte Schlag',
    chooseBeat: 'Wähl einen Schlag: Drück darauf oder benutz die Pfeiltasten.',
    barOne: 'Takt 1 beginnt hier',
    playFrom: 'Ab hier abspielen',
    earlier: '10 ms früher',
    later: '10 ms später',
    release: 'Nicht festlegen',
    hold: 'Hier festlegen',
    addBehind: 'Einen dahinter einfügen',
    takeOut: 'Entfernen',
    evenOut: 'Zwischen festgelegten Schlägen ausgleichen',
    continueTempo: 'In diesem Tempo weiter',
    undo: 'Rückgängig',

    // Name, Taktart, Swing, Stimmung.
    name: 'Name',
    meter: 'Taktart',
    eighths: 'Achtel',
    swings: { straight: 'gerade', little: 'leicht geswingt', swung: 'geswingt', shuffled: 'Shuffle' },
    tunedTo: 'Gestimmt auf',
    reference: ({ hz }) => `A = ${hz} Hz`,

    // Eine Begleitung anstelle der Band, auf der offenen Seite.
    yours: 'Deine Begleitung',
    soundsAt: ({ bpm, hz }) =>
      `Deine eigene Begleitung, gespielt mit ${bpm} Schlägen in der Minute. Sie klingt bei A = ${decimal(hz, 1).replace(',0', '')} Hz.`,
    speed: 'Geschwindigkeit',
    asRecorded: 'wie aufgenommen',
    cents: 'Höher oder tiefer, in Cent',
    fromBar: 'Von Takt',
    toBar: 'Bis Takt',
    choruses: 'Chorusse',
    untilStopped: 'bis ich aufhöre',
    allBars: 'Alle Takte',
    edit: 'Schläge und Chart',
    backToBand: 'Zurück zur Band',
    remove: 'Entfernen',
    removeNamed: ({ title }) => `${title} entfernen`,
    removeForGood: 'Endgültig entfernen',
    keepIt: 'Behalten',
  },

  // Der Bildschirm, während ein Take bewertet wird.
  grading: {
    naming: 'Jeder Ton bekommt seinen Namen …',
    progress: 'Bewertung',
  },

  // Der Bildschirm eines Takes, der nicht bewertet werden kann.
  trouble: {
    tryAgain: 'Noch einmal versuchen',
    back: 'Zurück',
  },

  // Was mehrere Bildschirme teilen.
  parts: {
    title: 'Landfall',
    putAway: ({ sentence }) => `Diese Meldung schließen: ${sentence}`,
    newer: {
      waits:
        'Ein neueres Landfall liegt auf diesem Gerät bereit. Takes und Einstellungen bleiben, wie sie sind.',
      use: 'Jetzt verwenden',
    },
    bar: ({ bar }) => `Takt ${bar}:`,
    tap: 'Tippen',
    tapWhy: 'Tippe den Schlag mindestens viermal',
    name: 'Benennen',
    nameTake: ({ title }) => `${title} benennen`,
    takeName: 'Name des Takes',
    keepName: 'Namen behalten',
    hold: 'Mit Stern markieren',
    holdTake: ({ title }) => `${title} mit Stern markieren`,
    bandBar: ({ bar }) => `Takt ${bar}, die Band ist dran:`,
    barsNotDrawn: ({ from, to }) => `Takte ${from} bis ${to}`,
    goesOn: 'geht weiter',
    demo: 'Beispiel-Take',
    earlierLanding: ({ chorus, landing }) => `Chorus ${chorus}. ${landing}`,
    landing: ({ chord, role, degree, timing }) =>
      `${chord}: ${[role, degree, timing].filter((part) => part !== '').join(', ')}.`,
    onTheBeat: 'auf dem Schlag',
    early: ({ ms }) => `${ms} ms zu früh`,
    late: ({ ms }) => `${ms} ms zu spät`,
    inTune: 'sauber',
    cents: ({ cents }) => `${cents < 0 ? '−' : '+'}${Math.abs(cents)} Cent`,
    ofAll: ({ count, all }) => `${count} von ${all}`,
    key: ({ tonic, mode }) =>
      mode === 'minor' ? `${tonic.charAt(0).toLowerCase()}${tonic.slice(1)}-Moll` : `${tonic}-Dur`,
    titleInKey: ({ title, key }) => `${title} in ${key}`,

    // Die Zeichen der Rollen.
    marks: 'Die Zeichen',
    open: 'Pause',
    meanings: {
      root: 'der Ton, nach dem der Akkord heißt',
      third: 'sagt, ob Dur oder Moll',
      fifth: 'ein Akkordton, der wenig über den Akkord sagt',
      seventh: 'führt zur Terz des nächsten Akkords; die Sexte eines 6-Akkords zählt als Septime',
      extension: 'eine 9, 11 oder 13, die im Symbol steht',
      colour: 'nicht im Akkord, aber in den Skalen, aus denen du spielst',
      blue: 'zwischen den beiden Terzen, oder die verminderte Quinte',
      outside: 'weder im Akkord noch in den Skalen',
      open: 'beim Wechsel nichts gespielt: extra gezählt, nie als Fehler',
    },

    // Was ein Screenreader für die Zeichen sagt.
    signs: {
      flat: 'b',
      sharp: 'Kreuz',
      doubleSharp: 'Doppelkreuz',
      majorSeventh: 'große Septime',
      halfDiminished: 'halbvermindert',
      diminished: 'vermindert',
      minor: 'Moll',
      over: 'über',
    },
  },

  // Aufgabenblätter: geschrieben, gespielt, zurückgegeben, beantwortet.
  sheets: {
    lessons: 'Unterricht',
    lessonsWhy:
      'Ein Aufgabenblatt ist eine kleine Datei oder ein Link: Akkorde, ein Tempo und worauf man landen soll. Wer es spielt, gibt den Take zurück.',
    open: 'Aufgabenblatt oder Antwort öffnen',
    write: 'Ein Aufgabenblatt schreiben',
    thisSheet: 'Dieses Aufgabenblatt',
    editOther: 'Anderes Aufgabenblatt öffnen',
    anew: 'Neu beginnen',
    back: 'Zurück',
    title: 'Titel',
    titleExample: 'Terzen über einen langsamen Blues',
    note: 'Was du dazu sagst',
    noteExample: 'Sing jede Terz, bevor du sie spielst.',
    aims: 'Worauf du landen sollst',
    needsTitle: 'Gib dem Aufgabenblatt einen Titel.',
    needsAim: 'Wähle mindestens ein Ziel.',
    addAim: 'Noch ein Ziel',
    chooseAim: 'wählen',
    remove: 'Entfernen',
    removeAim: ({ name }) => `„${name}“ entfernen`,
    shareToReach: 'Anteil, der zu erreichen ist',
    chart: 'Akkorde',
    chartAndTempo: 'Akkorde und Tempo',
    ownInstrument: 'jeder spielt sein eigenes',
    away: 'An deine Schüler',
    save: 'Als Datei speichern',
    saved: ({ name }) => `Als „${name}“ gespeichert. Schicke sie per Mail oder über eure Lernplattform.`,
    copyLink: 'Den Link kopieren',
    copied: ({ characters }) =>
      `Kopiert: ${characters} Zeichen. Das ganze Aufgabenblatt steckt im Link; kein Server bewahrt es auf.`,
    copyByHand:
      'Dieser Browser lässt die Seite nicht kopieren: Der Link ist unten markiert, kopiere ihn dort.',
    link: ({ characters }) => `Der Link, ${characters} Zeichen`,
    example: {
      title: 'Ein Beispiel, wenn du willst',
      why: 'Einer deiner Takes über diesen Chart, mit der Band zu hören: Ins Blatt kommen seine Töne, nicht sein Klang.',
      noTakes: 'Du hast noch keinen Take über diesen Chart. Spiel ihn, und wähl den Take dann hier.',
      choose: 'Dein Take',
      none: 'kein Beispiel',
      kept: 'das im Blatt',
      notes: ({ notes }) => (notes === 1 ? 'ein Ton' : `${notes} Töne`),
      misfits: 'Das Beispiel wurde über einen anderen Chart gespielt und bleibt deshalb weg.',
      hear: 'Beispiel anhören',
      stop: 'Beispiel anhalten',
    },
    sheet: 'Aufgabenblatt',
    change: 'Ändern',
    openOther: 'Andere Datei öffnen',
    leave: 'Blatt verlassen',
    reach: ({ share }) => `mindestens ${percent(share)}`,
    choruses: ({ choruses }) => several(choruses, 'Chorus', 'Chorusse'),
    yourName: 'Dein Name',
    needsName: 'Schreib zuerst deinen Namen: Deine Lehrkraft sieht ihn am Take.',
    thisTry: ({ tryNumber }) => `Das wird Versuch ${tryNumber}.`,
    play: 'Spielen',
    tries: 'Deine Versuche',
    oneTry: ({ tryNumber }) => `Versuch ${tryNumber}`,
    answered: 'deine Lehrkraft hat geantwortet',
    takeOf: ({ student, tryNumber }) => `${student === '' ? '' : `${student}, `}Versuch ${tryNumber}`,
    giveBack: 'Zurückgeben',
    giveBackWhy: 'Speichert den Take als Datei für deine Lehrkraft: Klang, Name und Versuch sind darin.',
    gaveBack: ({ name }) => `Als „${name}“ gespeichert. Schicke sie deiner Lehrkraft.`,
    answer: 'Was deine Lehrkraft sagt',
    atBar: ({ chorus, bar }) => `Chorus ${chorus}, Takt ${bar}`,
  },

  // Hilfe und andere Seiten der Kommandozeile.
  lesson: {
    attention: {
      doubtful: 'zuerst ansehen',
      'not reached': 'nicht erreicht',
      'too short': 'zu kurz für ein Urteil',
      reached: 'erreicht',
    },
    doubts: {
      'another sheet': 'für ein anderes Aufgabenblatt gespielt',
      'moved key': ({ tonic }) => `passt viel besser zu ${tonic}: in anderer Tonart gespielt?`,
      'moved time': ({ beats }) =>
        `passt viel besser, wenn der Chart ${Math.abs(beats) === 1 ? 'einen Schlag' : `${Math.abs(beats)} Schläge`} ${beats > 0 ? 'später' : 'früher'} beginnt: verschoben?`,
      band: 'die Band kam durch das Mikrofon und wurde herausgenommen',
      delay: 'der ganze Take liegt zu früh oder zu spät',
      'lost sound': 'Ton ging verloren',
      corrected: 'von Hand korrigiert, bewertet wie gehört',
      'few notes': 'kaum Töne',
    },
    columns: {
      student: 'Schüler',
      attention: 'Braucht',
      aim: 'Ziel',
      thirds: 'Landungen auf Terzen',
      weakest: 'Schwächster Wechsel',
      tries: 'Versuche',
      doubts: 'Zweifel',
      sheet: 'Aufgabenblatt',
      file: 'Datei',
    },
    noAim: 'kein Ziel',
    noWeakest: 'keiner verfehlt',
    counted: ({ hits, of, low, high }) =>
      of === 0
        ? 'keine gespielt'
        : `${hits} von ${of}` +
          (low === null || high === null ? '' : ` (${Math.round(100 * low)} bis ${percent(high)})`),
    besideLuck: ({ hits, of, expected }) =>
      of === 0
        ? 'keine gespielt'
        : `${hits} von ${of}` + (expected === null ? '' : `, Zufall ergibt ${decimal(expected, 1)}`),
    change: ({ from, to, bar }) => `${from === null ? to : `${from} nach ${to}`} (Takt ${bar})`,
    weakest: ({ change, hits, of }) => `${change}, ${hits} von ${of}`,
    tries: ({ takes, tryNumber }) => (tryNumber === null ? String(takes) : `${takes}, Versuch ${tryNumber}`),
    desk: {
      title: 'Das Lehrerpult',
      open: 'Das Lehrerpult',
      back: 'Zurück',
      lead: 'Zieh einen Ordner hierher: Takes, die zurückgekommen sind, Aufnahmen und das Aufgabenblatt. Jeder Take wird auf diesem Rechner noch einmal gehört: Was eine Datei über ihre eigene Bewertung sagt, wird nicht geglaubt. Nichts verlässt diesen Rechner, und nichts wird aufgehoben.',
      chooseFolder: 'Ordner wählen',
      chooseFiles: 'Dateien wählen',
      clear: 'Pult leeren',
      sheets: 'Aufgabenblätter',
      noSheet:
        'Noch kein Aufgabenblatt: Takes mit eigenem Blatt werden nach diesem bewertet; Aufnahmen brauchen eines.',
      firstBeat: ({ recordings }) =>
        `In ${recordings === 1 ? 'der bloßen Aufnahme' : `allen ${recordings} bloßen Aufnahmen`} beginnt der erste Takt des Charts bei`,
      progress: ({ done, of }) => `${done} von ${of} bewertet`,
      cancel: 'Hier aufhören',
      table: 'Wer dich zuerst braucht',
      counted: ({ rows, takes }) =>
        `${rows === 1 ? 'Eine Zeile' : `${rows} Zeilen`}, ${takes === 1 ? 'ein Take' : `${takes} Takes`}. In Klammern steht, was der Anteil in Wahrheit sein kann (95 %).`,
      length: 'Dauer',
      review: ({ student }) => `Take von ${student} öffnen`,
      written: 'Antwort begonnen',
      map: 'Welcher Wechsel bei wem misslingt',
      mapOf: ({ sheet }) => `Welcher Wechsel bei wem misslingt: ${sheet}`,
      change: 'Wechsel',
      landed: 'Terz oder Septime',
      missedBy: 'Weniger als die Hälfte',
      nobody: 'niemand',
      failed: ({ files }) =>
        files === 1 ? 'Eine Datei war nicht zu bewerten' : `${files} Dateien waren nicht zu bewerten`,
      saveCsv: 'Tabelle speichern (CSV)',
      savePage: 'Seite zum Drucken speichern',
      backToDesk: 'Zurück zum Pult',
      answer: ({ student }) => `Deine Antwort an ${student}`,
      believed:
        'Diese Bewertung wurde hier aus dem Klang berechnet. Der Take steht nicht unter deinen eigenen.',
      note: 'Zum ganzen Take',
      comments: 'Kommentare zu Takten',
      chorus: 'Durchgang',
      bar: 'Takt',
      comment: 'Kommentar',
      add: 'Kommentar hinzufügen',
      remove: ({ place }) => `Kommentar zu ${place} entfernen`,
      place: ({ chorus, bar }) => `Durchgang ${chorus}, Takt ${bar}`,
      give: 'Antwort als Datei speichern',
      howToGive: 'Schick die Datei deinem Schüler: Sie öffnet sich in Landfall neben dem Take.',
    },
    page: {
      title: ({ sheet }) => `Klasse: ${sheet}`,
      students: ({ students, takes }) =>
        `${students} Schüler, ${takes === 1 ? 'ein Take' : `${takes} Takes`}`,
      changes: 'Die Wechsel der Form, über die ganze Klasse',
      changesOf: ({ sheet }) => `Die Wechsel von „${sheet}“, über die ganze Klasse`,
      changeLine: ({ hits, of, missedBy }) =>
        `${hits} von ${of} auf Terz oder Septime` +
        (missedBy.length === 0 ? '' : `; weniger als die Hälfte bei ${missedBy.join(', ')}`),
      failed: 'Nicht bewertet',
      gradedBy: ({ version }) =>
        `Aus dem Ton bewertet von Landfall ${version}. Ein Bereich in Klammern ist, was der Anteil in Wahrheit sein kann (95 %).`,
    },
  },

  cli: {
    chords: {
      found: ({ bars, choruses, bpm, firstBeatSeconds }) =>
        `${several(bars, 'Takt', 'Takte')}, ${several(choruses, 'Chorus', 'Chorusse')}, ${bpm} Schläge in der Minute, erste Eins bei ${decimal(firstBeatSeconds, 2)} s.`,
      form: ({ name, key, alike }) =>
        alike > 0.995
          ? `Das ist die Form „${name} in ${key}“.`
          : `Das gleicht zu ${percent(alike)} der Form „${name} in ${key}“.`,
      allSure: 'Jeder Takt ist sicher.',
      notSure: 'Nicht sicher:',
      unsure: ({ bar, sure, chords, others }) =>
        `  Takt ${bar}: ${chords.join(' ')} (${percent(sure)})` +
        (others.length === 0 ? '' : `, oder ${joinWith(others, 'oder')}`),
    },
    graded: ({ files, of, failed }) =>
      `${files} von ${of} bewertet${failed === 0 ? '' : `, ${failed} nicht`}`,
    notGraded: ({ files }) =>
      files === 1
        ? 'Eine Datei konnte nicht bewertet werden:'
        : `${files} Dateien konnten nicht bewertet werden:`,
    ofFile: ({ file, says }) => `${file}: ${says}`,
    listening: ({ time, share }) =>
      `Es wird gehört: ${time}${share === null ? '' : `, ${Math.floor(100 * share)} %`}`,
    writtenBand: ({ file, choruses, bars, feel, bpm, seed }) =>
      `${file}: ${choruses === 1 ? 'ein Chorus' : `${choruses} Chorusse`} zu ${bars} ${noun(bars, 'Takt', 'Takten')}, ${feel}, ${decimalOf(bpm)} bpm, seed ${seed}.`,
    writtenScore: ({ file, bars }) => `${file}: ${bars} ${noun(bars, 'Takt', 'Takte')} Akkorde.`,
    formLength: ({ bars, mode }) => `${bars} ${noun(bars, 'Takt', 'Takte')}, ${MODES[mode]}`,
    input: 'Die Eingabe',
    output: 'Die Standardausgabe',
    formHint:
      'Nimm eine mit --chart "form:NAME in TONART", die Tonart auf Englisch, etwa --chart "form:minor blues in A".',
    usage: `Aufruf: landfall grade FILE... --chart TEXT|FILE --tempo BPM [Optionen]
        landfall grade FILE --beats BEATS.csv [Optionen]
        landfall class FOLDER... --sheet SHEET [Optionen]
        landfall chords RECORDING [--json]
        landfall band --chart TEXT|FILE --tempo BPM --out band.wav|band.mid
        landfall forms | schema | --help | --version`,
    help: {
      whatItDoes: 'Landfall hört eine improvisierte Linie und sagt, wo sie auf den Akkorden landet.',
      file: 'FILE ist eine Aufnahme (WAV, FLAC, MP3, Ogg Vorbis) oder eine Liste von Tönen: eine Tabelle mit der Kopfzeile onset,duration,pitch (Sekunden, Sekunden, MIDI-Nummer) oder eine MIDI-Datei. In einem Take, den die App gespeichert hat (.landfall), steht, wonach er bewertet wird; er braucht keine Akkorde.',
      range: ({ lowest, highest }) => `${decimalOf(lowest)} bis ${decimalOf(highest)}`,
      exit: 'Der Rückgabewert ist 0, wenn bewertet wurde, 1, wenn die Eingabe nicht bewertet werden kann, 2 bei falschem Aufruf.',
      sections: {
        chords: 'Die Akkorde unter der Linie',
        grading: 'Wie bewertet wird',
        output: 'Was herauskommt',
        band: 'Die Band als Datei',
        several: 'Mehrere Takes und eine Klasse',
        others: 'Andere Befehle',
      },
      options: {
        chart:
          'Der Chart: Taktstriche und Akkorde, "| G7 | C7 | G7 | D7 |", als Text oder als Name einer Datei (Text, MusicXML, MIDI mit Akkord-Markern); "form:NAME in TONART" für eine eingebaute Form. Er wiederholt sich, bis die Eingabe endet. Akkorde stehen auf Englisch: B und Bb statt H und B.',
        tempo: ({ range }) => `Schläge in der Minute, ${range}; das des Charts, wenn er eines hat.`,
        firstBeat: 'Wann der erste Takt beginnt, vom Anfang von FILE an. 0, wenn nichts angegeben ist.',
        beats:
          'Statt eines Charts: eine Tabelle mit der Kopfzeile time,chord und einer Zeile für jeden Schlag; ein leerer Akkord lässt den letzten weitergelten.',
        meter: ({ meters }) => `${meters.join(', ')}. 4/4, wenn nichts angegeben ist.`,
        swing: ({ range }) =>
          `Anteil des Schlags, den die erste Achtel einnimmt, ${range}. 0,5, wenn nichts angegeben ist.`,
        rise: 'Das Tempo steigt nach jedem Chorus um BPM, oder nach so vielen Takten (BARS), bis 280.',
        transpose: 'Setzt den Chart um so viele Halbtöne höher, mit einem Minus tiefer.',
        trade:
          'Spieler und Band wechseln sich nach so vielen Takten ab, der Spieler zuerst: Nur was er spielt, wird bewertet.',
        feel: 'Das Feel, wenn der Chart keines nennt; Teile mit eigenem Feel behalten es.',
        key: 'Die Tonart der Linie, auf Englisch, etwa Bb oder "F# minor", für die Stufe jedes Tons in der Tonart; die des Charts, wenn nichts angegeben ist.',
        reference: ({ range }) =>
          `A4, ${range} Hz, oder aus den Tönen gefunden. 440, wenn nichts angegeben ist.`,
        anticipation: ({ range }) =>
          `Wie früh ein Ton beginnen und doch zum nächsten Akkord gehören kann, ${range}; bei 0 zählt der Akkord, der am Anfang des Tons klingt. Eine Achtel, wenn nichts angegeben ist.`,
        tolerance: ({ range }) =>
          `Wie ungenau die Zeit eines Tons an einem Wechsel sein darf, ${range} ms; 50, wenn nichts angegeben ist. --anticipation 0 schaltet es ab.`,
        full: 'Gibt jede Zahl aus; ohne das passt die Seite auf einen Bildschirm.',
        chorus: 'Mit --explain: erklärt den Takt nur in diesem Chorus, ab 1 gezählt.',
        palette: ({ names }) =>
          `Die Skalen neben den Akkorden; ihre Töne zählen als Skalentöne: ${names.join(', ')}.`,
        aim: ({ ids }) =>
          `Misst dieses Ziel zuerst; es dürfen mehrere sein. Eine eigene Datei oder ${ids.join(', ')}.`,
        instrument: ({ ids }) => `Sagt, wo die empfohlenen Töne liegen: ${ids.join(', ')}.`,
        capo: 'Der Bund des Kapodasters.',
        backing:
          'Eine Aufnahme der Begleitung, die das Mikrofon mitgehört hat: Sie wird im Take gefunden, bis zu 10 Sekunden davor oder danach, und vor dem Hören herausgenommen.',
        part: 'Die Stimme, die aus einer MIDI-Datei mit mehreren zu nehmen ist.',
        json: 'Gibt den Bericht als JSON aus und sonst nichts; landfall schema gibt sein Schema aus.',
        explain: 'Gibt die Gründe hinter jeder Landung und jedem Ton dieses Takts aus.',
        lines:
          'Eine Zeile JSON je Datei, als JSON Lines; --json tut dasselbe, wenn mehrere Dateien angegeben sind.',
        moreFiles:
          'landfall grade nimmt mehrere Dateien und Ordner: Sie werden über alle Kerne bewertet, jede mit ihrer Seite.',
        classDoes:
          'Bewertet die Takes einer Klasse nach einem Aufgabenblatt; die Tabelle beginnt mit denen, die Hilfe brauchen.',
        sheet:
          'landfall class: das Aufgabenblatt, eine JSON-Datei; landfall schema sheet gibt sein Schema aus.',
        classOutput: 'landfall class: die Tabelle als CSV, als Zeilen mit JSON oder als Seite zum Drucken.',
        threads: 'So viele Dateien werden zugleich bewertet; ohne Angabe eine je Kern.',
        anew: 'Bewertet auch, was schon bewertet ist; ohne dies geht ein abgebrochener Aufruf weiter.',
        language: ({ codes }) =>
          `Die Sprache der Seite: ${joinWith(codes, 'oder')}. en, wenn nichts angegeben ist.`,
        out: 'landfall band: die Ausgabedatei: eine Aufnahme (.wav), eine MIDI-Datei (.mid) oder der Chart als Noten (.musicxml).',
        bandFeel: ({ names }) =>
          `${names.join(', ')}; das des Charts, wenn nichts angegeben ist, sonst shuffle.`,
        bandSwing: 'Wie oben; der übliche Swing des Feels bei diesem Tempo, wenn nichts angegeben ist.',
        bandTurns: 'Wie oben; wenn die Band dran ist, spielt sie eine Linie zum Ziel --aim.',
        drone: 'Der Grundton der Tonart, oder Grundton und Quinte, gehalten anstelle von Bass und Akkorden.',
        choruses: ({ range }) =>
          `Wie oft der Chart gespielt wird, ${range}. 3, wenn nichts angegeben ist; ein Schluss folgt.`,
        seed: 'Dieselbe Zahl spielt dieselben Töne. 1, wenn nichts angegeben ist.',
        forms: 'Die eingebauten Formen.',
        chordsOf:
          'Die Akkorde einer Aufnahme: Eins, Taktart, Form und Akkorde, und wie sicher jeder Takt ist.',
        schema:
          'Das JSON-Schema des Berichts; schema sheet gibt das eines Aufgabenblatts aus, schema answer das der Antwort einer Lehrkraft, schema take das einer Datei mit einem Take.',
      },
    },
  },
};
