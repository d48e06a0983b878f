import { english } from '../english.ts';
import { expect, test } from 'vitest';
import { bandInARoom } from '../../fixtures/room/band-in-a-room.ts';
import { listenWithout, wanderingNotice } from '../../src/core/listen-without.ts';

const rate = 12_000;
const { player, band, echo } = await bandInARoom({
  instrument: 'steel',
  sampleRate: rate,
  seconds: 16,
  seed: 744,
  delaySeconds: 0.05,
  bandDb: 0,
});
const backing = { name: 'backing.wav', samples: band, sampleRate: rate };
/** The band late by so many seconds, another number each moment. */
const takeWith = (late: (seconds: number) => number) => ({
  name: 'take.wav',
  samples: player.map((x, i) => x + (echo[i - Math.round(late(i / rate) * rate)] ?? 0)),
  sampleRate: rate,
});

test('a jump in the middle of a take is told in a sentence, and the band is taken out nevertheless', () => {
  const heard = listenWithout(
    takeWith((t) => (t < 8 ? 0 : 0.03)),
    backing,
  );
  expect(heard.backing?.removedDb).toBeGreaterThan(6);
  expect(english(heard.notice!)).toMatch(
    /^The timing of the band jumped by 30 ms at 0:0[789]: .* 30 ms too late\.$/,
  );
});

test('a band that could not be taken out is told of; one that is not there is not', () => {
  // Every other second 150 ms away: no line goes through that.
  const wandering = takeWith((t) => 0.15 * (Math.floor(t) % 2) + 0.03 * (Math.floor(t / 2) % 3));
  expect(english(wanderingNotice(wandering, backing)!)).toMatch(
    /^The band is heard in the take, but .*sound check before the next take\.$/,
  );
  expect(wanderingNotice({ samples: player, sampleRate: rate }, backing)).toBeNull();
});
