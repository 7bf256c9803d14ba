import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { refuseSubstitutionCircle } from './refuseSubstitutionCircle.js';
import { SubstitutionEntity } from './substitution.entity.js';
import type { RecordSubstitutionInput } from './substitution.inputs.js';

export async function recordSubstitution(
  work: UnitOfWork,
  input: RecordSubstitutionInput,
): Promise<string> {
  const originalId = recordId('PartType', input.originalId, ['originalId']);
  const substituteId = recordId('PartType', input.substituteId, ['substituteId']);
  const check = new Checklist(work);
  await check.exists('part_type', originalId, ['originalId']);
  await check.exists('part_type', substituteId, ['substituteId']);
  check.that(originalId !== substituteId, 'A part type needs no substitution by itself.', [
    'substituteId',
  ]);
  const consequence = check.text(input.consequence, ['consequence']);
  const recheck = check.text(input.recheck, ['recheck']);
  const source = check.text(input.source, ['source']);
  await oneAtATime(work, 'substitutions');
  const known = await queryInWork<{ id: string }>(
    work,
    `SELECT id AS "id" FROM substitution WHERE (original_id = ? AND substitute_id = ?)
       OR (original_id = ? AND substitute_id = ?)`,
    [originalId, substituteId, substituteId, originalId],
  );
  if (known.length > 0) {
    const message =
      'A substitution between these two is written down already. Change that one: it may be mutual, or out of use.';
    check.add({ code: 'CONFLICT', message, path: ['substituteId'] });
  }
  check.done();
  const { grade, isMutual } = input;
  await refuseSubstitutionCircle(work, { originalId, substituteId, isMutual }, null);
  const row = await insertRow(work, SubstitutionEntity, {
    originalId,
    substituteId,
    grade,
    isMutual,
    consequence,
    recheck,
    source,
    retiredAt: null,
  });
  return row.id;
}
