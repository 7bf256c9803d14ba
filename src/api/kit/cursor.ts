import { argumentProblem } from './argumentProblem.js';

/** What a list is sorted by before the id settles ties; the engines fail on anything else. */
export type SortKind = 'text' | 'count' | 'largeCount';

/** An order of one list. Its name travels in every cursor, so that no other list takes it. */
export interface Order {
  /** `Place place.name ASC` */
  name: string;
  kind: SortKind;
}

/** Where a row stands in an order: its sort value, and its id. */
export type SortKey = [value: string | number, id: string];

const largest: Record<Exclude<SortKind, 'text'>, number> = {
  count: 2 ** 31 - 1,
  largeCount: Number.MAX_SAFE_INTEGER,
};

/** @throws Error when the order says it sorts by something else: its kind is to be mended. */
export function cursorOf(order: Order, [value, id]: SortKey): string {
  if (!fits(order.kind, value)) {
    throw new Error(`The order "${order.name}" is no ${order.kind}: ${typeof value} ${value}`);
  }
  return Buffer.from(JSON.stringify([order.name, value, id])).toString('base64url');
}

/** @throws GraphQLError for a cursor that was not given out for this order. */
export function keyOf(cursor: string, order: Order): SortKey {
  const parts = partsOf(cursor);
  if (parts?.length !== 3) {
    throw argumentProblem('"after" is not a cursor. Send the endCursor of the page before.');
  }
  const [name, value, id] = parts;
  if (name === order.name && fits(order.kind, value) && fits('text', id)) {
    return [value, id] as SortKey;
  }
  throw argumentProblem(
    '"after" comes from another list or another order. Send the endCursor of the page before in this one, or begin without "after".',
  );
}

function partsOf(cursor: string): unknown[] | null {
  try {
    const parts: unknown = JSON.parse(Buffer.from(cursor, 'base64url').toString());
    return Array.isArray(parts) ? parts : null;
  } catch {
    return null;
  }
}

/** PostgreSQL refuses a text with a null character, and a number that its column cannot hold. */
const fits = (kind: SortKind, value: unknown): boolean =>
  kind === 'text'
    ? typeof value === 'string' && !value.includes('\u0000')
    : Number.isInteger(value) && Math.abs(value as number) <= largest[kind];
