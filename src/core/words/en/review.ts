/** The review of a take. */
import { decimal, percent } from './grammar.ts';
import { capital, times } from './phrases.ts';

export const review = {
  unsaved: {
    title: 'This take is kept nowhere',
    text: 'The browser could not store it: its storage is full, or it stores nothing. If you leave now, the take is lost.',
    save: 'Save it as a file, then leave',
    lose: 'Leave without it',
    stay: 'Stay',
  },
  thisTake: 'This take',
  back: 'Back',
  saveReport: 'Save the report',
  saveSound: 'Save the sound',
  saveNotes: 'Save the notes',
  inASentence: 'In one sentence',
  goOn: { again: 'Play it again', yourself: 'Play it yourself', bars: 'Try these bars again' },
  nextAim: ({ name }: { name: string }) => `Next aim: ${name}`,
  againIn: 'again in',
  stayHere: 'Stay here',
  yourAim: 'Your aim:',
  good: 'Good',
  toTry: 'To try',
  inTime: 'In time',
  numbers: 'The numbers',
  landings: 'Landings',
  barsOfForm: 'Bars of the form',
  line: 'The line',
  lostIsHatched: 'These places are hatched on the line.',
  correctedIsWaved: 'A wave stands under each of them; what was heard is drawn faintly behind.',
  heard: 'What else is heard',
  gradeThere: 'Grade it from there',
  gradeInKey: ({ key }: { key: string }) => `Grade it in ${key}`,

  // The facts of a take, one after the other.
  facts: {
    bpm: ({ bpm }: { bpm: number }) => `${bpm} bpm`,
    notes: ({ count }: { count: number }) => (count === 1 ? '1 note' : `${count} notes`),
    bandTakenOut: ({ db }: { db: number }) =>
      db === 0 ? 'band not taken out' : `band made ${db} dB quieter`,
    reference: ({ hz, estimated }: { hz: number; estimated: boolean }) =>
      `A = ${decimal(hz, estimated ? 1 : 0)} Hz`,
  },

  // A delay that the take makes suspect.
  takeDelay: ({ ms, isLate, stays }: { ms: number; isLate: boolean; stays: boolean }) =>
    `Count the notes ${ms} ms ${isLate ? 'earlier' : 'later'}${stays ? ', now and with these devices' : ''}`,
  openSoundCheck: 'Open the sound check',
  nothingHeard: 'The microphone heard no note. The sound check shows within seconds whether it hears you.',

  // Where the first bar of an opened recording starts.
  firstBeatBefore: 'The first bar of the chart starts at',
  firstBeatAfter: 'seconds',
  takePlaybackPlace: 'Use the place of the playback',
  gradeAgain: 'Grade again',

  // The backing in an opened recording.
  askForBacking:
    'Is a backing in it too? Give its file, and it is taken out before your line is listened to.',
  giveBacking: 'Give its backing',
  giveOtherBacking: 'Give another backing',
  leaveBackingIn: 'Leave it in',
  backingNotFound: ({ name }: { name: string }) =>
    `${name} was not heard in it, so nothing was taken out: see the note below.`,
  backingTakenOut: ({
    name,
    offsetSeconds,
    atOnce,
    driftPpm,
    db,
  }: {
    name: string;
    offsetSeconds: number;
    atOnce: boolean;
    /** 0 where there is none worth a word. */
    driftPpm: number;
    db: number;
  }) => {
    const exact = `${decimal(Math.abs(offsetSeconds), 2)} s`;
    const begins = atOnce
      ? `begins with the recording (within ${exact})`
      : offsetSeconds > 0
        ? `begins ${exact} into the recording`
        : `had run for ${exact} when the recording began`;
    const clock =
      driftPpm === 0
        ? ''
        : `, and runs ${Math.abs(driftPpm)} millionths too ${driftPpm > 0 ? 'fast' : 'slow'}`;
    return `${name} ${begins}${clock}; ${db === 0 ? 'it could not be made quieter' : `it was made ${db} dB quieter`}.`;
  },

  // Advice.
  advice: 'Next time',
  to: 'to',
  showNote: 'Show the note',
  hearYours: 'Hear yours',
  hearResolved: 'Hear it resolved',
  tryBars: ({ fromBar, toBar }: { fromBar: number; toBar: number }) =>
    fromBar === toBar
      ? `Loop bar ${fromBar} and try again`
      : `Loop bars ${fromBar} to ${toBar} and try again`,
  /** Why bars can't be looped. */
  notTried: {
    recording: 'To loop these bars, play the chart with the band: your backing goes round as it is.',
    keys: 'To loop these bars, play the form in one key: this take goes through several.',
  },

  // Bars that were tried again, beside the take that they are from.
  beside: 'First time and now',
  /** `of` is 0 where nothing landed. */
  besideCounts: ({
    asked,
    fromBar,
    toBar,
    first,
    now,
  }: {
    asked: 'thirds' | 'guideTones' | 'chordTones';
    fromBar: number;
    toBar: number;
    first: { hits: number; of: number };
    now: { hits: number; of: number };
  }) => {
    const tone = {
      thirds: 'the third',
      guideTones: 'the third or the seventh',
      chordTones: 'a chord tone',
    }[asked];
    const told = ({ hits, of }: { hits: number; of: number }) =>
      of === 0 ? 'nothing played' : `${hits} of ${of}`;
    const where = fromBar === toBar ? `bar ${fromBar}` : `bars ${fromBar} to ${toBar}`;
    return `On ${tone} in ${where}: ${told(first)} the first time, ${told(now)} now.`;
  },
  besideVerdicts: {
    more: 'That is more than luck.',
    fewer: 'That is fewer than before, and not by luck.',
    'too early': 'Too few yet to say whether anything changed: one more try will tell.',
  },
  besideFirst: 'First time',
  besideNow: 'Now',
  besideHear: { first: 'Hear it: first time', now: 'Hear it: now' },
  besideChange: ({ bar, chord }: { bar: number; chord: string }) => `Bar ${bar}, ${chord}`,
  besideRest: 'a rest',
  besideAim: 'The aim',
  wholeForm: 'Play the whole form again',

  // The chosen note.
  noteBefore: 'Note before',
  noteAfter: 'Note after',
  hearNote: 'Hear it',
  stopHearing: 'Stop it',
  letCount: 'Let it count',
  takeOut: 'Take it out',
  asHeard: 'As it was heard',
  noNote: 'No note was heard in this take.',
  chooseNote: 'Choose a note to see what it was and which rule decided.',

  // Aims.
  aims: 'Aims',
  next: 'Next',
  playForIt: 'Play for it now',

  // Shares and their chance levels.
  shares: 'How much, and is it luck?',
  sharesKey:
    'The note head marks your share. The stroke shows how far the share may be from your true one after so few notes. ' +
    'The wave shows what the same notes would reach if they were scattered over the chart by chance.',
  sharesMore: 'Phrase ends, strong beats, all notes, by length',
  events: {
    landings: 'Landings',
    phraseEnds: 'Phrase ends',
    strongBeats: 'Strong beats',
    allNotes: 'All notes',
    byLength: 'By length',
  },
  tones: { thirds: 'thirds', guideTones: 'guide tones', chordTones: 'chord tones' },
  none: 'none',
  nothingToCount: 'Nothing to count in this take.',
  secondsOf: ({ hits, of }: { hits: number; of: number }) => `${decimal(hits, 1)} of ${decimal(of, 1)} s`,
  /** Shares from 0 to 1; null where a part is not told. */
  share: ({
    share,
    low,
    high,
    chance,
    verdict,
  }: {
    share: number | null;
    low: number | null;
    high: number | null;
    chance: number | null;
    verdict: 'above chance' | 'at chance' | 'below chance' | 'too short to tell';
  }) => {
    const range = low === null || high === null ? null : `somewhere from ${percent(low)} to ${percent(high)}`;
    const parts = [share === null ? null : percent(share), range].filter((part) => part !== null);
    const told = parts.join(', ');
    const luck = {
      'above chance': 'More than luck.',
      'at chance': 'No more than luck.',
      'below chance': 'Less than luck would give.',
      'too short to tell': 'Too short to tell.',
    }[verdict];
    const by = chance === null ? '' : `; chance gives ${percent(chance)}`;
    return `${told.charAt(0).toUpperCase()}${told.slice(1)}${by}. ${luck}`;
  },

  // Palette and thirds.
  palette: 'Thirds and scales',
  all: 'All',
  mixtures: {
    minorOnly: 'only minor pentatonic',
    both: 'in both',
    majorOnly: 'only major pentatonic',
    neither: 'in neither',
  },
  mixture: ({ share, name }: { share: number; name: string }) => `${percent(share)} ${name}`,
  thirds: ({ thirds, flatThirds }: { thirds: number; flatThirds: number }) =>
    thirds === 0 && flatThirds === 0
      ? 'Over chords with a major third you play neither that third nor the minor third, the ♭3.'
      : `Over chords with a major third you play that third ${times(thirds)} and the minor third, the ♭3, ${times(flatThirds)}.`,
  noLeans: 'No ♭3 moved into the 3.',
  leans: ({ count, ways }: { count: number; ways: readonly string[] }) =>
    `The ♭3 moved ${times(count)} into the 3${ways.length === 0 ? '' : ` (${ways.join(', ')})`}.`,
  leanWays: { slid: 'slid', hammered: 'hammered', bent: 'bent', picked: 'picked' },
  leanWay: ({ count, way }: { count: number; way: string }) => `${count} ${way}`,
  falls: ({ count }: { count: number }) => `The 3 fell back ${times(count)} to the ♭3.`,
  leftHanging: ({ count }: { count: number }) => `${capital(times(count))} a ♭3 was not resolved.`,
  blueNotes: ({ count }: { count: number }) => `A blue note between the two thirds sounded ${times(count)}.`,

  // Files of the take, and the command that grades them.
  takeAlong: 'Files of this take',
  wholeTake: 'The whole take',
  wholeTakeWhy:
    'One file with sound, notes, grade and set-up. Open it here or in another browser, and the take is back; the command line grades it, too.',
  lineAsNotes: 'Notes as MIDI, with bends and chords',
  notesAsTable: 'Notes as a table',
  formAsImage: 'Form as an image',
  reportAsJson: 'Report as JSON',
  lineAsWav: 'Line as WAV',
  lineAsMidi: 'Line as MIDI',
  beatsAsTable: 'Beats as a table',
  bandAsWav: 'Band as WAV',
  commandLine: 'Grade it at the command line',
  files: { own: 'your file', line: 'the line', beats: 'the beats', band: 'the band' },
  commandFolder: ({ files, band }: { files: readonly string[]; band: boolean }) =>
    `In the folder with ${files.join(', ')}:` +
    (band
      ? ' the command finds the band in the line and takes it out again, so it may hear some notes differently.'
      : ''),
  copy: 'Copy',
  copied: 'Copied',
};
