import { dayInZone } from '../dates/dayInZone.js';
import type { Blocker } from './blocker.js';
import type { CheckLapse } from './finalCheckStanding.js';

/** What stands in the way once a passed check has lapsed; the day is that of the zone. */
export function lapsedBlocker(
  { name, roleName, lapsesAtMs, procedureCode }: CheckLapse,
  zone: string,
): Blocker {
  const since = dayInZone(lapsesAtMs, zone);
  const again = {
    level: 'CHECKS_DUE',
    subjectId: procedureCode,
    wouldBeMetBy: `Make the final check “${name}” again and record it as passed.`,
  } as const;
  return roleName === undefined
    ? {
        ...again,
        code: 'FINAL_CHECK_LAPSED',
        message: `The final check “${name}” lapsed on ${since}.`,
        subjectKind: 'PROCEDURE',
      }
    : {
        ...again,
        code: 'ACCESSORY_CHECKS_LAPSED',
        message: `By ${since} every ${roleName} that can serve had a final check lapse.`,
        subjectKind: 'ROLE',
      };
}
