/** The built-in forms, as a set list shows them. The command line has names of its own for them. */
import type { forms as english } from '../en/forms.ts';
import type { Translated } from '../entries/translated.ts';

export const forms: Translated<typeof english> = {
  // Die eingebauten Formen.
  formGroups: {
    'one or two chords': 'Ein oder zwei Akkorde',
    blues: 'Blues',
    cadences: 'Kadenzen',
    chains: 'Ketten',
    'other meters': 'Andere Taktarten',
    tunes: 'Stücke',
  },
  forms: {
    'one-chord vamp': {
      title: 'Vamp auf einem Akkord',
      trains: 'Ein Dominantakkord, so lange du willst: Such seine Terz und seine kleine Septime.',
    },
    'minor one-chord vamp': {
      title: 'Vamp auf einem Mollakkord',
      trains: 'Ein Mollakkord, so lange du willst: Such seine Terz und seine Septime.',
    },
    'two-chord vamp': {
      title: 'Vamp auf zwei Akkorden',
      trains: 'I und IV, je zwei Takte: Die Terz der I fällt einen Halbton zur Septime der IV.',
    },
    'minor two-chord vamp': {
      title: 'Vamp auf zwei Akkorden in Moll',
      trains: 'Die Molltonika und die Dominante eine Quarte darüber, je ein Takt.',
    },
    '12-bar blues': {
      title: 'Blues mit 12 Takten',
      trains: 'Drei Dominantakkorde mit Zeit auf jedem: Hör, wie sich die Terz von der I zur IV ändert.',
    },
    'quick-change blues': {
      title: 'Blues mit schnellem Wechsel',
      trains: 'Die IV kommt schon in Takt 2: Sei gleich bereit.',
    },
    'jazz blues': {
      title: 'Jazzblues',
      trains:
        'Der Blues mit einer ii–V zur IV, einem verminderten Durchgangsakkord und einem Turnaround mit zwei Akkorden im Takt.',
    },
    'minor blues': {
      title: 'Mollblues',
      trains: 'Molltonika und Moll-IV, dann der Akkord auf der kleinen Sexte, der zur Dominante fällt.',
    },
    '8-bar blues': {
      title: 'Blues mit 8 Takten',
      trains: 'Die kurze Form: Die V kommt schon in Takt 2.',
    },
    '16-bar blues': {
      title: 'Blues mit 16 Takten',
      trains: 'Die lange Form: acht Takte auf der I vor dem ersten Wechsel.',
    },
    'major ii-V-I': {
      title: 'ii–V–I in Dur',
      trains: 'Die häufigste Kadenz im Jazz: Die Septime jedes Akkords fällt zur Terz des nächsten.',
    },
    'minor ii-V-I': {
      title: 'ii–V–I in Moll',
      trains: 'Die Kadenz in Moll: halbvermindert, eine Dominante mit kleiner None, Moll mit Sexte.',
    },
    turnaround: {
      title: 'Turnaround',
      trains: 'Zwei Akkorde im Takt: alle zwei Schläge eine andere Terz.',
    },
    'minor line': {
      title: 'Fallende Linie in Moll',
      trains:
        'Ein Mollakkord, dessen Mittelstimme in Halbtönen fällt: Grundton, große Septime, kleine Septime, Sexte.',
    },
    'plagal cadence': {
      title: 'Plagale Kadenz',
      trains:
        'Die IV wechselt von Dur nach Moll: Ihre Terz fällt einen Halbton. Die Dominante auf der kleinen Septime führt zurück zur I.',
    },
    'chain of dominants': {
      title: 'Dominantkette',
      trains: 'Jede Septime fällt einen Halbton zur nächsten Terz, jede Terz zur nächsten Septime.',
    },
    'descending ii-Vs': {
      title: 'Fallende ii–V-Folgen',
      trains: 'In jedem Takt eine ii–V, jede einen Schritt tiefer: Die Guide Tones fallen im Schritt.',
    },
    'diatonic circle': {
      title: 'Diatonischer Quintfall',
      trains: 'Die sieben Akkorde einer Molltonart in fallenden Quinten, der Leitton erst am Ende.',
    },
    'side step': {
      title: 'Seitenschritt',
      trains: 'Ein Mollakkord, dann derselbe einen Halbton höher: Alle Töne rücken hinauf und wieder zurück.',
    },
    '3/4 blues': {
      title: 'Blues im 3/4-Takt',
      trains: 'Der Blues im Dreiertakt: Der betonte Schlag kommt alle drei Schläge.',
    },
    '12/8 blues': {
      title: 'Blues im 12/8-Takt',
      trains: 'Langsam, drei Achtel auf jeden Schlag, eine None in jedem Akkord: Zeit, jede Terz zu hören.',
    },
    '5/4 vamp': {
      title: 'Vamp im 5/4-Takt',
      trains: 'Drei Schläge Molltonika, zwei Schläge Dominante: Hör, wo die Dominante beginnt.',
    },
    '6/8 ballad': {
      title: 'Ballade im 6/8-Takt',
      trains:
        'Zwei langsame Schläge im Takt, Dreiklänge über bewegtem Bass: Nur die Terz unterscheidet Dur und Moll.',
    },
    '32-bar AABA': {
      title: 'AABA mit 32 Takten',
      trains:
        'Zwei Akkorde im Takt um die Tonika, dann eine Bridge aus Dominanten, die je zwei Takte dauern.',
    },
    '16-bar minor tune': {
      title: 'Stück in Moll mit 16 Takten',
      trains:
        'Eine Molltonart, in der Mitte eine ii–V–I zur Durparallele und zurück: zwei Grundtonarten zum Hören.',
    },
  },
};
