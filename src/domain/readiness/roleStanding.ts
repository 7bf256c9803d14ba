import type { Blocker, Caution } from './blocker.js';
import type { CheckLapse } from './finalCheckStanding.js';
import { designCautions } from './itemCautions.js';
import type { AccessoryFacts, RoleFacts } from './readinessFacts.js';
import { serviceability, type Serviceability } from './serviceability.js';

export interface RoleStanding {
  readonly roleCode: string;
  /** The accessories that can serve now, in the order recorded. */
  readonly servedByIds: readonly string[];
  readonly blockers: readonly Blocker[];
  readonly cautions: readonly Caution[];
  /** When the last of those that can serve has a check lapse; null when one never will. */
  readonly lapse: CheckLapse | null;
}

/**
 * Whether a required role can be served. When nobody can and one candidate carries a hazard, the
 * whole rig is not to be connected, since that candidate is what one would reach for.
 */
export function roleStanding(
  role: RoleFacts,
  accessories: ReadonlyMap<string, AccessoryFacts>,
): RoleStanding {
  const candidates = role.accessoryIds.map((id) => serviceability(id, accessories));
  const serving = candidates.filter((candidate) => candidate.isServiceable);
  const failing = candidates.filter((candidate) => !candidate.isServiceable);
  const servedByIds = serving.map((candidate) => candidate.accessoryId);
  const { roleCode } = role;
  if (serving.length === 0) {
    return {
      roleCode,
      servedByIds,
      blockers: [notServed(role, failing)],
      cautions: [],
      lapse: null,
    };
  }
  const cautions = [
    ...failing.map((candidate) => doNotUse(role, candidate, accessories)),
    ...servedByIds.flatMap((id) => {
      const accessory = accessories.get(id);
      return accessory === undefined ? [] : designCautions(accessory);
    }),
  ];
  return { roleCode, servedByIds, blockers: [], cautions, lapse: lastLapse(role, serving) };
}

/** A role is served as long as one candidate has every check in date. */
function lastLapse(role: RoleFacts, serving: readonly Serviceability[]): CheckLapse | null {
  let last: CheckLapse | null = null;
  for (const { lapses } of serving) {
    const [first, ...others] = lapses;
    if (first === undefined) return null;
    const soonest = others.reduce(
      (held, lapse) => (lapse.lapsesAtMs < held.lapsesAtMs ? lapse : held),
      first,
    );
    if (last === null || soonest.lapsesAtMs > last.lapsesAtMs) last = soonest;
  }
  return last && { ...last, procedureCode: role.roleCode, roleName: role.roleName };
}

function notServed(role: RoleFacts, failing: readonly Serviceability[]): Blocker {
  const none = failing.length === 0;
  const reasons = failing.flatMap((candidate) => candidate.reasons);
  return {
    code: 'ROLE_NOT_SERVED',
    level: failing.some((candidate) => candidate.carriesHazard) ? 'DO_NOT_CONNECT' : 'NOT_READY',
    message: none
      ? `No accessory is recorded as ${role.roleName}.`
      : `No ${role.roleName} can serve: ${reasons.map((reason) => reason.message).join(' ')}`,
    subjectKind: 'ROLE',
    subjectId: role.roleCode,
    wouldBeMetBy: none
      ? `Record an accessory that serves as ${role.roleName}.`
      : [...failing.map(wholeMend), `Record another ${role.roleName}.`].join(' Or: '),
  };
}

function wholeMend(candidate: Serviceability): string {
  return candidate.reasons.map((reason) => reason.wouldBeMetBy).join(' ');
}

function doNotUse(
  role: RoleFacts,
  candidate: Serviceability,
  accessories: ReadonlyMap<string, AccessoryFacts>,
): Caution {
  const name = accessories.get(candidate.accessoryId)?.name ?? candidate.accessoryId;
  const why = candidate.reasons.map((reason) => reason.message).join(' ');
  return {
    code: 'ACCESSORY_NOT_SERVICEABLE',
    message: `Do not use “${name}” as ${role.roleName}: ${why}`,
    subjectKind: 'ITEM',
    subjectId: candidate.accessoryId,
  };
}
