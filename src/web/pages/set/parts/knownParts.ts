import type { PartsOfSetQuery } from '../../../gql/graphql.js';

export interface KnownPart {
  componentId: string;
  name: string;
  designator: string;
  /** False for one that was taken out and went nowhere since. */
  isSitting: boolean;
}

/** What sits in a set, and what came out of it and sits nowhere: all that may go in elsewhere. */
export function knownParts(item: PartsOfSetQuery['item']): KnownPart[] {
  return (item?.positionHistory ?? []).flatMap(({ designator, fittings }) =>
    fittings
      .filter(
        ({ removedAt, disposition, next }) =>
          removedAt === null || (next === null && disposition !== 'BINNED'),
      )
      .map(({ removedAt, component: { id, partType, marking, dateCode } }) => ({
        componentId: id,
        designator,
        isSitting: removedAt === null,
        name: [partType?.designation, marking, dateCode].filter(Boolean).join(' '),
      })),
  );
}
