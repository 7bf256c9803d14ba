import { isSignatureValid, type SignedHead } from './headStatement.js';
import type { VerifiedLog } from './verifyLog.js';

/** Why a signed head does not vouch for this log; null when it does. */
export function whyHeadDiffers(head: SignedHead, log: VerifiedLog): string | null {
  if (!isSignatureValid(head)) return 'its signature does not fit';
  if (head.sequence > log.head.sequence) {
    return `the log ends at entry ${log.head.sequence}: what came after was cut off`;
  }
  return log.hashes.get(head.sequence) === head.entryHash
    ? null
    : 'the log says something else up to that entry';
}
