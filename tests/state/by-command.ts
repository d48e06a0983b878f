/** What a review saved, graded by the words that it gives for the command line: read by a real shell. */
import { english } from '../english.ts';
import { en } from '../../src/core/words/en.ts';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readArgs } from '../../src/cli/args.ts';
import { gradeFile } from '../../src/cli/grade-command.ts';
import { readReport, type Report } from '../../src/core/take/schema.ts';
import { gradeCommand } from '../../src/state/grade-command.ts';
import type { Review } from '../../src/state/phase.ts';
import type { world } from './world.ts';

type World = Awaited<ReturnType<typeof world>>;

export async function makeReview(w: World): Promise<Review> {
  await w.until('review');
  if (w.session.phase.kind !== 'review') throw new Error('no review');
  return w.session.phase.review;
}

/** @param others files that the player had beforehand @param change what is typed instead */
export async function gradedByCommand(
  w: World,
  others: readonly { readonly name: string; readonly bytes: Uint8Array }[] = [],
  change: (words: string) => string = (words) => words,
): Promise<Report> {
  const folder = mkdtempSync(join(tmpdir(), 'landfall-command-'));
  const before = process.cwd();
  try {
    process.chdir(folder);
    for (const { blob, fileName } of w.saved)
      writeFileSync(fileName, new Uint8Array(await blob.arrayBuffer()));
    for (const { name, bytes } of others) writeFileSync(name, bytes);
    const words = execFileSync('sh', [
      '-c',
      `npx() { printf '%s\\0' "$@"; }; ${change(gradeCommand(await makeReview(w)))}`,
    ])
      .toString()
      .split('\0')
      .slice(0, -1);
    const order = readArgs([...words.slice(1), '--json']);
    if (!order.ok || order.value.command !== 'grade') throw new Error(`not understood: ${words.join(' ')}`);
    const graded = await gradeFile(order.value, { at: () => undefined, dispose: () => undefined }, en);
    if (!graded.ok) throw new Error(english(graded.problem));
    const report = readReport(JSON.parse(graded.value.page));
    if (!report.ok) throw new Error(english(report.problem));
    return report.value;
  } finally {
    process.chdir(before);
    rmSync(folder, { recursive: true, force: true });
  }
}
