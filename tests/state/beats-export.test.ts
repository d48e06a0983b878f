/** A take that was played to a recording has no one tempo: it leaves with its beats, and is graded by them elsewhere. */
import { english } from '../english.ts';
import { expect, it } from 'vitest';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { details } from '../storage/fakes.ts';
import { gradedByCommand, makeReview } from './by-command.ts';
import { RATE, world } from './world.ts';

/** A round of eight beats that wanders between 0.45 and 0.6 s, gone round twice. */
const lengths = [0.5, 0.52, 0.55, 0.6, 0.58, 0.52, 0.47, 0.45];
const beatSeconds = lengths.reduce<number[]>((sum, length) => [...sum, sum.at(-1)! + length], [0]);
const FIRST = 1.2;
const round = beatSeconds.at(-1)!;
const melody = [73, 69, 64, 69, 66, 69, 74, 69];
const line = pluckLine(
  [0, 1].flatMap((times) =>
    melody.map((midi, beat) => ({
      atSeconds: FIRST + times * round + beatSeconds[beat]! + 0.01,
      midi,
      seconds: 0.35,
    })),
  ),
  RATE,
  FIRST + 2 * round + 0.5,
);

it('leaves with its beats, and the words that grade it by them', async () => {
  const w = await world();
  const begun = await w.takes.begin(
    {
      ...details,
      title: 'Evening groove',
      chartText: 'key: A\n| A7 | D7 |',
      bpm: 114,
      swing: 0.5,
      sampleRate: RATE,
      firstBeatSeconds: FIRST,
      backing: {
        id: 'one',
        title: 'Evening groove',
        speed: 1,
        cents: 0,
        fromSeconds: 3,
        toSeconds: 3 + round,
        beatSeconds,
      },
    },
    () => undefined,
  );
  if (!begun.ok) throw new Error(english(begun.problem));
  begun.value.append(toPcm16(line), null);
  await begun.value.finish();
  await w.session.openTake(begun.value.id);
  const { report } = await makeReview(w);
  expect(report.notes.map(({ midi }) => Math.round(midi))).toEqual([...melody, ...melody]);
  w.session.save('line');
  w.session.save('beats');
  expect(w.saved.map(({ fileName }) => fileName)).toEqual([
    'landfall 2026-03-01 10-00 Evening groove.wav',
    'landfall 2026-03-01 10-00 Evening groove beats.csv',
  ]);
  const elsewhere = await gradedByCommand(w);
  const told = ({ notes }: typeof report) =>
    notes.map(({ onsetSeconds, chord, degree, role, keyDegree }) => ({
      onsetSeconds,
      chord,
      degree,
      role,
      keyDegree,
    }));
  expect(told(elsewhere)).toEqual(told(report));
  elsewhere.notes.forEach(({ beat }, i) => expect(beat).toBeCloseTo(report.notes[i]!.beat, 4));
  expect(elsewhere.landings.map(({ chord, role }) => [chord, role])).toEqual(
    report.landings.map(({ chord, role }) => [chord, role]),
  );
  expect(elsewhere.timeline.key).toEqual(report.timeline.key);
});
