/**
 * Our MusicXML against readers that are not ours, where they are installed:
 *
 * - music21 (Cuthbert & Ariza, ISMIR 2010; BSD, `pip install music21`) plays out repeats and jumps by itself: the order
 *   of the bars must be ours. LANDFALL_PYTHON names a Python that has it.
 * - R. Kainhofer's MusicXML test suite (MIT), which comes inside music21: every file is read or refused with a
 *   sentence, and its chord symbols and repeats come out as the suite describes them.
 * - the schema: LANDFALL_MUSICXML_XSD names a folder with musicxml.xsd, xlink.xsd and xml.xsd beside each other, its
 *   imports pointing there; xmllint then validates what we write. Version 4.0 is the one meant; an older one does not
 *   know the swing element, which is left out of what is checked.
 */
import { english } from '../english.ts';
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { isInstalled, needs, pythonWith } from '../needs.ts';
import { formChart, listForms } from '../../src/core/chart/forms.ts';
import { playedBars } from '../../src/core/chart/play-order.ts';
import { readChartFile } from '../../src/core/files/charts/read-chart-file.ts';
import { writeMusicXml } from '../../src/core/files/charts/write-musicxml.ts';
import { readMusicXml } from '../../src/core/files/charts/read-musicxml.ts';
import { chartOf } from '../core/chart/charts.ts';
import { writeScore } from '../../src/core/notation/write-score.ts';
import { PAGES } from '../core/notation/scores.ts';
import { roadmaps } from '../core/chart/roadmaps.ts';
import { chartTexts } from '../core/band/forms.ts';

