import { expect, it } from 'vitest';
import { grade } from '../../../src/core/grade.ts';
import { reportAsRead } from '../../../src/core/report/as-read.ts';
import { correctedSentence } from '../../../src/core/report/sentences.ts';
import { reportText } from '../../../src/core/report/text.ts';
import { instrumentOf } from '../../../src/core/music/instruments.ts';
import { readingOf } from '../../../src/core/music/reading.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { chart, line, SETTINGS } from '../grade/line.ts';

const heard = line([
  [0, 1, 60],
  [4, 1, 57],
]);
const report = grade(heard, chart('| C7 | F7 |'), {
  ...SETTINGS,
  corrections: [
    { kind: 'delete', of: heard[0]! },
    { kind: 'pitch', of: heard[1]!, midi: 53 },
    { kind: 'join', of: { onsetSeconds: 30, midi: 60 } },
  ],
});

it('the page says how many notes are corrected by hand, and what no longer fits', () => {
  expect(correctedSentence(report, en)).toBe(
    '2 notes are corrected by hand (1 deleted). 1 correction no longer fits the notes and is left out.',
  );
  expect(correctedSentence(report, de)).toBe(
    '2 Töne sind von Hand berichtigt (1 gelöscht). 1 Berichtigung passt nicht mehr zu den Tönen und gilt nicht.',
  );
  expect(reportText(report, en)).toContain('By hand   2 notes are corrected by hand (1 deleted).');
  const plain = grade(heard, chart('| C7 | F7 |'), SETTINGS);
  expect(correctedSentence(plain, en)).toBeNull();
  expect(reportText(plain, en)).not.toContain('By hand');
});

it('what was heard is read at written pitch, too', () => {
  const tenor = reportAsRead(report, readingOf(instrumentOf('tenor-sax'), 'written'));
  const by = tenor.notes[0]!.midi - report.notes[0]!.midi;
  expect(by).not.toBe(0);
  expect(tenor.notes[0]?.corrected?.was[0]?.midi).toBe(57 + by);
  expect(tenor.corrections?.deleted[0]?.midi).toBe(60 + by);
});
