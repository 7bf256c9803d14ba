import type { Row } from '../../api/kit/typeReads.js';
import type { ReadinessFacts } from '../../domain/readiness/readinessFacts.js';
import { readiness } from '../../domain/readiness/readiness.js';
import { largestAtOnce, SEARCH_STEPS } from '../../domain/shack/largestAtOnce.js';
import type { RoleAssignment } from '../../domain/shack/shack.js';
import { readyShack, type ShackModel } from '../../domain/shack/shackModel.js';
import { whyLeftOut } from '../../domain/shack/whyLeftOut.js';
import { shownBasis } from '../standing/standingFacts.js';

/** The answer about the whole shack, as rows whose rigs and accessories are looked ahead for. */
export function shackAnswer(
  facts: ReadonlyMap<string, ReadinessFacts>,
  model: ShackModel,
  { atMs, zone }: { atMs: number; zone: string },
): Row {
  const shack = readyShack(model);
  const answer = largestAtOnce(shack);
  const ready = new Map(shack.rigs.map((rig) => [rig.rigId, rig]));
  const name = (id: string): string => model.items.get(id)?.name ?? id;
  const present = [...facts.values()].filter(({ rig }) => model.items.has(rig.itemId));
  const leftOut = present.filter(({ rig }) => !answer.served.has(rig.itemId));
  return {
    id: 'shack',
    readyAlone: shack.rigs.length,
    readyAtOnce: answer.served.size,
    atMost: answer.atMost,
    isProven: answer.isProven,
    served: present.flatMap((one): Row[] => {
      const roles = answer.served.get(one.rig.itemId);
      return roles ? [servedRow(one, roles, atMs)] : [];
    }),
    leftOut: leftOut.map((one): Row => {
      const { level, blockers } = readiness(one, atMs, zone);
      const contender = ready.get(one.rig.itemId);
      const reasons = contender
        ? whyLeftOut(contender, shack, answer).map(
            ({ roleCode, inUse }) =>
              `Every ${inWords(roleCode)} that can serve it is in use: ${inUse
                .map(({ accessoryId, byRigId }) => `${name(accessoryId)} with ${name(byRigId)}`)
                .join(', ')}.`,
          )
        : blockers.map(({ message }) => message);
      return { id: one.rig.itemId, rigId: one.rig.itemId, level, reasons };
    }),
    basis: shownBasis(
      {
        method:
          'Rigs that share nothing are settled apart. One role a rig: maximum bipartite matching; two sides of roles: maximum flow; more: branch and bound with the flow as its bound.',
        counted: [
          { what: 'rigs', count: present.length },
          { what: 'accessories that serve or house one', count: model.items.size - present.length },
        ],
      },
      atMs,
      [
        'An accessory serves one rig at a time; what is housed together is at one rig.',
        `The search is cut short after ${SEARCH_STEPS} steps of branching, and says so.`,
      ],
    ),
  };
}

export const inWords = (roleCode: string): string => roleCode.toLowerCase().replaceAll('_', ' ');

export function servedRow(
  facts: ReadinessFacts,
  roles: readonly RoleAssignment[],
  atMs: number,
): Row {
  const rigId = facts.rig.itemId;
  return {
    id: rigId,
    rigId,
    servedBy: roles.map(({ roleCode, accessoryId }) => ({
      id: `${rigId} ${roleCode}`,
      role: roleCode,
      accessoryId,
    })),
    cautions: readiness(facts, atMs).cautions.map(({ message }) => message),
  };
}
