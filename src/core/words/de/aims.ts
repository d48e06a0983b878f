/** Names and tasks of the built-in aims, by their ids. */
import type { aims as english } from '../en/aims.ts';
import type { Translated } from '../entries/translated.ts';

export const aims: Translated<typeof english> = {
  'guide-tones': {
    name: 'Terzen und Septimen',
    task: 'Lande auf der Terz oder der Septime jedes Akkords, wenn er kommt.',
  },
  thirds: { name: 'Terzen', task: 'Lande auf der Terz jedes Akkords, wenn er kommt.' },
  'chord-tones': {
    name: 'Alle Akkordtöne',
    task: 'Lande auf irgendeinem Ton jedes Akkords, wenn er kommt.',
  },
  'third-over-one': {
    name: 'Die Terz über der I',
    task: 'Lass in jedem zweiten Takt, den du über der I spielst, die Terz hören.',
  },
  'flat-third-into-third': {
    name: 'Die b3 in die 3',
    task: 'Führe über einem Akkord mit großer Terz jede zweite b3 innerhalb eines halben Schlags hinauf in die 3.',
  },
  'add-the-sixth': {
    name: 'Die Sexte dazu',
    task: 'Bring die Sexte in jeden dritten Takt, den du über der I spielst.',
  },
  'add-the-ninth': {
    name: 'Die None dazu',
    task: 'Bring die None in jeden dritten Takt, den du über der I spielst.',
  },
  'third-sixth-ninth': {
    name: 'Terz, Sexte und None in einem Chorus',
    task: 'Bring über der I die Terz, die Sexte und die None in einen Chorus, und das in jedem zweiten.',
  },
  'third-on-arrival': {
    name: 'Die Terz jedes Akkords, wenn er kommt',
    task: 'Lande bei jedem zweiten Akkordwechsel auf der Terz des neuen Akkords.',
  },
  'guide-tones-by-step': {
    name: 'Guide Tones im Schritt',
    task: 'Geh bei jedem dritten Akkordwechsel von einem Guide Tone des alten Akkords im Schritt zum nächsten Guide Tone des neuen.',
  },
  'phrases-end-on-chord-tones': {
    name: 'Phrasen auf Akkordtönen beenden',
    task: 'Beende drei von vier Phrasen auf einem Ton des Akkords, der darunter liegt.',
  },
  'off-the-third-over-four': {
    name: 'Keine große Terz der Tonart über der IV',
    task: 'Spiel über der IV die b3 oder die 4 der Tonart, wo du ihre große Terz gespielt hättest.',
  },
};
