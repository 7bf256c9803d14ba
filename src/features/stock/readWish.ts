import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import { checkQuantity } from './checkQuantity.js';
import type { StockWish } from './pickStock.js';

interface Wished {
  partTypeId?: string | null;
  lotId?: string | null;
  taskId?: string | null;
  quantity: number;
}

/** Which spares are wanted, of a part type or from one lot; what is wrong goes to the checklist. */
export async function readWish(
  check: Checklist,
  input: Wished,
  path: string[],
): Promise<StockWish> {
  check.that(
    (typeof input.partTypeId === 'string') !== (typeof input.lotId === 'string'),
    'Say which: give a part type or a lot, one of the two.',
    path,
  );
  const at = (field: string): string[] => [...path, field];
  const partTypeId = checkedRecordId(check, 'PartType', input.partTypeId, at('partTypeId'));
  const lotId = checkedRecordId(check, 'StockLot', input.lotId, at('lotId'));
  const taskId = checkedRecordId(check, 'Task', input.taskId, at('taskId'));
  await check.exists('part_type', partTypeId, at('partTypeId'));
  await check.exists('stock_lot', lotId, at('lotId'));
  await check.exists('task', taskId, at('taskId'));
  checkQuantity(check, input.quantity, at('quantity'));
  return { partTypeId, lotId, taskId, quantity: input.quantity };
}
