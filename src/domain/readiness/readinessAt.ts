import type { Basis } from '../basis.js';
import type { Blocker, Caution } from './blocker.js';
import { lapsedBlocker } from './lapsedBlocker.js';
import { levelAt } from './levelAt.js';
import type { ReadinessLevel } from './readinessLevel.js';
import type { ReadinessStanding } from './readinessStanding.js';

export interface Readiness {
  readonly level: ReadinessLevel;
  /** Everything that stands in the way, each with what would remove it. */
  readonly blockers: readonly Blocker[];
  readonly cautions: readonly Caution[];
  /** When the first passed check lapses or lapsed; null when none will. */
  readonly checksValidUntilMs: number | null;
  readonly servedRoles: ReadinessStanding['servedRoles'];
  readonly basis: Basis;
}

/**
 * Readiness at an instant from a kept standing: only the lapse of checks is applied anew.
 * @param zone IANA zone of the days that the sentences name.
 */
export function readinessAt(standing: ReadinessStanding, nowMs: number, zone = 'UTC'): Readiness {
  const lapsed = standing.lapses.filter((lapse) => nowMs >= lapse.lapsesAtMs);
  return {
    level: levelAt(standing, nowMs),
    blockers: [...standing.blockers, ...lapsed.map((lapse) => lapsedBlocker(lapse, zone))],
    cautions: standing.cautions,
    checksValidUntilMs: standing.checksValidUntilMs,
    servedRoles: standing.servedRoles,
    basis: {
      counted: standing.counted,
      method:
        'Every recorded condition is judged and the worst decides; of each final check the latest counts, for its days of validity.',
      asOfMs: nowMs,
    },
  };
}
