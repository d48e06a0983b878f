/**
 * Two hundred bad files, made from a good one by seed. Each is refused by one sentence in both languages, or read as the
 * very take that it was made from (a changed date of a part changes nothing); none throws and none takes long.
 */
import { expect, it } from 'vitest';
import { strFromU8, strToU8, unzipSync } from 'fflate';
import { chance, type Chance } from '../../../src/core/base/random.ts';
import { languages } from '../../../src/core/words/catalogues.ts';
import { describeProblem } from '../../../src/core/words/problem.ts';
import { ZipWriter } from '../../../src/core/files/zip/write-zip.ts';
import { readTakeFile } from '../../../src/core/take-file/read-take-file.ts';
import { fileOf, joined, madeTake, soundOf, sourceOf } from './made-take.ts';
import { processorTime } from '../../processor-time.ts';

const take = madeTake();
const file = fileOf(take);
const sound = take.samples!.join();
const parts = unzipSync(file);

/** The file packed by other hands: names and contents as given, in this order. */
function packed(entries: readonly (readonly [string, Uint8Array])[]): Uint8Array<ArrayBuffer> {
  const zip = new ZipWriter('2026-03-01T10:00:00Z');
  const pieces = entries.flatMap(([name, bytes]) =>
    zip.entry({ name, parts: [new Uint8Array(bytes)], pack: true }),
  );
  return joined([...pieces, ...zip.finish()]);
}

const whole = (random: Chance, most: number) => Math.floor(random.next() * most);

/** Where a record of the archive with this mark stands. */
const placesOf = (mark: string): number[] => {
  const places: number[] = [];
  const text = Buffer.from(file);
  for (let at = text.indexOf(mark, 0, 'latin1'); at >= 0; at = text.indexOf(mark, at + 1, 'latin1'))
    places.push(at);
  return places;
};

const ODD_VALUES: readonly unknown[] = [
  null,
  -1,
  1e308,
  '',
  '../../etc/passwd',
  '<script>alert(1)</script>',
  [],
  {},
  true,
  [[[[[[]]]]]],
  'x'.repeat(99_999),
];

type Json = Record<string, unknown>;

/** A value somewhere in the JSON replaced, or taken away. */
function spoilt(json: Json, random: Chance): Json {
  const key = random.pick(Object.keys(json));
  const inner = json[key];
  if (typeof inner === 'object' && inner !== null && !Array.isArray(inner) && random.next() < 0.7)
    return { ...json, [key]: spoilt(inner as Json, random) };
  const { [key]: _, ...rest } = json;
  return random.next() < 0.3 ? rest : { ...rest, [key]: random.pick(ODD_VALUES) };
}

const spoiltPart = (part: string, random: Chance) => {
  const json = JSON.parse(strFromU8(parts[part]!)) as Json;
  return packed(Object.entries({ ...parts, [part]: strToU8(JSON.stringify(spoilt(json, random))) }));
};

function withBytes(change: (bytes: Uint8Array) => void): Uint8Array {
  const bytes = file.slice();
  change(bytes);
  return bytes;
}

