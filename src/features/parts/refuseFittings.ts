import type { Checklist } from '../../db/checklist.js';
import { queryInWork } from '../../db/queryInWork.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import type { Fitting } from '../../domain/parts/fitting.js';
import { fittingProblems, type FittingProblem } from '../../domain/parts/fittingProblems.js';

/** A fitting as kept or as about to be. */
export interface FittingSpan {
  id: string;
  componentId: string;
  itemId: string;
  designator: string;
  fittedAt: string;
  removedAt: string | null;
}

interface Named extends FittingSpan {
  inventoryNumber: string;
  componentName: string | null;
}

const columns = `fitting.id AS "id", fitting.component_id AS "componentId",
  fitting.item_id AS "itemId", fitting.designator AS "designator",
  fitting.fitted_at AS "fittedAt", fitting.removed_at AS "removedAt",
  item.inventory_number AS "inventoryNumber",
  COALESCE(part_type.designation, component.marking) AS "componentName"`;

/**
 * Holds the fittings that are about to be kept against all others of the same places and
 * components: a component sits in one place at a time, and a place holds one component.
 * @param path where in the input a clash of places, of components, and of times is shown.
 */
export async function refuseFittings(
  work: UnitOfWork,
  check: Checklist,
  changed: readonly FittingSpan[],
  path: { place: string[]; component: string[]; time: string[] },
): Promise<void> {
  const known = new Map<string, Named>();
  for (const { itemId, designator, componentId } of changed) {
    const rows = await queryInWork<Named>(
      work,
      `SELECT ${columns} FROM fitting JOIN item ON item.id = fitting.item_id
       JOIN component ON component.id = fitting.component_id
       LEFT JOIN part_type ON part_type.id = component.part_type_id
       WHERE (fitting.item_id = ? AND fitting.designator = ?) OR fitting.component_id = ?`,
      [itemId, designator, componentId],
    );
    for (const row of rows) known.set(row.id, row);
  }
  const spans = new Map<string, FittingSpan>([
    ...known,
    ...changed.map((one) => [one.id, one] as const),
  ]);
  const problems = fittingProblems([...spans.values()].map(domainFitting));
  for (const problem of problems) {
    check.add({
      code: 'CONFLICT',
      message: sentence(problem, [...known.values()]),
      path:
        problem.code === 'TWO_COMPONENTS_IN_ONE_POSITION'
          ? path.place
          : problem.code === 'COMPONENT_IN_TWO_PLACES'
            ? path.component
            : path.time,
    });
  }
}

/** With several items in view, item and place together name the position. */
const domainFitting = (span: FittingSpan): Fitting => ({
  componentId: span.componentId,
  positionKey: JSON.stringify([span.itemId, span.designator]),
  fittedAtMs: Date.parse(span.fittedAt),
  removedAtMs: span.removedAt === null ? null : Date.parse(span.removedAt),
});

function sentence({ code, fittings }: FittingProblem, known: readonly Named[]): string {
  const [earlier, later = earlier] = fittings;
  if (!earlier || !later) return 'These fittings contradict one another.';
  const at = (fitting: Fitting): string => new Date(fitting.fittedAtMs).toISOString();
  const nameOf = ({ componentId }: Fitting): string =>
    known.find((row) => row.componentId === componentId)?.componentName ?? 'The new part';
  const placeOf = ({ positionKey }: Fitting): string => {
    const [itemId, designator] = JSON.parse(positionKey) as [string, string];
    const item = known.find((row) => row.itemId === itemId);
    return item ? `${designator} of ${item.inventoryNumber}` : designator;
  };
  switch (code) {
    case 'REMOVED_BEFORE_FITTED':
      return `${nameOf(earlier)} was fitted in ${placeOf(earlier)} at ${at(earlier)}; it cannot have come out before that.`;
    case 'COMPONENT_IN_TWO_PLACES':
      return (
        `${nameOf(later)} would be in ${placeOf(earlier)} (since ${at(earlier)}) and in ` +
        `${placeOf(later)} (since ${at(later)}) at one time: remove it from the first before.`
      );
    case 'TWO_COMPONENTS_IN_ONE_POSITION':
      return (
        `${placeOf(later)} would hold ${nameOf(earlier)} (since ${at(earlier)}) and ` +
        `${nameOf(later)} (since ${at(later)}) at one time: remove the first one before, or with \`removing\`.`
      );
  }
}
