import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { positionNamed, type ItemPosition } from '../inspections/itemFitOut.js';

const mostDesignators = 200;

/** The positions as the model's fit-out spells them; what is wrong goes to the checklist. */
export async function checkDesignators(
  work: UnitOfWork,
  check: Checklist,
  modelId: string,
  designators: readonly string[],
): Promise<string[]> {
  check.that(
    designators.length >= 1 && designators.length <= mostDesignators,
    `Name from 1 to ${mostDesignators} positions; these are ${designators.length}.`,
    ['designators'],
  );
  const fitOut = await queryInWork<ItemPosition>(
    work,
    `SELECT id AS "positionId", designator AS "designator", part_type_id AS "partTypeId"
     FROM fit_out_position WHERE model_id = ? ORDER BY ordinal, designator`,
    [modelId],
  );
  const seen = new Set<string>();
  return designators.map((named, index) => {
    const path = ['designators', String(index)];
    const words = check.words(named, path, 60);
    const found = positionNamed(fitOut, words)?.designator;
    check.that(
      found !== undefined || words === '',
      `The fit-out of the model has no position ${words}: add it there first.`,
      path,
    );
    const designator = found ?? words;
    check.that(!seen.has(designator), `${designator} stands here twice.`, path);
    seen.add(designator);
    return designator;
  });
}
