import { describe, expect, it } from 'vitest';
import { pageAt } from '../../../src/ui/playing/crossing.ts';

describe('the page of the crossing', () => {
  it('runs from change to change, its edge the shore', () => {
    expect(pageAt(5, 4, 8, 4)).toEqual({ fromBeat: 4, toBeat: 8, shore: true });
  });

  it('is cut after two bars; only the last page has the shore', () => {
    expect(pageAt(3, 0, 16, 4)).toEqual({ fromBeat: 0, toBeat: 8, shore: false });
    expect(pageAt(9, 0, 16, 4)).toEqual({ fromBeat: 8, toBeat: 16, shore: true });
  });

  it('goes on where nothing changes any more', () => {
    expect(pageAt(20, 0, null, 4)).toEqual({ fromBeat: 16, toBeat: 24, shore: false });
  });
});
