import { GraphQLError } from 'graphql';

/** Where a row stands in an order: its sort keys, the last one unique. */
export type SortKey = (string | number)[];

export const cursorOf = (key: SortKey): string =>
  Buffer.from(JSON.stringify(key)).toString('base64url');

/** PostgreSQL refuses a text with a null character. */
const isText = (part: unknown): part is string =>
  typeof part === 'string' && !part.includes('\u0000');

/** @throws GraphQLError for a cursor that was not given out for this order. */
export function keyOf(cursor: string, length: number): SortKey {
  try {
    const key: unknown = JSON.parse(Buffer.from(cursor, 'base64url').toString());
    const isKey =
      Array.isArray(key) &&
      key.length === length &&
      key.every((part) => typeof part === 'number' || isText(part));
    if (isKey) return key;
  } catch {
    // Falls through to the refusal below.
  }
  throw new GraphQLError(
    '"after" is not a cursor of this list and order. Send the endCursor of the page before.',
    { extensions: { code: 'BAD_USER_INPUT' } },
  );
}
