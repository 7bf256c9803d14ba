import { recordId } from '../../api/kit/globalId.js';
import { pastInstant } from '../../api/kit/pastInstant.js';
import { changeRow } from '../../db/changeRow.js';
import { Checklist } from '../../db/checklist.js';
import { oneAtATime } from '../../db/oneAtATime.js';
import { Refusal } from '../../db/refusal.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { itemFitOut, positionNamed } from '../inspections/itemFitOut.js';
import { shelveComponent } from '../stock/shelveComponent.js';
import { takeOffShelf } from '../stock/takeOffShelf.js';
import { FittingEntity } from './fitting.entity.js';
import type { ChangeFittingInput } from './fitting.inputs.js';
import { fittingsGuard } from './fittingsGuard.js';
import { refuseFittings } from './refuseFittings.js';

/** Corrects where and when a component sat, under the same rules as fitting it. */
export async function changeFitting(work: UnitOfWork, input: ChangeFittingInput): Promise<string> {
  await oneAtATime(work, fittingsGuard);
  const id = recordId('Fitting', input.id);
  const before = await work.manager.findOneBy(FittingEntity, { id });
  if (!before) throw Refusal.notFound('fitting');
  const check = new Checklist(work);
  const words = check.words(input.designator ?? before.designator, ['designator'], 60);
  const fitOut = await itemFitOut(work, before.itemId);
  const designator =
    input.designator === undefined
      ? before.designator
      : (positionNamed(fitOut?.positions ?? [], words)?.designator ?? words);
  const fittedAt = input.fittedAt
    ? pastInstant(check, work, input.fittedAt, ['fittedAt'])
    : before.fittedAt;
  const removedAt = input.removedAt
    ? pastInstant(check, work, input.removedAt, ['removedAt'])
    : input.removedAt === undefined
      ? before.removedAt
      : null;
  const disposition =
    removedAt === null ? null : (input.disposition ?? before.disposition ?? 'UNKNOWN');
  check.that(
    removedAt !== null || !input.disposition,
    'It sits there still: leave the disposition out, or say when it came out.',
    ['disposition'],
  );
  const note = input.note === undefined ? before.note : check.text(input.note, ['note']);
  check.done();
  const changes = { designator, fittedAt, removedAt };
  await refuseFittings(work, check, [{ ...before, ...changes }], {
    place: input.designator === undefined ? ['fittedAt'] : ['designator'],
    component: ['fittedAt'],
    time: ['removedAt'],
  });
  check.done();
  await changeRow(work, FittingEntity, id, input.version, { ...changes, disposition, note });
  if (disposition === before.disposition) return id;
  const { componentId } = before;
  if (removedAt !== null && disposition === 'STOCK') {
    await shelveComponent(work, componentId, removedAt);
  }
  if (before.disposition === 'STOCK') await takeOffShelf(work, componentId, null);
  return id;
}
