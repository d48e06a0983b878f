/**
 * The pages for players and teachers, held to what is there: links and pictures lead somewhere, what stands in bold is on
 * the screen, and the command line has a line for each option.
 */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MOST_TAKES } from '../src/cli/find-takes.ts';
import { BAND_TEMPO, OPTIONS, PALETTES, RANGES } from '../src/cli/options.ts';
import { feelNames } from '../src/core/chart/feel-names.ts';
import {
  MOST_BARS,
  MOST_BEATS,
  MOST_BLOCKS_BEFORE_SOUND,
  MOST_BAR_CHORDS,
  MOST_CHART_CHORDS,
  MOST_LAID_CHANGES,
  MOST_LIST_BYTES,
  MOST_MIDI_BYTES,
  MOST_ROW_CHARACTERS,
  MOST_SCORE_SIGNS,
  MOST_NOTE_BENDS,
  MOST_NOTE_PARTS,
  MOST_NOTES,
  MOST_SCORE_BYTES,
  MOST_SYMBOL,
  MOST_TAKE_SECONDS,
} from '../src/core/base/limits.ts';
import { LONGEST_WHOLE_SECONDS } from '../src/core/files/audio.ts';
import { MOST_PIPE_BYTES, MOST_PIPE_SECONDS } from '../src/cli/read-pipe.ts';
import { LONGEST_SECONDS } from '../src/core/files/read-channels.ts';
import { AIM_LIMITS, readAim } from '../src/core/grade/aims/aim.ts';
import { AIM_LADDER, PLAIN_AIMS } from '../src/core/grade/aims/aims.ts';
import { ANSWER_LIMITS, readAnswer } from '../src/core/lesson/answer.ts';
import { EXAMPLE_LIMITS } from '../src/core/lesson/example.ts';
import { LINK_CHARACTERS } from '../src/core/lesson/sheet-link.ts';
import { readSheet, SHEET_LIMITS } from '../src/core/lesson/sheet.ts';
import { MOST_CORRECTIONS } from '../src/core/take/correction.ts';
import { TAKE_FILE_LIMITS } from '../src/core/take-file/schema.ts';
import { en } from '../src/core/words/en.ts';
import { allPages, blocksOf, guidePages, proseOf, ROOT, type Page } from './read-pages.ts';

const pages = allPages();
const page = (path: string): Page => pages.find((one) => one.path === path)!;
const shown = (name: string): string => {
  const block = guidePages()
    .flatMap(blocksOf)
    .find((one) => one.name === name);
  if (block === undefined) throw new Error(`no page shows ${name}`);
  return block.content;
};

/** The anchor that a heading gets where pages are shown: small letters, no signs, hyphens for spaces (GitHub's rule). */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');
const anchorsOf = ({ text }: Page) =>
  [...text.replace(/^```[\s\S]*?^```$/gm, '').matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
    anchorOf(heading!),
  );

const linksOf = (of: Page) => [...proseOf(of).matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1]!);

describe('the links of all pages', () => {
  it('are there', () => {
    expect(pages.flatMap(linksOf).length).toBeGreaterThan(50);
  });

  it('lead to a file, and to a heading in it', () => {
    const wrong = pages.flatMap((of) =>
      linksOf(of)
        .filter((link) => !/^https?:/.test(link))
        .filter((link) => {
          const [file = '', anchor] = link.split('#');
          const path = relative(ROOT, join(ROOT, dirname(of.path), file));
          const target = file === '' ? of : page(path);
          if (!existsSync(join(ROOT, file === '' ? of.path : path))) return true;
          return anchor !== undefined && !(target && anchorsOf(target).includes(anchor));
        })
        .map((link) => `${of.path} links to ${link}`),
    );
    expect(wrong).toEqual([]);
  });

  it('name every page of the guide, and every picture is shown', () => {
    const linked = pages.flatMap((of) => linksOf(of).map((link) => join(dirname(of.path), link)));
    const named = [...page('src/pages/pictures/README.md').text.matchAll(/`([\w-]+\.png)`/g)];
    const wanted = [
      ...guidePages().map(({ path }) => path),
      ...named.map(([, name]) => `src/pages/pictures/${name}`),
    ].filter((path) => !path.endsWith('README.md'));
    expect(wanted.filter((path) => !linked.includes(path))).toEqual([]);
  });
});

/** Every text of the catalogue; of an entry that is a function, its source. */
function textsOf(entry: unknown): readonly string[] {
  if (typeof entry === 'string') return [entry];
  if (typeof entry === 'function') return [String(entry)];
  return typeof entry === 'object' && entry !== null ? Object.values(entry).flatMap(textsOf) : [];
}

