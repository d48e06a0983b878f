import { afterEach, describe, expect, it, vi } from 'vitest';
import { good } from '../../src/core/base/outcome.ts';
import { OpfsWriter } from '../../src/storage/opfs-sounds.ts';
import type { PcmFileAnswer, PcmFileRequest } from '../../src/storage/pcm-file.worker.ts';
import { ramp } from './fakes.ts';

afterEach(() => vi.unstubAllGlobals());

describe('the worker that writes a sound', () => {
  it('is given the same memory again and again, however long the take', async () => {
    const given = new Set<ArrayBufferLike>();
    const written: number[] = [];
    const worker = {
      onmessage: (_: MessageEvent<PcmFileAnswer>) => undefined,
      terminate: () => undefined,
      postMessage: (request: PcmFileRequest) => {
        const answer = { id: request.id, outcome: good(undefined) };
        if (request.kind !== 'append')
          return queueMicrotask(() => worker.onmessage({ data: answer } as MessageEvent));
        given.add(request.samples.buffer);
        written.push(...request.samples);
        queueMicrotask(() =>
          worker.onmessage({ data: { ...answer, written: request.samples } } as MessageEvent),
        );
      },
    };
    const writer = new OpfsWriter(worker as unknown as Worker);
    for (let i = 0; i < 100; i++) await writer.append(ramp(50, 50 * i));
    // The last piece of a take is shorter.
    await writer.append(ramp(20, 5000));
    expect(written).toEqual([...ramp(5020)]);
    expect(given.size).toBe(2);
  });

  it('hands back what it was given, written or not', async () => {
    const sent: { answer: PcmFileAnswer; transfer: readonly unknown[] }[] = [];
    const page = {
      onmessage: (_: { data: PcmFileRequest }): void | Promise<void> => undefined,
      postMessage: (answer: PcmFileAnswer, options?: { transfer: readonly unknown[] }) =>
        void sent.push({ answer, transfer: options?.transfer ?? [] }),
    };
    vi.stubGlobal('self', page);
    await import('../../src/storage/pcm-file.worker.ts');
    const samples = new Int16Array(8);
    // No file is open: the append fails, and its memory still comes back.
    await page.onmessage({ data: { id: 1, kind: 'append', samples } });
    expect(sent).toMatchObject([{ answer: { id: 1, outcome: { ok: false } } }]);
    expect(sent[0]?.answer.written).toBe(samples);
    expect(sent[0]?.transfer).toEqual([samples.buffer]);
  });
});
