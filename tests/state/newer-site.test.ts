/** A newer build waits: it is told once, looked for seldom, and taken into use only when asked. */
import { describe, expect, it, vi } from 'vitest';
import { bad, good, type Outcome } from '../../src/core/base/outcome.ts';
import { NewerSite } from '../../src/state/newer-site.svelte.ts';
import type { SitePort } from '../../src/state/ports.ts';

async function opened(taken: Outcome<void> = good(undefined)) {
  let tell: () => void = () => undefined;
  const site = {
    onWaiting: (told: () => void) => void (tell = told),
    look: vi.fn(async () => undefined),
    takeOver: vi.fn(async () => taken),
  } satisfies SitePort;
  let now = 100;
  const newer = new NewerSite({ site: async () => site, nowSeconds: () => now });
  await newer.open();
  return { newer, site, arrives: () => tell(), pass: (seconds: number) => (now += seconds) };
}

describe('a newer site', () => {
  it('is told when it waits, until it is put away', async () => {
    const { newer, arrives, site } = await opened();
    expect(newer.waits).toBe(false);
    arrives();
    expect(newer.waits).toBe(true);
    expect(site.takeOver).not.toHaveBeenCalled();
    newer.putAway();
    expect(newer.waits).toBe(false);
  });

  it('is looked for once an hour at most', async () => {
    const { newer, site, pass } = await opened();
    pass(3599);
    await newer.look();
    expect(site.look).not.toHaveBeenCalled();
    pass(1);
    await newer.look();
    await newer.look();
    expect(site.look).toHaveBeenCalledTimes(1);
  });

  it('stays where another window is open, and says why', async () => {
    const { newer, arrives } = await opened(bad('site.otherWindow'));
    arrives();
    await newer.takeOver();
    expect(newer.problem).toEqual({ code: 'site.otherWindow' });
    expect(newer.waits).toBe(true);
  });

  it('is nothing where the browser keeps no site', async () => {
    const newer = new NewerSite({ site: async () => null, nowSeconds: () => 0 });
    await newer.open();
    await newer.look();
    await newer.takeOver();
    expect([newer.waits, newer.problem]).toEqual([false, null]);
  });
});
