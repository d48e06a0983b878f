/**
 * The review of a ten-minute take with three thousand notes, and of an hour's with eighteen thousand, costs as much for each
 * frame as that of a take of two minutes with six hundred: processor time of the page's own thread, from a trace of the
 * browser. The takes are compared with each other, so that it holds on slow machines too; how many frames a second there
 * are is what the bench tells (`tests/bench/long-browser.ts`).
 */
import type { CDPSession, Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { gradeOpened, openRecording, untilReview } from './screens.ts';

const FRAME_MS = 1000 / 60;
/** Of all tasks, those that take longest: in them a window of the line is drawn anew. */
const LONGEST_SHARE = 0.05;

interface Traced {
  /** Processor time of each task of the page's thread, ms. */
  readonly tasksMs: readonly number[];
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of the thread, microseconds. */
  readonly tdur?: number;
  readonly args: { readonly name?: string };
}

async function traced(session: CDPSession, act: () => Promise<unknown>): Promise<Traced> {
  const events: TraceEvent[] = [];
  const collect = ({ value }: { value: unknown[] }) => void events.push(...(value as TraceEvent[]));
  session.on('Tracing.dataCollected', collect);
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['devtools.timeline', 'disabled-by-default-devtools.timeline'] },
  });
  await act();
  await session.send('Tracing.end');
  await complete;
  session.off('Tracing.dataCollected', collect);
  const threads = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const own = events.filter(({ pid, tid }) => threads.has(`${pid} ${tid}`));
  return {
    tasksMs: own
      .filter(({ name, ph, tdur }) => name === 'RunTask' && ph === 'X' && tdur !== undefined)
      .map(({ tdur = 0 }) => tdur / 1000),
  };
}

/** An even run over an octave, five notes a second: the same at every length. */
function run(notes: number): Buffer {
  const scale = [57, 59, 61, 62, 64, 66, 68, 69, 71, 73, 74, 76];
  const rows = Array.from(
    { length: notes },
    (_, i) => `${(i / 5).toFixed(3)},0.17,${scale[(i * 5 + ((i * i) % 7)) % 12]}`,
  );
  return Buffer.from(['onset,duration,pitch', ...rows].join('\n'));
}

async function reviewOf(page: Page, notes: number): Promise<void> {
  await openRecording(page, { name: 'line.csv', mimeType: 'text/csv', buffer: run(notes) });
  await gradeOpened(page);
  await untilReview(page);
  await page.waitForTimeout(1000);
}

/** An hour at five notes a second. */
const NOTES_OF_AN_HOUR = 18_000;

const FRAMES = 180;
/** Three seconds of scrolling, 40 px a frame: across six windows of the line. */
const scroll = (page: Page) =>
  page.evaluate(async (frames) => {
    const scroller = document.querySelector('[role=listbox]')!.closest('.scroller')!;
    scroller.scrollLeft = 0;
    for (let frame = 1; frame <= frames; frame++) {
      scroller.scrollLeft = 40 * frame;
      await new Promise(requestAnimationFrame);
    }
  }, FRAMES);

/** The quieter of two goes: what else the machine does makes a task longer, and never shorter. */
async function scrolled(session: CDPSession, page: Page): Promise<Traced> {
  const first = await traced(session, () => scroll(page));
  const second = await traced(session, () => scroll(page));
  return all(first) < all(second) ? first : second;
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
/** Processor time of all tasks, ms. */
const all = ({ tasksMs }: Traced) => sum(tasksMs);
/** Processor time of the longest tasks, a twentieth as many as there are frames, ms. */
const longest = ({ tasksMs }: Traced) =>
  sum(tasksMs.toSorted((a, b) => b - a).slice(0, LONGEST_SHARE * FRAMES));

test('three thousand notes, and eighteen thousand, scroll and play as lightly as six hundred do', async ({
  openApp,
}) => {
  const { page, context } = await openApp();
  const session = await context.newCDPSession(page);
  await reviewOf(page, 600);
  const few = await scrolled(session, page);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await reviewOf(page, 3000);
  await expect(page.getByText(/\b3000\snotes\b/).first()).toBeVisible();
  const many = await scrolled(session, page);
  // It sounds at once: its notes are rendered while they play.
  const place = page.getByRole('slider', { name: 'Place in the take' });
  await page.getByRole('button', { name: 'Hear the take' }).click();
  await expect.poll(async () => Number(await place.inputValue())).toBeGreaterThan(0.2);
  const playing = await traced(session, () => page.waitForTimeout((FRAMES / 60) * 1000));
  await page.getByRole('button', { name: 'Pause', exact: true }).click();
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await reviewOf(page, NOTES_OF_AN_HOUR);
  await expect(page.getByText(/\b18.?000\snotes\b/).first()).toBeVisible();
  const hour = await scrolled(session, page);
  const told = (name: string, trace: Traced) =>
    `${name}: ${FRAMES} frames, ${all(trace).toFixed(0)} ms, ${longest(trace).toFixed(0)} of them in the longest ` +
    `${LONGEST_SHARE * FRAMES}, ${trace.tasksMs.filter((ms) => ms > FRAME_MS).length} over a frame`;
  test
    .info()
    .annotations.push(
      { type: 'measured', description: told('600 notes scrolled', few) },
      { type: 'measured', description: told('3000 notes scrolled', many) },
      { type: 'measured', description: told('3000 notes playing', playing) },
      { type: 'measured', description: told('18000 notes scrolled', hour) },
    );
  for (const long of [many, hour]) {
    // Only what is in sight is drawn: five times and thirty times the notes do not take twice the time.
    expect(all(long)).toBeLessThan(2 * all(few));
    expect(longest(long)).toBeLessThan(2 * longest(few));
  }
  expect(longest(playing)).toBeLessThan(2 * longest(few));
  // As few elements as a window holds, not as many as the take has notes.
  expect(await page.getByRole('option').count()).toBeLessThan(300);
});
