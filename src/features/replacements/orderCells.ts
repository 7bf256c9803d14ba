import type { OrderOnItsWay } from '../orders/openOrders.reads.js';

/** Columns of a list that say what is on its way. */
export const orderHeads = ['On order', 'Ordered on', 'Ordered from', 'Expected on'] as const;

/** The cells below `orderHeads` but the first: a day and a supplier an order, the oldest first. */
export const orderCells = (orders: readonly OrderOnItsWay[]): string[] => [
  orders.map(({ orderedOn }) => orderedOn).join(', '),
  orders.map(({ orderedFrom }) => orderedFrom).join(', '),
  orders.map(({ expectedOn }) => expectedOn ?? 'not said').join(', '),
];
