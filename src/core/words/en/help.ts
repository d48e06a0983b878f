/** The page that says what the terms mean. */

export const help = {
  title: 'What it means',
  close: 'Close',
  whatIsThis: 'What does this mean?',
  aboutMarks:
    'Each mark says what a note is to the chord under it. A full mark is a tone of the chord, an open one is not. The figure beside it counts from the chord’s root.',
  /** The pages of the guide beside the site. */
  guide: {
    name: 'The whole guide:',
    pages: {
      player: 'A guide for the player',
      teacher: 'For the teacher',
      safety: 'Take care',
      privacy: 'Privacy',
    },
  },
  sections: {
    marks: 'The marks',
    stage: 'While you play',
    landing: 'Landings',
    result: 'After a take',
    sound: 'Sound and time',
  },
  entries: {
    chords: {
      word: 'the two chords',
      says: 'The large chord sounds now. The one on the right comes next; the number says in how many beats.',
    },
    targetStroke: {
      word: 'the stroke under a tone',
      says: 'Your line can land on this tone. The stroke marks the tones that your aim asks for at the next chord.',
    },
    instrument: {
      word: 'marks on the instrument',
      says: 'A large mark on a stroke: a tone to land on at the next chord. A small mark: a tone of the chord that sounds now. A very small lozenge: a scale tone, which fits as well. The ring is the note that you play; the curve leads from it to the nearest tone to land on.',
    },
    liveLine: {
      word: 'your line',
      says: 'The line shows the pitch of what you play. It is thick where the note belongs to the chord, and thin where it does not. At each change the drawing begins anew.',
    },
    note: {
      word: 'the note on the left',
      says: 'The note that you play now: its mark, its degree over the chord, its name, and how many cents it is sharp or flat.',
    },
    aim: {
      word: 'aim',
      says: 'What you try to do in this take. While you play, the count beside it says how often you did it, and of how many times. The aim is reached when you do it often enough, and more often than luck would.',
    },
    turns: {
      word: 'turns',
      says: 'You and the band play the same number of bars, one after the other. Only your turns are graded.',
    },
    form: {
      word: 'the form',
      says: 'All bars of one chorus. The heavy line is where you are; the marks are your landings.',
    },
    change: {
      word: 'change',
      says: 'The place where a new chord begins, and the first chord of all. The same chord over another bass is not a change.',
    },
    landing: {
      word: 'landing',
      says: 'Your first note on a new chord: the first one from an eighth before the change to one beat after it, or a note that you hold into it.',
    },
    chordTone: {
      word: 'chord tone',
      says: 'A tone that the chord’s symbol names: root, third, fifth, seventh, and a 9, 11 or 13 where it is written.',
    },
    guideTone: {
      word: 'guide tone',
      says: 'The third or the seventh: the two tones by which a chord is told from another. In a sus chord the fourth takes the place of the third.',
    },
    earlyLate: {
      word: 'early, late',
      says: 'How far from the change the landing began. A difference of less than about 10 ms can’t be heard.',
    },
    anticipation: {
      word: 'an eighth early',
      says: 'A landing that comes an eighth before the change, on purpose, belongs to the new chord. It is not a mistake.',
    },
    chorus: { word: 'chorus', says: 'Once through the form.' },
    luck: {
      word: 'luck',
      says: 'What the same notes would reach if they were played at random places over the chords. Only a result clearly above that is yours.',
    },
    tooShort: {
      word: 'one more chorus will tell',
      says: 'So few landings may be luck, good or bad. Play on, and there are enough for an answer.',
    },
    doubt: {
      word: 'the thick stroke',
      says: 'Your share differs a little from take to take. Your true share probably lies somewhere on the stroke, which gets shorter the more you play.',
    },
    phrase: {
      word: 'phrase',
      says: 'Notes between two rests of a beat or more. Its last note is the phrase end.',
    },
    strongBeat: {
      word: 'strong beat',
      says: 'Beats 1 and 3 in four, 1 in three: the beats on which a chord is heard most clearly.',
    },
    palette: {
      word: 'scale tone',
      says: 'A tone of the major or minor pentatonic of the key that is not in the chord: it fits, but it is not a landing on the chord.',
    },
    figure: {
      word: 'figure',
      says: 'A few notes that come back in the same order. However often it comes back, it counts once in the comparison with luck.',
    },
    trend: {
      word: 'getting better, no trend',
      says: 'One good day is not progress. “Getting better” stands there only where your takes rise by more than they differ from day to day.',
    },
    due: {
      word: 'for today',
      says: 'A change that went badly is due the next day. One that went well is due after two days, then four, and so on.',
    },
    delay: {
      word: 'delay',
      says: 'The time from the loudspeaker to your ear, and from the microphone into the machine. It is subtracted, so that early and late are right.',
    },
    soundCheck: {
      word: 'sound check',
      says: 'It measures the level, the delay, and how the band comes back into the microphone. Do it once for each pair of devices.',
    },
    bandOut: {
      word: 'the band taken out',
      says: 'When the band plays through loudspeakers, the microphone hears it too. It is subtracted before your notes are named.',
    },
    cents: { word: 'cents', says: 'Hundredths of a half step, from the pitch that you tune to.' },
  },
};
