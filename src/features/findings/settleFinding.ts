import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { FindingEntity } from './finding.entity.js';
import type { SettleFindingInput } from './finding.inputs.js';

/** Accepts or resolves a finding, with the reason; or opens it again. Its hazards stay raised. */
export async function settleFinding(work: UnitOfWork, input: SettleFindingInput): Promise<string> {
  const id = recordId('Finding', input.id);
  const finding = await work.manager.findOneBy(FindingEntity, { id });
  if (!finding) throw Refusal.notFound('finding');
  const { status } = input;
  if (status === 'OPEN') {
    const open = { status, settledAt: null, settledNote: null };
    await changeRow(work, FindingEntity, id, input.version, open);
    return id;
  }
  const check = new Checklist(work);
  const settledNote = check.text(input.note, ['note']);
  check.that(
    settledNote !== null,
    status === 'RESOLVED' ? 'Say how it was put right.' : 'Say why it stays as it is.',
    ['note'],
  );
  const settledAt = pastInstant(check, work, input.settledAt, ['settledAt']);
  check.that(
    settledAt >= finding.seenAt,
    `It was seen at ${finding.seenAt}; it cannot have been settled before that.`,
    ['settledAt'],
  );
  check.done();
  await changeRow(work, FindingEntity, id, input.version, { status, settledAt, settledNote });
  return id;
}
