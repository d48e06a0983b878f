/** Names and tasks of the built-in aims, by their ids. */

export const aims = {
  'guide-tones': {
    name: 'Thirds and sevenths',
    task: 'Land on the third or the seventh of each chord as it arrives.',
  },
  thirds: { name: 'Thirds', task: 'Land on the third of each chord as it arrives.' },
  'chord-tones': { name: 'All chord tones', task: 'Land on any tone of each chord as it arrives.' },
  'third-over-one': {
    name: 'The third over the I',
    task: 'Let the third be heard in every other bar you play over the I.',
  },
  'flat-third-into-third': {
    name: 'The b3 into the 3',
    task: 'Over a chord with a major third, let every other b3 go up into the 3 within half a beat.',
  },
  'add-the-sixth': {
    name: 'Add the sixth',
    task: 'Bring the sixth into every third bar you play over the I.',
  },
  'add-the-ninth': {
    name: 'Add the ninth',
    task: 'Bring the ninth into every third bar you play over the I.',
  },
  'third-sixth-ninth': {
    name: 'Third, sixth and ninth in one chorus',
    task: 'Over the I, bring the third, the sixth and the ninth into one chorus, in every other chorus.',
  },
  'third-on-arrival': {
    name: 'The third of every chord as it arrives',
    task: 'Land on the third of the new chord at every other change.',
  },
  'guide-tones-by-step': {
    name: 'Guide tones by step',
    task: 'At every third change, move from a guide tone of the old chord to the nearest one of the new by a step.',
  },
  'phrases-end-on-chord-tones': {
    name: 'End phrases on chord tones',
    task: 'End three of four phrases on a tone of the chord under them.',
  },
  'off-the-third-over-four': {
    name: 'Avoid the key’s major third over the IV',
    task: 'Over the IV, play the key’s b3 or 4 where you would have played its major third.',
  },
};
