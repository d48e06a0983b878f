import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { PcmFile, type SyncFile } from '../../src/storage/pcm-file.ts';
import { ramp } from './fakes.ts';

/** A file that holds so many bytes. It counts what is safe only after a flush, as the standard has it. */
function fakeFile(room: number, full: 'short' | 'throws') {
  let bytes = new Uint8Array(0);
  let safe = new Uint8Array(0);
  const file: SyncFile = {
    write: (data, { at }) => {
      const wanted = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
      if (at + wanted.length > room && full === 'throws')
        throw Object.assign(new Error('no room'), { name: 'QuotaExceededError' });
      const fits = wanted.subarray(0, Math.max(0, room - at));
      const next = new Uint8Array(Math.max(bytes.length, at + fits.length));
      next.set(bytes);
      next.set(fits, at);
      bytes = next;
      return fits.length;
    },
    truncate: (size) => {
      bytes = bytes.slice(0, size);
    },
    flush: () => {
      safe = bytes.slice();
    },
    close: () => undefined,
  };
  return { file, safe: () => new Int16Array(safe.buffer.slice(0)) };
}

describe('PcmFile', () => {
  it('makes every append safe, one after the other', () => {
    const { file, safe } = fakeFile(Infinity, 'short');
    const pcm = new PcmFile(file);
    for (let i = 0; i < 5; i++) {
      expect(pcm.append(ramp(100, i * 100) as Int16Array<ArrayBuffer>).ok).toBe(true);
      expect(safe()).toEqual(ramp(100 * (i + 1)));
    }
  });

  it.each(['short', 'throws'] as const)('keeps whole samples when the disk fills up (write %s)', (way) => {
    const { file, safe } = fakeFile(301, way);
    const pcm = new PcmFile(file);
    expect(pcm.append(ramp(100) as Int16Array<ArrayBuffer>).ok).toBe(true);
    const full = pcm.append(ramp(100, 100) as Int16Array<ArrayBuffer>);
    expect(full).toMatchObject({ ok: false });
    expect(!full.ok && english(full.problem)).toContain('disk is full');
    expect(safe()).toEqual(ramp(way === 'short' ? 150 : 100));
  });
});
