/** Room on the disk: what each take needs, and old sound that goes before the disk is full. */
import { expect, test } from 'vitest';
import { DiskRoom } from '../../src/state/disk-room.svelte.ts';
import { Library } from '../../src/state/library.svelte.ts';
import { madeTake } from '../core/take-file/made-take.ts';
import { details, freshDatabase, memorySounds, ramp, takesOn, value } from '../storage/fakes.ts';

const never = () => {
  throw new Error('the disk is not full');
};

test('the oldest sound without a star is offered where room is short; grade and notes stay', async () => {
  const sounds = memorySounds();
  const takes = takesOn(await freshDatabase(), sounds);
  const summary = {
    notes: 1,
    chordToneShare: 1,
    thirdShare: 1,
    landings: { count: 1, open: 0, chordTones: 1, thirds: 1 },
  };
  const reports: readonly unknown[] = [madeTake().report, madeTake().report, madeTake().report, {}];
  for (const [n, report] of reports.entries()) {
    const startedAt = `2026-03-0${n + 1}T10:00:00.000Z`;
    const writer = value(
      await takes.begin({ ...details, startedAt, ...(n === 0 && { starred: true }) }, never),
    );
    writer.append(ramp(5000));
    await writer.finish();
    value(await takes.saveReport(writer.id, report, summary));
  }
  const library = new Library({ takes });
  await library.load();
  const quotaBytes = 400_000_000;
  let usedBytes = 0;
  const room = new DiskRoom({ takes, library, estimate: async () => ({ usedBytes, quotaBytes }) });
  await room.load();
  expect(room.totalBytes).toBe(4 * 10_000);
  expect(room.oldSound).toBeNull();

  // Less than half an hour with its band: 345.6 MB. Two sounds are missing.
  usedBytes = quotaBytes - 345_600_000 + 15_000;
  await room.load();
  expect(room.oldSound).toEqual({ ids: ['take-1', 'take-2'], bytes: 20_000 });
  await room.removeOldSound();
  expect([...sounds.files.keys()]).toEqual(['take-0', 'take-3']);
  expect(library.takes).toHaveLength(4);
  expect(value(await takes.open('take-1'))).toMatchObject({ durationSeconds: 0.625, report: reports[1] });

  // A take whose notes were not kept needs its sound.
  expect(room.oldSound?.ids).toEqual(['take-3']);
  await room.removeOldSound();
  expect(room.notices).toEqual([{ code: 'storage.soundNeeded' }]);
  expect([...sounds.files.keys()]).toEqual(['take-0', 'take-3']);
});
