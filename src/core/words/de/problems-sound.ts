/** Problems of microphone, band, backing and sound check. */
import { decimalOf } from './phrases.ts';
import type { problemsOfSound as english } from '../en/problems-sound.ts';
import type { Translated } from '../entries/translated.ts';

export const problemsOfSound: Translated<typeof english> = {
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
    'Das Mikrofon ist angeschlossen, liefert aber keinen Klang: Vielleicht benutzt es ein anderes Programm. Schließ dieses Programm, dann versuch es noch einmal.',
  'microphone.stopped': 'Das Mikrofon wurde beim Öffnen unterbrochen: Versuch es noch einmal.',
  'microphone.failed':
    'Das Mikrofon ließ sich nicht öffnen: Prüfe, ob es angeschlossen ist, dann versuch es noch einmal.',
  'microphone.lost':
    'Das Mikrofon ist weg: Es wurde getrennt oder angehalten. Was du bis jetzt gespielt hast, bleibt erhalten; schließ es an und beginn neu.',
  'microphone.silent':
    'Vom Mikrofon kommt nur Stille: Such einen Stummschalter, und sieh nach, welcher Eingang im System gewählt ist.',
  'microphone.paused':
    'Der Browser hat den Klang angehalten, vielleicht im Ruhezustand des Geräts. Was du gespielt hast, bleibt, und der Take geht weiter, sobald der Klang zurück ist.',
  'microphone.otherRate':
    'Die Audiogeräte haben sich geändert, seit diese Seite geladen wurde: Lade sie neu und versuch es noch einmal. Deine Takes bleiben.',
  'microphone.recorder':
    'Der Programmteil, der aufnimmt, ließ sich nicht laden. Lade die Seite neu und versuch es noch einmal.',
  'output.asleep':
    'Der Browser hat den Klang nicht gestartet: Klick noch einmal, und prüfe, ob ein Ausgang angeschlossen ist.',
  'output.removed': 'Dieser Ausgang ist nicht mehr angeschlossen: Wähle einen anderen.',
  'playback.workerGone':
    'Der Take lässt sich nicht verlangsamen: Lade die Seite neu und versuch es noch einmal.',
  'playback.notSlowed': ({ reason }) =>
    `Der Take lässt sich nicht verlangsamen (${reason}). Im vollen Tempo spielt er wie bisher.`,
  'band.notLoaded':
    'Die Klänge der Band wurden nicht geladen: Der Server, von dem diese Seite kam, antwortet nicht. Starte ihn oder sieh nach, ob das Netz da ist, und versuch es noch einmal.',
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
  'listener.failed': ({ reason }) =>
    `Die Tonerkennung ist ausgefallen (${reason}). Die Aufnahme ist unverändert: Bewerte sie noch einmal.`,
  'listener.notLoaded':
    'Die Tonerkennung wurde nicht geladen: Der Server, von dem diese Seite kam, antwortet nicht. Starte ihn, lade die Seite neu und versuch es noch einmal. Deine Takes bleiben.',
  'listener.stopped':
    'Die Tonerkennung hat von selbst aufgehört. Nichts, was gespielt wurde, ist verloren: Versuche es noch einmal.',
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
  'harmony.noChords': 'In dieser Aufnahme ist kein Akkord zu hören: Schreib den Chart von Hand.',
};