describe('what stands in bold', () => {
  const texts = textsOf(en);
  const isOnScreen = (bold: string) => {
    const parts = bold.split(' … ');
    // The screens set "b3" as ♭3.
    if (parts.length === 1) return texts.includes(bold.replaceAll('♭', 'b')) || texts.includes(bold);
    return texts.some((text) => parts.every((part) => text.includes(part)));
  };

  it.each([
    'README.md',
    ...['player', 'teacher', 'aims', 'charts', 'files', 'privacy', 'publish'].map(
      (name) => `src/pages/${name}.md`,
    ),
  ])('in %s is a text of the screens', (path) => {
    const bold = [...proseOf(page(path)).matchAll(/\*\*([^*]+)\*\*/g)].map((match) => match[1]!);
    expect(bold.length).toBeGreaterThan(0);
    expect(bold.filter((text) => !isOnScreen(text))).toEqual([]);
  });
});

describe('the page of the command line', () => {
  const { text } = page('src/pages/command-line.md');

  it('has a line for every option', () => {
    const missing = Object.keys(OPTIONS).filter((name) => !new RegExp(`\`--${name}[ \`]`).test(text));
    expect(missing).toEqual([]);
  });

  it('names no other', () => {
    const named = [...text.matchAll(/(?:npx landfall [^\n|]*|`)--([a-z-]+)/g)].map((match) => match[1]!);
    expect(named.filter((name) => !(name in OPTIONS))).toEqual([]);
  });

  it('uses each of them in a command that is run', () => {
    const commands = guidePages()
      .flatMap(blocksOf)
      .filter(({ language }) => language === 'sh')
      .map(({ content }) => content)
      .join('');
    expect(Object.keys(OPTIONS).filter((name) => !new RegExp(`--${name}\\s`).test(commands))).toEqual([]);
  });

  it('names every palette and feel', () => {
    expect([...PALETTES, ...feelNames].filter((name) => !text.includes(`\`${name}\``))).toEqual([]);
  });
});

describe('the files that pages show', () => {
  it('the list of notes as it lies in the project', () => {
    expect(readFileSync(join(ROOT, 'src/pages/solo.csv'), 'utf8')).toBe(shown('solo.csv'));
  });

  it('an aim that is read', () => {
    expect(readAim(JSON.parse(shown('aim.json')))).toMatchObject({ ok: true });
  });

  it('an answer that is read', () => {
    expect(readAnswer(shown('alto.answer.json'), 'alto.answer.json')).toMatchObject({ ok: true });
  });

  it('a sheet that is read', () => {
    expect(readSheet(shown('sheet.json'), 'sheet.json')).toMatchObject({ ok: true });
  });
});

describe('figures of the bench', () => {
  /** A table of the bench by row and column: cells stand two spaces or more apart. */
  function figuresIn(name: string): ReadonlyMap<string, string> {
    const found = new Map<string, string>();
    let columns: readonly string[] = [];
    for (const line of readFileSync(join(ROOT, `tests/bench/results/${name}.txt`), 'utf8').split('\n')) {
      const cells = line.trim().split(/ {2,}/);
      const [, confidence, right] = /^ {2}(\d\.\d to \d\.\d) {2}([\d.]+) of/.exec(line) ?? [];
      if (confidence !== undefined) found.set(`${confidence}, right`, right!);
      if (line.startsWith('  ')) columns = cells;
      else if (line.startsWith('F1 by instrument')) columns = cells.slice(1);
      else if (cells.length === columns.length + 1)
        columns.forEach((column, i) => found.set(`${cells[0]}, ${column}`, cells[i + 1]!));
    }
    return found;
  }
  const figures = { lines: figuresIn('lines'), real: figuresIn('real') };
  const marked = guidePages().flatMap(({ path, text }) =>
    [...text.matchAll(/(\d[\d.]*|\d+ of \d+) <!-- (lines|real): ([^>]*?) -->/g)].map(
      ([, figure, file, place]) => ({ path, figure: figure!, file: file as 'lines' | 'real', place: place! }),
    ),
  );

  it('are marked with their row and column', () => {
    expect(marked.length).toBeGreaterThan(30);
    const marks = guidePages().reduce((sum, { text }) => sum + text.split('<!--').length - 1, 0);
    expect(marked).toHaveLength(marks);
  });

  it.each(marked)('$path: $figure is $file: $place', ({ figure, file, place }) => {
    const cell = figures[file].get(place);
    if (figure.includes(' of ')) expect(cell).toBe(`${figure} exact`);
    else expect(figure).toBe(Number.parseFloat(cell ?? '').toFixed(figure.split('.')[1]?.length ?? 0));
  });
});

it('the header of the page on publishing is the policy of the site, and forbids frames besides', () => {
  const site = readFileSync(join(ROOT, 'src/index.html'), 'utf8');
  const policy = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(site)?.[1];
  const headers = JSON.parse(shown('headers.json')) as Record<string, string>;
  expect(headers['Content-Security-Policy']).toBe(`${policy}; frame-ancestors 'none'`);
});

