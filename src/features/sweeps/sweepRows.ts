import { v7 as uuidv7 } from 'uuid';
import { globalId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import type { NewRow } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import { rowSourceInWork } from '../../db/rowSource.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { positionNamed, type ItemFitOut, type ItemPosition } from '../inspections/itemFitOut.js';
import { fitComponent } from '../parts/fitComponent.js';
import { checkReading } from '../readings/checkReading.js';
import { readLimitsOfSubjects, type KeptLimit } from '../readings/limitsOfSubjects.reads.js';
import type { ReadingEntity } from '../readings/reading.entity.js';
import type { SweptRow } from './sweep.entity.js';
import type { PlannedSweep } from './plannedSweep.js';
import type { RecordSweepInput, SweepRowInput } from './sweep.inputs.js';

/** What holds for the whole sweep. */
interface SweepOf extends ItemFitOut, PlannedSweep {
  itemId: string;
  takenAt: string;
  takenById: string | null;
}

export interface SweptReadings {
  row: SweptRow;
  readings: (NewRow<ReadingEntity> & { id: string })[];
}

/** Row by row: which component, and its readings, checked and not yet kept; or what is wrong. */
export async function sweepRows(
  work: UnitOfWork,
  input: RecordSweepInput,
  sweep: SweepOf,
): Promise<SweptReadings[]> {
  const sitting = await componentsSitting(work, sweep);
  const seen = new Set<string>();
  const rows: SweptRow[] = [];
  for (const [index, row] of input.rows.entries()) {
    rows.push(
      await rowByRow(row.designator, async () => {
        const check = new Checklist(work);
        const path = ['rows', String(index)];
        const words = check.words(row.designator, [...path, 'designator'], 60);
        const position = positionNamed(sweep.positions, words);
        const designator = position?.designator ?? words;
        check.that(
          !seen.has(designator),
          `${designator} is in this sweep already: send a second reading of it in a sweep of its own.`,
          [...path, 'designator'],
        );
        checkValues(check, row, sweep.quantities.length, [...path, 'values']);
        check.done();
        seen.add(designator);
        const componentId =
          sitting.get(designator) ??
          (await fitExpected(work, input, { ...sweep, designator, position, path }));
        return { designator, componentId, readingIds: [], problems: [] };
      }),
    );
  }
  const componentIds = rows.flatMap((row) => row.componentId ?? []);
  const limits = await readLimitsOfSubjects(rowSourceInWork(work), componentIds, []);
  return rows.map((row, index) =>
    readingsOf(work, input.rows[index], sweep, { row, index, limits }),
  );
}

async function rowByRow(designator: string, act: () => Promise<SweptRow>): Promise<SweptRow> {
  try {
    return await act();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { designator, componentId: null, readingIds: [], problems: [...error.problems] };
  }
}

function checkValues(check: Checklist, row: SweepRowInput, columns: number, path: string[]): void {
  check.that(
    row.values.length === columns,
    `Give one value a quantity, ${columns} in all, null where nothing was read; these are ${row.values.length}.`,
    path,
  );
  check.that(
    row.values.some((value) => value !== null),
    'Nothing was read here: leave the row out.',
    path,
  );
}

async function componentsSitting(
  work: UnitOfWork,
  { itemId, takenAt }: SweepOf,
): Promise<Map<string, string>> {
  const rows = await queryInWork<{ designator: string; componentId: string }>(
    work,
    `SELECT designator AS "designator", component_id AS "componentId" FROM fitting
     WHERE item_id = ? AND fitted_at <= ? AND (removed_at IS NULL OR removed_at > ?)`,
    [itemId, takenAt, takenAt],
  );
  return new Map(rows.map(({ designator, componentId }) => [designator, componentId]));
}

async function fitExpected(
  work: UnitOfWork,
  { fitsExpected, itemId }: RecordSweepInput,
  place: SweepOf & {
    designator: string;
    position: ItemPosition | undefined;
    path: string[];
  },
): Promise<string> {
  const { designator, position, path, takenAt } = place;
  const partTypeId = position?.partTypeId ?? null;
  if (!fitsExpected || partTypeId === null) {
    const mend = fitsExpected
      ? 'The model has no part type there either: fit a component first.'
      : 'Fit a component first, or send the row with `fitsExpected`.';
    const message =
      `Nothing is recorded as sitting in ${designator} of ${place.inventoryNumber} at ${takenAt}. ` +
      mend;
    throw new Refusal([{ code: 'NOT_FOUND', message, path: [...path, 'designator'] }]);
  }
  const fittingId = await fitComponent(work, {
    itemId,
    designator,
    component: { partTypeId: globalId('PartType', partTypeId), origin: 'UNKNOWN' },
    fittedAt: new Date(takenAt),
  });
  const [fitted] = await queryInWork<{ componentId: string }>(
    work,
    'SELECT component_id AS "componentId" FROM fitting WHERE id = ?',
    [fittingId],
  );
  if (!fitted) throw new Error(`fitting ${fittingId} is gone`);
  return fitted.componentId;
}

function readingsOf(
  work: UnitOfWork,
  given: SweepRowInput | undefined,
  { quantities, tier, instrument, method, takenAt, takenById }: SweepOf,
  {
    row,
    index,
    limits,
  }: { row: SweptRow; index: number; limits: ReadonlyMap<string, readonly KeptLimit[]> },
): SweptReadings {
  const { componentId } = row;
  if (componentId === null || !given) return { row, readings: [] };
  const check = new Checklist(work);
  const common = {
    tier,
    instrument,
    method,
    takenAt: new Date(takenAt),
    note: given.note ?? null,
  };
  const readings = quantities.flatMap(({ quantity, unit }, column) => {
    const value = given.values[column];
    if (value === null || value === undefined) return [];
    const path = ['rows', String(index), 'values', String(column)];
    const reading = { ...common, quantity, unit, value };
    const checked = checkReading(work, check, reading, limits.get(componentId) ?? [], path);
    return [{ ...checked, id: uuidv7(), componentId, itemId: null, takenById }];
  });
  try {
    check.done();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { row: { ...row, problems: [...error.problems] }, readings: [] };
  }
  return { row: { ...row, readingIds: readings.map(({ id }) => id) }, readings };
}
