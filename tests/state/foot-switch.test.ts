/**
 * Foot switches as they are made (common practice): damper, sostenuto and soft pedals, controllers of any number,
 * program changes, notes; momentary and flipping; of either polarity. A switch is on from 64 (MIDI 1.0).
 */
import { describe, expect, it } from 'vitest';
import { FootLearning, FootSwitch, type LearnedFoot } from '../../src/state/foot-switch.ts';
import { en } from '../../src/core/words/en.ts';
import { describeFoot } from '../../src/ui/ready/describe-foot.ts';
import { world } from './world.ts';

type Sent = readonly [atSeconds: number, ...bytes: number[]];
const steps = (learned: LearnedFoot | null, ...sent: readonly Sent[]) => {
  const foot = new FootSwitch(learned);
  return sent.map(([at, ...bytes]) => foot.hears(Uint8Array.from(bytes), at));
};
const learn = (...sent: readonly (readonly number[])[]) => {
  const learning = new FootLearning();
  const found = sent.map((bytes) => learning.hears(Uint8Array.from(bytes))).find((foot) => foot !== null);
  return found ?? learning.finish();
};

describe('a pedal that was not learned', () => {
  it.each([64, 66, 67])('controller %i on any channel: down from 64, up below', (controller) => {
    expect(steps(null, [0, 0xb3, controller, 64], [0.2, 0xb3, controller, 63])).toEqual(['down', 'up']);
  });

  it('the other polarity is known by the first press', () => {
    expect(
      steps(null, [0, 0xb0, 64, 0], [0.2, 0xb0, 64, 127], [5, 0xb0, 64, 0], [5.2, 0xb0, 64, 127]),
    ).toEqual(['down', 'up', 'down', 'up']);
  });

  it('one that flips is pressed each time', () => {
    expect(steps(null, [0, 0xb0, 64, 127], [30, 0xb0, 64, 0], [40, 0xb0, 64, 127])).toEqual([
      'down',
      'press',
      'down',
    ]);
  });

  it('half a pedal’s many values are one press', () => {
    const sent = [70, 90, 127, 100, 64, 40, 0].map((value, i): Sent => [i / 50, 0xb0, 64, value]);
    expect(steps(null, ...sent).filter((step) => step !== 'nothing new')).toEqual(['down', 'up']);
  });

  it('modulation, expression, notes, programs and modes are not the foot’s', () => {
    expect(
      steps(null, [0, 0xb0, 1, 127], [0, 0xb0, 11, 127], [0, 0x90, 64, 100], [0, 0xc0, 3], [0, 0xb0, 123, 0]),
    ).toEqual([null, null, null, null, null]);
  });
});

describe('a switch that is learned', () => {
  it.each([
    [
      'a controller',
      [
        [0xb2, 80, 127],
        [0xb2, 80, 0],
      ],
      'controller 80 on channel 3',
      ['down', 'up'],
    ],
    [
      'one the other way round',
      [
        [0xb0, 64, 0],
        [0xb0, 64, 127],
      ],
      'controller 64 on channel 1, its low value is down',
      ['down', 'up'],
    ],
    [
      'one that tells no release',
      [[0xb0, 81, 127]],
      'controller 81 on channel 1, it sends presses only',
      ['press'],
    ],
    ['a program change', [[0xc1, 4]], 'program 5 on channel 2, it sends presses only', ['press']],
    [
      'a key',
      [
        [0x99, 36, 90],
        [0x89, 36, 0],
      ],
      'note 36 on channel 10',
      ['down', 'up'],
    ],
    [
      'a key let go by velocity 0',
      [
        [0x90, 24, 90],
        [0x90, 24, 0],
      ],
      'note 24 on channel 1',
      ['down', 'up'],
    ],
  ] as const)('%s', (_name, messages, words, told) => {
    const foot = learn(...messages);
    expect(foot && describeFoot(foot, en)).toBe(words);
    const sent = messages.map((bytes, i): Sent => [i / 5, ...bytes]);
    // Twice over: what was learned holds for every press.
    expect(steps(foot, ...sent, ...sent)).toEqual([...told, ...told]);
    expect(steps(foot, [0, 0xb0, 66, 127], [0, 0x90, 60, 90])).toEqual([null, null]);
  });

  it('one that flips between high and low is pressed at both', () => {
    const foot = learn([0xb0, 82, 127]);
    expect(steps(foot, [0, 0xb0, 82, 0], [0.5, 0xb0, 82, 127])).toEqual(['press', 'press']);
  });

  it('a key that only comes up, a bank number and a mode teach nothing', () => {
    expect(learn([0x80, 60, 0], [0xb0, 0, 1], [0xb0, 123, 0])).toBeNull();
  });
});

describe('the desk learns', () => {
  it('a switch that is let go, and nothing else hears it meanwhile', async () => {
    const w = await world();
    await w.midi.connect();
    const [learned, steps, notes] = [[] as LearnedFoot[], [] as string[], [] as number[]];
    w.midi.listen((message) => notes.push(message[0]!));
    w.midi.learnFoot((foot) => learned.push(foot));
    expect(w.midi.learning).toBe('a press');
    w.send(0xb0, 80, 0);
    expect(w.midi.learning).toBe('its release');
    w.send(0xb0, 80, 127);
    expect(w.midi.learning).toBeNull();
    expect(learned).toEqual([
      { kind: 'controller', channel: 0, number: 80, inverted: true, pressesOnly: false },
    ]);
    w.midi.onFoot((step) => steps.push(step), learned[0]!);
    w.send(0xb0, 80, 0);
    w.send(0xb0, 80, 127);
    w.send(0xb0, 64, 127);
    expect(steps).toEqual(['down', 'up']);
    expect(notes).toEqual([0xb0]);
  });

  it('one that says nothing more by waiting, and forgets when told', async () => {
    const w = await world();
    await w.midi.connect();
    const learned: LearnedFoot[] = [];
    w.midi.learnFoot((foot) => learned.push(foot));
    w.midi.forgetLearning();
    w.send(0xb0, 81, 127);
    expect([w.midi.learning, learned]).toEqual([null, []]);
    w.midi.learnFoot((foot) => learned.push(foot));
    w.send(0xb0, 81, 127);
    w.wait();
    expect(learned).toMatchObject([{ number: 81, pressesOnly: true }]);
  });
});
