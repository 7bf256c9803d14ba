import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import { recordId } from '../../api/kit/globalId.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { PlannedCostEntity } from '../costToCome/plannedCost.entity.js';
import { readSpent } from '../money/readSpent.js';
import { openProjectFor } from '../projects/openProjectFor.js';
import { InquiryEntity } from './inquiry.entity.js';
import type { PlanInquiryInput } from './inquiry.inputs.js';

const mostMinutes = 100_000;
export const whyNoMinutes = 'Give minutes from 0 to 100,000.';
export const areMinutes = (minutes: number): boolean => minutes >= 0 && minutes <= mostMinutes;
export const whyNoCost = 'An inquiry costs 0 or more.';

export async function planInquiry(work: UnitOfWork, input: PlanInquiryInput): Promise<string> {
  const projectId = recordId('Project', input.projectId, ['projectId']);
  await openProjectFor(work, projectId, ['projectId']);
  const check = new Checklist(work);
  const { kind, resolves, minutes } = input;
  const description = check.words(input.description, ['description']);
  const plannedCostId = checkedRecordId(check, 'PlannedCost', input.plannedCostId, [
    'plannedCostId',
  ]);
  const partTypeId = checkedRecordId(check, 'PartType', input.partTypeId, ['partTypeId']);
  await check.exists('part_type', partTypeId, ['partTypeId']);
  const planned =
    plannedCostId === null
      ? null
      : await work.manager.findOneBy(PlannedCostEntity, { id: plannedCostId, projectId });
  check.that(
    (resolves === 'PLANNED_COST') === (planned !== null),
    'Name a planned cost of the same project if the inquiry settles one, and none if it does not.',
    ['plannedCostId'],
  );
  check.that(
    (resolves === 'PART_PRICE') === (partTypeId !== null),
    'Name the part type if the inquiry settles its price, and none if it does not.',
    ['partTypeId'],
  );
  const cost = readSpent(check, input.cost, ['cost'], whyNoCost);
  check.that(areMinutes(minutes), whyNoMinutes, ['minutes']);
  check.done();
  const row = await insertRow(work, InquiryEntity, {
    projectId,
    kind,
    description,
    resolves,
    plannedCostId,
    partTypeId,
    costMinorUnits: cost.minorUnits,
    costCurrency: cost.currency,
    minutes,
    doneAt: null,
    outcome: null,
    struckAt: null,
  });
  return row.id;
}
