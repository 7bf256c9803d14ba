import type { ShownCheckFragment } from '../../../gql/graphql.js';

const dayMs = 24 * 60 * 60 * 1000;

export interface LatestCheck {
  check: ShownCheckFragment;
  /** It holds up to this instant; null for one that was not passed. */
  holdsUntil: string | null;
  isLapsed: boolean;
}

/**
 * The latest check of each name, capitals and spaces aside; of two at one instant the failed one, as
 * readiness counts them.
 * @param checks the latest first
 */
export function latestChecks(checks: readonly ShownCheckFragment[], now: Date): LatestCheck[] {
  const latest = new Map<string, ShownCheckFragment>();
  for (const check of checks) {
    const key = check.procedure.trim().replace(/\s+/g, ' ').toLowerCase();
    const held = latest.get(key);
    const isSameInstant = held && Date.parse(held.checkedAt) === Date.parse(check.checkedAt);
    if (!held || (isSameInstant && !check.isPassed)) latest.set(key, check);
  }
  return [...latest.values()].map((check) => {
    const until = Date.parse(check.checkedAt) + check.validDays * dayMs;
    return {
      check,
      holdsUntil: check.isPassed ? new Date(until).toISOString() : null,
      isLapsed: check.isPassed && until <= now.getTime(),
    };
  });
}
