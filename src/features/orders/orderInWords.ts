import type { OrderOnItsWay } from './openOrders.reads.js';

/** One order in words: 12 on 2026-02-01 from the capacitor shop, expected 2026-02-20. */
export const orderInWords = (order: OrderOnItsWay): string => {
  const { quantity, orderedOn, orderedFrom, expectedOn } = order;
  const due = expectedOn === null ? 'no day said' : `expected ${expectedOn}`;
  return `${quantity} on ${orderedOn} from ${orderedFrom}, ${due}`;
};
