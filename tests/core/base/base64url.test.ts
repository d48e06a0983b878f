import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64Url, toBase64Url } from '../../../src/core/base/base64url.ts';

describe('base64url', () => {
  it('writes the test vectors of RFC 4648, section 10, without their padding', () => {
    const vectors = {
      '': '',
      f: 'Zg',
      fo: 'Zm8',
      foo: 'Zm9v',
      foob: 'Zm9vYg',
      fooba: 'Zm9vYmE',
      foobar: 'Zm9vYmFy',
    };
    for (const [text, written] of Object.entries(vectors)) {
      expect(toBase64Url(Buffer.from(text))).toBe(written);
      expect(Buffer.from(fromBase64Url(written)!).toString()).toBe(text);
    }
  });

  it('agrees with Node on any bytes, and comes back', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const text = toBase64Url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64Url(text)).toEqual(bytes);
      }),
    );
  });

  it.each(['A', 'AAAAA', 'AA=', 'A+AA', 'A/AA', 'AA A', 'ÄAAA'])('refuses %j', (text) => {
    expect(fromBase64Url(text)).toBeNull();
  });
});