const python = pythonWith('music21');
const needsMusic21 = needs(python !== null, 'No Python with music21 is installed.');
const folder = mkdtempSync(join(tmpdir(), 'landfall-scores-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const READ = `
import sys, json
from music21 import converter, harmony
for path in sys.argv[1:]:
    part = converter.parse(path).parts[0].expandRepeats()
    bars = part.getElementsByClass('Measure')
    print(json.dumps([m.recurse().getElementsByClass(harmony.ChordSymbol)[0].root().name for m in bars]))
`;

/** Asked once: Python takes a second to load music21. */
let folderOfMusic21: string | undefined;
function askFolderOfMusic21(): string {
  folderOfMusic21 ??= execFileSync(
    python!,
    ['-c', 'import music21, os; print(os.path.dirname(music21.__file__))'],
    { encoding: 'utf8' },
  )
    .trim()
    .split('\n')
    .at(-1)!;
  return folderOfMusic21;
}

/** The roots of the bars as music21 plays them out. */
function playedOutside(scores: readonly string[]): readonly string[] {
  const files = scores.map((score, i) => {
    const file = join(folder, `${i}.musicxml`);
    writeFileSync(file, score);
    return file;
  });
  const lines = execFileSync(python!, ['-c', READ, ...files], { encoding: 'utf8' })
    .trim()
    .split('\n');
  return lines.map((line) => (JSON.parse(line) as string[]).join(' ').replaceAll('-', 'b'));
}

const rootsOf = (chart: Parameters<typeof playedBars>[0]) =>
  playedBars(chart)
    .map(({ bar }) => bar.chords[0]!.chord!.root)
    .join(' ');

describe('MusicXML read back by ourselves', () => {
  it.each(roadmaps)('$name', ({ text, order }) => {
    const read = readMusicXml(writeMusicXml(chartOf(text)), 'it');
    if (!read.ok) throw new Error(english(read.problem));
    expect(read.value.warnings).toEqual([]);
    expect(rootsOf(read.value.chart)).toBe(order);
  });
});

describe('music21', needsMusic21, () => {
  it('plays out repeats, endings and jumps in the order that we do', () => {
    // With a jump in the score music21 passes by all endings: those charts it reads without their jump.
    const texts = [
      ...roadmaps.map(({ text }) => text).filter((text) => !text.includes('[1')),
      '|: C |[1 D :|[2 E | F |',
      '|: C | D |[1,2 E :|[3 F | G |',
      '|: C | D :| x3 | E |',
    ];
    const theirs = playedOutside(texts.map((text) => writeMusicXml(chartOf(text))));
    expect(texts.map((text, i) => [text, theirs[i]])).toEqual(
      texts.map((text) => [text, rootsOf(chartOf(text))]),
    );
  });
});

describe('the MusicXML test suite, which comes inside music21', needsMusic21, () => {
  const suite = () => join(askFolderOfMusic21(), 'musicxml', 'lilypondTestSuite');
  const read = (file: string) => readChartFile(readFileSync(join(suite(), file)), file, {});
  const text = (file: string) => {
    const chart = read(file);
    if (!chart.ok) throw new Error(english(chart.problem));
    return chart.value.chart.sections
      .flatMap(({ bars }) => bars)
      .map(({ chords }) => chords.map(({ chord }) => chord?.symbol ?? 'N.C.').join(' '));
  };

  it('is read, or refused with a sentence, to the last file', () => {
    const files = readdirSync(suite()).filter((file) => /\.(?:xml|mxl|musicxml)$/.test(file));
    expect(files.length).toBeGreaterThan(100);
    for (const file of files) {
      const chart = read(file);
      if (!chart.ok) expect(english(chart.problem), file).toMatch(/^\S.*\.$/);
    }
  });

  it('names its chords', () => {
    expect(text('71a-Chordnames.xml')).toEqual(['C Cmaj7(#11) B7#5(#9) Eb(add2)', 'Gm D#maj7 Adim7 A+']);
    expect(text('71g-MultipleChordnames.xml')).toEqual(['F#m6 G7']);
    const all = text('71f-AllChordTypes.xml').join(' ').split(' ');
    for (const symbol of 'C Cm C+ Cdim C7 Cmaj7 Cm7 Cdim7 C7#5 Cm7b5 Cm(maj7) C6 Cm6 C9 Cmaj9 Cm9 C11 Cmaj11 Cm11 C13 Cmaj13 Cm13 Csus2 Csus4 C5'.split(
      ' ',
    ))
      expect(all, symbol).toContain(symbol);
  });
});

const schema = process.env.LANDFALL_MUSICXML_XSD;
const needsSchema =
  schema === undefined
    ? needs(false, 'LANDFALL_MUSICXML_XSD names no folder with the schema.')
    : needs(isInstalled('xmllint'), 'xmllint is not installed.');
describe('the schema', needsSchema, () => {
  it('finds nothing wrong with what we write', () => {
    const forms = listForms().map(({ name }) => {
      const chart = formChart(name, 'Eb');
      if (!chart.ok) throw new Error(english(chart.problem));
      return chart.value;
    });
    const others = [
      ...chartTexts.filter((text) => !text.startsWith('form')),
      ...roadmaps.map(({ text }) => text),
    ];
    const charts = [
      ...forms,
      ...others.map(chartOf),
      chartOf('tempo: 90\nmeter: 12/8\npickup: 1\n| G7 |\n[A]\n| C7 |'),
    ];
    const files = charts.map((chart, i) => {
      const file = join(folder, `schema${i}.musicxml`);
      writeFileSync(file, writeMusicXml({ ...chart, swing: null }));
      return file;
    });
    PAGES.forEach(({ page }, i) => {
      const file = join(folder, `page${i}.musicxml`);
      writeFileSync(file, writeScore(page(), { title: 'A take', part: 'A part' }));
      files.push(file);
    });
    const { status, stderr } = spawnSync(
      'xmllint',
      ['--noout', '--nonet', '--schema', join(schema!, 'musicxml.xsd'), ...files],
      { encoding: 'utf8' },
    );
    expect(stderr.split('\n').filter((line) => line !== '' && !line.endsWith(' validates'))).toEqual([]);
    expect(status).toBe(0);
  });
});
