import { In } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ReadinessLevel } from '../../domain/readiness/readinessLevel.js';
import type { ItemStanding } from './computeStandings.js';
import { ItemCostEntity } from './itemCost.entity.js';
import { ItemHoursEntity } from './itemHours.entity.js';
import { ItemStandingEntity } from './itemStanding.entity.js';

/** Readiness as a number that sorts: the higher, the nearer to the air. */
export const readinessRanks: Readonly<Record<ReadinessLevel, number>> = {
  DO_NOT_CONNECT: 0,
  NOT_READY: 1,
  CHECKS_DUE: 2,
  ON_AIR_READY: 3,
};

const rowsAtOnce = 500;

/** Puts computed standings in the place of those that were kept for the same items. */
export async function writeStandings(
  work: UnitOfWork,
  standings: readonly ItemStanding[],
): Promise<void> {
  const itemId = In(standings.map((standing) => standing.itemId));
  const tables = [
    [ItemStandingEntity, standings.map((standing) => standingRow(standing, work.now))],
    [ItemHoursEntity, standings.flatMap(hoursRows)],
    [ItemCostEntity, standings.flatMap(costRows)],
  ] as const;
  for (const [entity, rows] of tables) {
    await work.manager.delete(entity, { itemId });
    for (let start = 0; start < rows.length; start += rowsAtOnce) {
      await work.manager
        .createQueryBuilder()
        .insert()
        .into(entity)
        .values(rows.slice(start, start + rowsAtOnce) as never)
        .updateEntity(false)
        .execute();
    }
  }
}

function standingRow(standing: ItemStanding, now: string): ItemStandingEntity {
  const { hours, completion, remaining, completeness, readiness } = standing.facts;
  const { checksValidUntilMs } = readiness;
  return {
    itemId: standing.itemId,
    computedAt: now,
    investedSeconds: hours.seconds,
    repeatedSeconds: hours.repeatedSeconds,
    completionBasisPoints: basisPoints(completion.share),
    budgetedMinutes: Math.round(completion.budgetedHours * 60),
    earnedMinutes: Math.round(completion.earnedHours * 60),
    completenessBasisPoints: basisPoints(completeness.share),
    requiredPositions: completeness.required,
    presentPositions: completeness.present,
    readinessRank: readinessRanks[readiness.level],
    checksValidUntil:
      checksValidUntilMs === null ? null : new Date(checksValidUntilMs).toISOString(),
    openTasks: remaining.openTasks,
    refutedTasks: remaining.refutedTasks,
    expectedRemainingMinutes: Math.round(remaining.expectedHours * 60),
    remainingSquareMinutes: Math.round(standing.varianceHours * 3600),
    facts: standing.facts as unknown as Record<string, unknown>,
  };
}

const basisPoints = (share: number | null): number =>
  share === null ? -1 : Math.round(share * 10_000);

/** Task by task in the tallies; month by month and kind by kind here. */
function hoursRows({ itemId, tallies }: ItemStanding): ItemHoursEntity[] {
  const rows = new Map<string, ItemHoursEntity>();
  for (const { taskKind, personId, localMonth, seconds } of tallies) {
    const key = `${taskKind} ${personId} ${localMonth}`;
    const row = rows.get(key);
    if (row) row.seconds += seconds;
    else rows.set(key, { id: uuidv7(), itemId, taskKind, personId, localMonth, seconds });
  }
  return [...rows.values()];
}

const costRows = ({ itemId, costs }: ItemStanding): ItemCostEntity[] =>
  costs.map(({ currency, price, extras, expenses, total }) => ({
    itemId,
    currency,
    priceMinorUnits: price,
    extraMinorUnits: extras,
    expenseMinorUnits: expenses,
    totalMinorUnits: total,
  }));
