import type { Relation, Row } from '../../api/kit/typeReads.js';
import { readObjectIds } from './readObjectIds.js';

/** The identification sheet of each item. */
export const objectIdRelationsOfItem: Record<string, Relation> = {
  objectId: async ({ database: { reader }, nowMs }, items) => {
    const found = await readObjectIds(
      reader,
      items.map(({ id }) => id),
    );
    const values = items.map(({ id }): Row | null => {
      const sheet = found.get(id);
      if (!sheet) return null;
      const basis = {
        method:
          'What was written for the sheet comes first; a category without it is answered from the ' +
          'record of the item, its model, its making and its open findings.',
        counted: [
          { what: 'categories answered', count: sheet.answers.length - sheet.missing.length },
          { what: 'open findings', count: sheet.findingCount },
        ],
        assumptions: [],
        asOf: new Date(nowMs).toISOString(),
      };
      return { id, ...sheet, basis };
    });
    return { values, children: [], childType: null };
  },
};
