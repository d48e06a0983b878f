/** What the command line says beside its reports. */
import { joinWith } from '../entries/entry.ts';
import { several, decimal, percent } from './grammar.ts';
import { noun, decimalOf, MODES } from './phrases.ts';
import type { cli as english } from '../en/cli.ts';
import type { Translated } from '../entries/translated.ts';

export const cli: Translated<typeof english> = {
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
  graded: ({ files, of, failed }) => `${files} von ${of} bewertet${failed === 0 ? '' : `, ${failed} nicht`}`,
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
    file: 'FILE ist eine Aufnahme (WAV, FLAC, MP3, Ogg Vorbis) oder eine Liste von Tönen: eine Tabelle mit der Kopfzeile onset,duration,pitch (Sekunden, Sekunden, MIDI-Nummer) oder eine MIDI-Datei. Ein Take, den die App gespeichert hat (.landfall), enthält Chart und Tempo und braucht kein --chart.',
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
      chordsOf: 'Die Akkorde einer Aufnahme: Eins, Taktart, Form und Akkorde, und wie sicher jeder Takt ist.',
      schema:
        'Das JSON-Schema des Berichts; schema sheet gibt das eines Aufgabenblatts aus, schema answer das der Antwort einer Lehrkraft, schema take das einer Datei mit einem Take.',
    },
  },
};
