/** The page of text that the command line prints. */
import { trimmed, percent, several, decimal } from './grammar.ts';
import { noun, times, inBrackets } from './phrases.ts';
import type { page as english } from '../en/page.ts';
import type { Translated } from '../entries/translated.ts';

export const page: Translated<typeof english> = {
  title: ({
    notes,
    bars,
    choruses: rounds,
    key,
    bpm,
    rise,
    referenceHz,
    estimated,
    anticipationBeats,
    turnBars,
  }) => {
    const rising =
      rise === null
        ? ''
        : ` und ${rise.byBpm} mehr alle ${rise.everyBars} ${noun(rise.everyBars, 'Takt', 'Takte')}`;
    const tempo = bpm === null ? '' : `${trimmed(bpm, 1)} bpm${rising}, `;
    const turns =
      turnBars === null ? '' : `, ihr wechselt euch alle ${turnBars} ${noun(turnBars, 'Takt', 'Takte')} ab`;
    return (
      `${notes} ${noun(notes, 'Ton', 'Töne')} über ${rounds > 1 ? `${rounds} Chorusse zu ` : ''}${bars} ${rounds > 1 ? noun(bars, 'Takt', 'Takten') : noun(bars, 'Takt', 'Takte')} in ${key}, ${tempo}` +
      `A4 ${trimmed(referenceHz, 1)} Hz${estimated ? ' (gefunden)' : ''}${anticipationBeats === null ? '' : `, Vorausnahme ${trimmed(anticipationBeats)} Schlag`}${turns}`
    );
  },
  rows: {
    landings: 'Landungen',
    phraseEnds: 'Phrasenenden',
    strongBeats: 'betont',
    allNotes: 'alle Töne',
    byLength: 'nach Länge',
  },
  columns: { thirds: 'Terzen', guideTones: 'Guide Tones', chordTones: 'Akkordtöne' },
  none: 'keine',
  luck: ({ share }) => `Zufall ${percent(share)}`,
  signs: {
    'above chance': 'mehr als Zufall',
    'below chance': 'weniger als Zufall',
    'too short to tell': 'zu wenige',
  },
  form: {
    legend: 'Chorus für Chorus: b3>3 b3 in die 3, ~ gehalten, ( ) akkordfremd, · Pause',
    chord: ({ thirds, landed, chordTones, open }) =>
      `${thirds} von ${landed} auf der Terz, ${chordTones} auf einem Akkordton${open === 0 ? '' : `, ${several(open, 'Pause', 'Pausen')}`}`,
    more: ({ chords }) => `und ${chords} ${noun(chords, 'weiterer Akkord', 'weitere Akkorde')}`,
  },
  headings: {
    suspected: 'Zuerst',
    next: 'Nächstes',
    numbers: 'Zahlen',
    space: 'Pausen',
    approach: 'Wege',
    figures: 'Figuren',
    range: 'Umfang',
    accents: 'Akzente',
    changes: 'Wechsel',
    thirds: 'Terzen',
    palette: 'Skalen',
    backing: 'Backing',
    lost: 'Verloren',
    corrected: 'Von Hand',
    time: 'Timing',
    aims: 'Ziele',
    advice: 'Rat',
    good: 'Gut',
  },
  changes: {
    inBar: ({ chord, bar }) => `${chord} in Takt ${bar}`,
    alwaysThird: ({ places }) => `Immer die Terz: ${places.join(', ')}.`,
    neverChordTone: ({ places }) => `Nie ein Akkordton: ${places.join(', ')}.`,
    guideTones: ({ changes, resolved, kept }) =>
      `Ein Guide Tone ging bei ${resolved} von ${changes} ${noun(changes, 'Wechsel', 'Wechseln')} im Schritt in den nächsten Akkord` +
      `${kept === 0 ? '' : ` und blieb bei ${kept} liegen`}.`,
  },
  thirds: {
    counted: ({ notes, thirds, flatThirds, leans, ways, falls, leftHanging }) =>
      `Von ${notes} ${noun(notes, 'Ton', 'Tönen')} über Akkorden mit großer Terz ${thirds === 1 ? 'ist' : 'sind'} ${thirds} die 3 und ${flatThirds} die b3. ` +
      `b3 in die 3: ${times(leans)}${inBrackets(ways)}; 3 zurück zur b3: ${times(falls)}; b3 nicht aufgelöst: ${times(leftHanging)}.`,
    ways: {
      slid: ({ count }) => `${count} per Slide`,
      hammered: ({ count }) => `${count} per Hammer-on`,
      bent: ({ count }) => `${count} gezogen`,
      picked: ({ count }) => `${count} angeschlagen`,
    },
    blue: ({ count, lowCents, highCents }) =>
      `Blue Notes zwischen den beiden Terzen: ${count}, ${lowCents === highCents ? lowCents : `${lowCents} bis ${highCents}`} Cent über der b3. Sie sind keine falschen Töne.`,
  },
  palette: {
    mixture: ({ minor, major, both, neither }) =>
      `Moll ${percent(minor)}, Dur ${percent(major)}, beide ${percent(both)}, keine ${percent(neither)}`,
    overall: ({ mixture }) => `${mixture} der Zeit.`,
    chord: ({ chord, mixture }) => `${chord}: ${mixture}.`,
    thirdOverFour: ({ count, seconds, degree }) =>
      `Die große Terz der Tonart klang über der IV ${times(count)}, zusammen ${trimmed(Math.max(0.1, seconds), 1)} s: Dort ist sie die ${degree} und reibt sich.`,
  },
  backing: {
    notHeard: 'Im Take nicht zu hören; es wurde nichts herausgenommen.',
    heard: ({ offsetSeconds, driftPpm, removedDb }) =>
      `Zu hören ab ${decimal(offsetSeconds, 3)} s` +
      `${driftPpm === 0 ? '' : `, ${Math.abs(driftPpm)} ppm zu ${driftPpm > 0 ? 'schnell' : 'langsam'}`}; ${removedDb === 0 ? 'sie ließ sich nicht leiser machen' : `vor dem Hören um ${removedDb} dB leiser gemacht`}.`,
  },
  suspected: {
    key: ({ semitones }) => `Bewerte es noch einmal mit --transpose ${semitones}.`,
    place: ({ firstBeat }) => `Bewerte es noch einmal mit --first-beat ${firstBeat}.`,
  },
  more: 'Mehr: --full nennt alle Zahlen, --explain TAKT die Gründe.',
  aims: {
    tried: ({ name, verdict, evidence }) => `${name}: ${verdict}. ${evidence}`,
    reached: ({ names }) => `Erreicht: ${names.join('; ')}.`,
    stay: ({ task }) => `Nächstes Ziel: Bleib bei diesem. ${task}`,
    next: ({ name, evidence, task }) => `Nächstes Ziel: ${name}. ${evidence} ${task}`,
    nextInShort: ({ name, task }) => `${name}. ${task}`,
  },
};
