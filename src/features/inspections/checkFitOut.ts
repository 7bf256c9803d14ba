import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';
import type { FitOutCheckInput } from './inspection.inputs.js';
import { positionNamed, type ItemFitOut, type ItemPosition } from './itemFitOut.js';
import type { PositionState } from './positionState.js';

export interface CheckedPosition {
  positionId: string;
  state: PositionState;
  note: string | null;
}

/** Finds the position that each check is about; one that is not of the model is refused by name. */
export function checkFitOut(
  check: Checklist,
  fitOut: ItemFitOut,
  checks: readonly FitOutCheckInput[],
): CheckedPosition[] {
  const seen = new Set<string>();
  return checks.flatMap((input, index) => {
    const path = ['fitOutChecks', String(index)];
    const note = check.text(input.note, [...path, 'note']);
    const position = positionOf(check, fitOut, input, path);
    if (!position) return [];
    const { positionId, designator } = position;
    check.that(!seen.has(positionId), `${designator} is checked off twice: leave one out.`, path);
    seen.add(positionId);
    return [{ positionId, state: input.state, note }];
  });
}

function positionOf(
  check: Checklist,
  fitOut: ItemFitOut,
  { designator, positionId }: FitOutCheckInput,
  path: string[],
): ItemPosition | null {
  const isNamed = typeof designator === 'string' && designator.trim() !== '';
  if (isNamed === (typeof positionId === 'string')) {
    check.refuse('Name the position by its designator or by its id: one of the two.', path);
    return null;
  }
  if (isNamed) {
    const position = positionNamed(fitOut.positions, designator);
    if (!position) check.refuse(notOfModel(designator, fitOut), [...path, 'designator']);
    return position ?? null;
  }
  const id = checkedRecordId(check, 'FitOutPosition', positionId, [...path, 'positionId']);
  if (id === null) return null;
  const position = fitOut.positions.find((one) => one.positionId === id);
  if (!position) check.refuse(notOfModel('This position', fitOut), [...path, 'positionId']);
  return position ?? null;
}

const namesShown = 12;

function notOfModel(name: string, { inventoryNumber, modelName, positions }: ItemFitOut): string {
  if (modelName === null) {
    return `${inventoryNumber} has no model, so no fit-out to check ${name} against: give it one first.`;
  }
  if (positions.length === 0) {
    return `The fit-out of ${modelName} is not written down: add ${name} to it first.`;
  }
  const known = positions.slice(0, namesShown).map(({ designator }) => designator);
  const more = positions.length > namesShown ? ' …' : '';
  return `${name} is not a position of ${modelName}. It has ${known.join(', ')}${more}.`;
}
