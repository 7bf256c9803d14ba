import { itemTypes, optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { sentBefore } from '../../api/kit/sentBefore.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow, insertRows } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { itemFitOut } from '../inspections/itemFitOut.js';
import { fittingsGuard } from '../parts/fittingsGuard.js';
import { ReadingEntity } from '../readings/reading.entity.js';
import { checkColumns } from './checkColumns.js';
import { plannedSweep } from './plannedSweep.js';
import { sweepRows } from './sweepRows.js';
import { SweepEntity } from './sweep.entity.js';
import type { RecordSweepInput } from './sweep.inputs.js';

const mostRows = 200;

/** Keeps what can be kept of a sweep, row by row; all rows refused: the sweep is refused. */
export async function recordSweep(work: UnitOfWork, input: RecordSweepInput): Promise<string> {
  const { known, key, digest } = await sentBefore(work, SweepEntity, input);
  if (known) return known.id;
  const check = new Checklist(work);
  await oneAtATime(work, fittingsGuard);
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const fitOut = await itemFitOut(work, itemId);
  if (!fitOut) throw Refusal.notFound('item', ['itemId']);
  const takenById = optionalRecordId('Party', input.takenById ?? null, ['takenById']);
  await check.exists('party', takenById, ['takenById']);
  const takenAt = pastInstant(check, work, input.takenAt, ['takenAt']);
  const planned = await plannedSweep(work, itemId, input);
  checkColumns(check, planned.quantities);
  const { length } = input.rows;
  check.that(
    length >= 1 && length <= mostRows,
    `Send from 1 to ${mostRows}; these are ${length}.`,
    ['rows'],
  );
  check.done();

  const swept = await sweepRows(work, input, { ...fitOut, ...planned, itemId, takenAt, takenById });
  if (swept.every(({ row }) => row.problems.length > 0)) {
    throw new Refusal(swept.flatMap(({ row }) => row.problems));
  }
  await insertRows(
    work,
    ReadingEntity,
    swept.flatMap(({ readings }) => readings),
  );
  const rows = swept.map(({ row }) => row);
  const { templateId, designators: plannedDesignators } = planned;
  const values = { key, digest, itemId, templateId, plannedDesignators, rows };
  return (await insertRow(work, SweepEntity, values)).id;
}
