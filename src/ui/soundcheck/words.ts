/** What the sound check says, in a player's words. */
import type { LevelReading, LevelVerdict } from '../../core/room/check/input-level.ts';
import type { MeasuredRoom } from '../../state/measured-room.ts';
import type { TuningReading } from '../../state/tuning-check.ts';

/** Said before anything sounds. */
export const sweepCaution =
  'Three short sweeps sound, each a little louder than the last, like quiet talk at most. Set the volume as you will ' +
  'play, and low enough to talk over: loud sound harms hearing. Take headphones off your ears for it, and damp the strings.';

const VERDICTS: Readonly<Record<LevelVerdict, string>> = {
  silent: 'Nothing yet',
  'turn up': 'Turn up',
  good: 'Good',
  'too hot': 'Too hot',
};

const whole = (value: number): string => `${value < 0 ? '−' : ''}${Math.abs(Math.round(value))}`;

export function levelWords(level: LevelReading | null): { readonly verdict: string; readonly facts: string } {
  if (level === null) return { verdict: VERDICTS.silent, facts: 'The microphone is not open.' };
  const clipped = level.verdict === 'too hot' ? ' It clips: turn the input down, or move away from it.' : '';
  return {
    verdict: VERDICTS[level.verdict],
    facts: `Loudest ${whole(level.peakDb)} dB, the room alone ${whole(level.floorDb)} dB of full scale.${clipped}`,
  };
}

export function tuningWords({ strings, referenceHz }: TuningReading): string {
  if (strings.every(({ cents }) => cents === null)) return 'Let each one ring for a second.';
  if (referenceHz === null) return 'Measured against A = 440 Hz until more strings were heard.';
  return `They agree on A = ${(Math.round(referenceHz * 10) / 10).toFixed(1)} Hz.`;
}

/** A delay that differs by less from sweep to sweep is the same. */
const STEADY_MS = 0.5;

export function roomWords({
  delaySeconds,
  spreadSeconds,
  leakDb,
  removedDb,
  path,
}: MeasuredRoom): readonly string[] {
  const spreadMs = 1000 * spreadSeconds;
  const spread = spreadMs < STEADY_MS ? 'steady' : `within ${spreadMs.toFixed(1)} ms from sweep to sweep`;
  const delay =
    delaySeconds === null
      ? 'The delay could not be measured, since nothing came back; what the browser says of it is taken instead.'
      : `From speaker to microphone it takes ${Math.round(1000 * delaySeconds)} ms, ${spread}.`;
  if (path === null) return [`Headphones: nothing to take out.`, delay];
  const leak = leakDb === null ? '' : ` ${leakWords(leakDb)}`;
  return [`Speakers: band taken out by ${Math.round(removedDb)} dB.${leak}`, delay];
}

function leakWords(leakDb: number): string {
  const db = Math.round(Math.abs(leakDb));
  if (db === 0) return 'It comes back as loud as it is played.';
  return `It comes back ${db} dB ${leakDb < 0 ? 'quieter' : 'louder'} than it is played.`;
}

export function nudgeWords({ nudgeSeconds }: MeasuredRoom): string {
  const ms = Math.round(1000 * nudgeSeconds);
  if (ms === 0) return 'If notes that felt on the beat are shown late, count them earlier:';
  return `Notes are counted ${Math.abs(ms)} ms ${ms > 0 ? 'earlier' : 'later'} than measured:`;
}
