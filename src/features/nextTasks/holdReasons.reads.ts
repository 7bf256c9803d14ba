import { listParameter } from '../../db/dialect.js';
import { groupedBy } from '../../db/groupedBy.js';
import type { Reader } from '../../db/reader.js';
import { hazardGuide } from '../hazards/hazardGuide.js';
import type { HazardKind } from '../hazards/hazardKind.js';
import { readNeededParts } from '../tasks/partsNeeded.reads.js';
import type { TaskOfItem } from '../tasks/tasksForItems.reads.js';

export interface HoldReasons {
  heldBack: Map<string, string[]>;
  /** Hazards of the set that a task is on, as sentences with their cautions. */
  hazards: Map<string, string[]>;
}

/**
 * Why tasks cannot be done with what is at hand: parts that do not lie ready, and hazards of the
 * item that are not cleared. A task that itself names the kind of hazard reckons with it and is
 * not held back; what belongs to the design stays for ever and holds nothing back.
 */
export async function readHoldReasons(
  reader: Reader,
  tasks: readonly TaskOfItem[],
  taskIds: readonly string[],
): Promise<HoldReasons> {
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
  const heldBack = new Map<string, string[]>();
  const cautions = new Map<string, string[]>();
  for (const { id, itemId } of tasks) {
    const own = hazards.get(itemId) ?? [];
    const reasons = [
      ...own
        .filter(({ kind }) => !hazardGuide(kind).belongsToDesign)
        .filter(({ kind }) => !namedBy.get(id)?.includes(kind))
        .map(({ kind, note }) => whyHazard(kind, note)),
      ...(parts.get(id) ?? [])
        .filter(({ quantity, onShelf }) => onShelf < quantity)
        .map(
          ({ designation, quantity, onShelf }) =>
            `It needs ${quantity} × ${designation}; ${onShelf === 0 ? 'none lies' : `${onShelf} lie`} ready.`,
        ),
    ];
    if (reasons.length > 0) heldBack.set(id, reasons);
    if (own.length > 0) cautions.set(id, own.map(cautionOf));
  }
  return { heldBack, hazards: cautions };
}

function whyHazard(kind: HazardKind, note: string | null): string {
  const { clearedBy } = hazardGuide(kind);
  return `A hazard of the set is not cleared: ${namedHazard(kind, note)}. What clears it: ${clearedBy}`;
}

function cautionOf({ kind, note }: { kind: HazardKind; note: string | null }): string {
  const { cautions, belongsToDesign } = hazardGuide(kind);
  const standing = belongsToDesign ? 'It belongs to the design.' : 'It is not cleared.';
  return `Hazard of the set, ${namedHazard(kind, note)}. ${standing} ${cautions.join(' ')}`;
}

const namedHazard = (kind: HazardKind, note: string | null): string =>
  `${kind.toLowerCase().replaceAll('_', ' ')}${note === null ? '' : ` (${note})`}`;

async function openHazards(reader: Reader, itemIds: readonly string[]) {
  return reader.rows<{ itemId: string; kind: HazardKind; note: string | null }>(
    `SELECT item_id AS "itemId", kind AS "kind", note AS "note" FROM hazard
     WHERE cleared_at IS NULL AND ${reader.dialect.isAnyOf('item_id')} ORDER BY raised_at, id`,
    [listParameter(itemIds)],
  );
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
