/** What the open page says in parts that are fetched once it stands: what is folded, a chart or a backing of the player's own, lessons. */
import { decimal, several } from './grammar.ts';
import type { folded as english } from '../en/folded.ts';
import type { Translated } from '../entries/translated.ts';

export const folded: Translated<typeof english> = {
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

  // Die Arten, einen Teil der Form zu üben.
  practiceWays: {
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
    sameBars: 'Du bist jedes Mal in denselben Takten dran: Wiederhole andere Takte, um den Rest zu spielen.',
    droneNote:
      'Die Akkorde der Form schweigen, aber du wirst nach ihnen bewertet. Um über einen einzigen Akkord zu üben, schreib einen Chart mit einem Akkord.',
    chorusCount: ({ count }) => several(count, 'Chorus', 'Chorusse'),
  },

  // Die Lautstärke der Stimmen, Swing, Einzähler, Stimmung.
  levels: {
    parts: { drums: 'Schlagzeug', bass: 'Bass', chords: 'Akkorde', line: 'Ihre Soli', click: 'Klick' },
    swing: 'Swing',
    straight: 'gerade',
    swingShare: ({ percent }) => `${percent} Prozent`,
    countIn: 'Einzähler',
    bars: ({ bars }) => several(bars, 'Takt', 'Takte'),
    tunedTo: 'Gestimmt auf',
    asPlayed: 'was ich spiele',
    reference: ({ hz }) => `A = ${hz} Hz`,
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
    stopReading: 'Lesen der Datei abbrechen',
    removeNamed: ({ title }) => `${title} aus deinen eigenen Charts entfernen`,
    open: 'Chart öffnen',
    save: 'Als MusicXML speichern',
    file: 'Ein Chart als Text, MusicXML oder MIDI',
  },

  // Eine Begleitung anstelle der Band.
  backingOnStand: {
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

  lessons: {
    heading: 'Unterricht',
    why: 'Ein Aufgabenblatt ist eine kleine Datei oder ein Link: Akkorde, ein Tempo und worauf man landen soll. Wer es spielt, gibt den Take zurück.',
    open: 'Aufgabenblatt oder Antwort öffnen',
    write: 'Ein Aufgabenblatt schreiben',
  },
};
