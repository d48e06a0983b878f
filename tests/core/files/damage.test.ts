import { english } from '../../english.ts';
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openAudio } from '../../../src/core/files/audio.ts';
import type { ByteSource } from '../../../src/core/files/bytes/bytes.ts';
import { readMidi } from '../../../src/core/files/notes/midi.ts';
import { collect, readAudio } from './collect.ts';

const fixture = (name: string) => readFileSync(new URL(`../../../fixtures/audio/${name}`, import.meta.url));
const ASCII = (text: string) => new TextEncoder().encode(text);

/** A sentence names the file first and ends as a sentence does. */
function expectSentence(sentence: string, name: string) {
  expect(sentence.startsWith(name)).toBe(true);
  expect(sentence).toMatch(/\.$/);
  expect(sentence).not.toMatch(/undefined|NaN Hz|\[object/);
}

describe('a file that is not a recording', () => {
  it.each([
    ['an empty file', new Uint8Array(0), /is empty/],
    ['text named .wav', ASCII('Dear diary, today I practised.\n'), /is text/],
    ['a picture', Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13), /picture \(PNG\)/],
    ['a JPEG', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 0x4a, 0x46), /picture \(JPEG\)/],
    ['an M4A file', ASCII('\0\0\0\x20ftypM4A \0\0\0\0'), /MP4 or M4A.*save it as WAV/],
    [
      'a MIDI file in RIFF',
      ASCII('RIFF\x2a\0\0\0RMIDdata\x16\0\0\0MThd'),
      /\.rmi.*save it as a MIDI file \(\.mid\)/,
    ],
    ['an AIFF file', ASCII('FORM\0\0\x10\0AIFFCOMM'), /AIFF/],
    ['a Wave64 file', Buffer.from('726966662e91cf11a5d628db04c10000', 'hex'), /Wave64.*save it as WAV/],
    ['a voice memo of a telephone', ASCII('#!AMR\n\x3c\x08'), /AMR.*save it as WAV/],
    // Layer II of MPEG-1, 192 kbit/s, 44.1 kHz (ISO/IEC 11172-3).
    [
      'an MP2 file',
      Uint8Array.of(0xff, 0xfd, 0xa4, 0x04, ...new Uint8Array(900).fill(7)),
      /MP2.*save it as WAV/,
    ],
    [
      'a video stream',
      Uint8Array.from({ length: 940 }, (_, k) => (k % 188 === 0 ? 0x47 : k % 5)),
      /MPEG.*save it as WAV/,
    ],
    ['a WebM file', Uint8Array.of(0x1a, 0x45, 0xdf, 0xa3, 1, 0, 0, 0), /WebM/],
    ['a zip archive', ASCII('PK\x03\x04\x14\0'), /zip/],
    ['zeros', new Uint8Array(5000), /zeros/],
    ['a list of beats', ASCII('time,chord\n0,C\n1,\n'), /--beats/],
    ['half a header', ASCII('RIFF\x24\0\0\0WAVEfmt '), /no samples/],
    ['an Opus file', ASCII(`OggS\0\x02${'\0'.repeat(20)}\x01\x13OpusHead\x01\x01${'\0'.repeat(9)}`), /Opus/],
    [
      'noise',
      Uint8Array.from({ length: 4000 }, (_, k) => (k * k * 31 + k * 7) % 251),
      /not a file that can be graded/,
    ],
  ])('%s is refused in one sentence', async (_, bytes, reason) => {
    const sentence = await readAudio('take.wav', bytes);
    if (typeof sentence !== 'string') throw new Error('was read');
    expectSentence(sentence, 'take.wav');
    expect(sentence).toMatch(reason);
  });

  it.each([
    [2, 16, /ADPCM/],
    [6, 8, /A-law/],
    [1, 64, /64-bit/],
  ])('WAV format %i of %i bits gets its sentence', async (format, bits, reason) => {
    const bytes = new Uint8Array(fixture('s16.wav'));
    new DataView(bytes.buffer).setUint16(20, format, true);
    new DataView(bytes.buffer).setUint16(34, bits, true);
    expect(await readAudio('take.wav', bytes)).toMatch(reason);
  });

  it.each([0, 3, 4])('a WAV header whose block align is %i against its format is told so', async (align) => {
    const bytes = new Uint8Array(fixture('s16.wav'));
    const right = await readAudio('take.wav', bytes.slice());
    new DataView(bytes.buffer).setUint16(32, align, true);
    const read = await readAudio('take.wav', bytes);
    if (typeof read === 'string' || typeof right === 'string') throw new Error('was not read');
    // SoX reads such a file by its format as well.
    expect(read.samples).toEqual(right.samples);
    expect(right.warnings).toEqual([]);
    expect(read.warnings).toEqual([
      expect.stringMatching(new RegExp(`take\\.wav contradicts itself.* 2 bytes.* ${align} by`)),
    ]);
  });

  it.each([4000, 384_000])('a rate of %i Hz is refused with a sentence that names it', async (rate) => {
    const bytes = new Uint8Array(fixture('s16.wav'));
    new DataView(bytes.buffer).setUint32(24, rate, true);
    expect(await readAudio('take.wav', bytes)).toMatch(new RegExp(`${rate} Hz.*8000 and 192000`));
  });
});

