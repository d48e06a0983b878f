/** The review of a take. */
import { decimal, percent } from './grammar.ts';
import { capital, times } from './phrases.ts';
import type { review as english } from '../en/review.ts';
import type { Translated } from '../entries/translated.ts';

export const review: Translated<typeof english> = {
  unsaved: {
    title: 'Dieser Take ist nirgends gespeichert',
    text: 'Der Browser konnte ihn nicht speichern: Sein Speicher ist voll, oder er speichert nichts. Wenn du jetzt gehst, ist der Take verloren.',
    save: 'Als Datei speichern, dann verlassen',
    lose: 'Ohne ihn verlassen',
    stay: 'Bleiben',
  },
  thisTake: 'Dieser Take',
  back: 'Zurück',
  saveReport: 'Bericht speichern',
  saveSound: 'Klang speichern',
  saveNotes: 'Töne speichern',
  inASentence: 'In einem Satz',
  goOn: { again: 'Noch einmal spielen', yourself: 'Selbst spielen', bars: 'Diese Takte noch einmal' },
  nextAim: ({ name }) => `Nächstes Ziel: ${name}`,
  againIn: 'weiter in',
  stayHere: 'Hier bleiben',
  landings: 'Landungen',
  yourAim: 'Dein Ziel:',
  good: 'Gut',
  toTry: 'Zum Üben',
  inTime: 'Timing',
  numbers: 'Die Zahlen',
  barsOfForm: 'Takte der Form',
  line: 'Die Linie',
  lostIsHatched: 'Auf der Linie sind diese Stellen schraffiert.',
  correctedIsWaved: 'Unter jedem steht eine Welle; was gehört wurde, ist blass dahinter gezeichnet.',
  heard: 'Was noch zu hören ist',
  gradeThere: 'Von dort an bewerten',
  gradeInKey: ({ key }) => `In ${key} bewerten`,

  facts: {
    bpm: ({ bpm }) => `Tempo ${bpm}`,
    notes: ({ count }) => (count === 1 ? '1 Ton' : `${count} Töne`),
    bandTakenOut: ({ db }) => (db === 0 ? 'Band nicht herausgenommen' : `Band um ${db} dB leiser gemacht`),
    reference: ({ hz, estimated }) => `Kammerton ${decimal(hz, estimated ? 1 : 0)} Hz`,
  },

  // Eine Verzögerung, die dem Take nach falsch ist.
  takeDelay: ({ ms, isLate, stays }) =>
    `Die Töne ${ms} ms ${isLate ? 'früher' : 'später'} zählen${stays ? ', jetzt und mit diesen Geräten' : ''}`,
  openSoundCheck: 'Den Soundcheck öffnen',
  nothingHeard: 'Das Mikrofon hat keinen Ton gehört. Der Soundcheck zeigt in Sekunden, ob es dich hört.',

  firstBeatBefore: 'Der erste Takt des Charts beginnt bei',
  firstBeatAfter: 'Sekunden',
  takePlaybackPlace: 'Stelle der Wiedergabe übernehmen',
  gradeAgain: 'Neu bewerten',

  askForBacking:
    'Ist auch eine Begleitung darin? Gib ihre Datei an, dann wird sie herausgenommen, bevor deine Linie gehört wird.',
  giveBacking: 'Begleitung angeben',
  giveOtherBacking: 'Andere Begleitung angeben',
  leaveBackingIn: 'Nicht herausnehmen',
  backingNotFound: ({ name }) =>
    `${name} war darin nicht zu hören; herausgenommen wurde nichts: siehe den Hinweis unten.`,
  backingTakenOut: ({ name, offsetSeconds, atOnce, driftPpm, db }) => {
    const exact = `${decimal(Math.abs(offsetSeconds), 2)} s`;
    const begins = atOnce
      ? `beginnt mit der Aufnahme (auf ${exact} genau)`
      : offsetSeconds > 0
        ? `beginnt ${exact} nach dem Anfang der Aufnahme`
        : `lief schon ${exact}, als die Aufnahme begann`;
    const clock =
      driftPpm === 0
        ? ''
        : `, läuft ${Math.abs(driftPpm)} Millionstel zu ${driftPpm > 0 ? 'schnell' : 'langsam'}`;
    return `${name} ${begins}${clock}; ${db === 0 ? 'sie ließ sich nicht leiser machen' : `sie wurde um ${db} dB leiser gemacht`}.`;
  },

  advice: 'Beim nächsten Mal',
  to: 'nach',
  showNote: 'Ton zeigen',
  hearYours: 'Deins anhören',
  hearResolved: 'Aufgelöst anhören',
  tryBars: ({ fromBar, toBar }) =>
    fromBar === toBar
      ? `Takt ${fromBar} wiederholen und neu versuchen`
      : `Takte ${fromBar} bis ${toBar} wiederholen und neu versuchen`,
  notTried: {
    recording:
      'Um diese Takte zu wiederholen, spiel den Chart mit der Band: Deine Begleitung läuft, wie sie ist.',
    keys: 'Um diese Takte zu wiederholen, spiel die Form in einer Tonart: Dieser Take geht durch mehrere.',
  },

  // Takte, die noch einmal versucht wurden, neben dem Take, aus dem sie sind.
  beside: 'Beim ersten Mal und jetzt',
  besideCounts: ({ asked, fromBar, toBar, first, now }) => {
    const tone = { thirds: 'der Terz', guideTones: 'Terz oder Septime', chordTones: 'einem Akkordton' }[
      asked
    ];
    const told = ({ hits, of }: { hits: number; of: number }) =>
      of === 0 ? 'nichts gespielt' : `${hits} von ${of}`;
    const where = fromBar === toBar ? `in Takt ${fromBar}` : `in Takt ${fromBar} bis ${toBar}`;
    return `Auf ${tone} ${where}: beim ersten Mal ${told(first)}, jetzt ${told(now)}.`;
  },
  besideVerdicts: {
    more: 'Das ist mehr als Zufall.',
    fewer: 'Das ist weniger als zuvor, und nicht durch Zufall.',
    'too early': 'Noch zu wenig, um von einem Unterschied zu sprechen: Ein weiterer Versuch wird es zeigen.',
  },
  besideFirst: 'Erstes Mal',
  besideNow: 'Jetzt',
  besideHear: { first: 'Anhören: erstes Mal', now: 'Anhören: jetzt' },
  besideChange: ({ bar, chord }) => `Takt ${bar}, ${chord}`,
  besideRest: 'eine Pause',
  besideAim: 'Das Ziel',
  wholeForm: 'Die ganze Form noch einmal',

  noteBefore: 'Ton davor',
  noteAfter: 'Ton danach',
  hearNote: 'Anhören',
  stopHearing: 'Anhalten',
  letCount: 'Zählen lassen',
  takeOut: 'Herausnehmen',
  asHeard: 'So lassen, wie es gehört wurde',
  noNote: 'In diesem Take war kein Ton zu hören.',
  chooseNote: 'Wähle einen Ton, um zu sehen, was er war und welche Regel entschied.',

  aims: 'Ziele',
  next: 'Als Nächstes',
  playForIt: 'Jetzt darauf spielen',

  shares: 'Wie viel, und ist es Zufall?',
  sharesKey:
    'Der Notenkopf steht bei deinem Anteil. Der Strich zeigt, wie weit der Anteil nach so wenigen Tönen von deinem wahren ' +
    'abweichen kann. Die Welle zeigt, was dieselben Töne erreichten, wenn man sie zufällig über den Chart verstreute.',
  sharesMore: 'Phrasenenden, betonte Schläge, alle Töne, nach Länge',
  events: {
    landings: 'Landungen',
    phraseEnds: 'Phrasenenden',
    strongBeats: 'Betonte Schläge',
    allNotes: 'Alle Töne',
    byLength: 'Nach Länge',
  },
  tones: { thirds: 'Terzen', guideTones: 'Guide Tones', chordTones: 'Akkordtöne' },
  none: 'keine',
  nothingToCount: 'In diesem Take gibt es nichts zu zählen.',
  secondsOf: ({ hits, of }) => `${decimal(hits, 1)} von ${decimal(of, 1)} s`,
  share: ({ share, low, high, chance, verdict }) => {
    const range = low === null || high === null ? null : `irgendwo von ${percent(low)} bis ${percent(high)}`;
    const parts = [share === null ? null : percent(share), range].filter((part) => part !== null);
    const told = parts.join(', ');
    const luck = {
      'above chance': 'Mehr als Zufall.',
      'at chance': 'Nicht mehr als Zufall.',
      'below chance': 'Weniger, als der Zufall ergibt.',
      'too short to tell': 'Zu kurz für ein Urteil.',
    }[verdict];
    const by = chance === null ? '' : `; der Zufall ergibt ${percent(chance)}`;
    return `${told.charAt(0).toUpperCase()}${told.slice(1)}${by}. ${luck}`;
  },

  palette: 'Terzen und Skalen',
  all: 'Alle',
  mixtures: {
    minorOnly: 'nur Mollpentatonik',
    both: 'in beiden',
    majorOnly: 'nur Durpentatonik',
    neither: 'in keiner',
  },
  mixture: ({ share, name }) => `${percent(share)} ${name}`,
  thirds: ({ thirds, flatThirds }) =>
    thirds === 0 && flatThirds === 0
      ? 'Über Akkorden mit großer Terz spielst du weder diese Terz noch die kleine, die ♭3.'
      : `Über Akkorden mit großer Terz spielst du diese Terz ${times(thirds)} und die kleine, die ♭3, ${times(flatThirds)}.`,
  noLeans: 'Keine ♭3 ging in die 3.',
  leans: ({ count, ways }) =>
    `Die ♭3 ging ${times(count)} in die 3${ways.length === 0 ? '' : ` (${ways.join(', ')})`}.`,
  leanWays: { slid: 'per Slide', hammered: 'per Hammer-on', bent: 'gezogen', picked: 'angeschlagen' },
  leanWay: ({ count, way }) => `${count} ${way}`,
  falls: ({ count }) => `Die 3 fiel ${times(count)} zur ♭3 zurück.`,
  leftHanging: ({ count }) => `${capital(times(count))} wurde eine ♭3 nicht aufgelöst.`,
  blueNotes: ({ count }) => `Eine Blue Note zwischen den beiden Terzen klang ${times(count)}.`,

  takeAlong: 'Dateien dieses Takes',
  wholeTake: 'Der ganze Take',
  wholeTakeWhy:
    'Eine Datei mit Klang, Tönen, Bewertung und Einstellungen. Öffne sie hier oder in einem anderen Browser, und der Take ist wieder da; auch die Kommandozeile bewertet sie.',
  lineAsNotes: 'Töne als MIDI, mit Bendings und Akkorden',
  notesAsTable: 'Töne als Tabelle',
  formAsImage: 'Form als Bild',
  reportAsJson: 'Bericht als JSON',
  lineAsWav: 'Linie als WAV',
  lineAsMidi: 'Linie als MIDI',
  beatsAsTable: 'Schläge als Tabelle',
  bandAsWav: 'Band als WAV',
  commandLine: 'Auf der Kommandozeile bewerten',
  files: { own: 'deiner Datei', line: 'der Linie', beats: 'den Schlägen', band: 'der Band' },
  commandFolder: ({ files, band }) =>
    `Im Ordner mit ${files.join(', ')}:` +
    (band
      ? ' Die Band wird dort in der Linie gesucht und neu herausgenommen; einzelne Töne können deshalb anders gehört werden.'
      : ''),
  copy: 'Kopieren',
  copied: 'Kopiert',
};
