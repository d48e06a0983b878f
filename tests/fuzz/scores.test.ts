/** Scores in MusicXML, their elements in any order and with any numbers: none makes its reader throw. */
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { readMusicXml } from '../../src/core/files/charts/read-musicxml.ts';
import { expectSentences, fuzz, textOf } from './fuzz.ts';

describe('scores from outside', { timeout: 300_000 }, () => {
  it('MusicXML', () => {
    const pieces = [
      ...[
        '<measure number="1">',
        '</measure>',
        '<attributes>',
        '</attributes>',
        '<divisions>4</divisions>',
        '<divisions>-1</divisions>',
        '<key><fifths>-3</fifths><mode>minor</mode></key>',
        '<key><fifths>99999</fifths></key>',
      ],
      ...[
        '<time><beats>3</beats><beat-type>4</beat-type></time>',
        '<time><beats>0</beats><beat-type>0</beat-type></time>',
        '<sound tempo="1e300"/>',
        '<sound tempo="90"/>',
        '<note><duration>16</duration></note>',
        '<backup><duration>99</duration></backup>',
        '<forward><duration>1e308</duration></forward>',
      ],
      ...[
        '<harmony><root><root-step>E</root-step><root-alter>-1</root-alter></root><kind text="7">dominant</kind></harmony>',
        '<harmony><root><root-step>C</root-step></root><kind>other</kind><degree><degree-value>9</degree-value><degree-alter>1e9</degree-alter><degree-type>add</degree-type></degree></harmony>',
        '<harmony><kind>none</kind></harmony>',
        '<harmony><root><root-step>C</root-step></root><kind>major</kind><inversion>1e9</inversion></harmony>',
      ],
      ...[
        '<barline><repeat direction="backward" times="1e9"/></barline>',
        '<barline><repeat direction="forward"/></barline>',
        '<barline><ending number="1,2" type="start"/></barline>',
        '<direction><direction-type><rehearsal>A|[]</rehearsal></direction-type></direction>',
        '<direction><direction-type><segno/></direction-type><sound dalsegno="x"/></direction>',
        '&lt;',
        '&x;',
        '<![CDATA[x]]>',
        '<!-- x -->',
      ],
    ];
    const measures = textOf(pieces, 14).map((text) => `<measure number="1">${text}</measure>`);
    const chord =
      '<measure><harmony><root><root-step>C</root-step></root><kind>major</kind></harmony></measure>';
    fuzz(
      fc
        .array(fc.oneof(measures, fc.constant(chord)), { maxLength: 4 })
        .map((all) => `<score-partwise><part id="P">${chord}${all.join('')}</part></score-partwise>`),
      (text) => {
        expectSentences(readMusicXml(text, 'chart.musicxml'));
      },
    );
  });
});
