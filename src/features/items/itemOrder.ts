import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { Condition } from '../../api/kit/conditions.js';
import { keyOf } from '../../api/kit/cursor.js';
import type { ItemSort, SortDirection } from './itemSort.inputs.js';
import {
  completionBasisPoints,
  costMinorUnits,
  investedSeconds,
  readinessRank,
} from './standingColumns.js';

interface ItemOrder {
  sortBy: string;
  sortParameters: Condition['parameters'];
  direction: SortDirection;
}

/** @throws GraphQLError when the order cannot be had, or `after` comes from another order. */
export function itemOrder(
  sort: ItemSort | null,
  after: string | null | undefined,
  nowMs: number,
): ItemOrder {
  const { sql, parameters, isText, largest } = keyFor(sort, nowMs);
  if (typeof after === 'string') refuseOtherKey(after, isText ? null : largest);
  return { sortBy: sql, sortParameters: parameters, direction: sort?.direction ?? 'ASC' };
}

/** PostgreSQL fails on a number that its column could not hold. */
const largestCount = 2 ** 31 - 1;

type Key = Condition & { isText: boolean; largest: number };
const text = (sql: string): Key => ({ sql, parameters: [], isText: true, largest: 0 });
const count = (sql: string): Key => ({ sql, parameters: [], isText: false, largest: largestCount });

function keyFor(sort: ItemSort | null, nowMs: number): Key {
  switch (sort?.by) {
    case undefined:
    case 'INVENTORY_NUMBER':
      return text('item.inventory_number');
    case 'NAME':
      return text(`LOWER(COALESCE(item.name, ''))`);
    case 'CHANGED':
      return text('item.changed_at');
    case 'READINESS':
      return { ...readinessRank(nowMs), isText: false, largest: largestCount };
    case 'COMPLETION':
      return count(completionBasisPoints);
    case 'HOURS':
      return count(investedSeconds);
    case 'COST':
      if (sort?.currency)
        return {
          ...costMinorUnits(sort.currency),
          isText: false,
          largest: Number.MAX_SAFE_INTEGER,
        };
      throw argumentProblem('To order by COST, say in which "currency", such as EUR.');
  }
}

/** The engines would compare a text with a number in silence, or fail on it. */
function refuseOtherKey(after: string, largest: number | null): void {
  const [key] = keyOf(after, 2);
  const fits =
    largest === null
      ? typeof key === 'string'
      : Number.isSafeInteger(key) && Math.abs(Number(key)) <= largest;
  if (fits) return;
  throw argumentProblem(
    '"after" comes from a list in another order. Keep the order, or begin without "after".',
  );
}
