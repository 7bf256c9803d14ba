import { Checklist } from '../../db/checklist.js';
import { insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { v7 as uuidv7 } from 'uuid';
import { checkOrderedLine, type OrderedLine } from './checkOrderedLine.js';
import { checkOrderDays } from './checkOrderDays.js';
import { readOpenOrders, type OrderOnItsWay } from './openOrders.reads.js';
import { PartOrderEntity } from './partOrder.entity.js';
import type { MarkOrderedInput } from './partOrder.inputs.js';

const mostLines = 200;

/** Keeps what was ordered, all lines or none. @returns the ids of the orders, a line each. */
export async function markOrdered(work: UnitOfWork, input: MarkOrderedInput): Promise<string[]> {
  const check = new Checklist(work);
  const { length } = input.lines;
  check.that(
    length >= 1 && length <= mostLines,
    `Send from 1 to ${mostLines} lines; these are ${length}.`,
    ['lines'],
  );
  check.done();
  // Two who order the same at once: the second hears of the first.
  await oneAtATime(work, 'part orders');
  checkOrderDays(check, input);
  const common = {
    orderedFrom: check.words(input.orderedFrom, ['orderedFrom']),
    orderedOn: input.orderedOn,
    expectedOn: input.expectedOn ?? null,
    reference: shortText(check, input.reference, ['reference']),
    note: check.text(input.note, ['note']),
    arrivedOn: null,
    cancelledAt: null,
  };
  const lines: OrderedLine[] = [];
  for (const [index, line] of input.lines.entries()) {
    lines.push(await checkOrderedLine(work, check, line, ['lines', String(index)]));
  }
  const open = await readOpenOrders(rowSourceInWork(work), {
    itemIds: lines.flatMap(({ itemId }) => itemId ?? []),
    wantIds: lines.flatMap(({ wantId }) => wantId ?? []),
  });
  lines.forEach((line, index) => {
    if (!input.lines[index]?.isOrderedAgain) refuseOrderedTwice(check, line, open, index);
  });
  check.done();
  const rows = lines.map((line) => ({ ...line, ...common, id: uuidv7() }));
  await insertRows(work, PartOrderEntity, rows);
  return rows.map(({ id }) => id);
}

function refuseOrderedTwice(
  check: Checklist,
  line: OrderedLine,
  open: readonly OrderOnItsWay[],
  index: number,
): void {
  const earlier = open.find(
    (order) =>
      (line.wantId !== null && order.wantId === line.wantId) ||
      (order.itemId === line.itemId &&
        order.designators.some((designator) => line.designators.includes(designator))),
  );
  if (!earlier) return;
  const places = earlier.designators.filter((designator) => line.designators.includes(designator));
  const what = places.length > 0 ? `For ${places.join(', ')} one` : 'This';
  const due = earlier.expectedOn === null ? '' : `, expected on ${earlier.expectedOn}`;
  check.add({
    code: 'CONFLICT',
    message:
      `${what} is ordered already: on ${earlier.orderedOn} from ${earlier.orderedFrom}${due}. ` +
      'Send `isOrderedAgain` to order it once more.',
    path: ['lines', String(index)],
  });
}
