import { describe, expect, it } from 'vitest';
import { listen, Listener } from '../../src/core/listen.ts';
import { hzOf, plucked, seededNoise, silence, sum, tone } from './listen/sounds.ts';

const rate = 48000;

/** Five plucked notes, a quarter of a second each, after half a second of silence. */
const keys = [57, 60, 64, 62, 69];
function line(sampleRate: number): Float32Array {
  const parts = keys.map((key, i) => ({ at: 0.5 + 0.25 * i, sound: plucked(hzOf(key), 0.24, sampleRate) }));
  return sum(2.2, sampleRate, parts, seededNoise(2.2, sampleRate, 1e-4));
}

describe('a plucked line', () => {
  it.each([8000, 11025, 16000, 22050, 44100, 48000, 96000, 192000])('is heard at %i Hz', (sampleRate) => {
    const notes = listen(line(sampleRate), sampleRate);
    expect(notes.map((note) => Math.round(note.midi))).toEqual(keys);
    notes.forEach((note, i) => {
      expect(Math.abs(note.onsetSeconds - (0.5 + 0.25 * i))).toBeLessThan(0.012);
      expect(Math.abs(note.midi - keys[i]!)).toBeLessThan(0.05);
      expect(note.attack).toBe('struck');
      expect(note.bendSemitones).toBe(0);
    });
  });

  it.each([0, 0.003, 0.02])('is heard from a recording that begins %d s before its first note', (lead) => {
    const notes = listen(line(rate).subarray((0.5 - lead) * rate), rate);
    expect(notes.map((note) => Math.round(note.midi))).toEqual(keys);
    expect(Math.abs(notes[0]!.onsetSeconds - lead)).toBeLessThan(0.012);
    expect(notes[0]!.onsetSeconds).toBeGreaterThanOrEqual(0);
  });

  it('is heard from the middle of a note on', () => {
    const notes = listen(line(rate).subarray(0.6 * rate), rate);
    expect(notes.map((note) => Math.round(note.midi))).toEqual(keys);
  });

  it.each([-40, 0, 12])('is heard at %i dB against −6 dBFS, clipped where it must be', (db) => {
    const gained = line(rate).map((x) => Math.max(-1, Math.min(1, 2 * x * 10 ** (db / 20))));
    expect(listen(gained, rate).map((note) => Math.round(note.midi))).toEqual(keys);
  });

  it.each([1, 64, 128, 1000, 4097])('gives the same notes in pieces of %i frames', (piece) => {
    const samples = line(rate);
    const listener = new Listener({ sampleRate: rate });
    for (let i = 0; i < samples.length; i += piece) listener.push(samples.subarray(i, i + piece));
    expect(listener.finish()).toEqual(listen(samples, rate));
  });

  it('hands every note out live, once, soon after its attack', () => {
    const samples = line(rate);
    const listener = new Listener({ sampleRate: rate });
    const live: { midi: number; late: number }[] = [];
    for (let i = 0; i < samples.length; i += 128) {
      listener.push(samples.subarray(i, i + 128));
      for (const note of listener.takeNotes())
        live.push({ midi: Math.round(note.midi), late: (i + 128) / rate - note.onsetSeconds });
    }
    const final = listener.finish();
    for (const note of listener.takeNotes()) live.push({ midi: Math.round(note.midi), late: 0 });
    expect(live.map((note) => note.midi)).toEqual(final.map((note) => Math.round(note.midi)));
    // Measured: 0.392 s at most. The network looks 64 ms ahead and the decoder 0.22 s; the live name waits for neither.
    for (const note of live) expect(note.late).toBeLessThan(0.4);
  });

  it('reads the pitch within 80 ms of the attack', () => {
    const samples = line(rate);
    const listener = new Listener({ sampleRate: rate });
    listener.push(samples.subarray(0, Math.round(0.58 * rate)));
    expect(Math.abs(listener.reading.midi! - 57)).toBeLessThan(0.5);
  });

  it('leaves the samples as they are, and hears the same behind a view', () => {
    const samples = line(rate);
    const framed = new Float32Array(samples.length + 20).fill(0.9);
    framed.set(samples, 10);
    const heard = listen(framed.subarray(10, framed.length - 10), rate);
    expect(framed.slice(0, 10).every((x) => x === Math.fround(0.9))).toBe(true);
    expect(framed.slice(10, -10)).toEqual(samples);
    expect(heard).toEqual(listen(samples, rate));
  });
});

