import { afterEach, describe, expect, it, vi } from 'vitest';
import { browserLocks } from '../../src/storage/locks.ts';

afterEach(() => vi.unstubAllGlobals());

describe('the locks of the browser (Web Locks, W3C)', () => {
  it('let a take begin where the browser refuses them', async () => {
    const request = () => Promise.reject(new DOMException('not here', 'SecurityError'));
    const query = () => Promise.reject(new DOMException('not here', 'SecurityError'));
    vi.stubGlobal('navigator', { locks: { request, query } });
    const release = await browserLocks().hold('a take');
    expect(() => release()).not.toThrow();
    expect(await browserLocks().held()).toEqual(new Set());
  });
});
