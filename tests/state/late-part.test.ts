/** A part of the program that is fetched late: quietly ahead, or at a press. */
import { describe, expect, it } from 'vitest';
import { LatePart } from '../../src/state/late-part.svelte.ts';

/** A part that comes when the test says so. */
function served() {
  const asked: { come(part: string): void; fail(): void }[] = [];
  const part = new LatePart(
    () =>
      new Promise<string>((come, fail) => {
        asked.push({ come, fail: () => fail(new Error('the server is gone')) });
      }),
  );
  return { asked, part };
}

const soon = () => new Promise((done) => setTimeout(done, 0));

describe('a part that is fetched late', () => {
  it('is fetched once, however often it is asked for', async () => {
    const { asked, part } = served();
    const ahead = part.fetchAhead();
    const used: string[] = [];
    part.use((there) => used.push(there));
    expect(part.isAwaited).toBe(true);
    asked[0]!.come('screens');
    await ahead;
    await soon();
    expect([part.now, part.isAwaited, used, asked.length]).toEqual(['screens', false, ['screens'], 1]);
  });

  it('acts at once where it is there: a gesture of the player still counts', async () => {
    const { asked, part } = served();
    const ahead = part.fetchAhead();
    asked[0]!.come('screens');
    await ahead;
    const used: string[] = [];
    part.use((there) => used.push(there));
    expect(used).toEqual(['screens']);
  });

  it('does what was pressed first, and nothing twice, while it is awaited', async () => {
    const { asked, part } = served();
    const used: string[] = [];
    part.use(() => used.push('start'));
    part.use(() => used.push('demo'));
    asked[0]!.come('screens');
    await soon();
    expect(used).toEqual(['start']);
  });

  it('says why a press did nothing, and tries again at the next', async () => {
    const { asked, part } = served();
    const used: string[] = [];
    part.use((there) => used.push(there));
    asked[0]!.fail();
    await soon();
    expect([part.problem, part.isAwaited, used]).toEqual([{ code: 'site.partMissing' }, false, []]);
    part.use((there) => used.push(there));
    expect(part.problem).toBeNull();
    asked[1]!.come('screens');
    await soon();
    expect(used).toEqual(['screens']);
  });

  it('tells nothing of a failure that nobody waited for', async () => {
    const { asked, part } = served();
    const ahead = part.fetchAhead();
    asked[0]!.fail();
    await ahead;
    expect([part.problem, part.now]).toEqual([null, null]);
  });
});
