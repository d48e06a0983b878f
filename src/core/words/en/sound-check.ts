/** The sound check. */
import { decimal } from './grammar.ts';

/** A whole number with a true minus sign. */
const signed = (value: number): string => `${value < 0 ? '−' : ''}${Math.abs(value)}`;

export const soundCheck = {
  title: 'Sound check',
  back: 'Back',
  microphone: 'Microphone',
  output: 'Output',
  systemDevice: 'The one chosen in the system',
  /** A device without a name: "Microphone 2". */
  deviceNumber: ({ kind, number }: { kind: string; number: number }) => `${kind} ${number}`,
  listenAgain: 'Listen again',
  level: 'Play something loud',
  levels: { silent: 'Nothing yet', 'turn up': 'Turn up', good: 'Good', 'too hot': 'Too loud' },
  notOpen: 'The microphone is not open.',
  levelFacts: ({ peakDb, floorDb, clipped }: { peakDb: number; floorDb: number; clipped: boolean }) =>
    `Loudest ${signed(peakDb)} dB, the room alone ${signed(floorDb)} dB of full scale.` +
    (clipped ? ' It clips: turn the input down, or move away from it.' : ''),
  strings: 'Open strings, one by one',
  notPlayed: 'not played',
  letRing: 'Let each one ring for a second.',
  againstStandard: 'Measured against A = 440 Hz until more strings were heard.',
  agreeOn: ({ hz }: { hz: number }) => `Together they give A = ${decimal(hz, 1)} Hz.`,
  room: 'The room',
  caution:
    'Three short rising tones (sweeps) are played, each a little louder than the last, at most as loud as quiet talk. Set ' +
    'the volume at which you will play, and low enough to talk over: loud sound harms hearing. Take headphones off your ' +
    'ears, and damp the strings.',
  playSweeps: 'Play the sweeps',
  sweeping: 'Quiet please: three sweeps …',
  delayUnknown:
    'The delay could not be measured, since nothing came back; the delay that the browser states is used instead.',
  /** spreadMs: null where the sweeps agree. */
  delay: ({ ms, spreadMs }: { ms: number; spreadMs: number | null }) =>
    `From speaker to microphone it takes ${ms} ms, ` +
    `${spreadMs === null ? 'the same each time' : `within ${decimal(spreadMs, 1)} ms from sweep to sweep`}.`,
  headphones: 'Headphones: there is no band to take out.',
  speakers: ({ db }: { db: number }) =>
    db === 0
      ? 'Speakers: the band can’t be taken out of what the microphone hears.'
      : `Speakers: the band is made ${db} dB quieter in what the microphone hears.`,
  leak: ({ db }: { db: number }) =>
    db === 0
      ? 'It comes back as loud as it is played.'
      : `It comes back ${Math.abs(db)} dB ${db < 0 ? 'quieter' : 'louder'} than it is played.`,
  delayTitle: 'The delay',
  byStrokes: ({ ms, spreadMs, strokes }: { ms: number; spreadMs: number; strokes: number }) =>
    `Measured by strokes: ${strokes} strokes came ${ms} ms after their clicks, half of them within ${spreadMs} ms of that. If you tend to play early or late, that is part of it.`,
  delaySet: ({ ms }: { ms: number }) => `Set by hand: ${ms} ms.`,
  delayAssumed: ({ ms }: { ms: number }) =>
    `Not measured: the delay that the browser states is used, ${ms} ms.`,
  strokesTask:
    'Through headphones the microphone does not hear the sweeps. Damp the strings, press the button, wait for four low ' +
    'clicks, then strike once with each of the eight high ones.',
  strokesNotForSpeakers:
    'With speakers, play the sweeps: the microphone could not tell strokes from clicks of a speaker.',
  strike: 'Strike with the click',
  striking: 'Four to count in, then eight strokes …',
  delayField: 'The delay in ms',
  delayLimits: ({ least, most }: { least: number; most: number }) =>
    `A whole number from ${least} to ${most}.`,
  takeMeasured: 'Use the measured delay',
  takeAssumed: 'Use the delay that the browser states',
};
