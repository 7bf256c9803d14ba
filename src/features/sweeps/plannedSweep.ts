import { optionalRecordId } from '../../api/kit/globalId.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { ReadingTier } from '../readings/readingTier.js';
import { ItemEntity } from '../items/item.entity.js';
import type { RecordSweepInput } from './sweep.inputs.js';
import type { SweepColumn } from './sweepColumn.js';
import { SweepTemplateEntity } from './sweepTemplate.entity.js';

/** How a sweep is taken: as sent, and where that is silent as its template says. */
export interface PlannedSweep {
  templateId: string | null;
  /** Null without a template. */
  designators: string[] | null;
  quantities: SweepColumn[];
  tier: ReadingTier;
  instrument: string | null;
  method: string | null;
}

/** @throws Refusal for a template of another model, and for what neither of the two says. */
export async function plannedSweep(
  work: UnitOfWork,
  itemId: string,
  input: RecordSweepInput,
): Promise<PlannedSweep> {
  const templateId = optionalRecordId('SweepTemplate', input.templateId ?? null, ['templateId']);
  const template = templateId === null ? null : await templateFor(work, templateId, itemId);
  const quantities = input.quantities ?? template?.quantities;
  const tier = input.tier ?? template?.tier;
  if (!quantities || !tier) {
    throw new Refusal(
      [...(quantities ? [] : ['quantities']), ...(tier ? [] : ['tier'])].map((field) => ({
        code: 'INVALID',
        message: 'Give this, or a sweep template that says it.',
        path: [field],
      })),
    );
  }
  return {
    templateId,
    designators: template?.designators ?? null,
    quantities,
    tier,
    instrument: input.instrument === undefined ? (template?.instrument ?? null) : input.instrument,
    method: input.method === undefined ? (template?.method ?? null) : input.method,
  };
}

async function templateFor(
  work: UnitOfWork,
  id: string,
  itemId: string,
): Promise<SweepTemplateEntity> {
  const template = await work.manager.findOneBy(SweepTemplateEntity, { id });
  if (!template) throw Refusal.notFound('sweep template', ['templateId']);
  const item = await work.manager.findOneBy(ItemEntity, { id: itemId });
  if (item?.modelId === template.modelId) return template;
  throw Refusal.conflict(
    `The sweep template “${template.name}” is for sets of another model. Send the sweep without it.`,
    ['templateId'],
  );
}
