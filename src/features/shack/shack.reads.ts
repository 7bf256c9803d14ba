import { one } from '../../api/kit/relations.js';
import type { Relation, Row, TypeReads } from '../../api/kit/typeReads.js';

/** Rows that lie ready in the parent's own row under a name. */
export const within =
  (typeName: string, name: string): Relation =>
  (_context, parents) => {
    const values = parents.map((parent) => parent[name] as Row[]);
    return Promise.resolve({ values, children: values.flat(), childType: typeName });
  };

/** Computed for an answer and never asked for by an id of its own. */
const ofAnswer = (typeName: string, relations: Record<string, Relation>): TypeReads => ({
  typeName,
  byIds: () => Promise.resolve([]),
  relations,
});

const rig = one('Rig', 'rigId');
const item = one('Item', 'itemId');

export const shackReads: readonly TypeReads[] = [
  ofAnswer('Shack', {
    served: within('ServedRig', 'served'),
    leftOut: within('LeftOutRig', 'leftOut'),
  }),
  ofAnswer('ServedRig', { rig, servedBy: within('RoleFilled', 'servedBy') }),
  ofAnswer('RoleFilled', { accessory: one('Accessory', 'accessoryId') }),
  ofAnswer('LeftOutRig', { rig }),
  ofAnswer('NextSteps', { steps: within('NextStep', 'steps') }),
  ofAnswer('NextStep', { item, brings: bringsOf }),
  ofAnswer('OnAirAnswer', {
    rigs: within('OnAirRig', 'rigs'),
    leftOut: within('LeftOutRig', 'leftOut'),
  }),
  ofAnswer('OnAirRig', {
    rig,
    servedBy: within('RoleFilled', 'servedBy'),
    reading: one('Reading', 'readingId'),
  }),
];

/** The rigs that a step brings on the air, of all steps at once. */
async function bringsOf(...[context, steps]: Parameters<Relation>) {
  const idsOf = (step: Row): string[] => step['bringsRigIds'] as string[];
  const ids = [...new Set(steps.flatMap(idsOf))];
  const children = (await context.reads.get('Rig')?.byIds(context, ids)) ?? [];
  const byId = new Map(children.map((row) => [row.id, row]));
  const values = steps.map((step) => idsOf(step).flatMap((id) => byId.get(id) ?? []));
  return { values, children, childType: 'Rig' };
}
