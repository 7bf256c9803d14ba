import type { TypedLimitFragment } from '../../gql/graphql.js';
import type { BenchItem } from './BenchPage.js';

export interface MeasuredPlace {
  designator: string;
  /** What sits there; else what is expected. */
  part: string | null;
  /** Null where no part is written down as sitting there. */
  componentId: string | null;
  limits: readonly TypedLimitFragment[];
}

/** The fit-out in its order, then parts in places that the fit-out does not name. */
export function measuredPlaces(item: BenchItem): MeasuredPlace[] {
  const sitting = new Map(
    item.components.nodes.map(({ designator, component }) => [designator, component]),
  );
  const planned = item.fitOut.map(({ position }) => {
    const component = sitting.get(position.designator);
    sitting.delete(position.designator);
    return placeOf(position.designator, component, position.partType);
  });
  const elsewhere = [...sitting].map(([designator, component]) =>
    placeOf(designator, component, null),
  );
  return [...planned, ...elsewhere];
}

type Part = BenchItem['fitOut'][number]['position']['partType'];

function placeOf(
  designator: string,
  component: { id: string; partType: Part } | undefined,
  expected: Part,
): MeasuredPlace {
  const part = component ? component.partType : expected;
  return {
    designator,
    part: part?.designation ?? null,
    componentId: component?.id ?? null,
    limits: part?.limits ?? [],
  };
}

export type KnownQuantity = Pick<TypedLimitFragment, 'quantity' | 'unit' | 'tier'>;

/** Each quantity that limits are known for, the most frequent first. */
export function knownQuantities(limits: readonly TypedLimitFragment[]): KnownQuantity[] {
  const counted = new Map<string, { known: KnownQuantity; count: number }>();
  for (const { quantity, unit, tier } of limits) {
    const key = JSON.stringify([quantity, unit, tier]);
    const held = counted.get(key);
    counted.set(key, { known: { quantity, unit, tier }, count: (held?.count ?? 0) + 1 });
  }
  return [...counted.values()]
    .sort((one, other) => other.count - one.count)
    .map(({ known }) => known);
}
