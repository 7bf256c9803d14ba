import type { PlacedComponentFragment, PositionState, SetPlanQuery } from '../../gql/graphql.js';

export interface PlanRow {
  key: string;
  designator: string;
  /** Whether the model's fit-out has such a place. */
  isExpected: boolean;
  isRequired: boolean;
  expected: string | null;
  state: PositionState;
  component: PlacedComponentFragment | null;
  /** What is written down as sitting there, whatever an inspection found since. */
  sitting: PlacedComponentFragment | null;
}

/** The fit-out in its order, then what sits in places that the fit-out does not name. */
export function planRows(item: SetPlanQuery['item']): PlanRow[] {
  if (!item) return [];
  const sitting = new Map(
    item.components.nodes.map(({ designator, component }) => [designator, component]),
  );
  const planned = item.fitOut.map(({ position, state, component }) => ({
    key: position.id,
    designator: position.designator,
    isExpected: true,
    isRequired: position.isRequired,
    expected: position.partType?.designation ?? null,
    state,
    component,
    sitting: sitting.get(position.designator) ?? null,
  }));
  const elsewhere = item.components.nodes
    .filter(({ position }) => position === null)
    .map(({ id, designator, component }) => ({
      key: id,
      designator,
      isExpected: false,
      isRequired: false,
      expected: null,
      state: 'PRESENT' as const,
      component,
      sitting: component,
    }));
  return [...planned, ...elsewhere];
}
