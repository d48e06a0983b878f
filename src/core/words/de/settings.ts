/** The settings of the open page: the player, what is practised in a few words, the sound of the band. What is folded stands in `folded.ts`. */
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

  // Wie die Form geübt wird.
  practice: {
    closed: 'Einen Teil davon üben',
    inUse: ({ parts }) => `Du übst: ${parts.join(', ')}`,
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
    silent: 'stumm',
    decibels: ({ level }) => `${level} Dezibel`,
    care:
      'Sie beginnt leise: Dreh nur auf, bis du die Wechsel hörst. Laute Kopfhörer schaden dem Gehör. Mach Pause, wenn ' +
      'eine Hand schmerzt oder kribbelt; bleibt es, geh in eine Praxis mit Erfahrung in Musikermedizin.',
    more: 'Lautstärke der Stimmen, Swing, Einzähler, Stimmung',
  },
};
