import type { Condition } from '../../api/kit/conditions.js';

/** Items with how they stand; those whose standing is not computed yet are there too. */
export const itemWithStanding = 'item LEFT JOIN item_standing ON item_standing.item_id = item.id';

export const investedSeconds = 'COALESCE(item_standing.invested_seconds, 0)';

/** Hundredths of a percent; −1 when nothing is budgeted. */
export const completionBasisPoints = 'COALESCE(item_standing.completion_basis_points, -1)';

/** Final checks lapse by themselves: a kept 3 counts as 2 from then on. −1: not computed. */
export const readinessRank = (nowMs: number): Condition => ({
  sql: `CASE WHEN item_standing.readiness_rank = 3 AND item_standing.checks_valid_until <= ?
    THEN 2 ELSE COALESCE(item_standing.readiness_rank, -1) END`,
  parameters: [new Date(nowMs).toISOString()],
});

/** Minor units in one currency; −1 when there is no cost in it. */
export const costMinorUnits = (currency: string): Condition => ({
  sql: `COALESCE((SELECT item_cost.total_minor_units FROM item_cost
    WHERE item_cost.item_id = item.id AND item_cost.currency = ?), -1)`,
  parameters: [currency],
});
