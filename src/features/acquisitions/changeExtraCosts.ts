import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { changeRow } from '../../db/changeRow.js';
import type { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ChangeExtraCostInput } from './acquisition.inputs.js';
import { draftExtraCost } from './draftExtraCost.js';
import { ExtraCostEntity } from './extraCost.entity.js';

/** Extra costs that change or come to a lot. @returns writes them, once all is checked. */
export async function changeExtraCosts(
  work: UnitOfWork,
  check: Checklist,
  acquisitionId: string,
  inputs: readonly ChangeExtraCostInput[],
): Promise<() => Promise<void>> {
  const rows = await queryInWork<{ id: string }>(
    work,
    `SELECT id AS "id" FROM extra_cost WHERE acquisition_id = ?`,
    [acquisitionId],
  );
  const known = new Set(rows.map(({ id }) => id));
  const drafts = inputs.map((input, index) => {
    const path = ['extraCosts', String(index)];
    const id = checkedRecordId(check, 'ExtraCost', input.id, [...path, 'id']);
    if (id !== null && !known.has(id)) {
      const message = 'There is no extra cost with this id on the lot.';
      check.add({ code: 'NOT_FOUND', message, path: [...path, 'id'] });
    }
    const version = input.version ?? null;
    check.that(id === null || version !== null, 'Give the version that you saw.', [
      ...path,
      'version',
    ]);
    return { id, version, values: draftExtraCost(check, input, path) };
  });
  return async () => {
    for (const { id, version, values } of drafts) {
      if (id === null) await insertRow(work, ExtraCostEntity, { ...values, acquisitionId });
      else await changeRow(work, ExtraCostEntity, id, version, values);
    }
  };
}
