import { z } from 'zod';
import { globalId, splitGlobalId } from '../../api/kit/globalId.js';
import { queryInWork } from '../../db/queryInWork.js';
import { ComponentOrigin } from '../parts/componentOrigin.js';
import { Disposition } from '../parts/disposition.js';
import { fitComponent } from '../parts/fitComponent.js';
import { removeComponent } from '../parts/removeComponent.js';
import { ReadingTier } from '../readings/readingTier.js';
import { recordReadings } from '../readings/recordReadings.js';
import { storyVerb, text, type Telling } from './storyEvent.js';

const part = {
  part: text.optional(),
  marking: text.optional(),
  dateCode: text.optional(),
  origin: z.enum(ComponentOrigin).default('UNKNOWN'),
  note: text.optional(),
};
const removing = z.strictObject({ disposition: z.enum(Disposition), note: text.optional() });
const measured = z.strictObject({
  /** The position whose component was measured; left out: the item as a whole. */
  in: text.optional(),
  quantity: text,
  value: z.string(),
  unit: text,
  note: text.optional(),
});

export const partVerbs = {
  fit: storyVerb(
    'fitComponent',
    {
      /** Position → what goes in: a new part, or one that came out of another item. */
      into: z.record(
        text,
        z.strictObject({ ...part, from: text.optional(), removing: removing.optional() }),
      ),
    },
    async ({ work, names, item }, { into }) => {
      for (const [designator, one] of Object.entries(into)) {
        const known = one.from === undefined ? null : names.id('component', one.from);
        await fitComponent(work, {
          itemId: names.id('item', item),
          designator,
          componentId: known,
          component:
            known === null
              ? {
                  partTypeId: names.optionalId('part type', one.part),
                  marking: one.marking ?? null,
                  dateCode: one.dateCode ?? null,
                  origin: one.origin,
                  note: one.note ?? null,
                }
              : null,
          removing: one.removing ? { ...one.removing, note: one.removing.note ?? null } : null,
          note: known === null ? null : (one.note ?? null),
        });
      }
    },
  ),

  remove: storyVerb(
    'removeComponent',
    { from: text, disposition: z.enum(Disposition), note: text.optional(), as: text.optional() },
    async (telling, event) => {
      const { work, names } = telling;
      const componentId = await sittingIn(telling, event.from);
      const { disposition, note } = event;
      await removeComponent(work, { componentId, disposition, note: note ?? null });
      if (event.as !== undefined) names.keep('component', event.as, componentId);
    },
  ),

  read: storyVerb(
    'recordReadings',
    {
      tier: z.enum(ReadingTier),
      by: text.optional(),
      instrument: text.optional(),
      method: text.optional(),
      readings: z.array(measured).min(1),
    },
    async (telling, event) => {
      const { work, names, item } = telling;
      const readings = [];
      for (const { in: designator, note, ...reading } of event.readings) {
        readings.push({
          ...reading,
          note: note ?? null,
          tier: event.tier,
          instrument: event.instrument ?? null,
          method: event.method ?? null,
          takenById: names.optionalId('person', event.by),
          ...(designator === undefined
            ? { itemId: names.id('item', item) }
            : { componentId: await sittingIn(telling, designator) }),
        });
      }
      return recordReadings(work, { readings });
    },
  ),
};

/** The component that sits in a position at this point of the story. */
export async function sittingIn(
  { work, names, item }: Telling,
  designator: string,
): Promise<string> {
  const [row] = await queryInWork<{ id: string }>(
    work,
    `SELECT component_id AS "id" FROM fitting
     WHERE item_id = ? AND designator = ? AND removed_at IS NULL`,
    [splitGlobalId(names.id('item', item))?.id ?? '', designator],
  );
  if (!row) throw new Error(`Nothing is recorded in ${designator} of ${item} at this point.`);
  return globalId('Component', row.id);
}
