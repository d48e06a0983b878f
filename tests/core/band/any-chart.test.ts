/**
 * The rules of voicings and bass lines over charts that nobody wrote: every quality, slash chords, N.C., odd meters,
 * all feels. The rules are those of any jazz harmony textbook (common practice; from memory): guide tones in every
 * voicing, no octaves of bass and top in parallel from root to root, a step into every next root, all in range.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrangeChorus } from '../../../src/core/band/arrange.ts';
import { spanVoicings } from '../../../src/core/band/comping.ts';
import { feels } from '../../../src/core/band/feels/table.ts';
import { chorusBeats } from '../../../src/core/band/form.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { bassPitchClass, voicingRange } from '../../../src/core/band/voicing.ts';
import { formOf, settingsOf } from './forms.ts';

const roots = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'];
const qualities = (
  ' m 7 maj7 m7 6 m6 6/9 9 m9 maj9 11 m11 13 maj13 7b9 7#9 7b5 7#5 7#11 7b13 7alt 13b9 sus2 sus4 7sus4 9sus4 ' +
  'dim dim7 m7b5 aug aug7 maj7#5 maj7#11 m(maj7) add9 5'
).split(' ');
const symbol = fc.oneof(
  {
    weight: 12,
    arbitrary: fc
      .tuple(fc.constantFrom(...roots), fc.constantFrom(...qualities))
      .map((parts) => parts.join('')),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(fc.constantFrom(...roots), fc.constantFrom(...roots)).map((two) => two.join('/')),
  },
  { weight: 1, arbitrary: fc.constant('N.C.') },
);
const meters = ['2/4', '3/4', '4/4', '5/4', '6/8', '12/8'];
const anyChart = fc
  .tuple(
    fc.constantFrom(...meters),
    fc.array(fc.array(symbol, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 9 }),
  )
  .map(([meter, bars]) => `meter: ${meter}\n| ${bars.map((bar) => bar.join(' ')).join(' | ')} |`);
const anyFeel = fc.constantFrom(...feelNames);
const anySeed = fc.integer({ min: 1, max: 999 });

/** E1 to E3 and the octave above a low root: where a bass is played. */
const bassKeys = { lowest: 28, highest: 55 };

describe('any chart', () => {
  it('has thirds and sevenths, or what stands for them, in every voicing', () => {
    fc.assert(
      fc.property(anyChart, anyFeel, (text, feel) => {
        const form = formOf(text);
        for (const [{ chord }, voicing] of spanVoicings(feels[feel], form)) {
          const heard = new Set(voicing.map((midi) => midi % 12));
          const guides = chord!.tones.filter(({ role }) => role === 'third' || role === 'seventh');
          for (const tone of guides) expect(heard, `${chord!.symbol} in ${text}`).toContain(tone.pitchClass);
          expect(voicing.length).toBeGreaterThanOrEqual(2);
          expect(Math.min(...voicing)).toBeGreaterThanOrEqual(voicingRange.lowest);
          expect(Math.max(...voicing)).toBeLessThanOrEqual(voicingRange.highest);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('moves bass and top voice never in octaves from root to root, where it can help it', () => {
    let pairs = 0;
    let parallels = 0;
    fc.assert(
      fc.property(anyChart, anyFeel, (text, feel) => {
        const form = formOf(text);
        const voicings = [...spanVoicings(feels[feel], form)];
        voicings.forEach(([{ chord }, voicing], i) => {
          const next = voicings[i + 1];
          if (!next) return;
          pairs++;
          const [top, nextTop] = [voicing.at(-1)!, next[1].at(-1)!];
          const doubled = top % 12 === bassPitchClass(chord!);
          const nextDoubled = nextTop % 12 === bassPitchClass(next[0].chord!);
          if (doubled && nextDoubled && top !== nextTop) parallels++;
        });
      }),
      { numRuns: 60 },
    );
    expect(pairs).toBeGreaterThan(150);
    expect(parallels).toBe(0);
  });

  it('comes to every next root by a half or a whole step, where there are two beats to do it', () => {
    let changes = 0;
    fc.assert(
      fc.property(anyChart, anyFeel, anySeed, (text, feel, seed) => {
        const form = formOf(text);
        const bass = arrangeChorus(form, settingsOf({ feel, seed }), 0).filter(({ part }) => part === 'bass');
        form.spans.forEach((span, i) => {
          const next = form.spans[i + 1];
          if (!span.chord || !next?.chord || span.chord.symbol === next.chord.symbol) return;
          if (span.endBeat - span.startBeat < 2) return;
          const arrival = bass.find(({ beat }) => Math.abs(beat - next.startBeat) < 1e-6);
          const before = bass.findLast(({ beat }) => beat < next.startBeat - 1e-6)!;
          const label = `${feel} ${seed}: ${span.chord.symbol} to ${next.chord.symbol} in ${text}`;
          expect(arrival, label).toBeDefined();
          expect(arrival!.midi % 12, label).toBe(bassPitchClass(next.chord));
          expect([1, 2], label).toContain(Math.abs(arrival!.midi - before.midi));
          changes++;
        });
      }),
      { numRuns: 80 },
    );
    expect(changes).toBeGreaterThan(100);
  });

  it('is in time and in range to the last event, and leaves no chord unheard', () => {
    fc.assert(
      fc.property(anyChart, anyFeel, anySeed, (text, feel, seed) => {
        const form = formOf(text);
        const events = arrangeChorus(form, settingsOf({ feel, seed }), 1);
        for (const { beat, durationBeats, part, midi, velocity } of events) {
          const label = `${feel} ${seed}: ${part} ${midi} at ${beat} in ${text}`;
          expect(beat, label).toBeGreaterThanOrEqual(0);
          expect(beat, label).toBeLessThan(chorusBeats(form));
          expect(durationBeats, label).toBeGreaterThan(0);
          expect(velocity >= 1 && velocity <= 127 && Number.isInteger(velocity), label).toBe(true);
          if (part === 'bass') expect(midi >= bassKeys.lowest && midi <= bassKeys.highest, label).toBe(true);
        }
        for (const span of form.spans) {
          const own = (part: string) =>
            events.filter(
              (event) =>
                event.part === part && event.beat > span.startBeat - 1.01 && event.beat < span.endBeat - 1e-6,
            ).length;
          if (!span.chord) continue;
          expect(own('bass'), `${feel}: bass under ${span.chord.symbol} in ${text}`).toBeGreaterThan(0);
          expect(own('chords'), `${feel}: ${span.chord.symbol} in ${text}`).toBeGreaterThan(0);
        }
      }),
      // A chord after a silence, whose only step is the next chord's early one.
      { numRuns: 60, examples: [['meter: 3/4\n| C C | N.C. C | C |', 'bossa', 297]] },
    );
  });
});
