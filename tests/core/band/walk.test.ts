import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrangeChorus } from '../../../src/core/band/arrange.ts';
import { chance } from '../../../src/core/base/random.ts';
import { feelNames } from '../../../src/core/chart/feel-names.ts';
import { bassPitchClass } from '../../../src/core/band/voicing.ts';
import { bassRange, walkingLine } from '../../../src/core/band/walk.ts';
import { chartTexts, formOf, settingsOf } from './forms.ts';

const anyForm = fc.constantFrom(...chartTexts).map(formOf);

describe('walking bass', () => {
  it('plays the root where a chord arrives, in its range, and steps into every change', () => {
    fc.assert(
      fc.property(anyForm, fc.integer({ min: 0, max: 1e6 }), (form, seed) => {
        const line = walkingLine(form, chance(seed));
        const next = walkingLine(form, chance(seed + 1));
        form.spans.forEach((span, i) => {
          if (!span.chord) return expect(line[span.startBeat]).toBeNull();
          const after = form.spans[i + 1];
          const before = form.spans[i - 1];
          if (i === 0 || before?.chord?.symbol !== span.chord.symbol) {
            expect(line[span.startBeat]! % 12).toBe(bassPitchClass(span.chord));
          }
          const last = line[span.endBeat - 1]!;
          expect(last).toBeGreaterThanOrEqual(bassRange.lowest);
          expect(last).toBeLessThanOrEqual(bassRange.highest);
          const target = after ? after.chord && line[after.startBeat] : form.spans[0]!.chord && next[0];
          const targetChord = (after ?? form.spans[0])!.chord;
          if (target && targetChord?.symbol !== span.chord.symbol && span.endBeat - span.startBeat >= 2) {
            expect([1, 2]).toContain(Math.abs(last - target));
          }
        });
      }),
      { numRuns: 60 },
    );
  });

  it('reaches the next root by step in every feel', () => {
    const form = formOf('| C7 | F7 | Bb7 Eb7 | Ab7 |');
    for (const feel of feelNames) {
      for (let seed = 0; seed < 20; seed++) {
        const bass = arrangeChorus(form, settingsOf({ feel, seed }), 0).filter((e) => e.part === 'bass');
        for (const span of form.spans.slice(1)) {
          const arrival = bass.findIndex((e) => Math.abs(e.beat - span.startBeat) < 1e-6);
          const step = Math.abs(bass[arrival]!.midi - bass[arrival - 1]!.midi);
          expect([1, 2], `${feel}, seed ${seed}, ${span.chord?.symbol}`).toContain(step);
        }
      }
    }
  });
});
