/** Fifteen questions asked at once: fourteen p values are corrected for their number (S. Holm, 1979), the headline's is not. */
import { describe, expect, it } from 'vitest';
import { KINDS, markPage, type AskedPage } from '../../../../src/core/grade/chance/page.ts';
import {
  eachSet,
  NOTHING,
  NOTHING_ASKED,
  type AskedShare,
} from '../../../../src/core/grade/chance/shares.ts';

/** A share of ten events that luck gives with this p, and that no length of take would show. */
const asked = (upper: number, lower = 1, events = 10): AskedShare => ({
  share: { ...NOTHING, hits: 7, of: events, tail: upper, correctedTail: upper },
  question: { events, chance: 0.5, choruses: 1, power: () => 0 },
  lower,
});
const page = (cell: AskedShare, alone: AskedShare): AskedPage => {
  const all = eachSet(() => cell);
  return {
    ...{
      landings: { ...all, thirds: alone },
      phraseEnds: all,
      strongBeats: all,
      allNotes: all,
      byLength: all,
    },
  };
};
/** The same share in every cell, but each a cell of its own. */
const pageOf = (cell: () => AskedShare, alone: AskedShare): AskedPage => ({
  landings: { ...eachSet(cell), thirds: alone },
  phraseEnds: eachSet(cell),
  strongBeats: eachSet(cell),
  allNotes: eachSet(cell),
  byLength: eachSet(cell),
});

describe('the marks of a page', () => {
  it('ask the headline’s share alone and correct the fourteen others', () => {
    const marked = markPage(
      pageOf(() => asked(0.01), asked(0.03)),
      'thirds',
    );
    expect(marked.landings.guideTones).toMatchObject({ verdict: 'too short to tell', hits: 7 });
    expect(marked.landings.guideTones.correctedTail).toBeCloseTo(0.14, 12);
    expect(marked.byLength.chordTones.correctedTail).toBeCloseTo(0.14, 12);
    // As it was asked alone.
    expect(marked.landings.thirds.correctedTail).toBe(0.03);
  });

  it('are set where p stays under 5 % (more than luck) or 0.5 % (less) after the correction', () => {
    const more = markPage(
      pageOf(() => asked(0.003), asked(0.5)),
      'thirds',
    );
    expect(KINDS.map((kind) => more[kind].chordTones.verdict)).toEqual(new Array(5).fill('above chance'));
    const less = markPage(
      pageOf(() => asked(1, 0.0003), asked(0.5)),
      'thirds',
    );
    expect(less.allNotes.thirds.verdict).toBe('below chance');
    const hardly = markPage(
      pageOf(() => asked(1, 0.0004), asked(0.5)),
      'thirds',
    );
    expect(hardly.allNotes.thirds.verdict).toBe('too short to tell');
  });

  it('count only shares of five events or more', () => {
    const few = asked(0.01, 1, 4);
    const marked = markPage({ ...page(few, asked(0.5)), phraseEnds: eachSet(() => asked(0.01)) }, 'thirds');
    // Three cells are left to correct for.
    expect(marked.phraseEnds.thirds).toMatchObject({ verdict: 'above chance' });
    expect(marked.phraseEnds.thirds.correctedTail).toBeCloseTo(0.03, 12);
    expect(marked.allNotes.thirds).toBe(few.share);
    const nothing = markPage(page(NOTHING_ASKED, asked(0.5)), 'guideTones');
    expect(nothing.byLength.thirds).toBe(NOTHING);
  });

  it('may ask another set alone, where the chart has no thirds', () => {
    const marked = markPage(
      pageOf(() => asked(0.01), asked(0.01)),
      'guideTones',
    );
    expect(marked.landings.guideTones.correctedTail).toBe(0.01);
    expect(marked.landings.thirds.correctedTail).toBeCloseTo(0.14, 12);
  });
});
