/** The page that says what the terms mean. */
import type { help as english } from '../en/help.ts';
import type { Translated } from '../entries/translated.ts';

export const help: Translated<typeof english> = {
  title: 'Was es bedeutet',
  close: 'Schließen',
  whatIsThis: 'Was bedeutet das?',
  aboutMarks:
    'Jedes Zeichen sagt, was ein Ton zum Akkord ist, der gerade klingt. Ein volles Zeichen ist ein Akkordton, ein leeres nicht. Die Zahl daneben zählt vom Grundton aus.',
  guide: {
    name: 'Die ganze Anleitung (englisch):',
    pages: {
      player: 'Für Spielende',
      teacher: 'Für Lehrende',
      safety: 'Ohren und Hände',
      privacy: 'Datenschutz',
    },
  },
  sections: {
    marks: 'Die Zeichen',
    stage: 'Beim Spielen',
    landing: 'Landungen',
    result: 'Nach dem Take',
    sound: 'Klang und Zeit',
  },
  entries: {
    chords: {
      word: 'die beiden Akkorde',
      says: 'Der große Akkord klingt jetzt. Der rechte kommt als nächster; die Zahl sagt, in wie vielen Schlägen.',
    },
    targetStroke: {
      word: 'der Strich unter einem Ton',
      says: 'Auf diesem Ton kann deine Linie landen. Der Strich markiert die Töne, die dein Ziel beim nächsten Akkord verlangt.',
    },
    instrument: {
      word: 'Zeichen auf dem Instrument',
      says: 'Ein großes Zeichen auf einem Strich: ein Ton, auf dem du beim nächsten Akkord landen kannst. Ein kleines: ein Ton des Akkords, der jetzt klingt. Eine winzige Raute: ein Skalenton, der auch passt. Der Ring ist der Ton, den du spielst; der Bogen führt von ihm zum nächstgelegenen Ton zum Landen.',
    },
    liveLine: {
      word: 'deine Linie',
      says: 'Die Linie zeigt die Tonhöhe, die du spielst: kräftig, wo der Ton zum Akkord gehört, dünn, wo nicht. Bei jedem Wechsel beginnt die Zeichnung neu.',
    },
    note: {
      word: 'der Ton links',
      says: 'Der Ton, den du gerade spielst: sein Zeichen, seine Stufe über dem Akkord, sein Name, und um wie viele Cent er zu hoch oder zu tief ist.',
    },
    aim: {
      word: 'Ziel',
      says: 'Worum es in diesem Take geht. Beim Spielen steht dabei, wie oft es gelang und bei wie vielen Gelegenheiten. Erreicht ist es, wenn es oft genug gelingt, und öfter, als es durch Zufall gelänge.',
    },
    turns: {
      word: 'abwechselnd',
      says: 'Du und die Band spielt abwechselnd gleich viele Takte. Bewertet werden nur deine.',
    },
    form: {
      word: 'die Form',
      says: 'Alle Takte eines Chorus. Der kräftige Strich zeigt, wo du bist; die Zeichen sind deine Landungen.',
    },
    change: {
      word: 'Wechsel',
      says: 'Die Stelle, an der ein Akkord den anderen ablöst, und der allererste Akkord. Derselbe Akkord über einem anderen Bass ist kein Wechsel.',
    },
    landing: {
      word: 'Landung',
      says: 'Dein erster Ton auf einem neuen Akkord: der erste von einer Achtel vor dem Wechsel bis einen Schlag danach, oder ein Ton, den du hineinhältst.',
    },
    chordTone: {
      word: 'Akkordton',
      says: 'Ein Ton, den das Symbol nennt: Grundton, Terz, Quinte, Septime, und 9, 11 oder 13, wo sie dabeistehen.',
    },
    guideTone: {
      word: 'Guide Tone',
      says: 'Die Terz oder die Septime: An diesen beiden hört man, welcher Akkord es ist. Im Sus-Akkord steht die Quarte für die Terz.',
    },
    earlyLate: {
      word: 'zu früh, zu spät',
      says: 'Wie weit vom Wechsel die Landung begann. Ein Unterschied von weniger als etwa 10 ms ist nicht zu hören.',
    },
    anticipation: {
      word: 'eine Achtel vorgezogen',
      says: 'Eine Landung, die mit Absicht eine Achtel vor dem Wechsel kommt, gehört zum neuen Akkord. Sie ist kein Fehler.',
    },
    chorus: { word: 'Chorus', says: 'Einmal durch die Form.' },
    luck: {
      word: 'Zufall',
      says: 'Was dieselben Töne erreichten, wenn man sie an zufälligen Stellen über die Akkorde verteilte. Nur was deutlich darüber liegt, ist dein Verdienst.',
    },
    tooShort: {
      word: 'ein weiterer Chorus wird es zeigen',
      says: 'So wenige Landungen können Zufall sein, im Guten wie im Schlechten. Spiel weiter, dann reichen sie für eine Antwort.',
    },
    doubt: {
      word: 'der dicke Strich',
      says: 'Dein Anteil ist von Take zu Take etwas verschieden. Dein wahrer Anteil liegt wahrscheinlich irgendwo auf dem Strich; je mehr du spielst, desto kürzer wird er.',
    },
    phrase: {
      word: 'Phrase',
      says: 'Töne zwischen zwei Pausen von einem Schlag oder mehr. Ihr letzter Ton ist das Phrasenende.',
    },
    strongBeat: {
      word: 'betonter Schlag',
      says: 'Schlag 1 und 3 im Vierertakt, 1 im Dreiertakt: die Schläge, auf denen man einen Akkord am deutlichsten hört.',
    },
    palette: {
      word: 'Skalenton',
      says: 'Ein Ton der Dur- oder Mollpentatonik der Tonart, der nicht im Akkord ist: Er passt, ist aber keine Landung auf dem Akkord.',
    },
    figure: {
      word: 'Figur',
      says: 'Ein paar Töne, die in derselben Reihenfolge wiederkommen. So oft die Figur auch kommt: Beim Vergleich mit dem Zufall zählt sie einmal.',
    },
    trend: {
      word: 'wird besser, kein Trend',
      says: 'Ein guter Tag ist noch kein Fortschritt. „Wird besser“ steht nur da, wo deine Takes mehr steigen, als sie von Tag zu Tag schwanken.',
    },
    due: {
      word: 'für heute',
      says: 'Ein Wechsel, der schlecht ging, ist am nächsten Tag dran. Einer, der gut ging, nach zwei Tagen, dann nach vier, und so weiter.',
    },
    delay: {
      word: 'Verzögerung',
      says: 'Die Zeit vom Lautsprecher zu deinem Ohr und vom Mikrofon in den Rechner. Sie wird abgezogen, damit zu früh und zu spät stimmen.',
    },
    soundCheck: {
      word: 'Soundcheck',
      says: 'Er misst den Pegel, die Verzögerung, und wie die Band ins Mikrofon zurückkommt. Einmal für jedes Paar von Geräten.',
    },
    bandOut: {
      word: 'ohne die Band',
      says: 'Spielt die Band über Lautsprecher, hört das Mikrofon sie mit. Sie wird abgezogen, bevor deine Töne benannt werden.',
    },
    cents: { word: 'Cent', says: 'Hundertstel eines Halbtons, von der Tonhöhe aus, auf die du stimmst.' },
  },
};
