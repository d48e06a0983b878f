/** The teacher’s desk, and the table of a class. */
import { several, percent, decimal } from './grammar.ts';

export const lesson = {
  attention: {
    doubtful: 'look first',
    'not reached': 'not reached',
    'too short': 'too short to tell',
    reached: 'reached',
  },
  doubts: {
    'another sheet': 'played for another sheet',
    'moved key': ({ tonic }: { tonic: string }) => `fits ${tonic} far better: played in another key?`,
    'moved time': ({ beats }: { beats: number }) =>
      `fits far better with the chart begun ${several(Math.abs(beats), 'beat')} ${beats > 0 ? 'later' : 'earlier'}: moved?`,
    band: 'the band came through the microphone and was taken out',
    delay: 'the whole take lies early or late',
    'lost sound': 'sound was lost',
    corrected: 'corrected by hand, graded as heard',
    'few notes': 'hardly any notes',
  },
  columns: {
    student: 'Student',
    attention: 'State',
    aim: 'Aim',
    thirds: 'Landings on thirds',
    weakest: 'Weakest change',
    tries: 'Tries',
    doubts: 'Doubts',
    sheet: 'Sheet',
    file: 'File',
  },
  noAim: 'no aim',
  noWeakest: 'none missed',
  counted: ({
    hits,
    of,
    low,
    high,
  }: {
    hits: number;
    of: number;
    low: number | null;
    high: number | null;
  }) =>
    of === 0
      ? 'none played'
      : `${hits} of ${of}` +
        (low === null || high === null ? '' : ` (${Math.round(100 * low)} to ${percent(high)})`),
  besideLuck: ({ hits, of, expected }: { hits: number; of: number; expected: number | null }) =>
    of === 0
      ? 'none played'
      : `${hits} of ${of}` + (expected === null ? '' : `, luck gives ${decimal(expected, 1)}`),
  /** A change of chord; `from` is null where the chord follows no other. */
  change: ({ from, to, bar }: { from: string | null; to: string; bar: number }) =>
    `${from === null ? to : `${from} to ${to}`} (bar ${bar})`,
  weakest: ({ change, hits, of }: { change: string; hits: number; of: number }) =>
    `${change}, ${hits} of ${of}`,
  tries: ({ takes, tryNumber }: { takes: number; tryNumber: number | null }) =>
    tryNumber === null ? String(takes) : `${takes}; here try ${tryNumber}`,
  desk: {
    title: 'The teacher’s desk',
    back: 'Back',
    lead: 'Drop a folder here: takes that came back, recordings, and the lesson sheet. Every take is graded again on this machine, from its sound: a grade that a file brings with it does not count. Nothing leaves this machine, and nothing is kept.',
    chooseFolder: 'Choose a folder',
    chooseFiles: 'Choose files',
    clear: 'Clear the desk',
    sheets: 'Lesson sheets',
    noSheet: 'No lesson sheet yet: takes that carry theirs are graded by it; recordings need one.',
    firstBeat: ({ recordings }: { recordings: number }) =>
      `In ${recordings === 1 ? 'the plain recording' : `all ${recordings} plain recordings`} the first bar of the chart starts at`,
    progress: ({ done, of }: { done: number; of: number }) => `${done} of ${of} graded`,
    cancel: 'Stop here',
    table: 'Who needs you first',
    counted: ({ rows, takes }: { rows: number; takes: number }) =>
      `${several(rows, 'row')}, ${several(takes, 'take')}. A range in brackets is what the share may truly be (95 %).`,
    length: 'Length',
    review: ({ student }: { student: string }) => `Open the take of ${student}`,
    written: 'answer begun',
    map: 'Which change fails for whom',
    mapOf: ({ sheet }: { sheet: string }) => `Which change fails for whom: ${sheet}`,
    change: 'Change',
    landed: 'Third or seventh',
    missedBy: 'Fewer than half',
    nobody: 'nobody',
    failed: ({ files }: { files: number }) => `${several(files, 'file')} could not be graded`,
    saveCsv: 'Save the table (CSV)',
    savePage: 'Save a page to print',
    backToDesk: 'Back to the desk',
    answer: ({ student }: { student: string }) => `Your answer to ${student}`,
    gradedHere: 'This grade was computed here, from the sound. The take is not among your own.',
    note: 'About the whole take',
    comments: 'Comments on bars',
    chorus: 'Chorus',
    bar: 'Bar',
    comment: 'Comment',
    add: 'Add this comment',
    remove: ({ place }: { place: string }) => `Remove the comment on ${place}`,
    place: ({ chorus, bar }: { chorus: number; bar: number }) => `chorus ${chorus}, bar ${bar}`,
    give: 'Save the answer as a file',
    howToGive: 'Send the file to the student: it opens beside the take in Landfall.',
  },
  page: {
    title: ({ sheet }: { sheet: string }) => `Class: ${sheet}`,
    students: ({ students, takes }: { students: number; takes: number }) =>
      `${several(students, 'student')}, ${several(takes, 'take')}`,
    changes: 'Changes of the form, over the whole class',
    changesOf: ({ sheet }: { sheet: string }) => `Changes of “${sheet}”, over the whole class`,
    changeLine: ({ hits, of, missedBy }: { hits: number; of: number; missedBy: readonly string[] }) =>
      `${hits} of ${of} on a third or a seventh` +
      (missedBy.length === 0 ? '' : `; fewer than half by ${missedBy.join(', ')}`),
    failed: 'Not graded',
    gradedBy: ({ version }: { version: string }) =>
      `Graded from the sound by Landfall ${version}. A range in brackets is what the share may truly be (95 %).`,
  },
};
