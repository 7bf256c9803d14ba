import { v7 as uuidv7 } from 'uuid';
import { itemTypes, optionalRecordId, recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { Checklist } from '../../db/checklist.js';
import { insertRow } from '../../db/insertRow.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { itemFitOut, positionNamed } from '../inspections/itemFitOut.js';
import { drawForFitting } from '../stock/pickForFitting.js';
import { shelveComponent } from '../stock/shelveComponent.js';
import { takeOffShelf } from '../stock/takeOffShelf.js';
import { ComponentEntity } from './component.entity.js';
import { draftComponent } from './draftComponent.js';
import { draftSpare } from './draftSpare.js';
import { endFitting } from './endFitting.js';
import { FittingEntity } from './fitting.entity.js';
import type { FitComponentInput } from './fitting.inputs.js';
import { fittingsGuard } from './fittingsGuard.js';
import { refuseFittings } from './refuseFittings.js';

/** A component goes into a place. What sat there must be out, or comes out with `removing`. */
export async function fitComponent(work: UnitOfWork, input: FitComponentInput): Promise<string> {
  await oneAtATime(work, fittingsGuard);
  const itemId = recordId(itemTypes, input.itemId, ['itemId']);
  const fitOut = await itemFitOut(work, itemId);
  if (!fitOut) throw Refusal.notFound('item', ['itemId']);
  const knownId = optionalRecordId('Component', input.componentId ?? null, ['componentId']);
  const check = new Checklist(work);
  const words = check.words(input.designator, ['designator'], 60);
  const designator = positionNamed(fitOut.positions, words)?.designator ?? words;
  const fittedAt = pastInstant(check, work, input.fittedAt, ['fittedAt']);
  const removedAt = input.removedAt
    ? pastInstant(check, work, input.removedAt, ['removedAt'])
    : null;
  const given = [knownId, input.component, input.fromStock].filter(Boolean);
  check.that(
    given.length === 1,
    'Give the id of a known component, describe a new one, or take one from stock: one of the three.',
    ['componentId'],
  );
  await check.exists('component', knownId, ['componentId']);
  const draft = input.component
    ? await draftComponent(check, input.component, ['component'])
    : null;
  const spare = input.fromStock
    ? await draftSpare(work, check, input.fromStock, ['fromStock'])
    : null;
  const note = check.text(input.note, ['note']);
  const removingNote = check.text(input.removing?.note, ['removing', 'note']);
  check.done();

  const componentId = knownId ?? spare?.taken?.pick.lot.componentId ?? uuidv7();
  const fitting = { id: uuidv7(), componentId, itemId, designator, fittedAt, removedAt };
  const occupant = input.removing
    ? await work.manager
        .getRepository(FittingEntity)
        .createQueryBuilder('fitting')
        .where('fitting.itemId = :itemId AND fitting.designator = :designator', fitting)
        .andWhere('fitting.removedAt IS NULL')
        .getOne()
    : null;
  check.that(
    !input.removing || occupant !== null,
    `Nothing is recorded as sitting in ${designator} of ${fitOut.inventoryNumber}: leave \`removing\` out.`,
    ['removing'],
  );
  const emptied = occupant ? [{ ...occupant, removedAt: fittedAt }] : [];
  await refuseFittings(work, check, [...emptied, fitting], {
    place: ['designator'],
    component: ['componentId'],
    time: removedAt === null ? ['fittedAt'] : ['removedAt'],
  });
  check.done();

  if (occupant && input.removing) {
    const { disposition } = input.removing;
    await endFitting(work, occupant, { removedAt: fittedAt, disposition, note: removingNote });
  }
  const fresh = draft ?? spare?.component;
  if (fresh) await insertRow(work, ComponentEntity, { ...fresh, id: componentId });
  const disposition = removedAt === null ? null : (input.disposition ?? 'UNKNOWN');
  await insertRow(work, FittingEntity, { ...fitting, disposition, note });
  if (spare?.taken) await drawForFitting(work, spare.taken, fitting);
  else if (knownId !== null && removedAt === null) {
    await takeOffShelf(work, componentId, fitting);
  }
  if (removedAt !== null && disposition === 'STOCK') {
    await shelveComponent(work, componentId, removedAt);
  }
  return fitting.id;
}
