/** The page of text that the command line prints. */
import { percent, several, decimal } from './grammar.ts';
import { noun, trimmed, times, inBrackets } from './phrases.ts';

export const page = {
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
  }: {
    notes: number;
    bars: number;
    /** Choruses that were played, a part of one too. */
    choruses: number;
    key: string;
    bpm: number | null;
    rise: { readonly byBpm: number; readonly everyBars: number } | null;
    referenceHz: number;
    estimated: boolean;
    /** null: not told. */
    anticipationBeats: number | null;
    turnBars: number | null;
  }) => {
    const rising =
      rise === null ? '' : ` and ${rise.byBpm} more every ${rise.everyBars} ${noun(rise.everyBars, 'bar')}`;
    const tempo = bpm === null ? '' : `${trimmed(bpm, 1)} bpm${rising}, `;
    const turns = turnBars === null ? '' : `, your turns of ${turnBars} ${noun(turnBars, 'bar')}`;
    return (
      `${notes} ${noun(notes, 'note')} over ${rounds > 1 ? `${rounds} choruses of ` : ''}${bars} ${noun(bars, 'bar')} in ${key}, ${tempo}` +
      `A4 ${trimmed(referenceHz, 1)} Hz${estimated ? ' (found)' : ''}${anticipationBeats === null ? '' : `, anticipation ${trimmed(anticipationBeats)} beat`}${turns}`
    );
  },
  rows: {
    landings: 'landings',
    phraseEnds: 'phrase ends',
    strongBeats: 'strong beats',
    allNotes: 'all notes',
    byLength: 'by length',
  },
  columns: { thirds: 'thirds', guideTones: 'guide tones', chordTones: 'chord tones' },
  none: 'none',
  luck: ({ share }: { share: number }) => `luck ${percent(share)}`,
  signs: {
    'above chance': 'more than luck',
    'below chance': 'less than luck',
    'too short to tell': 'too few to tell',
  },
  form: {
    legend: 'chorus by chorus: b3>3 b3 into 3, ~ held over, ( ) not in the chord, · rest',
    chord: ({
      thirds,
      landed,
      chordTones,
      open,
    }: {
      thirds: number;
      landed: number;
      chordTones: number;
      open: number;
    }) =>
      `${thirds} of ${landed} on the third, ${chordTones} on a chord tone${open === 0 ? '' : `, ${several(open, 'rest')}`}`,
    more: ({ chords }: { chords: number }) => `and ${chords} more ${noun(chords, 'chord')}`,
  },
  /** The headings in the margin, nine letters at most. */
  headings: {
    suspected: 'First',
    next: 'Next',
    numbers: 'Numbers',
    space: 'Space',
    approach: 'Approach',
    figures: 'Figures',
    range: 'Range',
    accents: 'Accents',
    changes: 'Changes',
    thirds: 'Thirds',
    palette: 'Palette',
    backing: 'Backing',
    lost: 'Lost',
    corrected: 'By hand',
    time: 'Time',
    aims: 'Aims',
    advice: 'Advice',
    good: 'Good',
  },
  changes: {
    inBar: ({ chord, bar }: { chord: string; bar: number }) => `${chord} in bar ${bar}`,
    alwaysThird: ({ places }: { places: readonly string[] }) => `Always the third: ${places.join(', ')}.`,
    neverChordTone: ({ places }: { places: readonly string[] }) =>
      `Never a chord tone: ${places.join(', ')}.`,
    guideTones: ({ changes, resolved, kept }: { changes: number; resolved: number; kept: number }) =>
      `A guide tone moved by step into the next chord at ${resolved} of ${changes} ${noun(changes, 'change')}` +
      `${kept === 0 ? '' : `, and stayed at ${kept}`}.`,
  },
  thirds: {
    counted: ({
      notes,
      thirds,
      flatThirds,
      leans,
      ways,
      falls,
      leftHanging,
    }: {
      notes: number;
      thirds: number;
      flatThirds: number;
      leans: number;
      ways: readonly string[];
      falls: number;
      leftHanging: number;
    }) =>
      `Of ${several(notes, 'note')} over chords with a major third ${thirds} ${thirds === 1 ? 'is' : 'are'} the 3 and ${flatThirds} the b3. ` +
      `b3 into 3: ${times(leans)}${inBrackets(ways)}; 3 back to b3: ${times(falls)}; b3 not resolved: ${times(leftHanging)}.`,
    ways: {
      slid: ({ count }: { count: number }) => `${count} slid`,
      hammered: ({ count }: { count: number }) => `${count} hammered`,
      bent: ({ count }: { count: number }) => `${count} bent`,
      picked: ({ count }: { count: number }) => `${count} picked`,
    },
    blue: ({ count, lowCents, highCents }: { count: number; lowCents: number; highCents: number }) =>
      `Blue thirds between the two: ${count}, ${lowCents === highCents ? lowCents : `${lowCents} to ${highCents}`} cents above the b3. They are not wrong notes.`,
  },
  palette: {
    mixture: ({
      minor,
      major,
      both,
      neither,
    }: {
      minor: number;
      major: number;
      both: number;
      neither: number;
    }) =>
      `minor ${percent(minor)}, major ${percent(major)}, both ${percent(both)}, neither ${percent(neither)}`,
    overall: ({ mixture }: { mixture: string }) => `${mixture} of the time.`,
    chord: ({ chord, mixture }: { chord: string; mixture: string }) => `${chord}: ${mixture}.`,
    thirdOverFour: ({ count, seconds, degree }: { count: number; seconds: number; degree: string }) =>
      `The key’s major third sounded over the IV ${times(count)}, ${trimmed(Math.max(0.1, seconds), 1)} s in all: there it is the ${degree} and clashes.`,
  },
  backing: {
    notHeard: 'Not heard in the take, so nothing was taken out.',
    heard: ({
      offsetSeconds,
      driftPpm,
      removedDb,
    }: {
      offsetSeconds: number;
      driftPpm: number;
      removedDb: number;
    }) =>
      `Heard from ${decimal(offsetSeconds, 3)} s on` +
      `${driftPpm === 0 ? '' : `, ${Math.abs(driftPpm)} ppm ${driftPpm > 0 ? 'fast' : 'slow'}`}; ${removedDb === 0 ? 'it could not be made quieter' : `made ${removedDb} dB quieter`} before listening.`,
  },
  suspected: {
    key: ({ semitones }: { semitones: number }) => `Grade it again with --transpose ${semitones}.`,
    place: ({ firstBeat }: { firstBeat: string }) => `Grade it again with --first-beat ${firstBeat}.`,
  },
  /** The last line of the short page. */
  more: 'More: --full prints every figure, --explain BAR the reasons.',
  aims: {
    tried: ({ name, verdict, evidence }: { name: string; verdict: string; evidence: string }) =>
      `${name}: ${verdict}. ${evidence}`,
    reached: ({ names }: { names: readonly string[] }) => `Reached: ${names.join('; ')}.`,
    /** The aim that was tried for stays the next one. */
    stay: ({ task }: { task: string }) => `Next: stay with this aim. ${task}`,
    next: ({ name, evidence, task }: { name: string; evidence: string; task: string }) =>
      `Next: ${name}. ${evidence} ${task}`,
    nextInShort: ({ name, task }: { name: string; task: string }) => `${name}. ${task}`,
  },
};
