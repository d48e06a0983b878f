/** A note, a landing or a bar explained: what was heard, and the rule behind its grade. */
import { percent, decimal, trimmed } from './grammar.ts';
import { capital, inBrackets } from './phrases.ts';
import type { explain as english } from '../en/report-explain.ts';
import type { Translated } from '../entries/translated.ts';

function lateness(ms: number): string {
  const rounded = Math.round(Math.abs(ms));
  return rounded < 10 ? 'pünktlich' : `${rounded} ms zu ${ms < 0 ? 'früh' : 'spät'}`;
}

function inCents(cents: number): string {
  const rounded = Math.round(cents);
  return rounded === 0 ? 'sauber' : `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)} Cent`;
}

export const explain: Translated<typeof english> = {
  beforeFirstBar: 'vor dem ersten Takt',
  place: ({ bar, beat, chorus }) => `Takt ${bar}, Schlag ${beat}${chorus === 1 ? '' : `, Chorus ${chorus}`}`,
  role: {
    root: ({ chord }) => `der Grundton von ${chord}`,
    third: ({ chord }) => `die Terz von ${chord}`,
    fifth: ({ chord }) => `die Quinte von ${chord}`,
    seventh: ({ chord }) => `die Septime von ${chord}`,
    extension: ({ chord }) => `eine Erweiterung, die ${chord} nennt`,
    colour: ({ chord }) => `ein Skalenton über ${chord}`,
    blue: ({ chord }) => `eine Blue Note über ${chord}`,
    outside: ({ chord }) => `außerhalb von ${chord} und den Skalen`,
  },
  noChord: 'kein Akkord darunter',
  degrees: ({ degree, keyDegree, key }) =>
    degree === null ? `${keyDegree} in ${key}.` : `${degree} des Akkords, ${keyDegree} in ${key}.`,
  tuning: ({ cents, offsetMs }) =>
    `${capital(inCents(cents))}${offsetMs === null ? '' : `, ${lateness(offsetMs)}`}.`,
  doubtful: ({ confidence }) =>
    `Ob dieser Ton gespielt wurde, ist nicht sicher (Sicherheit ${percent(confidence)}); er zählt in keinem Anteil.`,
  takenOut: 'Du hast diesen Ton herausgenommen; er zählt in keinem Anteil.',
  chosen: ({ confidence }) =>
    `Ob dieser Ton gespielt wurde, war nicht sicher (Sicherheit ${percent(confidence)}); er zählt, weil du es so willst.`,
  second: ({ name }) => `${name} klingt mit.`,
  manner: ({ bend, legato, vibrato }) => {
    const ways = [
      ...(bend === null ? [] : [`um ${decimal(bend, 1)} Halbtöne gezogen`]),
      ...(legato ? ['gebunden'] : []),
      ...(vibrato ? ['mit Vibrato'] : []),
    ];
    return `${capital(ways.join(', '))}.`;
  },
  weight: ({ weight }) => `Gewicht ${decimal(weight, 2)} nach der Länge.`,
  standing: ({ strongBeat, phraseEnd }) => {
    const facts = [
      ...(strongBeat ? ['auf einem betonten Schlag'] : []),
      ...(phraseEnd ? ['beendet die Phrase'] : []),
    ];
    return facts.length === 0 ? '' : `${capital(facts.join(', '))}.`;
  },
  rule: {
    onset: ({ chord }) => `Wenn er beginnt, klingt ${chord}.`,
    anticipation: ({ beats, chord }) =>
      `Er beginnt ${trimmed(beats)} ${beats === 1 ? 'Schlag' : 'Schläge'} vor ${chord}, dauert, bis dieser Akkord kommt, und ist einer seiner Töne.`,
    onTheChange: ({ chord }) =>
      `Er beginnt so knapp vor ${chord}, dass er als auf dem Wechsel gespielt gilt.`,
    noChord: 'Wenn er beginnt, klingt kein Akkord.',
  },
  function: {
    passing: ({ notes }) =>
      notes.length > 1
        ? `Er ist ein Durchgang: im Schritt und in einer Richtung zwischen zwei Akkordtönen${inBrackets(notes)}.`
        : `Er geht im Schritt weiter${inBrackets(notes)}.`,
    neighbour: ({ notes }) =>
      notes.length > 1
        ? `Er ist eine Wechselnote: einen Schritt weg von einem Akkordton und zurück${inBrackets(notes)}.`
        : `Er kehrt im Schritt um${inBrackets(notes)}.`,
    approach: ({ notes }) => `Er führt mit einem Halbtonschritt in einen Akkordton${inBrackets(notes)}.`,
    enclosure: ({ notes }) =>
      `Er ist die Hälfte einer Umspielung: zwei Töne, je einer auf jeder Seite des Akkordtons, den sie erreichen${inBrackets(notes)}.`,
    appoggiatura: ({ notes }) =>
      notes.length > 1
        ? `Er ist ein freier Vorhalt: im Sprung erreicht, im Schritt in einen Akkordton verlassen${inBrackets(notes)}.`
        : `Er ist ein freier Vorhalt: Er beginnt die Phrase und geht im Schritt in einen Akkordton${inBrackets(notes)}.`,
    escape: ({ notes }) =>
      `Er ist eine abspringende Note: verlassen im Sprung gegen den Schritt, der zu ihm führte${inBrackets(notes)}.`,
    suspension: ({ notes }) =>
      `Er ist ein Vorhalt: vom Akkord davor gehalten, dann im Schritt aufgelöst${inBrackets(notes)}.`,
    anticipation: ({ notes }) => `Er nimmt den nächsten Akkord voraus${inBrackets(notes)}.`,
    free: ({ notes }) =>
      `Er wird nicht im Schritt verlassen und führt darum zu keinem anderen Ton${inBrackets(notes)}.`,
  },
  landing: ({ chord, degree, offsetMs }) =>
    `Die Landung beim Wechsel zu ${chord}: ${degree}, ${lateness(offsetMs)}`,
  anticipated: ({ chord, degree }) =>
    `Die Landung beim Wechsel zu ${chord}: ${degree}, eine Achtel früher, als Vorausnahme`,
  putRight: ({ name, beats }) =>
    `; die Linie löst sie im Schritt auf, zu ${name}, ${beats < 0.05 ? 'sofort' : `${trimmed(beats)} ${beats === 1 ? 'Schlag' : 'Schläge'} später`}`,
  blueThird: ({ cents }) =>
    `Er ist eine Blue Note, ${Math.round(cents)} Cent über der b3: So wird Blues gespielt.`,
  held: ({ chord, degree }) => `Gehalten über den Wechsel zu ${chord}, wo er die ${degree} ist`,
  guideTone: {
    kept: ({ from, to }) => `; der Guide Tone ${from} bleibt als ${to} liegen`,
    resolved: ({ from, to }) => `; der Guide Tone ${from} geht im Schritt zur ${to}`,
  },
  open: ({ chord, bar, chorus }) =>
    `Pause: Beim Wechsel zu ${chord} in Takt ${bar}${chorus === 1 ? '' : `, Chorus ${chorus},`} klingt kein Ton.`,
  emptyBar: ({ bar, chorus }) =>
    `In Takt ${bar}${chorus === null ? '' : ` von Chorus ${chorus}`} wurde nichts gespielt.`,
};
