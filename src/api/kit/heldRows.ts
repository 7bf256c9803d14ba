import type { Relation, Row } from './typeReads.js';

/**
 * A field whose rows lie ready in the parent, computed with it, but have relations of their own: a
 * forecast's tasks. One list, or one row, for each parent.
 */
export const heldRows =
  (typeName: string, key: string): Relation =>
  (_context, parents) => {
    const values = parents.map((parent) => parent[key] as Row[] | Row | null);
    const children = values.flatMap((value) => value ?? []);
    return Promise.resolve({ values, children, childType: typeName });
  };
