import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { shownItem } from './shownItem.js';

interface Holder {
  id: string;
  kind: string;
  inventoryNumber: string;
  name: string | null;
  retiredAt: string | null;
}

/** A number of its own for each item, those that have left included. @returns it trimmed. */
export async function checkInventoryNumber(
  work: UnitOfWork,
  check: Checklist,
  typed: string,
  exceptId?: string,
): Promise<string> {
  const number = check.words(typed, ['inventoryNumber'], 40);
  const [holder] = await queryInWork<Holder>(
    work,
    `SELECT id AS "id", kind AS "kind", inventory_number AS "inventoryNumber", name AS "name",
       retired_at AS "retiredAt" FROM item WHERE inventory_number = ?`,
    [number],
  );
  if (!holder || holder.id === exceptId) return number;
  const kind = holder.kind === 'RIG' ? 'a rig' : 'an accessory';
  const gone = holder.retiredAt === null ? '' : ', which has left the collection';
  check.add({
    code: 'CONFLICT',
    message: `${shownItem(holder)} has this number: ${kind}${gone}. Choose another number.`,
    path: ['inventoryNumber'],
  });
  return number;
}
