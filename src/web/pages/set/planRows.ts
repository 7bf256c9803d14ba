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
}

/** The fit-out in its order, then what sits in places that the fit-out does not name. */
export function planRows(item: SetPlanQuery['item']): PlanRow[] {
  if (!item) return [];
  const planned = item.fitOut.map(({ position, state, component }) => ({
    key: position.id,
    designator: position.designator,
    isExpected: true,
    isRequired: position.isRequired,
    expected: position.partType?.designation ?? null,
    state,
    component,
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
    }));
  return [...planned, ...elsewhere];
}
