import { groupedBy } from '../../db/groupedBy.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { AccessoryRole } from '../items/accessoryRole.js';
import type { ItemThen } from './itemsAsOf.reads.js';
import type { ReadinessRecords } from './readinessRecords.js';

/**
 * Where an item was taken for another model, or for none yet, puts what that one asks for in place
 * of what the present one does. Three statements, and none where nothing was.
 */
export async function takeModelsThen(
  { rows, dialect }: RowSource,
  items: readonly ItemThen[],
  records: ReadinessRecords,
): Promise<void> {
  const others = items.flatMap((item) =>
    item.modelIdThen === undefined ? [] : [{ item, modelId: item.modelIdThen }],
  );
  if (others.length === 0) return;
  const ids = [listParameter(others.flatMap(({ modelId }) => modelId ?? []))];
  const names = await rows<{ id: string; designation: string }>(
    `SELECT id AS "id", designation AS "designation" FROM model WHERE ${dialect.isAnyOf('id')}`,
    ids,
  );
  const positions = await rows<PositionRow>(
    `SELECT model_id AS "modelId", id AS "positionId", designator AS "positionKey",
       is_required AS "isRequired", part_type_id AS "partTypeId"
     FROM fit_out_position WHERE ${dialect.isAnyOf('model_id')}
     ORDER BY ordinal, natural_key(designator)`,
    ids,
  );
  const roles = await rows<{ modelId: string; role: AccessoryRole }>(
    `SELECT model_id AS "modelId", role AS "role" FROM model_role
     WHERE is_required AND ${dialect.isAnyOf('model_id')} ORDER BY role`,
    ids,
  );
  const fitOuts = groupedBy(positions, ({ modelId }) => modelId);
  const rolesOf = groupedBy(roles, ({ modelId }) => modelId);
  const nameOf = new Map(names.map(({ id, designation }) => [id, designation]));
  for (const { item, modelId } of others) {
    const { id } = item;
    const fitOut = (fitOuts.get(modelId ?? '') ?? []).map(({ modelId: _, ...position }) => ({
      ...position,
      isRequired: Boolean(position.isRequired),
    }));
    const required = new Set(
      fitOut.flatMap(({ positionKey, isRequired }) => (isRequired ? [positionKey] : [])),
    );
    const own = rolesOf.get(modelId ?? '') ?? [];
    records.items.set(id, { ...item, model: nameOf.get(modelId ?? '') ?? null });
    records.requiredRoles.set(
      id,
      own.map(({ role }) => ({ itemId: id, role })),
    );
    const facts = records.completeness.get(id);
    if (facts) records.completeness.set(id, { ...facts, fitOut });
    records.components.set(
      id,
      (records.components.get(id) ?? []).map((component) => ({
        ...component,
        isInRequiredPosition: required.has(component.positionKey ?? ''),
      })),
    );
  }
}

interface PositionRow {
  modelId: string;
  positionId: string;
  positionKey: string;
  /** SQLite gives 0 or 1. */
  isRequired: boolean | number;
  partTypeId: string | null;
}
