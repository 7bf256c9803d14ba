import { recordId } from '../../api/kit/globalId.js';
import type { RemovalInput } from '../../api/kit/removal.inputs.js';
import { queryInWork } from '../../db/queryInWork.js';
import { Refusal } from '../../db/refusal.js';
import { removeRow } from '../../db/removeRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { versionedRow } from '../../db/versionedRow.js';
import { FitOutPositionEntity } from './fitOutPosition.entity.js';

/** Only what was written by mistake can go: what was checked off against it stays explained. */
export async function removeFitOutPosition(work: UnitOfWork, input: RemovalInput): Promise<void> {
  const id = recordId('FitOutPosition', input.id);
  const position = await versionedRow(work, FitOutPositionEntity, id, input.version);
  const checked = await queryInWork<{ number: string }>(
    work,
    `SELECT DISTINCT item.inventory_number AS "number" FROM fit_out_check
     JOIN item ON item.id = fit_out_check.item_id
     WHERE fit_out_check.position_id = ? ORDER BY item.inventory_number`,
    [id],
  );
  const [first] = checked;
  if (first) {
    const others = checked.length > 1 ? ` and ${checked.length - 1} more` : '';
    throw Refusal.conflict(
      `${position.designator} was checked off on ${first.number}${others}. ` +
        'Change it instead: say that it is not required, or give it another designator.',
      ['id'],
    );
  }
  await removeRow(work, FitOutPositionEntity, id);
}
