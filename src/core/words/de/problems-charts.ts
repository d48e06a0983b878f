/** Problems of charts, forms, lists of beats and scores. */
import { type ChordHint } from '../entries/entry.ts';
import { trimmed } from './grammar.ts';
import { decimalOf, noun, MODES, TIME_UNITS } from './phrases.ts';
import type { problemsOfCharts as english } from '../en/problems-charts.ts';
import type { Facts, Translated } from '../entries/translated.ts';

const barOrPickup = (bar: number | null): string => (bar === null ? 'Der Auftakt' : `Takt ${bar}`);

function chordHint(hint: ChordHint): string {
  if (hint.kind === 'capital') return `ein Grundton ist ein großer Buchstabe: Schreib ${hint.write}`;
  if (hint.kind === 'german') return `Akkorde stehen hier auf Englisch: Schreib ${hint.write}`;
  if (hint.kind === 'beginning')
    return `nur ${hint.readable} davon ist zu lesen: Sieh nach, was folgt, etwa in Am7/G oder Bb7(b9)`;
  return 'ein Akkord ist ein Grundton von A bis G (englisch: B für H, Bb für B) und seine Art, etwa C7, F#m7b5, Bbmaj7, Eb6/9 oder G7/B';
}

type ChartNumber = Facts<(typeof english)['chart.number']>['word'];
const CHART_NUMBERS: Readonly<Record<ChartNumber, string>> = {
  tempo: 'Schläge in der Minute',
  swing: 'des Schlags für seine erste Achtel',
  pickup: 'Schläge vor dem ersten Takt',
};

export const problemsOfCharts: Translated<typeof english> = {
  // ── charts ──
  'chart.tooLong': ({ characters }) =>
    `Der Chart ist länger als ${characters} Zeichen: Kürze ihn, oder bewerte ihn in Teilen.`,
  'chart.noBars':
    'Der Chart hat keine Takte: Schreib Akkorde zwischen Taktstriche, etwa | G7 | C7 | G7 | D7 |.',
  'chart.onlyPickup': 'Der Chart hat einen Auftakt und keinen Takt danach: Schreib die Takte dahinter.',
  'chart.repeatOpen': ({ bar }) =>
    `${barOrPickup(bar)} beginnt eine Wiederholung, die nicht endet: Schreib :| hinter ihren letzten Takt.`,
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
  'chart.sectionName': ({ line, section }) =>
    `Zeile ${line}: So kann kein Teil heißen: „${section}“; schreib Buchstaben und Wörter in eckige Klammern, etwa [A] oder [Bridge].`,
  'chart.chordWithoutBarLines': ({ text }) =>
    `${text} steht ohne Taktstriche: Ein Takt davon ist | ${text} |.`,
  'chart.sectionEmpty': ({ section, feel }) =>
    `Der Teil ${section ?? (feel === null ? 'in einer anderen Tonart' : `mit dem Feel ${feel}`)} hat keine Takte: Schreib welche dahinter oder lösch seine Zeile.`,
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
  'chart.endingNumber': ({ bar }) => `${barOrPickup(bar)}: Klammern werden ab 1 gezählt, etwa [1 oder [1-3.`,
  'chart.noCoda': ({ bar }) =>
    `Takt ${bar} geht zur Coda, aber es gibt keine: Schreib Coda vor ihren ersten Takt oder nenn einen Teil [Coda].`,
  'chart.noSegno': ({ bar, jump }) =>
    `In Takt ${bar} steht ${jump}, aber es gibt kein Segno: Schreib Segno vor den Takt, zu dem es zurückgeht.`,
  'chart.noFine': ({ bar, jump }) =>
    `In Takt ${bar} steht ${jump}, aber es gibt kein Fine: Schreib Fine hinter den Takt, mit dem es endet.`,
  'chart.noToCoda': ({ bar, jump }) =>
    `In Takt ${bar} steht ${jump}, aber kein Takt geht dorthin: Schreib To Coda hinter den Takt vor dem Sprung.`,
  'form.unknown': ({ form, known }) => `Es gibt keine Form „${form}“; die Formen sind ${known.join(', ')}.`,
  'form.key': ({ key, form }) =>
    `„${key}“ ist keine Tonart für ${form}; schreib ihren Grundton auf Englisch, etwa Bb oder F#.`,
  'form.mode': ({ form, mode, tonic, asked }) =>
    `${form} steht in ${MODES[mode]}, nicht in ${tonic} ${asked}; lass Dur oder Moll weg, oder nimm eine andere Form.`,
  'beats.tooFew': ({ rows }) =>
    `Die Liste der Schläge hat ${rows === 0 ? 'keine Zeile' : 'eine Zeile'}: Für ein Tempo sind mindestens zwei Schläge nötig.`,
  'beats.noTime': ({ row }) => `Zeile ${row} der Schläge hat keine Zeit: Schreib Sekunden, etwa 2.45.`,
  'beats.order': ({ row, seconds, before }) =>
    seconds > before
      ? `Zeile ${row} der Schläge, bei ${decimalOf(seconds)} s, kommt weniger als 10 ms nach der Zeile davor, bei ${decimalOf(before)} s: Schreib eine Zeile für jeden Schlag.`
      : `Zeile ${row} der Schläge, bei ${decimalOf(seconds)} s, kommt nicht nach der Zeile davor, bei ${decimalOf(before)} s: Bring die Schläge in die richtige Reihenfolge.`,
  'beats.chord': ({ row, symbol, hint }) =>
    `Zeile ${row} der Schläge: „${symbol}“ ist nicht als Akkord zu lesen; ${chordHint(hint)}.`,
  'beats.unit': ({ name, unit }) =>
    `${name} hat die Zeiten wohl in ${TIME_UNITS[unit]}; gebraucht werden Sekunden: Teil sie durch ${unit === 'samples' ? 'die Abtastrate' : '1000'}.`,
  'beats.cell': ({ name, line, cell }) =>
    `${name}, Zeile ${line}: Die Zeit „${cell}“ ist keine Zahl von Sekunden; korrigiere die Zeile.`,
  'beats.fileOrder': ({ name, line, seconds, before }) =>
    `${name}, Zeile ${line}: Der Schlag bei ${decimalOf(seconds)} s kommt nicht nach dem davor, bei ${decimalOf(before)} s; bring die Schläge in die richtige Reihenfolge, jeden auf eine eigene Zeile.`,
  'beats.fileTooFew': ({ name, beats }) =>
    `${name} hat ${beats === 0 ? 'keine Schläge' : 'nur einen Schlag'}; es müssen zwei oder mehr sein.`,
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
  'score.noMeter': ({ name, bar }) =>
    `${name}: Takt ${bar} hat keine Taktart (senza misura), ein Chart aber hat eine: Schreib dort eine hin, etwa 4/4.`,
  'score.meterChanges': ({ name, bar, meter }) =>
    `${name}: In Takt ${bar} wechselt die Taktart zu ${meter}; ein Chart hat eine Taktart: Teil die Noten dort.`,
  'chartFile.tooLong': ({ name }) => `${name} ist zu lang für einen Chart.`,
  'chartFile.unreadable': ({ name, cause }) => `${name} ist nicht als Chart zu lesen: ${cause}`,
  'chartFile.noScore': ({ name }) => `${name} ist ein Zip-Archiv, enthält aber keine MusicXML-Noten.`,
  'chartFile.damagedArchive': ({ name }) =>
    `${name} ist ein beschädigtes Archiv; speichere die Noten noch einmal als MusicXML.`,
};
