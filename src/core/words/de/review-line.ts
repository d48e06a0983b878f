/** The line of a take in its review: seen, corrected and played back. */
import type { reviewLine as english } from '../en/review-line.ts';
import type { Translated } from '../entries/translated.ts';

export const reviewLine: Translated<typeof english> = {
  zoom: 'Vergrößerung',
  closer: 'Näher',
  wider: 'Weiter',
  notesList:
    'Töne des Takes: Die Pfeiltasten gehen von einem zum nächsten, Entf nimmt einen heraus oder lässt ihn zählen',
  spokenDoubtful: ({ note }) => `zweifelhaft: ${note}`,
  spokenTakenOut: ({ note }) => `herausgenommen: ${note}`,
  notCounted: ({ doubtful, takenOut }) =>
    [
      ...(doubtful === 0
        ? []
        : [
            doubtful === 1
              ? '1 Ton ist zweifelhaft (ein gestrichelter Ring auf der Linie) und zählt in keinem Anteil.'
              : `${doubtful} Töne sind zweifelhaft (gestrichelte Ringe auf der Linie) und zählen in keinem Anteil.`,
          ]),
      ...(takenOut === 0
        ? []
        : [
            takenOut === 1
              ? 'Du hast 1 Ton herausgenommen (ein durchkreuzter Ring).'
              : `Du hast ${takenOut} Töne herausgenommen (durchkreuzte Ringe).`,
          ]),
    ].join(' '),

  // Töne von Hand berichtigen.
  edit: {
    bar: 'Von Hand berichtigen',
    open: 'Töne berichtigen (E)',
    close: 'Fertig berichtigt (E)',
    hint: 'Wähle einen Ton auf der Linie. Zieh ihn, um ihn in Zeit und Höhe zu verschieben; zieh an seinem Ende, um ihn zu dehnen.',
    verbs: {
      up: 'Halbton höher',
      down: 'Halbton tiefer',
      earlier: 'Früher',
      later: 'Später',
      shorter: 'Kürzer',
      longer: 'Länger',
      split: 'Hier teilen',
      join: 'Mit nächstem verbinden',
      add: 'Ton hinzufügen',
      delete: 'Löschen',
      undo: 'Rückgängig',
      redo: 'Wiederholen',
    },
    groups: { pitch: 'Höhe', time: 'Zeit', note: 'Ton', history: 'Schritte' },
    allBack: 'Zurück zum Gehörten',
    askAllBack: ({ count }) =>
      count === 1
        ? 'Die eine Berichtigung dieses Takes zurücknehmen?'
        : `Alle ${count} Berichtigungen dieses Takes zurücknehmen?`,
    yes: 'Zurücknehmen',
    no: 'Behalten',
    noNote: 'Wähle zuerst einen Ton.',
    nothingTo: { undo: 'Es gibt nichts rückgängig zu machen.', redo: 'Es gibt nichts zu wiederholen.' },
    said: {
      pitch: ({ name }) => `Jetzt ist es ${name}.`,
      moved: ({ name, ms }) =>
        ms === null
          ? `${name} ist verschoben.`
          : ms === 0
            ? `${name} beginnt, wo der Ton gehört wurde.`
            : `${name} beginnt ${Math.abs(ms)} ms ${ms < 0 ? 'früher' : 'später'}, als der Ton gehört wurde.`,
      lasts: ({ name, ms }) => `${name} dauert jetzt ${ms} ms.`,
      split: ({ name }) => `${name} ist jetzt zwei Töne.`,
      joined: ({ name }) => `${name} ist jetzt ein Ton mit dem nächsten.`,
      added: ({ name }) => `${name} ist hinzugefügt.`,
      deleted: ({ name }) => `${name} ist gelöscht.`,
      counts: ({ name }) => `${name} zählt jetzt.`,
      countsNot: ({ name }) => `${name} zählt nicht mehr.`,
      asHeard: ({ name }) => `${name} ist, wie der Ton gehört wurde.`,
      undo: ({ left }) =>
        `Rückgängig gemacht. ${left === 0 ? 'Keine Berichtigung bleibt' : left === 1 ? '1 Berichtigung bleibt' : `${left} Berichtigungen bleiben`}.`,
      redo: ({ left }) => `Wiederholt: ${left === 1 ? '1 Berichtigung' : `${left} Berichtigungen`}.`,
      allBack:
        'Alle Töne sind, wie sie gehört wurden. „Wiederholen“ bringt die Berichtigungen eine nach der anderen zurück.',
    },
    refused: {
      'no note': 'Diesen Ton gibt es nicht mehr.',
      'no next note': 'Danach kommt kein Ton.',
      'too short': 'Ein Ton würde zu kurz: Er braucht 50 ms.',
      together: 'Da ist kein Platz: Dort klingt ein anderer Ton.',
      'too many': 'Mehr Berichtigungen fasst dieser Take nicht. Mach zuerst einige rückgängig.',
    },
    countKey: 'Ton zählen lassen oder nicht',
    inLine:
      'Beim Berichtigen schließt E die Leiste, die Pfeile hinauf und hinunter auf der Linie ändern die Höhe, und Strg+Z macht rückgängig.',
    spokenCorrected: ({ note }) => `berichtigt: ${note}`,
  },

  pause: 'Anhalten',
  hearTake: 'Take anhören',
  placeInTake: 'Stelle im Take',
  speed: 'Tempo',
  speeds: { 1: 'voll', 0.75: '¾', 0.5: 'halb' },
  mix: 'Hören',
  mixes: { both: 'Linie und Band', line: 'Linie', band: 'Band' },
  loop: 'Diese Takte wiederholen',
  looped: ({ fromBar, toBar }) =>
    fromBar === toBar ? `Takt ${fromBar} wird wiederholt` : `Takt ${fromBar} bis ${toBar} werden wiederholt`,
  showKeys: 'Tasten (?)',
  keysTitle: 'Tasten',
  keysInLine:
    'Auf der Linie selbst gehen die Pfeiltasten von Ton zu Ton. Zieh über die Akkordnamen, um ihre Takte zu wiederholen.',
  closeKeys: 'Schließen',
  keyNames: {
    ArrowUp: '↑',
    ArrowDown: '↓',
    Delete: 'Entf',
    ' ': 'Leertaste',
    ArrowLeft: '←',
    ArrowRight: '→',
    Home: 'Pos 1',
  },
  keys: {
    play: 'abspielen, anhalten',
    'bar back': 'einen Takt zurück',
    'bar on': 'einen Takt weiter',
    start: 'zum Anfang',
    loop: 'diese Takte wiederholen, oder nicht mehr',
    'loop starts': 'die Wiederholung beginnt hier',
    'loop ends': 'die Wiederholung endet hier',
    speed: 'volles Tempo, drei Viertel, halbes',
    mix: 'Linie und Band, Linie, Band',
    note: 'den gewählten Ton hören',
    correct: 'Töne von Hand berichtigen, oder nicht mehr',
    keys: 'diese Liste',
  },
};
