import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkLotItems } from './checkLotItems.js';
import { checkNewItems } from './checkNewItems.js';
import { checkSpread } from './checkSpread.js';
import { draftLotLine } from './draftLotLine.js';
import { keepLotLines } from './keepLotLines.js';
import type { AddLotLineInput } from './lotLine.inputs.js';
import { readLots } from './lots.reads.js';

/** One more thing was in the lot: what the others cost changes with it. */
export async function addLotLine(work: UnitOfWork, input: AddLotLineInput): Promise<string> {
  const id = recordId('Acquisition', input.acquisitionId, ['acquisitionId']);
  await oneAtATime(work, `lot ${id}`);
  const source = rowSourceInWork(work);
  const [lot] = await readLots(source, 'lot', [id]);
  if (!lot) throw Refusal.notFound('acquisition', ['acquisitionId']);
  const check = new Checklist(work);
  const pathOf = () => ['line'];
  const line = draftLotLine(check, input.line, lot.price.currency, ['line']);
  await checkLotItems(source, check, [line.itemId], pathOf);
  await checkNewItems(source, check, [line], pathOf);
  checkSpread(check, { ...lot, lines: [...lot.lines, line] }, pathOf);
  check.done();
  const last = Math.max(-1, ...lot.lines.map(({ ordinal }) => ordinal));
  await keepLotLines(work, id, [line], last + 1);
  return id;
}
