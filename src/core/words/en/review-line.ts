/** The line of a take in its review: seen, corrected and played back. */

export const reviewLine = {
  // The line over the chords.
  zoom: 'Zoom',
  closer: 'Closer',
  wider: 'Wider',
  notesList: 'Notes of the take: arrow keys go from one to the next, Delete takes one out or lets it count',
  /** How a note that counts in no share is read out; `note` is its name and what it is over its chord. */
  spokenDoubtful: ({ note }: { note: string }) => `doubtful: ${note}`,
  spokenTakenOut: ({ note }: { note: string }) => `taken out: ${note}`,
  /** How many notes count in no share, and how they are drawn; at least one. */
  notCounted: ({ doubtful, takenOut }: { doubtful: number; takenOut: number }) =>
    [
      ...(doubtful === 0
        ? []
        : [
            doubtful === 1
              ? '1 note is doubtful (a dashed ring on the line) and counts in no share.'
              : `${doubtful} notes are doubtful (dashed rings on the line) and count in no share.`,
          ]),
      ...(takenOut === 0
        ? []
        : [
            takenOut === 1
              ? 'You took 1 note out (a crossed ring).'
              : `You took ${takenOut} notes out (crossed rings).`,
          ]),
    ].join(' '),

  // Correcting notes by hand.
  edit: {
    bar: 'Correct by hand',
    open: 'Correct notes (E)',
    close: 'Done correcting (E)',
    hint: 'Choose a note on the line. Drag it to move it in time and pitch; drag its end to stretch it.',
    verbs: {
      up: 'Half step up',
      down: 'Half step down',
      earlier: 'Earlier',
      later: 'Later',
      shorter: 'Shorter',
      longer: 'Longer',
      split: 'Split here',
      join: 'Join with next',
      add: 'Add a note',
      delete: 'Delete',
      undo: 'Undo',
      redo: 'Redo',
    },
    groups: { pitch: 'Pitch', time: 'Time', note: 'Note', history: 'Steps' },
    allBack: 'Back to what was heard',
    askAllBack: ({ count }: { count: number }) =>
      `Take back ${count === 1 ? 'the one correction' : `all ${count} corrections`} of this take?`,
    yes: 'Take them back',
    no: 'Keep them',
    noNote: 'Choose a note first.',
    nothingTo: { undo: 'There is nothing to undo.', redo: 'There is nothing to redo.' },
    said: {
      pitch: ({ name }: { name: string }) => `It is ${name} now.`,
      moved: ({
        name,
        ms,
      }: {
        name: string;
        /** null for a note that was not heard. */ ms: number | null;
      }) =>
        ms === null
          ? `${name} is moved.`
          : ms === 0
            ? `${name} begins where it was heard.`
            : `${name} begins ${Math.abs(ms)} ms ${ms < 0 ? 'earlier' : 'later'} than it was heard.`,
      lasts: ({ name, ms }: { name: string; ms: number }) => `${name} lasts ${ms} ms now.`,
      split: ({ name }: { name: string }) => `${name} is two notes now.`,
      joined: ({ name }: { name: string }) => `${name} is one note with the next now.`,
      added: ({ name }: { name: string }) => `${name} is added.`,
      deleted: ({ name }: { name: string }) => `${name} is deleted.`,
      counts: ({ name }: { name: string }) => `${name} counts now.`,
      countsNot: ({ name }: { name: string }) => `${name} no longer counts.`,
      asHeard: ({ name }: { name: string }) => `${name} is as it was heard.`,
      undo: ({ left }: { left: number }) =>
        `Undone. ${left === 0 ? 'No correction is left' : left === 1 ? '1 correction is left' : `${left} corrections are left`}.`,
      redo: ({ left }: { left: number }) =>
        `Done again: ${left === 1 ? '1 correction' : `${left} corrections`}.`,
      allBack: 'All notes are as they were heard. Redo brings the corrections back, one by one.',
    },
    refused: {
      'no note': 'That note is no longer there.',
      'no next note': 'No note comes after it.',
      'too short': 'A note would be too short: it needs 50 ms.',
      together: 'There is no room: another note sounds there.',
      'too many': 'This take has as many corrections as it can hold. Undo some first.',
    },
    countKey: 'let a note count, or not',
    inLine:
      'While you correct, E closes the bar, the arrows up and down on the line change the pitch, and Ctrl+Z undoes.',
    spokenCorrected: ({ note }: { note: string }) => `corrected: ${note}`,
  },

  // The playback.
  pause: 'Pause',
  hearTake: 'Hear the take',
  placeInTake: 'Place in the take',
  speed: 'Speed',
  speeds: { 1: 'full', 0.75: '¾', 0.5: 'half' },
  mix: 'Hear',
  mixes: { both: 'line and band', line: 'line', band: 'band' },
  loop: 'Loop these bars',
  looped: ({ fromBar, toBar }: { fromBar: number; toBar: number }) =>
    fromBar === toBar ? `Looping bar ${fromBar}` : `Looping bars ${fromBar} to ${toBar}`,
  showKeys: 'Keys (?)',
  keysTitle: 'Keys',
  keysInLine:
    'On the line itself the arrow keys go from note to note. Drag across the chord names to loop their bars.',
  closeKeys: 'Close',
  keyNames: {
    ArrowUp: '↑',
    ArrowDown: '↓',
    Delete: 'Delete',
    ' ': 'Space',
    ArrowLeft: '←',
    ArrowRight: '→',
    Home: 'Home',
  },
  keys: {
    play: 'play, pause',
    'bar back': 'a bar back',
    'bar on': 'a bar on',
    start: 'to the start',
    loop: 'loop these bars, or no longer',
    'loop starts': 'the loop starts here',
    'loop ends': 'the loop ends here',
    speed: 'full speed, three quarters, half',
    mix: 'line and band, line, band',
    note: 'hear the chosen note',
    correct: 'correct notes by hand, or no longer',
    keys: 'this list',
  },
};
