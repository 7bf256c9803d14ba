import type { Checklist } from '../../db/checklist.js';

const longestShare = 40;

/** A stated share as it is kept: an exact decimal. */
export function readStatedShare(
  check: Checklist,
  share: string | null | undefined,
  path: string[],
): string | null {
  if (share === null || share === undefined) return null;
  check.that(
    share.length <= longestShare,
    `A share has at most ${longestShare} characters; round it.`,
    path,
  );
  return share;
}
