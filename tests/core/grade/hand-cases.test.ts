/** What a teacher would say of small takes, against the grading. The cases and their reasons: hand-cases.ts. */
import { describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../../src/core/chart/build-timeline.ts';
import { parseChart } from '../../../src/core/chart/parse-chart.ts';
import { midiOfName } from '../../../src/core/music/reading.ts';
import { grade } from '../../../src/core/grade.ts';
import { isChordTone } from '../../../src/core/grade/assign/roles.ts';
import type { Landing, Report } from '../../../src/core/take/schema.ts';
import { landingCases, type HandCase, type Said } from './hand-cases.ts';
import { toneCases } from './hand-cases-tones.ts';
import { BPM, line, SETTINGS, type Played } from './line.ts';

function gradeCase({ chart, line: written }: HandCase): Report {
  const read = parseChart(chart);
  if (!read.ok) throw new Error(read.problem.code);
  const bpm = read.value.bpm ?? BPM;
  const played = written.split(', ').map((note): Played => {
    const [beat, beats, pitch] = note.split(' ');
    const [, name, cents] = /^([A-G][b#]?\d)([+-]\d+)?$/.exec(pitch!)!;
    return [Number(beat), Number(beats), midiOfName(name!) + Number(cents ?? 0) / 100];
  });
  const timeline = timelineFromTempo(read.value, { bpm });
  return grade(line(played, bpm), timeline, SETTINGS);
}

function landingWords({ chord, kind, degree, role, anticipates, putRight }: Landing): string {
  if (kind === 'open') return `${chord} open`;
  const how = `${anticipates ? 'early ' : ''}${kind === 'held' ? 'held ' : ''}`;
  const outside = isChordTone(role) ? '' : ` (${role!})`;
  return `${chord} ${how}${degree!}${outside}${putRight === null ? '' : ', put right'}`;
}

const told: { readonly [K in keyof Said]-?: (report: Report) => string } = {
  landings: ({ landings }) => landings.map(landingWords).join(' | '),
  notes: ({ notes }) =>
    notes.map(({ chord, degree }) => (chord === null ? 'none' : `${chord} ${degree!}`)).join(' | '),
  roles: ({ notes }) => notes.map(({ role }) => role).join(' '),
  functions: ({ notes }) => notes.map((note) => note.function ?? '-').join(' '),
  strong: ({ notes }) => notes.map(({ strongBeat }) => (strongBeat ? 'x' : '.')).join(''),
  names: ({ notes }) => notes.map(({ spelling }) => spelling).join(' '),
  shares: ({ shares: { landings } }) =>
    [landings.thirds, landings.guideTones, landings.chordTones]
      .map(({ hits, of }) => `${hits}/${of}`)
      .join(' '),
  guide: ({ landings }) =>
    landings
      .flatMap(({ guideTone }) =>
        guideTone === null ? [] : [`${guideTone.from}>${guideTone.to} ${guideTone.kind}`],
      )
      .join(' '),
  thirds: ({ thirds: { flatThirds, leans, falls, leftHanging, blueNotes } }) =>
    `flat ${flatThirds}, into 3 ${leans.length}, back ${falls.length}, hanging ${leftHanging.length}, blue ${blueNotes.length}`,
  clashes: ({ palette }) => String(palette.thirdOverFour.notes.length),
  advice: ({ advice }) =>
    advice.map((one) => `${one.fault} ${one.chord} ${one.played.name}>${one.resolve.name}`).join(' | ') ||
    'none',
  phraseEnds: ({ phrases }) => phrases.map(({ chord, degree }) => `${chord} ${degree}`).join(' | '),
};

const cases = [...landingCases, ...toneCases];

describe('takes worked by hand', () => {
  it('are forty at least, and each asks something', () => {
    expect(cases.length).toBeGreaterThanOrEqual(40);
    for (const { says } of cases) expect(Object.keys(says).length).toBeGreaterThan(0);
  });

  it.each(cases.map((one) => [one.name, one] as const))('%s', (_, one) => {
    const report = gradeCase(one);
    const asked = Object.keys(one.says) as readonly (keyof Said)[];
    const answers = Object.fromEntries(asked.map((what) => [what, told[what](report)]));
    expect(answers, one.why).toEqual(one.says);
  });
});
