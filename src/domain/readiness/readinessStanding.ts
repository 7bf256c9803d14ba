import type { CountedInput } from '../basis.js';
import type { Blocker, Caution } from './blocker.js';
import { componentBlockers } from './componentBlockers.js';
import { finalCheckStanding, type CheckLapse } from './finalCheckStanding.js';
import { itemBlockers } from './itemBlockers.js';
import { itemCautions } from './itemCautions.js';
import { positionBlockers } from './positionBlockers.js';
import type { ReadinessFacts } from './readinessFacts.js';
import { worstLevel, type ReadinessLevel } from './readinessLevel.js';
import { roleStanding } from './roleStanding.js';

/** All of a readiness answer that the clock does not change: plain data, fit to be kept. */
export interface ReadinessStanding {
  /** The level while no check has lapsed. */
  readonly level: ReadinessLevel;
  readonly blockers: readonly Blocker[];
  readonly cautions: readonly Caution[];
  readonly lapses: readonly CheckLapse[];
  /** When the first passed check lapses; null when none will. */
  readonly checksValidUntilMs: number | null;
  /** Which accessories can serve each required role. */
  readonly servedRoles: readonly {
    readonly roleCode: string;
    readonly servedByIds: readonly string[];
  }[];
  readonly counted: readonly CountedInput[];
}

/** Judges the facts apart from the clock; `readinessAt` adds what has lapsed at an instant. */
export function readinessStanding(facts: ReadinessFacts): ReadinessStanding {
  const { rig, positions } = facts;
  const accessories = new Map(facts.accessories.map((one) => [one.itemId, one]));
  const roles = facts.requiredRoles.map((role) => roleStanding(role, accessories));
  const checks =
    facts.mayLackFinalChecks === true && facts.procedures.length === 0
      ? { blockers: [], lapses: [] }
      : finalCheckStanding(rig.itemId, facts.procedures, facts.finalChecks);
  const blockers = [
    ...itemBlockers(rig),
    ...componentBlockers(rig.components.filter((one) => one.isInRequiredPosition)),
    ...positionBlockers(positions),
    ...roles.flatMap((role) => role.blockers),
    ...checks.blockers,
  ];
  const lapses = [...checks.lapses, ...roles.flatMap(({ lapse }) => lapse ?? [])];
  return {
    level: worstLevel(blockers.map((blocker) => blocker.level)),
    blockers,
    cautions: [...itemCautions(rig, positions), ...roles.flatMap((role) => role.cautions)],
    lapses,
    checksValidUntilMs: lapses.reduce<number | null>(
      (first, { lapsesAtMs }) => (first === null ? lapsesAtMs : Math.min(first, lapsesAtMs)),
      null,
    ),
    servedRoles: roles.map(({ roleCode, servedByIds }) => ({ roleCode, servedByIds })),
    counted: [
      { what: 'findings on the rig', count: rig.findings.length },
      { what: 'hazards on the rig', count: rig.hazards.length },
      { what: 'components in the rig', count: rig.components.length },
      { what: 'positions of the fit-out', count: positions.length },
      { what: 'required accessory roles', count: roles.length },
      { what: 'accessories looked at', count: accessories.size },
      { what: 'final check procedures', count: facts.procedures.length },
      { what: 'final checks recorded', count: facts.finalChecks.length },
    ],
  };
}
