/** What was found in a recording, in a sentence that says how sure it is. */
import type { RecordingTempo } from '../../core/beats/recording-tempo.ts';
import type { Words } from '../../core/words/words.ts';

/** Beats that lie further than this from an even tempo are heard as off, seconds. */
const WANDERS_SECONDS = 0.1;

/** @param found null where neither a pulse nor the line's onsets tell a tempo */
export function foundSentence(found: RecordingTempo | null, { recording }: Words): string {
  if (found === null) return recording.noTempo;
  const facts = { bpm: found.bpm, seconds: found.firstBeatSeconds };
  if (found.from === 'onsets') return recording.fromLine(facts);
  return found.wanderSeconds > WANDERS_SECONDS ? recording.wanders(facts) : recording.fromPulse(facts);
}