const WAYS: Readonly<Record<string, (random: Chance) => Uint8Array>> = {
  'cut anywhere': (random) => file.slice(0, whole(random, file.length)),
  'its beginning lost': (random) => file.slice(1 + whole(random, 1000)),
  'a stretch left out': (random) => {
    const at = whole(random, file.length);
    return joined([file.slice(0, at), file.slice(at + 1 + whole(random, 500))]);
  },
  'a stretch put in': (random) => {
    const at = whole(random, file.length);
    const junk = Uint8Array.from({ length: 1 + whole(random, 300) }, () => whole(random, 256));
    return joined([file.slice(0, at), junk, file.slice(at)]);
  },
  'bytes changed': (random) =>
    withBytes((bytes) => {
      for (let n = whole(random, 20); n >= 0; n--) bytes[whole(random, bytes.length)] = whole(random, 256);
    }),
  'bytes of the directory changed': (random) =>
    withBytes((bytes) => {
      const start = placesOf('PK\x01\x02')[0]!;
      for (let n = whole(random, 5); n >= 0; n--)
        bytes[start + whole(random, bytes.length - start)] = whole(random, 256);
    }),
  'bytes of a local header changed': (random) =>
    withBytes((bytes) => {
      const start = random.pick(placesOf('PK\x03\x04'));
      for (let n = whole(random, 4); n >= 0; n--) bytes[start + whole(random, 40)] = whole(random, 256);
    }),
  'sizes that lie': (random) =>
    withBytes((bytes) => {
      const at = random.pick(placesOf('PK\x01\x02')) + random.pick([20, 24, 42]);
      new DataView(bytes.buffer).setUint32(at, Math.floor(random.next() * 2 ** 32), true);
    }),
  'parts that share bytes': (random) =>
    withBytes((bytes) => {
      const [first, ...others] = placesOf('PK\x01\x02') as [number, ...number[]];
      bytes.copyWithin(random.pick(others) + 42, first + 42, first + 46);
    }),
  'take.json spoilt': (random) => spoiltPart('take.json', random),
  'report.json spoilt': (random) => spoiltPart('report.json', random),
  'parts that climb or can’t be read': (random) => {
    const odd = random.pick([
      '../a',
      'a/../../b',
      '/etc/passwd',
      'C:/a',
      'a\\..\\b',
      'a\u0000b',
      '\u001b[2J',
      '',
    ]);
    return packed([...Object.entries(parts), [odd, strToU8('a')]]);
  },
  'a part twice': (random) => {
    const [name, bytes] = random.pick(Object.entries(parts));
    return packed([...Object.entries(parts), [name, bytes]]);
  },
  'a part left out': (random) => {
    const gone = random.pick(['take.json', 'line.wav']);
    return packed(Object.entries(parts).filter(([name]) => name !== gone && name !== 'report.json'));
  },
  'parts changed for one another': (random) => {
    const names = Object.keys(parts);
    const shift = 1 + whole(random, names.length - 1);
    return packed(names.map((name, k) => [name, parts[names[(k + shift) % names.length]!]!]));
  },
  'a part of nothing but one byte, enormous': (random) => {
    const part = random.pick(['take.json', 'report.json', 'line.wav', 'band.wav']);
    return packed(Object.entries({ ...parts, [part]: new Uint8Array(5_000_000).fill(whole(random, 256)) }));
  },
};

it('is refused by a sentence, or is still the same take: two hundred of them', async () => {
  const ways = Object.entries(WAYS);
  const counts = { refused: 0, same: 0 };
  const codes = new Set<string>();
  for (let seed = 0; seed < 208; seed++) {
    const [way, make] = ways[seed % ways.length]!;
    const bytes = make(chance(seed, 16));
    const told = `${way}, seed ${seed}`;
    const { result: read, milliseconds } = await processorTime(() =>
      readTakeFile(sourceOf(bytes, 'gift.landfall')),
    );
    expect(milliseconds, told).toBeLessThan(3000);
    if (read.ok) {
      counts.same += 1;
      // As one comparison: the test runner takes a tenth of a second to compare sample by sample.
      expect(Int16Array.from(await soundOf(read.value.line)).join() === sound, told).toBe(true);
      continue;
    }
    counts.refused += 1;
    codes.add(read.problem.code);
    for (const words of Object.values(languages)) {
      const sentence = describeProblem(read.problem, words);
      expect(sentence, told).toContain('gift.landfall');
      expect(sentence, told).not.toMatch(/undefined|NaN|\[object/);
      expect(sentence.length, told).toBeLessThan(600);
    }
  }
  expect(counts.refused).toBeGreaterThan(140);
  expect(codes.size).toBeGreaterThan(8);
});