describe('a recording that is cut short', () => {
  it.each(['s24-stereo-extensible.wav', 'pluck.flac', 'pluck.mp3', 'pluck.ogg'])(
    '%s keeps what is there and says so',
    async (name) => {
      const whole = await readAudio(name, fixture(name));
      const bytes = fixture(name);
      const half = await readAudio(name, bytes.subarray(0, Math.floor(bytes.length * 0.7)));
      if (typeof whole === 'string' || typeof half === 'string') throw new Error('was not read');
      expect(half.samples.length).toBeGreaterThan(0);
      expect(half.samples.length).toBeLessThan(whole.samples.length);
      // Frames of a lossy codec overlap, so the last one before the cut may differ: leave it out.
      const sure = Math.max(1, half.samples.length - 2304);
      for (let k = 0; k < sure; k += 7) expect(half.samples[k]).toBeCloseTo(whole.samples[k]!, 5);
      expect(half.warnings).toEqual([expect.stringMatching(/cut short/)]);
    },
  );

  it('a damaged FLAC frame becomes silence and later sound keeps its time', async () => {
    const bytes = new Uint8Array(fixture('pluck.flac'));
    const whole = await readAudio('pluck.flac', bytes.slice());
    bytes.fill(0x55, 14000, 14040);
    const mended = await readAudio('pluck.flac', bytes);
    if (typeof whole === 'string' || typeof mended === 'string') throw new Error('was not read');
    expect(mended.samples).toHaveLength(whole.samples.length);
    const lost = [...whole.samples.keys()].filter((k) => mended.samples[k] !== whole.samples[k]);
    expect(lost.length).toBeGreaterThan(1000);
    // One frame, by the encoder's block size of 2304 at this rate, and silence all through it.
    expect(lost.at(-1)! - lost[0]!).toBeLessThan(2304);
    expect(lost.every((k) => mended.samples[k] === 0)).toBe(true);
    expect(mended.warnings).toEqual([expect.stringMatching(/damaged in one place/)]);
  });
});

