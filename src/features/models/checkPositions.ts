import { optionalRecordId } from '../../api/kit/globalId.js';
import type { Checklist } from '../../db/checklist.js';
import { listParameter, postgresDialect, sqliteDialect } from '../../db/dialect.js';
import type { NewRow } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkWeight } from './checkWeight.js';
import type { FitOutPositionInput } from './fitOutPosition.inputs.js';
import type { FitOutPositionEntity } from './fitOutPosition.entity.js';

const mostPositions = 1000;
export type Position = Omit<NewRow<FitOutPositionEntity>, 'modelId' | 'ordinal'>;

/** Positions as they are kept; what is wrong with them goes to the checklist. */
export async function checkPositions(
  work: UnitOfWork,
  check: Checklist,
  inputs: readonly FitOutPositionInput[],
  path: string,
): Promise<Position[]> {
  check.that(inputs.length <= mostPositions, `${mostPositions} positions are the most.`, [path]);
  const seen = new Set<string>();
  const positions = inputs.slice(0, mostPositions).map((input, index) => {
    const at = [path, String(index)];
    const designator = check.words(input.designator, [...at, 'designator'], 60);
    check.that(!seen.has(designator), `${designator} is there twice.`, [...at, 'designator']);
    seen.add(designator);
    const partTypeId = optionalRecordId('PartType', input.partTypeId ?? null, [
      ...at,
      'partTypeId',
    ]);
    const note = check.text(input.note, [...at, 'note']);
    const { zone, isRequired } = input;
    const weight = checkWeight(check, input.weight, [...at, 'weight']) ?? null;
    return { designator, zone, partTypeId, isRequired, weight, note };
  });
  await refuseUnknownPartTypes(work, check, positions, path);
  return positions;
}

async function refuseUnknownPartTypes(
  work: UnitOfWork,
  check: Checklist,
  positions: readonly Position[],
  path: string,
): Promise<void> {
  const dialect = work.engine === 'sqlite' ? sqliteDialect : postgresDialect;
  const wanted = positions.flatMap(({ partTypeId }) => partTypeId ?? []);
  const found = await queryInWork<{ id: string }>(
    work,
    `SELECT id AS "id" FROM part_type WHERE ${dialect.isAnyOf('id')}`,
    [listParameter(wanted)],
  );
  const known = new Set(found.map(({ id }) => id));
  for (const [index, { partTypeId }] of positions.entries()) {
    if (partTypeId === null || known.has(partTypeId)) continue;
    const message = 'There is no part type with this id.';
    check.add({ code: 'NOT_FOUND', message, path: [path, String(index), 'partTypeId'] });
  }
}
