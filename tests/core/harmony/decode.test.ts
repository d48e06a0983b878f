/** The decoding against every run of chords that there is, over three beats. */
import { expect, test } from 'vitest';
import { random } from '../../../fixtures/lines/random.ts';
import { changeChance, followLogs, stepLog } from '../../../src/core/harmony/changes-model.ts';
import { chordShares, decodeChords, STATES, TRUST } from '../../../src/core/harmony/decode.ts';

const follow = followLogs();

test('the likeliest run and the share of each chord are those of all runs counted one by one', () => {
  const dice = random(4);
  const logs = Float32Array.from({ length: 3 * STATES }, () => -4 * dice.next());
  const order = { logs, beats: 3, beatsPerBar: 4, firstBeatOfBar: 3, follow };
  const shares = new Float64Array(3 * STATES);
  let [most, best, sum] = [-Infinity, [0, 0, 0], 0];
  const changes = [changeChance(0, 4), changeChance(1, 4)] as const;
  const steps = changes.map((change) =>
    Float64Array.from({ length: STATES * STATES }, (_, i) =>
      stepLog(follow, Math.floor(i / STATES), i % STATES, change),
    ),
  );
  for (let a = 0; a < STATES; a++)
    for (let b = 0; b < STATES; b++) {
      const start = -Math.log(STATES) + TRUST * (logs[a]! + logs[STATES + b]!) + steps[0]![a * STATES + b]!;
      for (let c = 0; c < STATES; c++) {
        const log = start + TRUST * logs[2 * STATES + c]! + steps[1]![b * STATES + c]!;
        if (log > most) [most, best] = [log, [a, b, c]];
        const weight = Math.exp(log);
        sum += weight;
        shares[a]! += weight;
        shares[STATES + b]! += weight;
        shares[2 * STATES + c]! += weight;
      }
    }
  const decoded = decodeChords(order);
  expect([...decoded.chords]).toEqual(best);
  expect(decoded.log).toBeCloseTo(most, 5);
  const found = chordShares(order);
  for (let i = 0; i < shares.length; i++) expect(Math.abs(found[i]! - shares[i]! / sum)).toBeLessThan(1e-5);
});

test('the chances of what follows a chord sum to one', () => {
  for (let from = 0; from < STATES; from++)
    for (const change of [0.6, 0.02]) {
      let sum = 0;
      for (let to = 0; to < STATES; to++) sum += Math.exp(stepLog(follow, from, to, change));
      expect(sum).toBeCloseTo(1, 1);
    }
});

test('no beat at all decodes to no chord at all', () => {
  const order = { logs: new Float32Array(0), beats: 0, beatsPerBar: 4, firstBeatOfBar: 0, follow };
  expect(decodeChords(order).chords).toHaveLength(0);
});
