/** The page of a recording that is opened to be graded. */
import { trimmed, decimal, several } from './grammar.ts';
import type { recording as english } from '../en/recording.ts';
import type { Translated } from '../entries/translated.ts';

export const recording: Translated<typeof english> = {
  title: 'Worüber hast du gespielt?',
  reading: 'Die Aufnahme wird gelesen und ihr Tempo gesucht …',
  fromPulse: ({ bpm, seconds }) =>
    `Die Aufnahme hat ${trimmed(bpm, 1)} Schläge in der Minute, der erste liegt bei ${decimal(seconds, 2)} s. Hör hinein und schau, ob die Takte passen.`,
  wanders: ({ bpm, seconds }) =>
    `Die Aufnahme hat etwa ${trimmed(bpm, 1)} Schläge in der Minute, ab ${decimal(seconds, 2)} s, aber das Tempo schwankt: Die Takte können nicht von Anfang bis Ende passen.`,
  fromLine: ({ bpm, seconds }) =>
    `Das Tempo wurde aus deiner Linie allein gefunden: wahrscheinlich ${trimmed(bpm, 1)}, ab ${decimal(seconds, 2)} s. Wenn das nicht stimmt, tippe es mit.`,
  noTempo:
    'Es war kein gleichmäßiges Tempo zu finden. Schreib es hin oder tippe es beim Hören mit, und sag, wo der erste Takt beginnt.',
  chords: 'Akkorde der Aufnahme',
  gradeByThis: 'Stimmt, danach bewerten',
  playToIt: 'Es ist eine Begleitung: dazu spielen',
  noChords: {
    alone: 'Es wurden keine Akkorde gefunden: Eine Linie klingt allein.',
    stopped: 'Die Suche nach Akkorden wurde beendet.',
  },
  chartStays: ({ chart, bars }) =>
    `Bewertet wird nach dem Chart auf dem Pult: ${chart}, ${several(bars, 'Takt', 'Takte')}.`,
  anotherChart: ({ chart, bars }) =>
    `Bewertet wird nach ${chart}, ${several(bars, 'Takt', 'Takte')}, nicht nach den gefundenen Akkorden.`,
  concertPitch: 'Tonart und Akkorde stehen hier klingend.',
  chart: 'Dein Chart',
  begins: 'Wo der erste Takt beginnt',
  beatEarlier: 'Einen Schlag früher',
  beatLater: 'Einen Schlag später',
  listen: 'Anhören',
  pause: 'Anhalten',
  place: 'Stelle in der Aufnahme',
  placeAt: ({ seconds }) => `${decimal(seconds, 1)} Sekunden`,
  grade: 'Bewerten',
  later: 'Das alles lässt sich nachher noch ändern. Eine Kopie bleibt bei deinen Takes, auf diesem Gerät.',
  gradedBy: ({ chart, bpm, seconds }) =>
    `Bewertet über ${chart} bei ${trimmed(bpm, 1)} bpm, erster Takt bei ${decimal(seconds, 2)} s.`,
  change: 'Das ändern',
  leave: 'So lassen',
};
