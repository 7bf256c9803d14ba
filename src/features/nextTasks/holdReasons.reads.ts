import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { Reader } from '../../db/reader.js';
import { hazardGuide } from '../hazards/hazardGuide.js';
import type { HazardKind } from '../hazards/hazardKind.js';
import { readNeededParts } from '../tasks/partsNeeded.reads.js';
import type { TaskOfItem } from '../tasks/tasksForItems.reads.js';

/**
 * Why tasks cannot be done with what is at hand: parts that do not lie ready, and hazards of the
 * item that are not cleared. A task that itself names the kind of hazard reckons with it and is
 * not held back; what belongs to the design stays for ever and holds nothing back.
 */
export async function readHoldReasons(
  reader: Reader,
  tasks: readonly TaskOfItem[],
  taskIds: readonly string[],
): Promise<Map<string, string[]>> {
  const query = reader.rows.bind(reader);
  const parts = groupedBy(
    await readNeededParts(query, reader.dialect, taskIds),
    ({ parentId }) => parentId,
  );
  const hazards = groupedBy(
    await openHazards(reader, [...new Set(tasks.map(({ itemId }) => itemId))]),
    ({ itemId }) => itemId,
  );
  const namedBy = await hazardKindsOf(reader, taskIds);
  const held = new Map<string, string[]>();
  for (const { id, itemId } of tasks) {
    const reasons = [
      ...(hazards.get(itemId) ?? [])
        .filter(({ kind }) => !namedBy.get(id)?.includes(kind))
        .map(({ kind, note }) => whyHazard(kind, note)),
      ...(parts.get(id) ?? [])
        .filter(({ quantity, onShelf }) => onShelf < quantity)
        .map(
          ({ designation, quantity, onShelf }) =>
            `It needs ${quantity} × ${designation}; ${onShelf === 0 ? 'none lies' : `${onShelf} lie`} ready.`,
        ),
    ];
    if (reasons.length > 0) held.set(id, reasons);
  }
  return held;
}

function whyHazard(kind: HazardKind, note: string | null): string {
  const { clearedBy } = hazardGuide(kind);
  const what = kind.toLowerCase().replaceAll('_', ' ');
  const where = note === null ? '' : ` (${note})`;
  return `A hazard of the set is not cleared: ${what}${where}. What clears it: ${clearedBy}`;
}

async function openHazards(reader: Reader, itemIds: readonly string[]) {
  const rows = await reader.rows<{ itemId: string; kind: HazardKind; note: string | null }>(
    `SELECT item_id AS "itemId", kind AS "kind", note AS "note" FROM hazard
     WHERE cleared_at IS NULL AND ${reader.dialect.isAnyOf('item_id')} ORDER BY raised_at, id`,
    [listParameter(itemIds)],
  );
  return rows.filter(({ kind }) => !hazardGuide(kind).belongsToDesign);
}

async function hazardKindsOf(
  reader: Reader,
  taskIds: readonly string[],
): Promise<Map<string, HazardKind[]>> {
  const rows = await reader.rows<{ id: string; hazardKinds: string }>(
    `SELECT id AS "id", hazard_kinds AS "hazardKinds" FROM task WHERE ${reader.dialect.isAnyOf('id')}`,
    [listParameter(taskIds)],
  );
  return new Map(rows.map((row) => [row.id, JSON.parse(row.hazardKinds) as HazardKind[]]));
}
