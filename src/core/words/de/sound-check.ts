/** The sound check. */
import { decimal } from './grammar.ts';
import type { soundCheck as english } from '../en/sound-check.ts';
import type { Translated } from '../entries/translated.ts';

/** Eine ganze Zahl mit einem echten Minuszeichen. */
const signed = (value: number): string => `${value < 0 ? '−' : ''}${Math.abs(value)}`;

export const soundCheck: Translated<typeof english> = {
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
};
