import { nameKey } from '../nameKey.js';

/** What is ordered and not there yet. */
export interface OpenOrder {
  readonly id: string;
  readonly partTypeId: string | null;
  /** In words, where there is no part type. */
  readonly description: string | null;
  /** The places that it is for; none: for the part as such. */
  readonly designators: readonly string[];
  readonly quantity: number;
}

/** What a line of a list asks for. */
export interface AskedPart {
  readonly partTypeId: string | null;
  readonly description: string | null;
  readonly designators: readonly string[];
}

/**
 * How many of what a line asks for are on their way. An order that names places counts for the lines
 * with these places, whatever stands in for the original there; one that names none counts for its
 * part. Of an order for places of several lines each gets one a place.
 */
export function onItsWay<Order extends OpenOrder>(
  asked: AskedPart,
  orders: readonly Order[],
): { quantity: number; orders: Order[] } {
  const places = new Set(asked.designators);
  const counted = orders.flatMap((order) => {
    const shared = order.designators.filter((designator) => places.has(designator)).length;
    const isWhole = shared === order.designators.length;
    const quantity = isWhole ? order.quantity : shared;
    const serves = order.designators.length > 0 ? shared > 0 : isSamePart(asked, order);
    return serves ? [{ order, quantity }] : [];
  });
  return {
    quantity: counted.reduce((sum, { quantity }) => sum + quantity, 0),
    orders: counted.map(({ order }) => order),
  };
}

function isSamePart(asked: AskedPart, order: OpenOrder): boolean {
  if (order.partTypeId !== null || asked.partTypeId !== null) {
    return order.partTypeId === asked.partTypeId;
  }
  return nameKey(order.description ?? '') === nameKey(asked.description ?? '');
}
