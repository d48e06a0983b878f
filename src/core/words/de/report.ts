/** What a report is told with, on the page of the command line and in the review alike. */
import { joinWith } from '../entries/entry.ts';
import { percent, several, decimal, trimmed } from './grammar.ts';
import { luck, capital, moreShows, times, noun } from './phrases.ts';
import type { report as english } from '../en/report.ts';
import type { Facts, Translated } from '../entries/translated.ts';

type AdviceFacts = Facts<(typeof english)['advice']['landing']>;
type LandedFacts = Omit<Facts<(typeof english)['headline']['judged']>, 'verdict' | 'moreChoruses'>;
type VerdictCode = Facts<(typeof english)['headline']['judged']>['verdict'];

const VERDICTS: Readonly<Record<VerdictCode, string>> = {
  'above chance': 'mehr als Zufall',
  'at chance': 'nicht mehr als Zufall',
  'below chance': 'weniger, als der Zufall ergibt',
  'too short to tell': 'zu kurz für ein Urteil',
};

const countedLandings = ({ hits, of, tones }: LandedFacts): string =>
  `${hits} von ${several(of, 'Landung', 'Landungen')} ${hits === 1 || of === 1 ? 'liegt' : 'liegen'} auf ` +
  (tones === 'thirds' ? 'der Terz' : 'einem Guide Tone (hier hat kein Akkord eine Terz)');

function pValue(tail: number): string {
  if (tail < 0.001) return 'p < 0,001';
  return `p = ${decimal(tail, tail < 0.01 ? 3 : 2)}`;
}

const timesAfter = (count: number): string => (count === 1 ? '' : `, ${times(count)}`);

function adviceStep({ semitones, resolve, resolveDegree, where }: AdviceFacts, from?: string): string {
  const step = `Einen ${Math.abs(semitones) === 1 ? 'Halbton' : 'Ganzton'} ${semitones > 0 ? 'höher' : 'tiefer'}`;
  const start = from === undefined ? '' : ` als ${from}`;
  return `${step}${start} liegt ${resolve}, seine ${resolveDegree}${where === null ? '' : ` (${where})`}`;
}

function bars(count: number): string {
  const rounded = count < 1 ? Math.round(count * 4) / 4 : Math.round(count * 2) / 2;
  if (rounded <= 0.25) return 'ein Viertel eines Taktes';
  if (rounded < 1) return rounded === 0.5 ? 'einen halben Takt' : 'drei Viertel eines Taktes';
  return rounded === 1 ? 'einen Takt' : `${trimmed(rounded)} Takte`;
}

export const report: Translated<typeof english> = {
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
      arched: ({ count }) => several(count, 'geht hinauf und kommt zurück', 'gehen hinauf und kommen zurück'),
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
      `${told.bars}: Über ${told.chord} wird die b3, ${told.played}, ${told.count === 1 ? '' : `${times(told.count)} `}nicht aufgelöst. ${adviceStep(told)}.`,
    'third near': (told) =>
      `${told.bars}: In ${told.chord} hinein gehst du von ${told.from} zu ${told.played} (seine ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told, told.from)}.`,
    neck: ({ string, fret, open }) => (open ? `${string}. Saite leer` : `${string}. Saite, ${fret}. Bund`),
    written: ({ name }) => `notiert ${name}`,
  },
};
