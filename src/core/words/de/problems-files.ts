/** Problems of the files that are opened. */
import { type ForeignFile, type OggCodec, isArchive, isConvertible } from '../entries/entry.ts';
import { TIME_UNITS, quoted, noun } from './phrases.ts';
import type { problemsOfFiles as english } from '../en/problems-files.ts';
import type { Translated } from '../entries/translated.ts';

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
  w64: 'eine Wave64-Datei',
  amr: 'eine Sprachaufnahme (AMR)',
  mp2: 'eine MPEG-Datei der Schicht II (MP2)',
  ac3: 'eine AC-3-Datei',
  tta: 'eine True-Audio-Datei',
  dsd: 'eine DSD-Datei',
  voc: 'eine Creative-Voice-Datei',
  '8svx': 'eine 8SVX-Datei',
  mpeg: 'ein Video (MPEG)',
  avi: 'ein Video (AVI)',
  rmid: 'eine MIDI-Datei in einer RIFF-Datei (.rmi)',
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
  if (kind === 'rmid') return 'speichere sie als MIDI-Datei (.mid)';
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

export const problemsOfFiles: Translated<typeof english> = {
  // ── files ──
  'file.gone': ({ name }) =>
    `${name} lässt sich nicht lesen: Die Datei wurde seit der Auswahl verschoben, geändert oder gelöscht. Wähle sie noch einmal aus.`,
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
  'grade.tooManyChanges': ({ most }) =>
    `In diesem Take ziehen mehr als ${most} Akkorde vorbei, mehr als sich bewerten lassen: Bewerte ihn in Teilen oder schreib weniger Akkorde in einen Takt.`,
  'grade.tooManyParts': ({ most }) =>
    `Die Töne dieses Takes klingen durch mehr als ${most} Akkorde weiter, Ton für Ton gezählt: Such nach Tönen, die nie enden, oder bewerte ihn in Teilen.`,
  'file.tooManyBeats': ({ name, most }) => `${name} hat mehr als ${most} Schläge; teil die Datei in Takes.`,
  'notes.unit': ({ name, unit }) =>
    `${name} hat die Zeiten wohl in ${TIME_UNITS[unit]}; gebraucht werden Sekunden: Teil onset und duration durch ${unit === 'samples' ? 'die Abtastrate' : '1000'}.`,
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
  'midiFile.damaged': ({ name }) =>
    `${name} ist eine beschädigte MIDI-Datei; speichere sie noch einmal als Standard-MIDI-Datei.`,
  'midiFile.format': ({ name, format }) =>
    `${name} ist eine MIDI-Datei im Format ${format}; speichere sie im Format 0 oder 1.`,
  'midiFile.noNotes': ({ name }) =>
    `${name} enthält keine Töne (Schlagzeug zählt nicht); nimm eine Datei mit einer Linie.`,
  'midiFile.noPart': ({ name, parts, part }) =>
    `${name} hat ${parts} ${noun(parts, 'Stimme', 'Stimmen')} mit Tönen und keine Stimme ${part}.`,
  'midiFile.tooManyBends': ({ name, most }) =>
    `Die Töne von ${name} klingen durch mehr als ${most} Tonbeugungen weiter, Ton für Ton gezählt: Such nach Tönen, die nie enden, oder teil die Datei in Takes.`,
  'midiFile.noTempo': ({ name }) =>
    `${name} zählt Bilder statt Schläge; speichere die Datei mit einem Tempo.`,
  'midiFile.meterChanges': ({ name, from, to }) =>
    `${name} wechselt die Taktart von ${from} zu ${to}; ein Chart hat eine Taktart: Teil die Datei dort.`,
  'midiFile.meter': ({ name, meter }) =>
    `${name} steht im ${meter}-Takt; in dieser Taktart kann hier kein Chart stehen.`,
  'midiFile.noChords': ({ name }) =>
    `${name} hat unter den Markern und Texten keine Akkordsymbole; nimm einen Chart oder eine MIDI-Datei mit Akkordsymbolen.`,
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
  'takeFile.noTakes': ({ name }) =>
    `${name} enthält keine Takes: Nimm eine Datei, die Landfall gespeichert hat (.landfall oder .zip). Eine Aufnahme öffnest du mit „Aufnahme öffnen“.`,
  'takeFile.newer': ({ name, version }) =>
    `${name} wurde von einem neueren Landfall gespeichert (Fassung ${version} der Datei); lade die Seite neu, um es zu bekommen.`,
  'takeFile.notJson': ({ name, part }) => `${part} in ${name} ist kein JSON; nichts wurde übernommen.`,
  'takeFile.field': ({ name, part, field }) =>
    `${part} in ${name} ist nicht so, wie Landfall es schreibt${field === '' ? '' : `: siehe ${field}`}; nichts wurde übernommen.`,
  'takeFile.chart': ({ name, cause }) => `Der Chart in ${name} ist nicht zu gebrauchen: ${cause}`,
  'takeFile.tooLong': ({ name, hours }) =>
    `${name} ist länger als ${hours === 1 ? 'eine Stunde' : `${hours} Stunden`}; so lang kann ein Take nicht sein.`,
  'takeFile.sound': ({ name, part, sampleRate }) =>
    `${part} in ${name} passt nicht zu take.json: Es muss WAV sein, ein Kanal, 16 Bit, ${sampleRate} Hz, und so lang, wie dort steht.`,
  'takeFile.noLine': ({ name }) => `${name} hat weder Klang noch Töne; darin ist nichts zu bewerten.`,
  'sound.noChannel': ({ name }) =>
    `${name} hat laut Dateikopf keinen Kanal; der Kopf ist beschädigt: Speichere die Datei noch einmal.`,
  'sound.sampleRate': ({ name, hz, lowest, highest }) =>
    `${name} hat eine Abtastrate von ${hz} Hz; sie muss zwischen ${lowest} und ${highest} Hz liegen: Speichere die Datei mit 44100 oder 48000.`,
  'flac.header': ({ name }) => `${name} ist eine FLAC-Datei mit beschädigtem Kopf; kodiere sie noch einmal.`,
  'flac.empty': ({ name }) =>
    `${name} ist eine FLAC-Datei ohne Klang; vielleicht ist sie abgeschnitten, kodiere sie noch einmal.`,
  'mp3.empty': ({ name }) =>
    `${name} enthält keinen MP3-Klang; vielleicht ist die Datei beschädigt, speichere sie noch einmal.`,
  'wav.header': ({ name }) => `${name} ist eine WAV-Datei mit beschädigtem Kopf; speichere sie noch einmal.`,
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
  'take.gone': 'Dieser Take ist nicht mehr auf diesem Gerät.',
  'take.unreadable': ({ id }) =>
    `Die Angaben zu Take ${id} lassen sich nicht lesen; seine Aufnahme bleibt erhalten, die anderen Takes sind unverändert.`,
  'take.onlyInMemory':
    'Der Speicher ist voll: Der Rest dieses Takes liegt nur im Arbeitsspeicher. Bewertet wird er trotzdem; speichere ihn als Datei, bevor du die Seite schließt.',
  'take.calledOff': 'Der Take wurde abgebrochen, bevor er begann.',
  'take.notesHaveNoBacking': ({ name }) =>
    `${name} ist keine Aufnahme: Es gibt darin keine Begleitung, die man herausnehmen könnte.`,
  'take.backingIsNotes': ({ name }) =>
    `${name} ist eine Liste von Tönen und keine Aufnahme einer Begleitung: Wähle eine andere Datei.`,
  'take.soundLost':
    'Dem Browser fehlen Stücke der Aufnahme, und die Töne darin fehlen mit. Schließ andere Programme.',
  'take.slipped': ({ ms, time, late }) =>
    `Die Aufnahme ist bei ${time} um ${ms} ms gesprungen: Die Töne danach stehen ${ms} ms zu ${late ? 'spät' : 'früh'}. Schließ andere Programme.`,
};
