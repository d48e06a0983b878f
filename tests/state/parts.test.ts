import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { timelineOf } from '../../src/core/timeline-of-order.ts';
import { problem } from '../../src/core/words/problem.ts';
import { bad } from '../../src/core/base/outcome.ts';
import { gradeCommand } from '../../src/state/grade-command.ts';
import { fileStem } from '../../src/state/export-files.ts';
import { Library } from '../../src/state/library.svelte.ts';
import { liveMomentAt } from '../../src/state/live-moment.ts';
import { Recording } from '../../src/state/recording.ts';
import { details } from '../storage/fakes.ts';
import { freshDatabase, memorySounds, ramp, takesOn } from '../storage/fakes.ts';
import { aimChoiceOf } from '../../src/core/grade/aims/aim-choices.ts';
import { targetReader } from '../../src/core/grade/aims/targets.ts';

const hop = (startFrame: number, ...values: number[]) => ({
  startFrame,
  samples: Float32Array.from(values, (value) => value / 32768),
  band: null,
});

describe('Recording', () => {
  it('begins where the first hop lies on the clock, and fills what was lost with silence', () => {
    const recording = new Recording(100);
    expect(recording.startSeconds).toBeNull();
    expect([...recording.add(hop(250, 1, 2))]).toEqual([1, 2]);
    expect([...recording.add(hop(255, 3, 4))]).toEqual([0, 0, 0, 3, 4]);
    expect(recording.startSeconds).toBe(2.5);
    expect(recording.lostFrames).toBe(3);
    expect([...recording.whole()]).toEqual([1, 2, 0, 0, 0, 3, 4]);
  });

  it('takes once what was delivered twice', () => {
    const recording = new Recording(100);
    recording.add(hop(0, 1, 2, 3));
    expect([...recording.add(hop(1, 2, 3, 4))]).toEqual([4]);
    expect([...recording.add(hop(0, 1, 2, 3))]).toEqual([]);
    expect([...recording.whole()]).toEqual([1, 2, 3, 4]);
    expect(recording.lostFrames).toBe(0);
  });
});

describe('liveMomentAt', () => {
  const order = { chartText: '| A7 | D7 |', bpm: 120, swing: 0.5, firstBeatSeconds: 0 };
  const laid = timelineOf(order);
  if (!laid.ok) throw new Error(english(laid.problem));
  const timeline = laid.value;
  const heard = (midi: number) => ({ timeSeconds: 0, midi, levelDb: -20 });
  const guideTones = targetReader(aimChoiceOf('guide-tones'), timeline.key);

  it('counts bars and choruses from 0, and the count-in below', () => {
    expect(liveMomentAt(timeline, -3.5, null, 440, guideTones)).toMatchObject({
      beatInBar: 0.5,
      bar: -1,
      chorus: -1,
      chordNow: null,
    });
    expect(liveMomentAt(timeline, -3.5, null, 440, guideTones).next?.chord?.symbol).toBe('A7');
    expect(liveMomentAt(timeline, 5, null, 440, guideTones)).toMatchObject({
      beatInBar: 1,
      bar: 1,
      chorus: 0,
    });
    expect(liveMomentAt(timeline, 8.25, null, 440, guideTones)).toMatchObject({
      beatInBar: 0.25,
      bar: 0,
      chorus: 1,
    });
  });

  it('shows the next change before it arrives, with where to land', () => {
    const live = liveMomentAt(timeline, 3, null, 440, guideTones);
    expect(live.chordNow?.symbol).toBe('A7');
    expect(live.next?.chord?.symbol).toBe('D7');
    expect(live.beatsToNext).toBe(1);
    expect(live.targets.map(({ degree, name }) => [degree, name])).toEqual([
      ['3', 'F#'],
      ['b7', 'C'],
    ]);
  });

  it('names what is heard at the reference, against the chord of the moment', () => {
    expect(liveMomentAt(timeline, 1, heard(73), 440, guideTones).note).toMatchObject({
      name: 'C#5',
      degree: '3',
      role: 'third',
    });
    expect(liveMomentAt(timeline, 1, heard(72), 440, guideTones).note).toMatchObject({
      degree: 'b3',
      role: 'blue',
    });
    // 32 cents flat throughout, A4 = 432: still a C sharp, in tune.
    const flat = liveMomentAt(timeline, 1, heard(73 - 0.3177), 432, guideTones).note!;
    expect(flat.name).toBe('C#5');
    expect(Math.abs(flat.cents)).toBeLessThan(0.1);
    expect(liveMomentAt(timeline, -1, heard(73), 440, guideTones).note).toMatchObject({
      degree: null,
      role: null,
    });
    expect(liveMomentAt(timeline, 1, { ...heard(0), midi: null }, 440, guideTones).note).toBeNull();
  });
});