describe('bytes of any kind', () => {
  const starts = [
    'RIFF\0\0\0\0WAVEfmt ',
    'fLaC',
    'OggS\0\x02',
    'ID3\x04\0\0\0\0\0\0',
    '\xff\xfb\x90\x00',
    '',
  ].map((start) => Uint8Array.from(start, (character) => character.charCodeAt(0)));

  it('never throw, and give a sentence or samples that are finite', async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...starts), fc.uint8Array({ maxLength: 600 }), async (start, rest) => {
        const result = await readAudio('take', Uint8Array.from([...start, ...rest]));
        if (typeof result === 'string') expectSentence(result, 'take');
        else expect(result.samples.every((sample) => Number.isFinite(sample))).toBe(true);
      }),
      { numRuns: 400, seed: 1 },
    );
  });

  it('put into real files never throw either', async () => {
    const names = ['pluck.flac', 'pluck.mp3', 'pluck.ogg', 's24-stereo-extensible.wav', 'odd-chunk.wav'];
    const files = names.map((name) => new Uint8Array(fixture(name)));
    await fc.assert(
      fc.asyncProperty(
        fc.nat({ max: files.length - 1 }),
        fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.nat({ max: 255 })), {
          maxLength: 30,
        }),
        async (which, changes) => {
          const bytes = files[which]!.slice();
          for (const [place, byte] of changes) bytes[Math.floor(place * (bytes.length - 1))] = byte;
          const result = await readAudio('take', bytes);
          if (typeof result === 'string') expectSentence(result, 'take');
          else expect(result.samples.every((sample) => Number.isFinite(sample))).toBe(true);
        },
      ),
      { numRuns: 150, seed: 2 },
    );
  });

  it('never throw as a MIDI file', () => {
    const head = ASCII('MThd\0\0\0\x06\0\x01\0\x01\0\x60MTrk\0\0\0\x40');
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 90 }), (rest) => {
        const result = readMidi(Uint8Array.from([...head, ...rest]), 'line.mid');
        if (!result.ok) expectSentence(english(result.problem), 'line.mid');
        else
          for (const note of result.value.notes)
            expect([note.onsetSeconds, note.offsetSeconds, note.midi].every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 2000, seed: 3 },
    );
  });
});

describe('a recording of two hours', () => {
  /** Two channels of 24 bits, made as they are read: at 48 kHz 2.07 GB that nobody has to keep. */
  function twoHours(sampleRate: number): ByteSource & { readonly largestRead: () => number } {
    const frames = 2 * 3600 * sampleRate;
    const header = new Uint8Array(fixture('s24-stereo-extensible.wav').subarray(0, 68));
    const view = new DataView(header.buffer);
    view.setUint32(24, sampleRate, true);
    view.setUint32(64, frames * 6, true);
    const size = header.length + frames * 6;
    let largest = 0;
    return {
      name: 'two-hours.wav',
      size,
      largestRead: () => largest,
      read(offset, length) {
        const bytes = new Uint8Array(Math.max(0, Math.min(length, size - offset)));
        largest = Math.max(largest, bytes.length);
        if (offset < header.length) bytes.set(header.subarray(offset, offset + bytes.length));
        return bytes;
      },
    };
  }

  it('is read to its end in small pieces', async () => {
    const source = twoHours(8000);
    const opened = await openAudio(source);
    if (!opened.ok) throw new Error(english(opened.problem));
    let samples = 0;
    for await (const block of opened.value.blocks(() => undefined)) samples += block.length;
    expect(samples).toBe(2 * 3600 * 8000);
    expect(source.largestRead()).toBeLessThan(1 << 18);
  });

  it('opens at once when it is of two gigabytes', async () => {
    const source = twoHours(48_000);
    expect(source.size).toBeGreaterThan(2e9);
    const opened = await openAudio(source);
    if (!opened.ok) throw new Error(english(opened.problem));
    expect(opened.value.expectedFrames).toBe(2 * 3600 * 48_000);
    expect(source.largestRead()).toBeLessThan(1 << 18);
  });

  it('that was stopped at once holds nothing, and says so', async () => {
    const bytes = fixture('s24-stereo-extensible.wav').subarray(0, 68);
    expect(await readAudio('take.wav', bytes)).toMatch(/no samples/);
  });
});

describe('a disk that fails', () => {
  it('rejects with its own error', async () => {
    const bytes = fixture('pluck.flac');
    let reads = 0;
    const source: ByteSource = {
      name: 'take.flac',
      size: bytes.length,
      read(offset, length) {
        if (++reads > 6) throw new Error('EIO');
        return bytes.subarray(offset, offset + length);
      },
    };
    await expect(
      (async () => {
        const opened = await openAudio(source);
        if (opened.ok) await collect(opened.value);
      })(),
    ).rejects.toThrow('EIO');
  });
});
