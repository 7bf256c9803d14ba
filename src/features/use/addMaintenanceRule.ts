import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { checkInterval } from './checkInterval.js';
import { MaintenanceRuleEntity } from './maintenanceRule.entity.js';
import type { AddMaintenanceRuleInput } from './use.inputs.js';

export async function addMaintenanceRule(
  work: UnitOfWork,
  input: AddMaintenanceRuleInput,
): Promise<string> {
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const check = new Checklist(work);
  await check.exists('item', itemId, ['itemId']);
  const title = check.words(input.title, ['title']);
  const everyDays = input.everyDays ?? null;
  const everyUseMinutes = checkInterval(check, input.everyUseHours ?? null, everyDays);
  const countsFrom = pastInstant(check, work, input.countsFrom, ['countsFrom']);
  const note = check.text(input.note, ['note']);
  check.done();
  const rule = { itemId, title, everyUseMinutes, everyDays, countsFrom, note, retiredAt: null };
  return (await insertRow(work, MaintenanceRuleEntity, rule)).id;
}
