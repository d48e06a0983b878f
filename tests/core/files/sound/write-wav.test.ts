import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isInstalled, needs } from '../../../needs.ts';
import { fromPcm16, toPcm16 } from '../../../../src/core/base/pcm16.ts';
import { writeWav } from '../../../../src/core/files/sound/write-wav.ts';

const samples = Int16Array.from({ length: 1000 }, (_, i) => Math.round(30_000 * Math.sin(i / 9)));

describe('16-bit samples', () => {
  it('are unchanged by a conversion to floating point and back, all 65,536 of them', () => {
    const all = Int16Array.from({ length: 65_536 }, (_, i) => i - 32_768);
    expect(toPcm16(fromPcm16(all))).toEqual(all);
  });

  it('limit values beyond full scale, and convert NaN to 0', () => {
    expect([...toPcm16(Float32Array.of(1, 1.5, -1, -2, NaN))]).toEqual([32767, 32767, -32768, -32768, 0]);
  });
});

describe('writeWav', () => {
  it('writes the header that the 1991 specification gives', () => {
    const bytes = Buffer.from(writeWav(samples, 44_100));
    expect(bytes.length).toBe(44 + 2000);
    expect(bytes.toString('latin1', 0, 4) + bytes.toString('latin1', 8, 16)).toBe('RIFFWAVEfmt ');
    expect(bytes.readUInt32LE(4)).toBe(36 + 2000);
    expect([20, 22, 32, 34].map((at) => bytes.readUInt16LE(at))).toEqual([1, 1, 2, 16]);
    expect([24, 28, 40].map((at) => bytes.readUInt32LE(at))).toEqual([44_100, 88_200, 2000]);
    expect(bytes.readInt16LE(44 + 2 * 7)).toBe(samples[7]);
  });

  it('marks the first downbeat with a cue point behind the sound', () => {
    const bytes = Buffer.from(writeWav(samples, 44_100, 441));
    expect(bytes.readUInt32LE(4)).toBe(bytes.length - 8);
    expect(bytes.toString('latin1', 2044, 2048)).toBe('cue ');
    expect([2048, 2052, 2060, 2076].map((at) => bytes.readUInt32LE(at))).toEqual([28, 1, 441, 441]);
  });

  // Outside: SoX.
  it('is read by SoX with every sample in place', needs(isInstalled('sox'), 'SoX is not installed.'), () => {
    const folder = mkdtempSync(join(tmpdir(), 'landfall-wav-'));
    try {
      for (const cue of [null, 441]) {
        const file = join(folder, 'take.wav');
        writeFileSync(file, writeWav(samples, 44_100, cue));
        const raw = execFileSync('sox', [file, '-t', 'raw', '-e', 'signed', '-b', '16', '-']);
        expect(new Int16Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.length))).toEqual(
          samples,
        );
        expect(execFileSync('sox', ['--i', '-r', file]).toString().trim()).toBe('44100');
      }
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
