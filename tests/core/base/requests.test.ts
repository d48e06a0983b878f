import { describe, expect, it } from 'vitest';
import { bad, good } from '../../../src/core/base/outcome.ts';
import { problem } from '../../../src/core/words/problem.ts';
import { Requests } from '../../../src/core/base/requests.ts';

describe('Requests', () => {
  it('match answers to questions by number, in any order', async () => {
    const requests = new Requests();
    const sent: number[] = [];
    const answers = ['a', 'b', 'c'].map(() => requests.ask<string>((id) => sent.push(id)));
    for (const id of [...sent].reverse()) requests.answer(id, good(`answer to ${id}`));
    expect(await Promise.all(answers)).toEqual(sent.map((id) => good(`answer to ${id}`)));
    requests.answer(99, good('nobody asked'));
    requests.answer(sent[0]!, good('too late'));
  });

  it('are all answered with the problem when the worker has stopped', async () => {
    const requests = new Requests();
    const open = requests.ask(() => undefined);
    requests.fail(problem('listener.stopped'));
    expect(await open).toEqual(bad('listener.stopped'));
    expect(await requests.ask(() => undefined)).toEqual(bad('listener.stopped'));
  });
});
