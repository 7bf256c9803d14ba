import type { Checklist } from '../../db/checklist.js';
import type { NewRow } from '../../db/insertRow.js';
import { shortText } from '../../db/shortText.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { pickForFitting, type TakenFromStock } from '../stock/pickForFitting.js';
import type { ComponentEntity } from './component.entity.js';
import type { FromStockInput } from './fitting.inputs.js';

/** A spare that is about to be fitted: what leaves the shelf, and the component that it becomes. */
export async function draftSpare(
  work: UnitOfWork,
  check: Checklist,
  input: FromStockInput,
  path: string[],
): Promise<{ taken: TakenFromStock | null; component: NewRow<ComponentEntity> | null }> {
  const taken = await pickForFitting(work, check, input, path);
  const marking = shortText(check, input.marking, [...path, 'marking'], 200);
  const dateCode = shortText(check, input.dateCode, [...path, 'dateCode'], 40);
  const { lot } = taken?.pick ?? {};
  check.that(
    !lot?.componentId || (marking === null && dateCode === null),
    'This is a component that is known already: change its marking and date code there.',
    [...path, 'marking'],
  );
  if (lot?.componentId !== null) return { taken, component: null };
  const { partTypeId } = lot;
  return {
    taken,
    component: {
      partTypeId,
      marking: marking ?? (partTypeId === null ? lot.name : null),
      dateCode,
      origin: 'REPLACEMENT',
      note: null,
    },
  };
}
