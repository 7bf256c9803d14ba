import { childPages } from '../../api/kit/childPages.js';
import { grouped, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation, TypeReads } from '../../api/kit/typeReads.js';
import { hundredths, shownBasis } from '../standing/standingFacts.js';
import { doneOfRule } from './maintenanceDone.reads.js';
import { readMaintenanceRules } from './maintenanceRules.reads.js';
import { readSpells } from './spells.reads.js';

const columns = selectColumns('on_air_use', [
  'id',
  'version',
  'itemId',
  'startedAt',
  'minutes',
  'contacts',
  'band',
  'mode',
  'operatorId',
  'note',
]);

export const onAirUseReads = tableReads('OnAirUse', 'on_air_use', columns, {
  item: one('Item', 'itemId'),
  operator: one('Party', 'operatorId'),
});

export const maintenanceRuleReads: TypeReads = {
  typeName: 'MaintenanceRule',
  byIds: ({ database: { reader }, nowMs }, ids) =>
    readMaintenanceRules(reader, nowMs, { column: 'id', ids }),
  relations: { item: one('Item', 'itemId'), done: doneOfRule },
};

export const rotationReads: TypeReads = {
  typeName: 'RotationRig',
  byIds: () => Promise.resolve([]),
  relations: { rig: one('Rig', 'rigId') },
};

const use: Relation = async ({ database: { reader }, nowMs }, parents) => {
  const spells = await readSpells(
    reader,
    parents.map(({ id }) => id),
  );
  const values = parents.map(({ id }) => {
    const own = spells.get(id) ?? [];
    const last = own.at(-1);
    return {
      hours: hundredths(own.reduce((sum, { minutes }) => sum + minutes, 0) / 60),
      contacts: own.reduce((sum, { contacts }) => sum + contacts, 0),
      uses: own.length,
      lastUsedAt: last ? new Date(last.startedAtMs).toISOString() : null,
      basis: shownBasis(
        {
          method: 'The uses on the air as they were recorded, added up.',
          counted: [{ what: 'uses', count: own.length }],
        },
        nowMs,
      ),
    };
  });
  return { values, children: [], childType: null };
};

const maintenance: Relation = async ({ database: { reader }, nowMs }, parents) => {
  const ids = parents.map(({ id }) => id);
  const rules = await readMaintenanceRules(reader, nowMs, { column: 'item_id', ids });
  const children = rules
    .filter(({ retiredAt }) => retiredAt === null)
    .map((rule) => ({ ...rule, parentId: rule['itemId'] }));
  return { values: grouped(parents, children), children, childType: 'MaintenanceRule' };
};

export const useRelationsOfItem: Record<string, Relation> = {
  use,
  maintenance,
  uses: childPages('OnAirUse', {
    table: 'on_air_use',
    columns,
    parentColumn: 'item_id',
    sortColumn: 'started_at',
    sortName: 'startedAt',
    direction: 'DESC',
  }),
};
