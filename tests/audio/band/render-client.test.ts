/** The band's sounds fetched again after the network was away. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createBandRenderer } from '../../../src/audio/band/render-client.ts';
import type { FromRenderWorker, ToRenderWorker } from '../../../src/audio/band/render-messages.ts';
import { problem } from '../../../src/core/words/problem.ts';

/** What stands in for the browser's worker, and for the network that it needs. */
let network: 'there' | 'no kit' | 'no script' = 'there';
let started = 0;
class StandIn {
  onmessage: ((event: { data: FromRenderWorker }) => void) | null = null;
  onerror: ((event: object) => void) | null = null;
  readonly #hasScript = network !== 'no script';
  constructor() {
    started += 1;
    // A plain event without a message (HTML, "run a worker").
    if (!this.#hasScript) queueMicrotask(() => this.onerror?.({ type: 'error' }));
  }
  postMessage({ id, kind }: ToRenderWorker) {
    if (!this.#hasScript) return;
    const isRefused = kind === 'open' && network === 'no kit';
    queueMicrotask(() =>
      this.onmessage?.({
        data: isRefused
          ? { id, ok: false, reason: 'Failed to fetch', isNotLoaded: true }
          : { id, ok: true, result: null },
      }),
    );
  }
  terminate() {
    started -= 1;
  }
}

beforeEach(() => {
  started = 0;
  vi.stubGlobal('Worker', StandIn);
  vi.stubGlobal('location', { href: 'http://localhost/' });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the band’s sounds', () => {
  it.each(['no kit', 'no script'] as const)('are told where there is %s, and fetched again', async (lack) => {
    network = lack;
    const renderer = createBandRenderer('kit.sf3', 48_000);
    const refused = { ok: false, problem: problem('band.notLoaded') };
    expect(await renderer.ready()).toEqual(refused);
    expect(await renderer.line([], 27, { bpm: 100, startBeat: 0 })).toEqual(refused);
    network = 'there';
    expect(await renderer.ready()).toEqual({ ok: true, value: undefined });
    expect(await renderer.line([], 27, { bpm: 100, startBeat: 0 })).toMatchObject({ ok: true });
  });

  it('are fetched once where they are there', async () => {
    network = 'there';
    const renderer = createBandRenderer('kit.sf3', 48_000);
    expect(await renderer.ready()).toEqual({ ok: true, value: undefined });
    expect(await renderer.ready()).toEqual({ ok: true, value: undefined });
    expect(started).toBe(1);
    renderer.dispose();
    expect(started).toBe(0);
  });
});
