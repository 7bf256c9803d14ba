import type { Relation, Row } from '../../api/kit/typeReads.js';

/** The readings that a computed row rests on, by the ids that it names in `readingIds`. */
export const readingsByIds: Relation = async (context, parents) => {
  const idsOf = (row: Row): string[] => row['readingIds'] as string[];
  const ids = [...new Set(parents.flatMap(idsOf))];
  const children = (await context.reads.get('Reading')?.byIds(context, ids)) ?? [];
  const byId = new Map(children.map((row) => [row.id, row]));
  const values = parents.map((row) => idsOf(row).flatMap((id) => byId.get(id) ?? []));
  return { values, children, childType: 'Reading' };
};
