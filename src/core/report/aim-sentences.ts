/** How a take did by an aim, in words. */
import type { AimResult } from '../take/schema.ts';
import type { Words } from '../words/words.ts';
import { toldChoruses } from './more-choruses.ts';

/** What a take answers to the aim in hand, short enough for a headline; see {@link aimEvidence} for the numbers. */
export function aimAnswer(aim: AimResult, words: Words): string {
  const { verdict, missing, result, events, shareToReach } = aim;
  const { answer } = words.report.aims;
  const counted = { hits: result.hits, of: result.of, events, over: aim.over ?? [] };
  if (verdict === 'not in this chart' || result.of === 0 || missing === 'use elsewhere')
    return aimEvidence(aim, words);
  if (verdict === 'reached') return answer.reached(counted);
  if (verdict === 'too short to tell' || missing === 'events') {
    return answer.tooShort({ ...counted, more: toldChoruses(Math.max(1, result.moreChoruses ?? 1)) });
  }
  if (missing === 'luck') return answer.luck(counted);
  return answer.share({ ...counted, needed: Math.ceil(shareToReach * result.of - 1e-9) });
}

/** How a take did by an aim, one sentence. */
export function aimEvidence(aim: AimResult, words: Words): string {
  const { verdict, missing, result, events, shareToReach, leastEvents, againstLuck } = aim;
  const { evidence } = words.report.aims;
  const over = aim.over ?? [];
  const { hits, of } = result;
  if (verdict === 'not in this chart') return evidence.notInChart({ over });
  if (of === 0) return evidence.none({ events, over });
  if (missing === 'events') return evidence.few({ hits, of, least: leastEvents, events, over });
  if (missing === 'use elsewhere') return evidence.notUsed({ hits, of, events, over });
  return evidence.counted({
    hits,
    of,
    toReach: shareToReach,
    ...(againstLuck && { expected: result.expected }),
    onlyLuck: missing === 'luck',
    moreChoruses: verdict === 'too short to tell' ? toldChoruses(result.moreChoruses) : null,
    events,
    over,
  });
}
