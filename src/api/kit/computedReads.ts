import type { Relation, TypeReads } from './typeReads.js';

/** The reads of a type that is no record: its rows are computed with their parent or not at all. */
export const computedReads = (
  typeName: string,
  relations: Record<string, Relation>,
): TypeReads => ({
  typeName,
  byIds: () => Promise.resolve([]),
  relations,
});