describe('what is no note', () => {
  it('silence, an empty take', () => {
    expect(listen(silence(2, rate), rate)).toEqual([]);
    expect(listen(new Float32Array(0), rate)).toEqual([]);
  });

  it('noise, and hum of 50 and 60 Hz with its harmonics', () => {
    expect(listen(seededNoise(10, rate, 0.01), rate)).toEqual([]);
    for (const hz of [50, 60]) {
      const hum = sum(
        10,
        rate,
        [{ at: 0, sound: tone(hz, 10, rate, [1, 0.5, 0.4, 0.2, 0.1]) }],
        seededNoise(10, rate, 1e-3),
      );
      expect(
        listen(
          hum.map((x) => x * 0.02),
          rate,
        ),
      ).toEqual([]);
    }
  });

  it('samples that are not finite are silence and poison nothing', () => {
    const samples = line(rate);
    const broken = samples.slice();
    broken[100] = NaN;
    broken[200] = Infinity;
    broken[300] = -Infinity;
    const heard = listen(broken, rate);
    expect(heard.map((note) => Math.round(note.midi))).toEqual(keys);
    expect(listen(new Float32Array(rate).fill(NaN), rate)).toEqual([]);
  });
});

describe('how notes begin, move and shake', () => {
  const from = (shape: (t: number) => number, seconds: number) => {
    const samples = plucked((t) => hzOf(shape(t)), seconds, rate);
    return listen(
      sum(seconds + 0.6, rate, [{ at: 0.3, sound: samples }], seededNoise(seconds + 0.6, rate, 1e-4)),
      rate,
    );
  };

  it('the same pitch struck again is two notes', () => {
    const parts = [0.3, 0.6].map((at) => ({ at, sound: plucked(220, 0.29, rate) }));
    const notes = listen(sum(1.2, rate, parts, seededNoise(1.2, rate, 1e-4)), rate);
    expect(notes.map((note) => Math.round(note.midi))).toEqual([57, 57]);
    expect(Math.abs(notes[1]!.onsetSeconds - 0.6)).toBeLessThan(0.012);
  });

  it('a hammer-on is two notes, the second legato', () => {
    const notes = from((t) => (t < 0.3 ? 60 : 62), 0.7);
    expect(notes.map((note) => Math.round(note.midi))).toEqual([60, 62]);
    expect(notes[1]!.attack).toBe('legato');
    expect(Math.abs(notes[1]!.onsetSeconds - 0.6)).toBeLessThan(0.03);
  });

  it('a bend is one note at the pitch where it arrives', () => {
    const notes = from((t) => 67 + 2 * Math.max(0, Math.min(1, (t - 0.1) / 0.2)), 1);
    expect(notes).toHaveLength(1);
    expect(Math.abs(notes[0]!.midi - 69)).toBeLessThan(0.1);
    expect(Math.abs(notes[0]!.bendSemitones - 2)).toBeLessThan(0.3);
  });

  it('a quarter-tone bend that stays there keeps its cents', () => {
    const notes = from((t) => 63 + 0.4 * Math.max(0, Math.min(1, (t - 0.1) / 0.1)), 1);
    expect(notes).toHaveLength(1);
    expect(Math.abs(notes[0]!.midi - 63.4)).toBeLessThan(0.06);
  });

  it('vibrato is one note at its centre, with rate and depth', () => {
    const notes = from((t) => 69 + 0.3 * Math.sin(2 * Math.PI * 5.5 * t), 1.2);
    expect(notes).toHaveLength(1);
    expect(Math.abs(notes[0]!.midi - 69)).toBeLessThan(0.06);
    expect(Math.abs(notes[0]!.vibrato!.rateHz - 5.5)).toBeLessThan(0.4);
    expect(Math.abs(notes[0]!.vibrato!.depthCents - 30)).toBeLessThan(8);
  });
});

describe('a caller’s bug', () => {
  it('throws for a rate out of range and for sound after the end', () => {
    expect(() => new Listener({ sampleRate: 4000 })).toThrow(RangeError);
    expect(() => new Listener({ sampleRate: 400000 })).toThrow('8000 to 192000');
    expect(() => new Listener({ sampleRate: NaN })).toThrow(RangeError);
    const listener = new Listener({ sampleRate: rate });
    listener.finish();
    expect(() => listener.push(silence(0.1, rate))).toThrow('new Listener');
    expect(listener.finish()).toEqual([]);
  });
});