it('the page of limits says what the code holds', () => {
  const range = ({ lowest, highest }: { lowest: number; highest: number }) => `${lowest} to ${highest}`;
  const most = (limit: number) => limit.toLocaleString('en-US');
  const wanted = {
    'tempo at which a take is graded, beats a minute': range(RANGES.tempo),
    'tempo of the band, beats a minute': range(BAND_TEMPO),
    'choruses of the band in one file': most(RANGES.choruses.highest),
    'A4 in Hz': range(RANGES.reference),
    'hours of a take, a recording, a list of notes or beats, a file of the band': most(
      MOST_TAKE_SECONDS / 3600,
    ),
    'notes of a take, a list or a MIDI file': most(MOST_NOTES),
    'beats of a list': most(MOST_BEATS),
    'megabytes of a score, also as unpacked': most(MOST_SCORE_BYTES / 1e6),
    'megabytes of a table': most(MOST_LIST_BYTES / 1e6),
    'megabytes of a MIDI file': most(MOST_MIDI_BYTES / 1e6),
    'characters of one row of a table': most(MOST_ROW_CHARACTERS),
    'elements, attributes and entities of a score together': most(MOST_SCORE_SIGNS),
    'chords of one bar': most(MOST_BAR_CHORDS),
    'chords of a chart as written': most(MOST_CHART_CHORDS),
    'chords that go by in a take': most(MOST_LAID_CHANGES),
    'chords through which the notes of a take sound, counted note by note': most(MOST_NOTE_PARTS),
    'pitch bends that pass under the notes of a MIDI file, counted note by note': most(MOST_NOTE_BENDS),
    'letters of a chord symbol': most(MOST_SYMBOL),
    'blocks before the sound of a WAV or FLAC file': most(MOST_BLOCKS_BEFORE_SOUND),
    'minutes of a recording in the app, or with its backing taken out': most(LONGEST_WHOLE_SECONDS / 60),
    'megabytes that come through a pipe': `${most(MOST_PIPE_BYTES / 1e6)}; what does not begin as a recording, ${MOST_LIST_BYTES / 1e6}`,
    'seconds in which they come': most(MOST_PIPE_SECONDS),
    'bars of one chorus, repeats played': most(MOST_BARS),
    'minutes of a backing that the app plays': most(LONGEST_SECONDS / 60),
    'hours of sound in a take file': most(TAKE_FILE_LIMITS.hours),
    'corrections by hand in one take': most(MOST_CORRECTIONS),
    'files in one call of the command line': most(MOST_TAKES),
    'files graded at the same time': most(RANGES.threads.highest),
    'letters of the name of an aim': most(AIM_LIMITS.nameCharacters),
    'letters of the task of an aim': most(AIM_LIMITS.taskCharacters),
    'entries in a list of an aim': most(AIM_LIMITS.entries),
    'letters in the chart of a lesson sheet': most(SHEET_LIMITS.chartCharacters),
    'aims of a lesson sheet': most(SHEET_LIMITS.aims),
    'notes of the example of a lesson sheet': most(EXAMPLE_LIMITS.notes),
    'characters of a lesson sheet as a link': most(LINK_CHARACTERS),
    "comments in a teacher's answer": most(ANSWER_LIMITS.comments),
  };
  const rows = [...page('src/pages/limits.md').text.matchAll(/^\| ([^|]+) \| ([^|]+) \|$/gm)].slice(2);
  expect(Object.fromEntries(rows.map(([, what, limit]) => [what, limit]))).toEqual(wanted);
});

it('the page of aims has a row for each aim, at the share that it is reached', () => {
  const { text } = page('src/pages/aims.md');
  expect([...AIM_LADDER, ...PLAIN_AIMS].filter(({ id }) => !text.includes(`\`${id}\``))).toEqual([]);
});

it.each(['README.md', 'src/pages/player.md'])(
  '%s asks for the versions of Node that the package asks for',
  (path) => {
    const { engines } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
      engines: { node: string };
    };
    const [, oldest, newer] = /20\s+from (20\.\d+) on,\s+or (22\.\d+) or later/.exec(page(path).text) ?? [];
    expect(engines.node).toBe(`^${oldest} || >=${newer}`);
  },
);

it('commands of npm are scripts of this project', () => {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>;
  };
  const named = pages.flatMap(({ path, text }) =>
    [...text.matchAll(/\bnpm (?:run (?:--?\w+ )?([a-z][a-z:-]*)|(start|test)\b)/g)]
      .map((match) => match[1] ?? match[2]!)
      .filter((name) => !(name in scripts))
      .map((name) => `${path}: npm ${name}`),
  );
  expect(named).toEqual([]);
});
