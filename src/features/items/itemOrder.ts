import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { RootPage } from '../../api/kit/rootPage.js';
import type { ItemSort } from './itemSort.inputs.js';
import {
  completionBasisPoints,
  costMinorUnits,
  investedSeconds,
  readinessRank,
} from './standingColumns.js';

type ItemOrder = Required<
  Pick<RootPage, 'sortBy' | 'sortParameters' | 'sortKind' | 'sortName' | 'direction'>
>;

/** @throws GraphQLError when the order cannot be had. */
export function itemOrder(sort: ItemSort | null, nowMs: number): ItemOrder {
  const direction = sort?.direction ?? 'ASC';
  const by = sort?.by ?? 'INVENTORY_NUMBER';
  const sortName = by === 'COST' ? `${by} ${sort?.currency ?? ''}` : by;
  return { ...keyFor(sort, nowMs), sortName, direction };
}

type Key = Pick<ItemOrder, 'sortBy' | 'sortParameters' | 'sortKind'>;
const text = (sortBy: string): Key => ({ sortBy, sortParameters: [], sortKind: 'text' });
const count = (sortBy: string): Key => ({ sortBy, sortParameters: [], sortKind: 'count' });

function keyFor(sort: ItemSort | null, nowMs: number): Key {
  switch (sort?.by) {
    case undefined:
    case 'INVENTORY_NUMBER':
      return text('item.inventory_number');
    case 'NAME':
      return text(`LOWER(COALESCE(item.name, ''))`);
    case 'CHANGED':
      return text('item.changed_at');
    case 'READINESS': {
      const { sql, parameters } = readinessRank(nowMs);
      return { sortBy: sql, sortParameters: parameters, sortKind: 'count' };
    }
    case 'COMPLETION':
      return count(completionBasisPoints);
    case 'HOURS':
      return count(investedSeconds);
    case 'COST': {
      if (!sort?.currency) {
        throw argumentProblem('To order by COST, say in which "currency", such as EUR.');
      }
      const { sql, parameters } = costMinorUnits(sort.currency);
      return { sortBy: sql, sortParameters: parameters, sortKind: 'largeCount' };
    }
  }
}
