import { recordId } from '../../api/kit/globalId.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkInterval } from './checkInterval.js';
import { MaintenanceRuleEntity } from './maintenanceRule.entity.js';
import type { ChangeMaintenanceRuleInput } from './use.inputs.js';

export async function changeMaintenanceRule(
  work: UnitOfWork,
  input: ChangeMaintenanceRuleInput,
): Promise<string> {
  const id = recordId('MaintenanceRule', input.id);
  const rule = await work.manager.findOneBy(MaintenanceRuleEntity, { id });
  if (!rule) throw Refusal.notFound('maintenance rule');
  const check = new Checklist(work);
  const title = typeof input.title === 'string' ? check.words(input.title, ['title']) : rule.title;
  const keptHours = rule.everyUseMinutes === null ? null : rule.everyUseMinutes / 60;
  const everyDays = input.everyDays === undefined ? rule.everyDays : input.everyDays;
  const everyUseHours = input.everyUseHours === undefined ? keptHours : input.everyUseHours;
  const everyUseMinutes = checkInterval(check, everyUseHours, everyDays);
  const note = input.note === undefined ? rule.note : check.text(input.note, ['note']);
  check.done();
  const { isRetired } = input;
  const retiredAt = typeof isRetired === 'boolean' ? (isRetired ? work.now : null) : rule.retiredAt;
  const changes = { title, everyDays, everyUseMinutes, note, retiredAt };
  await changeRow(work, MaintenanceRuleEntity, id, input.version, changes);
  return id;
}
