/** Problems of the command line and of the disk that it reads and writes. */
import { joinWith } from '../entries/entry.ts';
import { decimalOf, noun } from './phrases.ts';
import type { problemsOfCommandLine as english } from '../en/problems-command-line.ts';
import type { Facts, Translated } from '../entries/translated.ts';

const OPTION_UNITS: Readonly<Record<Facts<(typeof english)['cli.number']>['unit'], string>> = {
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

type DiskReason = Facts<(typeof english)['disk.read']>['reason'];
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

export const problemsOfCommandLine: Translated<typeof english> = {
  // ── command line ──
  'cli.language': ({ given, known }) => `--language muss ${joinWith(known, 'oder')} sein, nicht „${given}“.`,
  'cli.noCommand': 'Es ist kein Befehl angegeben.',
  'cli.unknownCommand': ({ command }) => `Es gibt keinen Befehl „${command}“.`,
  'cli.noFileWanted': ({ command }) => `landfall ${command} nimmt keine Datei.`,
  'cli.noFile': 'Es ist keine Datei angegeben: Nenn die Datei, die bewertet werden soll.',
  'cli.explainsOneFile': '--explain gilt für eine Datei: Nenn eine einzige.',
  'cli.backingOfOneFile': '--backing gilt für eine Datei: Bewerte jede mit ihrer eigenen Begleitung.',
  'cli.noTakes': ({ folders }) =>
    `In ${joinWith(folders, 'und')} ist keine Aufnahme und keine Liste von Tönen.`,
  'cli.tooManyTakes': ({ found, most }) =>
    `Es sind ${found} Dateien, und ${most} sind das Höchste in einem Aufruf: Nenn ihre Ordner einzeln.`,
  'cli.idleForChords': ({ option }) => `--${option} hat bei landfall chords keine Bedeutung.`,
  'cli.idleWithFound': ({ option }) =>
    `--${option} braucht einen Chart: Nenn ihn mit --chart, oder lass --${option} weg; dann gelten die Akkorde der Begleitung.`,
  'cli.chordsUnsure': ({ name, unsure, bars }) =>
    `Die Akkorde von ${name} sind zu unsicher, um danach zu bewerten: ${unsure} von ${bars === 1 ? 'einem Takt' : `${bars} Takten`} ${unsure === 1 ? 'ist' : 'sind'} unsicher. Sieh sie mit landfall chords an und nenn den Chart mit --chart und --tempo.`,
  'cli.backingUnplaced': ({ name }) =>
    `${name} ist im Take nicht zu hören, deshalb ist nicht bekannt, wo die Akkorde liegen: Nenn den Chart mit --chart und --tempo und seine erste Eins mit --first-beat.`,
  'cli.noBand': ({ name }) =>
    `In ${name} ist keine Band mit gleichmäßigem Schlag zu hören, also sind darin keine Akkorde zu finden: Nenn sie mit --chart und --tempo oder mit --beats.`,
  'cli.chordsFile': 'Es ist keine Aufnahme angegeben: Nenn die Datei, deren Akkorde gesucht sind.',
  'cli.chordsOneFile': ({ word }) => `landfall chords nimmt eine Aufnahme; „${word}“ ist eine zu viel.`,
  'cli.idleForClass': ({ option }) =>
    `--${option} hat bei landfall class keine Bedeutung: Das Aufgabenblatt sagt, wie bewertet wird.`,
  'cli.classFolder': 'Es ist kein Ordner angegeben: Nenn den Ordner mit den Takes.',
  'cli.classSheet': 'Es ist kein Aufgabenblatt angegeben: Nenn es mit --sheet.',
  'cli.classOnly': ({ option }) => `--${option} ist für landfall class.`,
  'cli.oneOutput': 'Gib nur eines von --csv, --json und --html an.',
  'cli.noSuchSchema': ({ asked, known }) =>
    `Es gibt kein Schema „${asked}“: landfall schema gibt das von ${joinWith(known, 'oder')} aus.`,
  'cli.jsonOrExplain': 'Gib --json oder --explain an, nicht beides.',
  'cli.chorusOfNoBar': '--chorus wählt einen Chorus des Takts, der erklärt wird: Gib --explain TAKT dazu an.',
  'cli.chartOrBeats': 'Gib --chart oder --beats an, nicht beides.',
  'cli.idleWithBeats': ({ option }) =>
    `--${option} hat mit --beats keinen Sinn: In der Liste steht, wann jeder Schlag kommt.`,
  'cli.noChords': 'Es sind keine Akkorde angegeben: Nenn sie mit --chart und --tempo oder mit --beats.',
  'cli.idleForTakeFile': ({ option }) =>
    `--${option} hat für eine Datei mit einem Take keinen Sinn: Chart und Einstellungen stehen darin.`,
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
  'cli.bandOutIsChart': ({ file }) =>
    `${file} ist der Chart selbst und würde überschrieben: Gib bei --out einen anderen Namen an.`,
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
  'cli.unknownAim': ({ given }) =>
    `„${given}“ ist weder eine Datei noch ein eingebautes Ziel; landfall --help nennt die Ziele.`,
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
};
