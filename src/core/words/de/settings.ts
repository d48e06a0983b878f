/** The settings of the open page: the player, the display, how the form is practised, the sound of the band. */
import { several } from './grammar.ts';
import type { settings as english } from '../en/settings.ts';
import type { Translated } from '../entries/translated.ts';

export const settings: Translated<typeof english> = {
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
    sameBars: 'Du bist jedes Mal in denselben Takten dran: Wiederhole andere Takte, um den Rest zu spielen.',
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
};
