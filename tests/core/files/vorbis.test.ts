/** Ogg Vorbis in pieces: none lost, none doubled, whatever the blocks are where pieces meet. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { chance } from '../../../src/core/base/random.ts';
import { bytesInMemory } from '../../../src/core/files/bytes/bytes.ts';
import { isIntact, oggPackets, oggPages } from '../../../src/core/files/sound/ogg-pages.ts';
import { openVorbis } from '../../../src/core/files/sound/vorbis.ts';
import {
  blockReader,
  longModes,
  vorbisIdentification,
} from '../../../src/core/files/sound/vorbis-headers.ts';
import { isInstalled, needs } from '../../needs.ts';
import { readAudio } from './collect.ts';
import { largestDifference, soxDecodes, soxEncodes, struckStrings } from './vorbis-made.ts';

const pluck = () =>
  new Uint8Array(readFileSync(new URL('../../../fixtures/audio/pluck.ogg', import.meta.url)));

async function packetsOf(bytes: Uint8Array) {
  const packets = [];
  const serial = new DataView(bytes.buffer).getUint32(14, true);
  for await (const packet of oggPackets(bytesInMemory('pluck.ogg', bytes), serial, () => undefined))
    packets.push(packet);
  return packets;
}

describe('the pages and packets of an Ogg file', () => {
  it('carry the check sum of their standard, which one changed bit breaks', async () => {
    const bytes = pluck();
    for await (const page of oggPages(bytesInMemory('pluck.ogg', bytes), () => undefined)) {
      expect(isIntact(page)).toBe(true);
      const changed = page.bytes.slice();
      changed[changed.length - 1]! ^= 1;
      expect(isIntact({ bytes: changed })).toBe(false);
    }
  });

  it('tell how long every packet sounds: in all as long as the time of the last page', async () => {
    const packets = await packetsOf(pluck());
    const told = vorbisIdentification(packets[0]!.bytes)!;
    // libvorbis encodes with blocks of 256 and 2048 from 16 kHz up (its own tables).
    expect(told.blockFrames[1] / told.blockFrames[0]).toBeGreaterThan(1);
    const modes = longModes(packets[2]!.bytes)!;
    expect(modes).toEqual([false, true]);
    const blocks = packets.slice(3).map(({ bytes }) => blockReader(told, modes)(bytes)!);
    const frames = blocks.reduce(
      (sum, { frames }, i) => sum + (i === 0 ? 0 : (blocks[i - 1]!.frames + frames) / 4),
      0,
    );
    const end = packets.at(-1)!.granule!;
    expect(frames).toBeGreaterThanOrEqual(end);
    expect(frames - end).toBeLessThan(told.blockFrames[1]);
  });
});

describe('an Ogg file', () => {
  it('whose middle is damaged keeps its length: what is lost is silence', async () => {
    const whole = await readAudio('pluck.ogg', pluck());
    if (typeof whole === 'string') throw new Error(whole);
    const bytes = pluck();
    const pages: number[] = [];
    for await (const page of oggPages(bytesInMemory('', bytes), () => undefined))
      pages.push(page.bytes.length);
    // The third page from the end: the time of the last page is that of a stream that is cut off, in mid-block.
    const end = bytes.length - pages.at(-1)! - pages.at(-2)!;
    expect(pages.length).toBeGreaterThan(5);
    bytes[end - 10]! ^= 0x55;
    const mended = await readAudio('pluck.ogg', bytes);
    if (typeof mended === 'string') throw new Error(mended);
    expect(mended.samples.length).toBe(whole.samples.length);
    expect(mended.samples.at(-1)).toBeCloseTo(whole.samples.at(-1)!, 6);
    expect(mended.warnings).toEqual([expect.stringMatching(/damaged/)]);
  });

  it('whose headers are damaged is refused at once, and no silence', async () => {
    for (const at of [40, 200, 1500]) {
      const bytes = pluck();
      bytes[at]! ^= 0xff;
      expect(await readAudio('take.ogg', bytes)).toMatch(/^take\.ogg .*\.$/);
    }
  });
});

describe('pieces of an Ogg file', needs(isInstalled('sox'), 'SoX is not installed.'), () => {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-ogg-'));
  it.each([
    [{ sampleRate: 44_100, channels: 2 }, 2],
    [{ sampleRate: 22_050, channels: 1 }, 8],
  ])('are what sox decodes, frame by frame: %o, quality %i', async (kind, quality) => {
    const path = join(folder, `${quality}.ogg`);
    const made = struckStrings({ ...kind, seconds: 5, chance: chance(quality) });
    writeFileSync(path, soxEncodes(made, kind, quality));
    const expected = soxDecodes(path);
    for (const pieceBytes of [2048, 9000, 1 << 20])
      expect(
        await largestDifference(openVorbis(bytesInMemory(path, readFileSync(path)), pieceBytes), expected),
      ).toBeLessThan(1e-3);
    rmSync(path);
  });
});

describe('streams that are chained in one file (RFC 3533, section 4)', () => {
  const joined = (...parts: readonly Uint8Array[]) => new Uint8Array(Buffer.concat(parts));

  it('are heard one after the other', async () => {
    const one = await readAudio('pluck.ogg', pluck());
    const both = await readAudio('pluck.ogg', joined(pluck(), pluck()));
    if (typeof one === 'string' || typeof both === 'string') throw new Error('was not read');
    expect(both.warnings).toEqual([]);
    expect(both.samples).toHaveLength(2 * one.samples.length);
    expect(both.samples.subarray(one.samples.length)).toEqual(one.samples);
  });

  it(
    'of another sample rate behind the first are told, and left out',
    needs(isInstalled('sox'), 'SoX is not installed.'),
    async () => {
      const kind = { sampleRate: 44_100, channels: 1 };
      const other = soxEncodes(struckStrings({ ...kind, seconds: 1, chance: chance(3) }), kind, 3);
      const one = await readAudio('pluck.ogg', pluck());
      const both = await readAudio('pluck.ogg', joined(pluck(), other));
      if (typeof one === 'string' || typeof both === 'string') throw new Error('was not read');
      expect(one.sampleRate).not.toBe(kind.sampleRate);
      expect(both.samples).toEqual(one.samples);
      expect(both.warnings).toEqual([expect.stringMatching(/another recording behind the first/)]);
    },
  );
});

it(
  'an Ogg file that begins with a skeleton is heard as the same one without',
  needs(isInstalled('oggenc', '--version') && isInstalled('sox'), 'oggenc or SoX is not installed.'),
  async () => {
    const folder = mkdtempSync(join(tmpdir(), 'landfall-ogg-'));
    try {
      const [wav, plain, described] = ['a.wav', 'a.ogg', 'b.ogg'].map((name) => join(folder, name)) as [
        string,
        string,
        string,
      ];
      spawnSync('sox', `-n -r 44100 -b 16 ${wav} synth 0.5 pluck 220`.split(' '));
      spawnSync('oggenc', ['-Q', '-s', '7', '-o', plain, wav]);
      spawnSync('oggenc', ['-Q', '-s', '7', '-k', '-o', described, wav]);
      const bytes = new Uint8Array(readFileSync(described));
      expect(Buffer.from(bytes.subarray(28, 35)).toString('latin1')).toBe('fishead');
      const [one, other] = [
        await readAudio('a.ogg', new Uint8Array(readFileSync(plain))),
        await readAudio('b.ogg', bytes),
      ];
      if (typeof one === 'string' || typeof other === 'string') throw new Error(String(other));
      expect(other.samples).toEqual(one.samples);
      expect(other.warnings).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  },
);