describe('files that leave', () => {
  const named = {
    ...details,
    title: 'My “best” take / 2: A♭?',
    chartText: "title: Kid's\n| A7 |",
    firstBeatSeconds: 1.25,
  };

  it('have names that every system takes', () => {
    expect(fileStem(named)).toBe('landfall 2026-03-01 10-00 My best take 2 A');
  });

  it('come with the words that grade them, safe for a shell', () => {
    const audio = { samples: ramp(8), sampleRate: 8000 };
    const source = { kind: 'microphone' as const, durationSeconds: 1, sampleRate: 8000 };
    const report = { source };
    const take = {
      id: null,
      details: named,
      content: { kind: 'sound' as const, audio, backing: null },
      report,
    };
    const chart =
      "--chart 'title: Kid'\\''s\n| A7 |' --tempo 96 --first-beat 1.25 --swing 0.62 --reference 440";
    expect(gradeCommand(take)).toBe(
      `npx landfall grade 'landfall 2026-03-01 10-00 My best take 2 A.wav' ${chart}`,
    );
    const opened = { ...named, title: "it's me.wav", source: 'recording' as const, capo: 2, aim: 'thirds' };
    const backing = { kind: 'recording' as const, name: 'band.wav', sound: audio };
    expect(gradeCommand({ ...take, details: opened, content: { kind: 'sound', audio, backing } })).toBe(
      `npx landfall grade 'it'\\''s me.wav' --backing 'band.wav' ${chart} --aim third-on-arrival`,
    );
    expect(gradeCommand({ ...take, details: { ...named, instrument: 'guitar', capo: 2 } })).toMatch(
      / --instrument guitar --capo 2$/,
    );
    expect(gradeCommand({ ...take, details: { ...named, instrument: 'flute', capo: 2 } })).toMatch(
      / --instrument flute$/,
    );
  });
});

describe('Library', () => {
  it('lists, renames and removes; a verb that fails is told', async () => {
    const takes = takesOn(await freshDatabase(), memorySounds());
    const library = new Library({ takes });
    const begun = await takes.begin(details, () => undefined);
    if (!begun.ok) throw new Error(english(begun.problem));
    begun.value.append(ramp(8000));
    await begun.value.finish();
    await library.load();
    expect(library.takes).toHaveLength(1);
    const { id } = begun.value;
    await library.mark(id, { name: 'Slow one', starred: true });
    expect(library.takes[0]).toMatchObject({ title: details.title, name: 'Slow one', starred: true });
    const stuck = new Library({
      takes: {
        list: () => takes.list(),
        unfinished: () => takes.unfinished(),
        mark: (of, change) => takes.mark(of, change),
        remove: () => Promise.resolve(bad('take.gone')),
      },
    });
    await stuck.remove(id);
    expect(stuck.takes).toHaveLength(1);
    expect(stuck.notices).toEqual([problem('take.gone')]);
    await library.remove(id);
    expect(library.takes).toEqual([]);
  });
});
